import { describe, expect, it } from 'vitest';
import { plainSite, plainZone } from '$lib/advice/completions';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite } from '$lib/advice/types';

/**
 * Common practice, no published source: under a thin layer that has let go may lie a deeper one, and
 * nobody breaks deeper into what carries, or near cables, by themselves.
 */
describe('a thin hollow layer, measured', () => {
  const advised = (site: Partial<SettledSite>, looseness: 'hollow' | 'flaking' = 'hollow') => {
    const zone = { ...plainZone, looseness, depth: '3-to-6', depthMm: 5 } as const;
    const { cautions, steps } = adviseSettled({ ...plainSite, ...site }, zone);
    const why = steps.flatMap((step) => step.why);
    const under = why.find(({ rule }) => rule === 'sound-what-is-under');
    return { deeper: under?.facts?.['deeper'], collapse: cautions.includes('structure') };
  };
  const engineer = { deeper: 'engineer', collapse: true };

  it.each<[string, Partial<SettledSite>]>([
    ['in a slab in the air', { element: 'suspended-slab' }],
    ['in a wall', { element: 'wall' }],
    ['where cables may lie', { warnings: ['tendons-possible'] }],
    ['under what rests on it', { warnings: ['holds-something-up'] }],
  ])('%s: deeper down it is the engineer’s, and collapse is told of', (_, site) => {
    expect(advised(site)).toEqual(engineer);
  });

  it('on the ground is broken out by the crew, where it goes deeper', () => {
    expect(advised({})).toEqual({ deeper: 'break-out', collapse: false });
  });

  it('that only flakes hides nothing under it', () => {
    const none = { deeper: undefined, collapse: false };
    expect(advised({ element: 'suspended-slab' }, 'flaking')).toEqual(none);
  });
});
