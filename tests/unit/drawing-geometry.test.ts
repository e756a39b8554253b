import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amplitudeOf, roughLine } from '$lib/drawing/lines';
import {
  depthInside,
  hatch,
  pathOf,
  rectangle,
  sidesOf,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';
import { packStones, strewSand } from '$lib/drawing/stones';
import { rounds } from '../helpers/rounds';

const step: Polygon = [
  [0, 0],
  [60, 0],
  [60, 40],
  [120, 40],
  [120, 90],
  [0, 90],
];
const seeds = fc.integer({ min: 1, max: 1_000_000 });

/** Whether a point lies inside a polygon (even-odd rule): the reference the drawing's own is held against. */
const isInside = ([x, y]: Point, polygon: Polygon): boolean =>
  sidesOf(polygon).filter(
    ([[x1, y1], [x2, y2]]) => y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1),
  ).length %
    2 ===
  1;

/** Distance from a point to the nearest side of a polygon. */
function distanceToSides([x, y]: Point, polygon: Polygon): number {
  let nearest = Infinity;
  for (const [[x1, y1], [x2, y2]] of sidesOf(polygon)) {
    const along = [x2 - x1, y2 - y1] as const;
    const length = along[0] ** 2 + along[1] ** 2;
    const share = length
      ? Math.min(1, Math.max(0, ((x - x1) * along[0] + (y - y1) * along[1]) / length))
      : 0;
    nearest = Math.min(nearest, Math.hypot(x - x1 - share * along[0], y - y1 - share * along[1]));
  }
  return nearest;
}

/** Absolute points of a path of `M` and `l` with relative numbers. */
function pointsIn(path: string): Point[] {
  const numbers = (path.match(/-?\d*\.?\d+/g) ?? []).map(Number);
  const points: Point[] = [];
  let [x, y] = [0, 0];
  for (let index = 0; index < numbers.length; index += 2) {
    [x, y] = [x + (numbers[index] ?? NaN), y + (numbers[index + 1] ?? NaN)];
    points.push([x, y]);
  }
  return points;
}

describe('stones', () => {
  it('never overlap: the corners of one lie outside every other', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const stones = packStones(rectangle(0, 0, 120, 60), { seed, radii: [8, 2], gap: 1 });
        // Collected first: one expectation for each pair would take seconds.
        const clashes = stones.flatMap((one) =>
          stones.filter(
            (other) =>
              one !== other &&
              (Math.hypot(one.centre[0] - other.centre[0], one.centre[1] - other.centre[1]) <
                one.radius + other.radius + 1 ||
                one.corners.some((corner) => isInside(corner, other.corners))),
          ),
        );
        expect(clashes).toEqual([]);
      }),
      { numRuns: rounds(15, 40) },
    );
  });

  it('keep clear of the outline, also of one with a corner cut out', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        for (const { corners, centre, radius } of packStones(step, { seed, radii: [9, 2], gap: 1 }))
          for (const corner of corners) {
            expect(isInside(corner, step)).toBe(true);
            expect(distanceToSides(corner, step)).toBeGreaterThanOrEqual(1 - 1e-9);
            expect(Math.hypot(corner[0] - centre[0], corner[1] - centre[1])).toBeLessThanOrEqual(
              radius,
            );
          }
      }),
      { numRuns: rounds(15, 40) },
    );
  });

  it('are the same for the same seed and others for another', () => {
    const packing = { radii: [8, 2] as const };
    const at = (seed: number) => packStones(step, { seed, ...packing });
    expect(at(5)).toEqual(at(5));
    expect(at(5)).not.toEqual(at(6));
  });

  it('come in several sizes and fill the concrete', () => {
    const stones = packStones(step, { seed: 3, radii: [9, 2], tries: 200 });
    const sizes = stones.map(({ radius }) => radius);
    expect(stones.length).toBeGreaterThan(20);
    expect(Math.max(...sizes) / Math.min(...sizes)).toBeGreaterThan(2);
  });

  it('leave the sand between them', () => {
    const stones = packStones(step, { seed: 3, radii: [9, 2] });
    const sand = strewSand(step, stones, 4, 200);
    expect(sand.length).toBeGreaterThan(50);
    for (const grain of sand) {
      expect(isInside(grain, step)).toBe(true);
      for (const { corners } of stones) expect(isInside(grain, corners)).toBe(false);
    }
  });
});

describe('depth inside', () => {
  it('agrees with the distance to the sides, and is negative outside', () => {
    const depth = depthInside(step);
    const coordinate = fc.double({ min: -20, max: 140, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        if (isInside([x, y], step))
          expect(depth([x, y])).toBeCloseTo(distanceToSides([x, y], step));
        else expect(depth([x, y])).toBe(-1);
      }),
    );
  });
});

describe('lines', () => {
  it('are rough by the height asked for, and end where they should', () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: 0.5, max: 20, noNaN: true }), (seed, height) => {
        const line = roughLine([0, 10], [200, 10], height, 5, seed);
        expect(line[0]).toEqual([0, 10]);
        expect(line.at(-1)?.[0]).toBeCloseTo(200);
        const ys = line.map(([, y]) => y);
        expect(Math.max(...ys) - Math.min(...ys)).toBeLessThanOrEqual(height);
        expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(height * 0.4);
        line.slice(1).forEach(([x], index) => expect(x).toBeGreaterThan(line[index]?.[0] ?? NaN));
      }),
    );
  });

  it('follow the profile: rougher with every step, and CSP 10 as its guide has it', () => {
    const heights = Array.from({ length: 10 }, (_, index) => amplitudeOf(index + 1));
    heights
      .slice(1)
      .forEach((height, index) => expect(height).toBeGreaterThan(heights[index] ?? 0));
    // ICRI 310.2R, as reported: CSP 10 is rougher than 1/4 in, 6.4 mm to one decimal.
    expect(heights.at(-1)).toBeCloseTo(6.4);
  });
});

describe('paths', () => {
  it('say every point to one decimal, without drift', () => {
    const place = fc.tuple(
      fc.double({ min: -400, max: 400, noNaN: true }),
      fc.double({ min: -400, max: 400, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 60 }), (points) => {
        const found = pointsIn(pathOf(points));
        expect(found).toHaveLength(points.length);
        found.forEach(([x, y], index) => {
          expect(Math.abs(x - (points[index]?.[0] ?? NaN))).toBeLessThanOrEqual(0.0501);
          expect(Math.abs(y - (points[index]?.[1] ?? NaN))).toBeLessThanOrEqual(0.0501);
        });
      }),
    );
  });

  it('hatch a polygon inside its outline only', () => {
    const strokes = hatch(step, 6).split('M').filter(Boolean);
    expect(strokes.length).toBeGreaterThan(20);
    for (const stroke of strokes) {
      const [from, to] = pointsIn(stroke);
      if (!from || !to) throw new Error('a stroke has two ends');
      expect(isInside([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], step)).toBe(true);
      // The hatching rises to the right at 45 degrees.
      expect(to[1] - from[1]).toBeCloseTo(from[0] - to[0], 0);
    }
  });
});

describe('chance', () => {
  it('is spread from 0 up to 1', () => {
    const next = randomFrom(9);
    const drawn = Array.from({ length: 4000 }, next);
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
    // Mean of an even spread is 1/2, its standard error here 0.0046.
    expect(drawn.reduce((sum, each) => sum + each) / drawn.length).toBeCloseTo(0.5, 1);
  });
});
