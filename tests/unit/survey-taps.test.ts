import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { baysOf } from '$lib/survey/bays';
import { outlineOf } from '$lib/survey/outline';
import { hitChance, hollowArea, smallestFound } from '$lib/survey/sounding';
import { chainLanes, soundingPoints } from '$lib/survey/sounding-points';
import { sounded } from '$lib/survey/soundings';
import { askedByTaps, gridTaps, spacingOf, type Tap } from '$lib/survey/taps';
import { rectangle } from '../helpers/drawings';
import { across, ring } from '../helpers/plain-rings';

const near = (value: number) => expect.closeTo(value, 6) as number;
const tap = (index: number, at: Place, rings = true, again?: true): Tap => ({
  ...{ kind: 'tap', index, at, rings },
  ...(again && { again }),
});
const rounded = (places: readonly Place[]) =>
  places.map((place) => place.map((mm) => Math.round(mm * 1e6) / 1e6));

// ASTM D6982: pi r2 / G2 up to half the spacing, then less what neighbouring discs share; nothing of
// more than G / sqrt 2 can be missed. E. B. Wilson's interval (1927).
describe('what a grid of taps finds', () => {
  it('is a chance by size and spacing, and a smallest size by chance', () => {
    expect(hitChance(100, 400)).toBeCloseTo(Math.PI / 16, 12);
    expect(hitChance(200, 400)).toBeCloseTo(Math.PI / 4, 12);
    expect([hitChance(283, 400), hitChance(999, 400)]).toEqual([1, 1]);
    expect(hitChance(282.8, 400)).toBeGreaterThan(0.9999);
    const r = 0.6;
    const lens = 2 * r ** 2 * Math.acos(1 / (2 * r)) - 0.5 * Math.sqrt(4 * r ** 2 - 1);
    expect(hitChance(r, 1)).toBeCloseTo(Math.PI * r ** 2 - 2 * lens, 12);
    for (const found of [50, 90, 99])
      expect(hitChance(smallestFound(300, { 'sounding.found': found }), 300)).toBeCloseTo(
        found / 100,
        9,
      );
  });
  it('is a hollow area by counts on a grid that is close enough', () => {
    expect(hollowArea(5, 100, 301, 48)).toEqual({ refused: 'spacing' });
    expect(hollowArea(0, 0, 300, 48)).toEqual({ refused: 'spacing' });
    const [p, n, z] = [0.1, 100, 1.96];
    const half = z * Math.sqrt((p * (1 - p)) / n + z ** 2 / (4 * n ** 2));
    const span = [-half, half].map((by) => (48 * (p + z ** 2 / (2 * n) + by)) / (1 + z ** 2 / n));
    expect(hollowArea(10, 100, 300, 48)).toEqual({ span: span.map(near) });
    const ends = [hollowArea(0, 9, 300, 48), hollowArea(9, 9, 300, 48)];
    expect(ends).toMatchObject([
      { span: [0, near((48 * z ** 2) / (9 + z ** 2))] },
      { span: [near((48 * 9) / (9 + z ** 2)), 48] },
    ]);
  });
});

