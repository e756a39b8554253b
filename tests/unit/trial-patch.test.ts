import { describe, expect, it } from 'vitest';
import type { PatchTried } from '$lib/answers/trial-record';
import { deepest, foundOn, isFound, meanDepth, numberIn, type Found } from '$lib/trial/found';
import { learnRange } from '$lib/trial/learn';
import {
  goesByPasses,
  passLearnt,
  rateLearnt,
  rateMeasured,
  settledPatches,
  type ZoneTrial,
} from '$lib/trial/zone-trial';
import { rangeOf } from '$shared/figures';
import { methodIds } from '$shared/methods';
import { good } from '../helpers/patch-outcomes';

describe('what is written down of a patch', () => {
  const patch: PatchTried = {
    method: 'shotblast',
    notch: 2,
    passes: 1,
    depths: [3, '', 5, 'deep', 1001],
    stones: 'cut',
    left: 'dust',
    bar: 'yes',
    sound: 'dull',
    profile: 4,
    minutes: 6,
    area: 1.2,
  };
  it('is read with what could be typed; what could not counts as not typed', () => {
    const found = foundOn(patch);
    expect(found).toEqual({
      ...{ notch: 2, passes: 1, area: 1.2, minutes: 6, depths: [3, 5], profile: 4 },
      ...{ stones: 'cut', left: 'dust', bar: 'yes', sound: 'dull' },
    });
    expect(isFound(found)).toBe(true);
    const bare = foundOn({ ...patch, minutes: 'soon', area: '' });
    expect(bare).toMatchObject({ area: 1 });
    expect(bare).not.toHaveProperty('minutes');
    const { profile, ...chipless } = patch;
    expect(profile).toBe(4);
    expect(foundOn(chipless)).not.toHaveProperty('profile');
  });
  it.each(['depths', 'stones', 'left', 'bar', 'sound'] as const)(
    'cannot be read without %s',
    (what) => {
      const lacking = Object.fromEntries(Object.entries(patch).filter(([key]) => key !== what));
      const found = foundOn(lacking as unknown as PatchTried);
      expect(found).toEqual({ missing: [what] });
      expect(isFound(found)).toBe(false);
    },
  );
  it('names all that is missing, and a pass that took nothing is a depth of 0', () => {
    expect(foundOn({ method: 'grind', notch: 0, passes: 1 })).toEqual({
      missing: ['depths', 'stones', 'left', 'bar', 'sound'],
    });
    expect(foundOn({ ...patch, depths: [0] })).toMatchObject({ depths: [0] });
    expect([meanDepth({ depths: [1, 2, 6] }), deepest({ depths: [1, 6, 2] })]).toEqual([3, 6]);
  });
  it.each([
    ['area', 0.05, 20],
    ['minutes', 0.1, 600],
    ['depth', 0, 1000],
  ] as const)('%s is a slip of the keyboard beyond %f and %f', (what, low, high) => {
    expect([low, high].map((entry) => numberIn(entry, what))).toEqual([low, high]);
    for (const entry of [low - 0.01, high + 0.01, '', '5', undefined])
      expect(numberIn(entry, what)).toBeUndefined();
  });
});

describe('what patches teach', () => {
  const timed = { ...good, minutes: 6, passes: 2, area: 1.2, depths: [2, 4] };
  // By hand: 1.2 m2 in 0.1 h is 12 m2/h, and 24 m2/h of one pass where it was gone over twice.
  it('a rate over the whole, or of one pass', () => {
    expect(rateMeasured(timed, 'rate.shotblast')).toBeCloseTo(12, 9);
    expect(rateMeasured(timed, 'rate.shotblast', true)).toBeCloseTo(24, 9);
    expect(rateMeasured(good, 'rate.shotblast')).toBeNull();
    // By hand: 0.1 h for 1.2 m2 x 0.003 m = 0.0036 m3; nothing taken off has no hours a cubic metre.
    expect(rateMeasured(timed, 'rate.break-out')).toBeCloseTo(0.1 / 0.0036, 6);
    expect(rateMeasured({ ...timed, depths: [0] }, 'rate.break-out')).toBeNull();
    expect(rateLearnt([timed, good], 'rate.shotblast', {}, true)).toEqual(
      learnRange(rangeOf('rate.shotblast'), [24]),
    );
    expect(rateLearnt([timed], 'rate.shotblast', { 'rate.grind': 3 })).toEqual(
      learnRange(rangeOf('rate.shotblast'), [12]),
    );
  });
  it.each([
    ['grind', 'grind.pass'],
    ['abrasive-blast', 'blast.pass'],
    ['scarify', 'scarify.pass'],
    ['shotblast', 'shotblast.pass-span'],
    ['needle-scale', 'needle.pass'],
  ] as const)('%s goes by passes: what one takes off', (method, figure) => {
    expect(goesByPasses(method)).toBe(true);
    // By hand: 3 mm in two passes is 1.5 mm a pass.
    expect(passLearnt([timed, { ...good, depths: [0] }], method)).toEqual(
      learnRange(rangeOf(figure), [1.5]),
    );
    expect(passLearnt([{ ...good, depths: [0] }], method)).toBeNull();
    expect(passLearnt([timed], method, { [figure]: 1 })).toBeNull();
  });
  it('washing and breaking out go by no passes', () => {
    const rest = methodIds.filter((id) => !goesByPasses(id));
    expect(rest).toEqual(['pressure-wash', 'break-out', 'water-jet']);
    for (const method of rest) expect(passLearnt([timed], method)).toBeNull();
  });
  it('nothing below nought, nor endless, is a measurement', () => {
    expect(learnRange([5, 20], [0, -3, Infinity])).toEqual(learnRange([5, 20], []));
    // Without a measurement a narrow table stays as narrow as it is printed.
    expect(learnRange([10, 19], [])).toMatchObject({
      low: expect.closeTo(10, 9),
      high: expect.closeTo(19, 9),
    });
  });

  it('teaches where the trial ended in going on, at the settings it ended with', () => {
    const trial = (...patches: (Partial<Found> & { kind?: string })[]) => {
      const read = patches.map(({ kind = 'go-on', ...patch }, index) => ({
        index,
        found: { ...good, ...patch },
        outcome: { kind, why: ['meets-all'] },
      }));
      return { read, last: read.at(-1) ?? null } as unknown as ZoneTrial;
    };
    expect(settledPatches(trial())).toEqual([]);
    expect(settledPatches(trial({}, { kind: 'finer' }))).toEqual([]);
    const several = trial(
      { minutes: 1 },
      { minutes: 2, notch: 0 },
      { minutes: 3, passes: 2 },
      { minutes: 4, kind: 'finer' },
      { minutes: 5 },
    );
    expect(settledPatches(several).map(({ minutes }) => minutes)).toEqual([1, 5]);
  });
});
