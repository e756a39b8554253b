import { expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { goesAhead } from '$lib/advice/begin';
import { waitsAt } from '$lib/plan/waiting';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';

const site = (maybe: readonly 'old-coating-or-adhesive'[]): SiteAnswers => ({
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 150,
  warnings: { yes: [], maybe },
});
const mossy: ZoneAnswers = {
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: ['growth', 'oil'], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['overlay', 'thin-film'],
};

// Common practice, no source: nobody scrapes or scrubs what may hold lead or asbestos before the
// laboratory has said what it is, moss and oil on it included. Tapping throws nothing into the air.
it('cleaning that scrubs waits for the laboratory where an old coating may lie below', () => {
  const old = [{ rule: 'old-coating' as const }];
  for (const step of ['strip-growth', 'degrease'] as const) {
    expect(goesAhead(step, old)).toBe(false);
    expect(goesAhead(step, [{ rule: 'map-cracking' }])).toBe(true);
    expect(goesAhead(step, [{ rule: 'map-cracking' }, ...old])).toBe(false);
    expect(waitsAt({ zones: [{ id: 'a', holds: old }] } as never)(step, 'a')).toBe(true);
  }
  for (const step of ['make-safe', 'sound-and-mark', 'tap-crack'] as const)
    expect(goesAhead(step, old)).toBe(true);
  expect(goesAhead('grind', [])).toBe(false);
  expect(waitsAt({ zones: [{ id: 'a', holds: [] }] } as never)('grind', 'a')).toBe(false);
});

// The same for what may fail: nobody stands on a balcony that an engineer has to see, to scrub it.
it('cleaning waits on what may fail, in a zone of its own and in the others', () => {
  const waits = (step: 'make-safe' | 'strip-growth' | 'sound-and-mark', ...holds: object[]) =>
    waitsAt({ zones: [{ id: 'a', holds }] } as never)(step, 'a');
  for (const rule of ['same-part-in-doubt', 'hollow-unmeasured', 'nothing-over-rust']) {
    expect(waits('strip-growth', { rule, who: 'engineer' })).toBe(true);
    expect(waits('make-safe', { rule, who: 'engineer' })).toBe(false);
    expect(waits('strip-growth', { rule, who: 'engineer' }, { rule: 'map-cracking' })).toBe(true);
    expect(waits('sound-and-mark', { rule, who: 'engineer' })).toBe(false);
  }
  expect(waits('strip-growth', { rule: 'nothing-over-rust', who: 'crew' })).toBe(false);
  expect(waits('strip-growth', { rule: 'moving-crack', who: 'engineer' })).toBe(false);
});

it('is not begun with while answers are open', () => {
  const now = (maybe: readonly 'old-coating-or-adhesive'[]) =>
    adviseZone(site(maybe), mossy).beginning?.now ?? [];
  expect(now([])).toContain('strip-growth');
  expect(now(['old-coating-or-adhesive'])).not.toContain('strip-growth');
  expect(now(['old-coating-or-adhesive'])).toContain('make-safe');
});