describe('taps', () => {
  const grid = (spacing: number, columns: number, rows: number): Tap[] =>
    Array.from({ length: columns * rows }, (_, at) =>
      tap(at, [1000 + spacing * (at % columns), 1000 + spacing * Math.floor(at / columns)]),
    );
  it('tell their spacing by the middle of the nearest distances', () => {
    expect(spacingOf(grid(300, 3, 3))).toBe(300);
    expect(spacingOf(grid(300, 3, 1))).toBeNull();
    expect(spacingOf(grid(450, 2, 2))).toBe(450);
    // The nearest may lie on either side: 10, 10, 90 and 200 mm away.
    const row = [0, 10, 100, 300].map((x, index) => tap(index, [x, 0]));
    expect(spacingOf(row)).toBe(90);
    const beside = [
      [1000, 995],
      [1300, 995],
    ].map((at, index) => tap(99 + index, at as never));
    expect(spacingOf([...grid(300, 3, 3), ...beside])).toBe(300);
    expect(
      spacingOf([tap(0, [0, 0]), tap(1, [500, 90]), tap(2, [1000, 0]), tap(3, [1500, 90])]),
    ).toBeCloseTo(Math.hypot(500, 90), 6);
  });
  it('of the grid are those not beside a joint, an edge or a crack, while enough are left', () => {
    const bays = baysOf(ring, [across]);
    const taps = [
      ...grid(300, 3, 3),
      tap(50, [2925, 4000]),
      tap(51, [75, 4000]),
      tap(52, [4500, 5070]),
    ];
    const crack: Place[] = [
      [4000, 5000],
      [5000, 5000],
    ];
    expect(gridTaps(taps, bays, [crack]).map(({ index }) => index)).toEqual([
      0, 1, 2, 3, 4, 5, 6, 7, 8,
    ]);
    expect(gridTaps(taps, bays, [])).toHaveLength(10);
    expect(gridTaps([tap(0, [77, 4000]), tap(1, [76, 4000])], bays, [])).toHaveLength(2);
    const few = taps.slice(8);
    expect(gridTaps(few, bays, [crack])).toEqual(few);
    const four = [...grid(300, 2, 2), tap(9, [10, 10])];
    expect(gridTaps(four, bays, [])).toHaveLength(4);
  });
  it('that are dull alone are tapped again, two together outlined, those in an outline neither', () => {
    const dull = (...places: Place[]) => places.map((at, index) => tap(index, at, false));
    const asked = (taps: Tap[], spots: Place[][] = [], spacing = 300) =>
      askedByTaps(taps, spots, spacing);
    expect(asked(dull([1000, 1000], [1300, 1300], [3000, 3000]))).toEqual({
      tapAgain: [2],
      outline: [0, 1],
    });
    expect(asked(dull([1000, 1000], [1450, 1000]))).toEqual({ tapAgain: [], outline: [0, 1] });
    expect(asked(dull([1000, 1000], [1451, 1000]))).toEqual({ tapAgain: [0, 1], outline: [] });
    // Beside edges they stand 150 mm apart, however wide the grid is not.
    expect(asked(dull([1000, 1000], [1225, 1000]), [], 0)).toEqual({
      tapAgain: [],
      outline: [0, 1],
    });
    expect(asked(dull([1000, 1000], [1226, 1000]), [], 0).tapAgain).toEqual([0, 1]);
    expect(asked([tap(7, [1000, 1000], false, true), tap(8, [2000, 2000])])).toEqual({
      tapAgain: [],
      outline: [7],
    });
    const spot = rectangle(900, 900, 200, 200);
    expect(asked(dull([1000, 1000], [1300, 1000]), [spot])).toEqual({ tapAgain: [], outline: [1] });
    for (const [x, y] of [
      [-300, 0],
      [0, -300],
      [300, -300],
      [-300, 300],
      [0, 300],
    ] as const)
      expect(asked(dull([1000, 1000], [1000 + x, 1000 + y])).outline).toHaveLength(2);
  });
  it('and lanes of a chain come to what they can have missed', () => {
    const bays = baysOf(ring, [across]);
    const taps = [...grid(300, 3, 3), tap(9, [1000, 3000], false)];
    const told = sounded(taps, {}, bays, [], []);
    const size = (of: number) => ({
      ninety: near(smallestFound(of)),
      across: near(2 * smallestFound(of)),
    });
    expect(told).toEqual({
      ...{ spacing: 300, chained: null, untapped: ['2'], taps: { tapAgain: [9], outline: [] } },
      found: { ...size(300), finer: { spacing: 150, ...size(150) } },
      hollow: hollowArea(1, 10, 300, 24),
      heard: [],
    });
    expect(sounded(taps, { spacing: 600, lanes: 450 }, bays, [], [])).toMatchObject({
      ...{
        spacing: 600,
        chained: { lanes: 450, tooWide: false },
        untapped: [],
        heard: ['1', '2'],
        hollow: { refused: 'spacing' },
      },
    });
    expect(sounded([], { spacing: 600, lanes: 451 }, bays, [], [])).toEqual({
      ...{ spacing: null, chained: { lanes: 451, tooWide: true }, found: null, hollow: null },
      ...{ untapped: [], heard: [], taps: { tapAgain: [], outline: [] } },
    });
    expect(sounded([tap(0, [1, 1])], {}, bays, [], []).found).toBeNull();
  });
});

// Half a spacing off the edges; lines 75 mm off them, a tap each 150 (figures `sounding.*`).
describe('where to tap', () => {
  const small = baysOf(outlineOf({ length: 600, width: 300 }), []);
  it('is an even grid, and lines along edges and cracks', () => {
    const { grid, lines } = soundingPoints(small, [], 300);
    expect(rounded(grid)).toEqual([
      [150, 150],
      [450, 150],
    ]);
    expect(rounded(lines)).toEqual([
      ...[
        [75, 75],
        [225, 75],
        [375, 75],
        [525, 75],
        [525, 225],
        [375, 225],
        [225, 225],
        [75, 225],
      ],
    ]);
    expect(soundingPoints(small, [], 200).grid).toHaveLength(6);
    const wide = baysOf(outlineOf({ length: 2000, width: 2000 }), []);
    const crack: Place[] = [
      [900, 1000],
      [1200, 1000],
    ];
    const beside = soundingPoints(
      wide,
      [
        crack,
        [
          [5, 5],
          [5, 5],
        ],
      ],
      2000,
    ).lines.filter(([, y]) => Math.abs(y - 1000) < 80);
    const inner = rounded(beside.filter(([x]) => x > 200 && x < 1800));
    expect(inner).toEqual([
      [900, 1075],
      [1050, 1075],
      [1200, 1075],
      [900, 925],
      [1050, 925],
      [1200, 925],
    ]);
  });
  it('or lanes side by side along the longer way of a bay', () => {
    const lanes = (length: number, width: number) =>
      chainLanes(baysOf(outlineOf({ length, width }), []), 450).map(rounded);
    expect(lanes(1000, 400)).toEqual([
      [
        [0, 200],
        [1000, 200],
      ],
    ]);
    expect(lanes(400, 1000)).toEqual([
      [
        [200, 0],
        [200, 1000],
      ],
    ]);
    expect(lanes(900, 900)).toHaveLength(2);
    expect(lanes(900, 901).map(([from]) => from?.[0])).toEqual([225, 675]);
    const angle = baysOf(
      outlineOf({
        corners: [
          [0, 0],
          [900, 0],
          [900, 400],
          [450, 400],
          [450, 800],
          [0, 800],
        ],
      }),
      [],
    );
    expect(chainLanes(angle, 450).map(rounded)).toEqual([
      [
        [0, 200],
        [900, 200],
      ],
      [
        [0, 600],
        [450, 600],
      ],
    ]);
  });
});
