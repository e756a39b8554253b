import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choicesOf } from '$lib/answers/questions';
import { amplitudeOf, roughLine } from '$lib/drawing/lines';
import {
  distanceToSides,
  hatch,
  isInside,
  pathOf,
  rectangle,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';
import { bodyStones } from '$lib/drawing/section/body';
import { frameOf } from '$lib/drawing/section/frame';
import { sceneOf } from '$lib/drawing/section/scene';
import { sectionState } from '$lib/drawing/section/state';
import { roundLength, ticks } from '$lib/drawing/section/ruler';
import { packStones, strewSand } from '$lib/drawing/stones';

const step: Polygon = [
  [0, 0],
  [60, 0],
  [60, 40],
  [120, 40],
  [120, 90],
  [0, 90],
];
const seeds = fc.integer({ min: 1, max: 1_000_000 });

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
      { numRuns: 40 },
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
      { numRuns: 40 },
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

describe('ruler', () => {
  it('numbers round lengths of the reader’s system', () => {
    const metric = ticks(100, 1.5, 'metric').filter(({ label }) => label);
    expect(metric.map(({ label }) => label)).toEqual(['0', '20', '40', '60', '80', '100']);
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
    const us = ticks(101.6, 1.5, 'us').filter(({ label }) => label);
    expect(us.map(({ at }) => at)).toEqual(
      [0, 25.4, 50.8, 76.2, 101.6].map((at) => expect.closeTo(at, 6)),
    );
    expect(us.map(({ label }) => label)).toEqual(['0', '1', '2', '3', '4']);
  });

  it('keeps ticks and numbers apart at any thickness', () => {
    for (const units of ['metric', 'us'] as const)
      for (let thickness = 30; thickness <= 2000; thickness += 35) {
        const scale = 150 / thickness;
        const all = ticks(thickness, scale, units);
        const numbered = all.filter(({ label }) => label !== null);
        expect(((all[1]?.at ?? 0) - 0) * scale).toBeGreaterThanOrEqual(7 - 1e-9);
        expect(numbered.length).toBeGreaterThan(1);
        expect((numbered[1]?.at ?? 0) * scale).toBeGreaterThan(14);
      }
  });

  it('finds the next round length up', () => {
    expect(roundLength(3, 'metric')).toBe(5);
    expect(roundLength(3, 'us')).toBeCloseTo(3.175);
  });
});

const draw = (...answers: Parameters<typeof sectionState>) => {
  const state = sectionState(...answers);
  return sceneOf(state, 'metric', bodyStones(frameOf(state.element, state.thickness)));
};

describe('cross-section', () => {
  it('draws every depth and thickness the questions allow', () => {
    for (const thickness of [30, 75, 300, 2000])
      for (const depth of [0, 0.1, 1, 6.4, 29, 1000])
        for (const element of choicesOf('element')) {
          const scene = draw(
            { element: [element], thickness },
            { depth, steel: ['corroded'], looseness: ['rotten'], cracks: ['crumbling'] },
            { behindBar: 19, leaves: [7, 10] },
          );
          const paths = [
            ...scene.layers.flatMap(({ marks }) => marks),
            ...(scene.lens?.inside ?? []),
          ]
            .map(([, path]) => path)
            .join('');
          expect(paths).not.toMatch(/NaN|Infinity|undefined/);
        }
  });

  it('shows the range of a depth that is not settled, and a tight hollow as empty', () => {
    const marks = (zone: Parameters<typeof sectionState>[1]) =>
      draw({ element: ['slab'], thickness: 100 }, zone).layers.flatMap((layer) =>
        layer.marks.map(([ink]) => ink),
      );
    expect(marks({ depth: ['6-to-20', '20-to-50'] })).toContain('crayon-open');
    expect(marks({ depth: ['6-to-20', '20-to-50'] })).not.toContain('crayon');
    expect(marks({ depth: 30 })).toContain('crayon');
    expect(marks({ depth: 30 })).toContain('wash');
    expect(marks({ depth: 30, looseness: ['tight'] })).not.toContain('wash');
    expect(marks({})).not.toContain('crayon');
  });
});
