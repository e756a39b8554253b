import { describe, expect, it } from 'vitest';
import type { Mark, Place } from '$lib/answers/survey';
import { diceFrom } from '$lib/practice/dice';
import { baysOf } from '$lib/survey/bays';
import { distanceToRing, inside } from '$lib/survey/geometry';
import { outlineOf } from '$lib/survey/outline';
import { hitChance, hollowArea, smallestFound } from '$lib/survey/sounding';
import { chainLanes, soundingPoints } from '$lib/survey/sounding-points';
import { surveyOf } from '$lib/survey/survey';
import { drawn, rectangle } from '../helpers/drawings';

/** How often a disc thrown anyhow on a square grid of spacing 1 covers at least one of its points. */
function thrown(radius: number, times: number, seed: number): number {
  const dice = diceFrom(seed);
  const fine = 1e6;
  let hit = 0;
  for (let turn = 0; turn < times; turn += 1) {
    const [x, y] = [dice.between(0, fine) / fine, dice.between(0, fine) / fine];
    const near = [0, 1].some((px) => [0, 1].some((py) => Math.hypot(x - px, y - py) <= radius));
    if (near) hit += 1;
  }
  return hit / times;
}

describe('what a sounding grid can have missed', () => {
  // ASTM D6982 (hot spots on a sampling grid): pi r^2 / G^2 while r <= G / 2. Checked by throwing discs.
  it('follows the closed form, and beyond half the spacing throwing discs', () => {
    expect(hitChance(150, 300)).toBeCloseTo(Math.PI / 4, 12);
    expect(hitChance(75, 300)).toBeCloseTo(Math.PI / 16, 12);
    expect(hitChance(300, 300)).toBe(1);
    for (const radius of [0.1, 0.3, 0.5, 0.53, 0.56, 0.6, 0.65, 0.7])
      expect(thrown(radius, 40_000, 7)).toBeCloseTo(hitChance(radius, 1), 1.8);
  });

  it('misses one in ten at a radius of 0.56 of the spacing, give or take 0.01', () => {
    let [low, high] = [0.4, 0.7];
    for (let step = 0; step < 12; step += 1) {
      const middle = (low + high) / 2;
      if (thrown(middle, 60_000, 11 + step) < 0.9) low = middle;
      else high = middle;
    }
    expect(Math.abs(low - 0.56)).toBeLessThan(0.01);
    expect(Math.abs(smallestFound(1) - 0.56)).toBeLessThan(0.01);
    expect(smallestFound(300)).toBeCloseTo(167.25, 1);
  });
});

describe('hollow area from counts', () => {
  it('is a range up to a spacing of 300 mm, and refused above', () => {
    expect(hollowArea(5, 100, 450, 48)).toEqual({ refused: 'spacing' });
    // Wilson's interval for 10 of 100 at 95 %: 5.52 to 17.44 % (Brown, Cai and DasGupta 2001; from memory).
    const counted = hollowArea(10, 100, 300, 100);
    if (!('span' in counted)) throw new Error('refused');
    expect(counted.span[0]).toBeCloseTo(5.52, 1);
    expect(counted.span[1]).toBeCloseTo(17.44, 1);
    expect(hollowArea(0, 100, 300, 48)).toMatchObject({ span: [0, expect.closeTo(1.776, 2)] });
  });

  it('holds the true area on at least 95 of 100 invented slabs', () => {
    let held = 0;
    for (let seed = 1; seed <= 200; seed += 1) {
      const dice = diceFrom(seed);
      const discs = Array.from({ length: dice.between(3, 12) }, () => ({
        at: [dice.between(0, 6000), dice.between(0, 8000)] as Place,
        r: dice.between(100, 600),
      }));
      const hollow = ([x, y]: Place) =>
        discs.some(({ at, r }) => Math.hypot(x - at[0], y - at[1]) <= r);
      const fine = Array.from({ length: 4000 }, (): Place => [
        dice.between(0, 6000),
        dice.between(0, 8000),
      ]);
      const truth = (48 * fine.filter(hollow).length) / fine.length;
      const { grid } = soundingPoints(
        baysOf(outlineOf({ length: 6000, width: 8000 }), []),
        [],
        300,
      );
      const counted = hollowArea(grid.filter(hollow).length, grid.length, 300, 48);
      if ('span' in counted && counted.span[0] <= truth && truth <= counted.span[1]) held += 1;
    }
    console.log(`hollow area from counts held the truth on ${held} of 200 invented slabs`);
    expect(held).toBeGreaterThanOrEqual(190);
  });
});

