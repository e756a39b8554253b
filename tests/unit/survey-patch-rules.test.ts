import { describe, expect, it } from 'vitest';
import { baysOf } from '$lib/survey/bays';
import { chalkOf } from '$lib/survey/chalk';
import { outlineOf } from '$lib/survey/outline';
import { layPatches, pastDamage, squarePatch, worstFrost, type Patch } from '$lib/survey/patches';
import { patchVolume, removalOf } from '$lib/survey/removal';
import { sawnSides } from '$lib/survey/saw';
import { ifWhole, surveyedBay } from '$lib/survey/whole-bays';
import { surveyOf } from '$lib/survey/survey';
import { drawn, rectangle } from '../helpers/drawings';
import { across, ring } from '../helpers/plain-rings';

const near = (value: number) => expect.closeTo(value, 6) as number;

describe('patches', () => {
  it('are laid for the harder frost that is possible, and go past the damage by it', () => {
    expect([
      worstFrost({}),
      worstFrost({ freezeThaw: ['rare', 'some'] }),
      worstFrost({ freezeThaw: ['rare'] }),
    ]).toEqual([...['often', 'some', 'rare']]);
    expect(worstFrost({ freezeThaw: ['rare', 'often'] })).toBe('often');
    // FHWA, Partial-depth repairs: 75 to 100 mm, 100 where it freezes (figures `patch.past-damage*`).
    expect([pastDamage('rare'), pastDamage('some'), pastDamage('often')]).toEqual([
      ...[
        [75, 100],
        [75, 100],
        [100, 100],
      ],
    ]);
    const { area, perimeter } = squarePatch(4, 'rare');
    expect([area, perimeter]).toEqual([
      [near(2.15 ** 2), near(2.2 ** 2)],
      [near(8.6), near(8.8)],
    ]);
    // Never less than 300 by 100 mm in all.
    expect(squarePatch(0, 'some', { 'patch.past-damage': 1 }).area).toEqual([
      near(0.03),
      near(0.03),
    ]);
  });

  const at = (patches: readonly Patch[]) =>
    patches.map(({ x, y, length, width }) => [x, y, length, width].map(near));
  const own = { 'patch.past-damage-frost': 10 };
  const lay = (...boxes: Parameters<typeof rectangle>[]) =>
    layPatches(
      boxes.map((box) => rectangle(...box)),
      'often',
      own,
    );
  it('have a least length and width, by the side that is the longer', () => {
    expect(at(lay([0, 0, 200, 40]).patches)).toEqual([[-50, -30, 300, 100].map(near)]);
    expect(at(lay([0, 0, 40, 200]).patches)).toEqual([[-30, -50, 100, 300].map(near)]);
    expect(at(lay([0, 0, 400, 200]).patches)).toEqual([[-10, -10, 420, 220].map(near)]);
    // Moved off the edge, or as wide as a narrow bay is.
    const bays = baysOf(outlineOf({ length: 250, width: 1000 }), []);
    const { patches } = layPatches([rectangle(0, 0, 200, 40)], 'often', own, bays);
    expect(at(patches)).toEqual([[0, 0, 250, 100].map(near)]);
    const high = layPatches([rectangle(10, 960, 160, 40)], 'often', own, bays);
    expect(at(high.patches)).toEqual([[0, 900, 250, 100].map(near)]);
  });
  it('take in what is closer than the merging distance, one after the other, and count their spots', () => {
    const three = lay([0, 0, 400, 200], [1400, 0, 400, 200], [700, 0, 400, 200]);
    expect(three.patches.map(({ spots }) => spots)).toEqual([[0, 1, 2]]);
    expect(at(three.patches)).toEqual([[-10, -10, 1820, 220].map(near)]);
    // 420 + 300: exactly the distance, which leaves them two; in order across, then along.
    const two = lay([720, 0, 400, 200], [0, 0, 400, 200], [0, -900, 400, 200]);
    expect(two.patches.map(({ spots }) => spots)).toEqual([[2], [1], [0]]);
    expect(two.patches[0]).toEqual({
      ...{ x: -10, y: -910, length: 420, width: 220, spots: [2], bay: '' },
      ...{ area: near(0.42 * 0.22), saw: near(1.28) },
    });
  });
  it('leave what is both short and narrow', () => {
    expect(lay([0, 0, 149, 37]).skipped).toEqual([0]);
    for (const box of [
      [0, 0, 150, 37],
      [0, 0, 149, 38],
      [0, 0, 37, 150],
    ] as const)
      expect(lay([...box]).skipped).toEqual([]);
    expect(lay([0, 0, 37, 149])).toEqual({ patches: [], skipped: [0] });
  });
  it('are sawn where no edge and no joint is, a shared side once', () => {
    const bay = rectangle(0, 0, 1000, 1000);
    const sides = (...boxes: Parameters<typeof rectangle>[]) =>
      sawnSides(
        boxes.map((box) => rectangle(...box)),
        bay,
      );
    expect(sides([100, 100, 300, 200])).toEqual([near(1000)]);
    expect(sides([0, 0, 300, 200])).toEqual([near(500)]);
    expect(sides([100, 100, 300, 200], [400, 100, 300, 200])).toEqual([near(900), near(900)]);
    // Half a side shared counts half for each; what stands apart shares nothing.
    expect(sides([100, 100, 300, 200], [400, 200, 300, 200])).toEqual([near(950), near(950)]);
    expect(sides([100, 100, 300, 200], [401, 100, 300, 200])).toEqual([near(1000), near(1000)]);
    expect(sides([0, 0, 1000, 1000])).toEqual([near(0)]);
    // Two neighbours on one side, next to each other.
    expect(sides([0, 0, 1000, 400], [0, 400, 500, 300], [500, 400, 500, 300])[0]).toBeCloseTo(
      500,
      6,
    );
  });
  it('are chalked on from the nearer side of their bay, or from the corner where it is no rectangle', () => {
    const [left, right] = baysOf(ring, [across]);
    const patch = { x: 3300, y: 7000, length: 300, width: 300 };
    expect(right && chalkOf(patch, right)).toEqual({
      ...{ along: { from: 'low', distance: 300 }, across: { from: 'high', distance: 700 } },
      measuredIn: 'bay',
    });
    expect(left && chalkOf({ ...patch, x: 2600, y: 3850 }, left)).toEqual({
      ...{ along: { from: 'high', distance: 100 }, across: { from: 'low', distance: 3850 } },
      measuredIn: 'bay',
    });
    const [askew] = baysOf(ring, [
      [
        [2000, 0],
        [4000, 8000],
      ],
    ]);
    expect(askew && chalkOf({ ...patch, x: 900 }, askew)).toEqual({
      ...{ along: { from: 'low', distance: 900 }, across: { from: 'low', distance: 7000 } },
      measuredIn: 'slab',
    });
  });
  // FHWA: 13 mm on into sound concrete (figure `patch.into-sound`).
  it('take off their depth and on into sound concrete', () => {
    expect(patchVolume({ area: 2, depth: 37 })).toBeCloseTo(0.1, 9);
    expect(patchVolume({ area: 2 })).toBeNull();
    expect(patchVolume({ area: 2, depth: 37 }, { 'patch.into-sound': 23 })).toBeCloseTo(0.12, 9);
    const deep = [
      { area: 2, depth: 37 },
      { area: 1, depth: 87 },
    ];
    expect(removalOf(deep, 10, 100)).toEqual({
      volume: near(0.2),
      share: near(0.2),
      withoutDepth: [],
    });
    for (const thickness of ['unknown', undefined] as const)
      expect(removalOf(deep, 10, thickness).share).toBeNull();
    expect(removalOf([{ area: 1 }, ...deep], 10, 100)).toEqual({
      ...{ volume: near(0.2), share: null, withoutDepth: [0] },
    });
  });
  it('of more than half a bay offer the whole bay', () => {
    const [bay, other] = baysOf(ring, [across]);
    if (!bay || !other) throw new Error('two bays expected');
    const patch = (area: number, id = '1') => ({ bay: id, area, saw: 3 }) as Patch;
    const half = surveyedBay(bay, [patch(12), patch(9, '2')]);
    expect(half).toEqual({
      id: '1',
      corner: [0, 0],
      area: near(24),
      patched: 12,
      saw: 3,
      whole: false,
    });
    const more = surveyedBay(bay, [patch(12), patch(0.1)]);
    expect(more).toMatchObject({ patched: 12.1, saw: 6, whole: true });
    expect(surveyedBay(bay, [patch(12)], { 'patch.whole-bay': 40 }).whole).toBe(true);
    expect(surveyedBay(other, []).corner).toEqual([3000, 0]);
    expect([ifWhole([half]), ifWhole([])]).toEqual([null, null]);
    expect(ifWhole([more, { ...half, patched: 1, saw: 4 }])).toEqual({ area: near(25), sawCut: 4 });
  });
});

