import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { keepClear } from '$lib/advice/keep-clear';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { sealedSlab } from '../helpers/sealed-slabs';

const clearOf = (site: SiteAnswers, zone: ZoneAnswers) => {
  const [s, z] = [
    { ...sealedSlab.site, ...site },
    { ...sealedSlab.zone, ...zone },
  ];
  return keepClear(s, adviseZone(s, z, { margins: false }));
};
const hollow: ZoneAnswers = { depth: 30, looseness: ['hollow'], finish: ['overlay'] };
const lostBar: ZoneAnswers = { steel: ['corroded'], finish: ['overlay'] };
const warned = (yes: readonly string[], maybe: readonly string[] = []) =>
  ({ warnings: { yes, maybe } }) as unknown as SiteAnswers;

// Common practice, no source: who comes to a balcony that may fail clears it first, then tests and calls.
describe('keeping people away comes before any test', () => {
  it.each<[string, SiteAnswers, ZoneAnswers, ReturnType<typeof clearOf>]>([
    ['a hollow balcony', { element: ['suspended-slab'] }, hollow, 'keep-from-under'],
    [
      'stairs with a rusted bar nobody measured',
      { element: ['suspended-steps'] },
      { ...lostBar, barLoss: ['within-limit', 'one-bar'] },
      'keep-from-under',
    ],
    [
      'a soffit that may be hollow',
      { element: ['soffit'] },
      { ...hollow, looseness: ['tight', 'hollow'] },
      'keep-from-under',
    ],
    [
      'a balcony with a crack that moves',
      { element: ['suspended-slab'] },
      { cracks: ['moving'] },
      'keep-from-under',
    ],
    ['a wall with a crack that moves', { element: ['wall'] }, { cracks: ['moving'] }, null],
    ['a retaining wall to be broken into', { element: ['wall'] }, hollow, 'keep-off'],
    ['a slab that holds a post up', warned(['holds-something-up']), hollow, 'keep-off'],
    ['a slab of which nobody knows that', warned([], ['holds-something-up']), hollow, null],
    [
      'something of which nobody knows where it is, nor that',
      { element: undefined as never, ...warned([], ['holds-something-up']) },
      hollow,
      'keep-from-under',
    ],
    [
      'a sound floor on the ground, no sign looked for',
      warned([], ['settled-or-rocking', 'holds-something-up', 'fire-or-chemical']),
      {},
      null,
    ],
    [
      'a balcony after a fire',
      { element: ['suspended-slab'], ...warned(['fire-or-chemical']) },
      {},
      'keep-from-under',
    ],
    [
      'a balcony that has dropped at one end',
      { element: ['suspended-slab'], ...warned(['settled-or-rocking']) },
      {},
      'keep-from-under',
    ],
    ['a dusty balcony, all sound', { element: ['suspended-slab'] }, {}, null],
    [
      'a sound balcony with tendons: nobody cuts, nothing fails',
      { element: ['suspended-slab'], ...warned(['tendons-possible']) },
      {},
      null,
    ],
    [
      'a balcony with a rust stain',
      { element: ['suspended-slab'] },
      { steel: ['rust-stain'] },
      'keep-from-under',
    ],
    [
      'a hollow balcony of which nobody knows how deep',
      { element: ['suspended-slab'] },
      { depth: ['film'], looseness: ['hollow'] },
      'keep-from-under',
    ],
    ['a hollow drive on the ground', {}, hollow, null],
    ['a drive on the ground with a bar lost', {}, { ...lostBar, barLoss: ['one-bar'] }, null],
  ])('%s', (_, site, zone, kept) => {
    expect(clearOf(site, zone)).toBe(kept);
  });
});