describe('where to tap', () => {
  const slab = { length: 6000, width: 8000 };
  const joint: Place[] = [
    [2500, 0],
    [2500, 8000],
  ];
  const bays = baysOf(outlineOf(slab), [joint]);
  const crack: Place[] = [
    [4000, 2000],
    [5000, 3000],
  ];

  it('is an even grid in each bay, never on a joint or an edge, no wider than asked', () => {
    const { grid } = soundingPoints(bays, [crack], 300);
    // 2.5 m in nine, 3.5 m in twelve, 8 m in twenty-seven.
    expect(grid).toHaveLength((9 + 12) * 27);
    for (const place of grid)
      expect(Math.min(...bays.map(({ ring }) => distanceToRing(place, ring)))).toBeGreaterThan(75);
  });

  it('and lines 75 mm off joints, edges and cracks, a tap at most every 150 mm', () => {
    const { lines } = soundingPoints(bays, [crack], 300);
    const along = lines
      .filter(([x]) => Math.abs(x - 2425) < 1e-6)
      .map(([, y]) => y)
      .sort((a, b) => a - b);
    expect(along[0]).toBeCloseTo(75, 6);
    expect(along.at(-1)).toBeCloseTo(7925, 6);
    for (const [index, y] of along.slice(1).entries())
      expect(y - (along[index] as number)).toBeLessThanOrEqual(150 + 1e-6);
    const off = lines.filter((place) =>
      bays.every(({ ring }) => distanceToRing(place, ring) > 200),
    );
    expect(off.length).toBeGreaterThanOrEqual(2 * Math.ceil(Math.hypot(1000, 1000) / 150));
    for (const place of lines) expect(inside(place, outlineOf(slab))).toBe(true);
  });

  it('or adjoining lanes of a chain, none wider than 450 mm, along the longer side', () => {
    const lanes = chainLanes(bays, 450);
    expect(lanes).toHaveLength(Math.ceil(2500 / 450) + Math.ceil(3500 / 450));
    expect(lanes.every(([[, y0], [, y1]]) => y0 === 0 && y1 === 8000)).toBe(true);
  });

  it('that stay on a slab with a corner missing', () => {
    const angle = outlineOf({
      corners: [
        [0, 0],
        [6000, 0],
        [6000, 3000],
        [2000, 3000],
        [2000, 5000],
        [0, 5000],
      ],
    });
    const lanes = chainLanes(baysOf(angle, []), 450);
    // Twelve lanes along 6 m: of 5000 / 12 mm, five of them beside the missing corner only 2 m long.
    expect(lanes.map(([[x0], [x1]]) => x1 - x0)).toEqual([
      ...Array<number>(7).fill(6000),
      ...Array<number>(5).fill(2000),
    ]);
  });

  it('are told to be too wide where they are wider than a chain', () => {
    const chained = (lanes: number) => surveyOf(drawn({ slab, lanes }))?.chained;
    expect(chained(450)).toEqual({ lanes: 450, tooWide: false });
    expect(chained(600)).toEqual({ lanes: 600, tooWide: true });
    expect(surveyOf(drawn({ slab }))?.chained).toBeNull();
  });
});

describe('dull taps', () => {
  const slab = { length: 6000, width: 8000 };
  const taps = (dull: readonly string[], more: readonly Mark[] = [], spacing = 300) => {
    const marks: Mark[] = [];
    for (let x = spacing / 2; x < 3000; x += spacing)
      for (let y = spacing / 2; y < 3000; y += spacing)
        marks.push({ kind: 'tap', at: [x, y], rings: !dull.includes(`${x},${y}`) });
    return surveyOf(
      drawn({
        slab,
        joints: [
          [
            [3000, 0],
            [3000, 8000],
          ],
        ],
        marks: [...marks, ...more],
      }),
    );
  };

  it('are asked for again when they stand alone, and for an outline when two stand together', () => {
    expect(taps(['450,450'])?.taps).toMatchObject({ tapAgain: [11], outline: [] });
    expect(taps(['450,450', '450,750'])?.taps).toMatchObject({ tapAgain: [], outline: [11, 12] });
    // On the slant they are neighbours too; two spacings off they are not.
    expect(taps(['450,450', '750,750'])?.taps.outline).toHaveLength(2);
    expect(taps(['450,450', '1050,450'])?.taps.tapAgain).toHaveLength(2);
    const outlined: Mark = { kind: 'spot', corners: rectangle(300, 300, 300, 300) };
    expect(taps(['450,450'], [outlined])?.taps).toEqual({ tapAgain: [], outline: [] });
    const again: Mark = { kind: 'tap', at: [2000, 5000], rings: false, again: true };
    expect(taps([], [again])?.taps).toEqual({ tapAgain: [], outline: [100] });
  });

  it('tell the spacing they were laid with, apart from the taps beside joints and edges', () => {
    const edge = Array.from({ length: 20 }, (_, index): Mark => ({
      kind: 'tap',
      at: [75, 75 + 150 * index],
      rings: true,
    }));
    expect(taps([], edge)?.spacing).toBe(300);
    expect(taps([])?.found).toMatchObject({ finer: { spacing: 150 } });
    expect(taps([])?.untapped).toEqual(['2']);
    expect(taps([], [], 600)?.hollow).toEqual({ refused: 'spacing' });
  });
});