// What somebody said of a spot goes before where it lies; common practice, no source.
describe('a patch over spots of two zones', () => {
  const zoneWith = (ids: readonly string[], ...spots: readonly [string, number, number][]) => {
    const marks = spots.map(([zone, x, length]) => ({
      ...{ kind: 'spot', zone, depth: 40, corners: rectangle(x, 1000, length, 300) },
    }));
    const slab = { length: 6000, width: 8000 };
    const { patches = [] } = surveyOf(drawn({ slab, marks } as never, ids)) ?? {};
    expect(patches).toHaveLength(1);
    return patches[0]?.zone;
  };
  it('is of the zone that most of its damage says, though another has the ground of some', () => {
    // 400 mm of a, and 500 of b, of which 300 lie on those of a.
    expect(zoneWith(['a', 'b'], ['a', 1000, 400], ['b', 1100, 500])).toBe('b');
    expect(zoneWith(['a', 'b'], ['a', 1000, 400], ['b', 1500, 300])).toBe('a');
  });
  it('is of the first of the job where both say as much', () => {
    expect(zoneWith(['a', 'b'], ['b', 1000, 400], ['a', 1500, 400])).toBe('a');
    expect(zoneWith(['b', 'a'], ['b', 1000, 400], ['a', 1500, 400])).toBe('b');
  });
});
