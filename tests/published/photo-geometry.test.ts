import { Matrix, SVD } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { homography, seen } from '$lib/survey/photo/homography';
import { layoutOf, pairs } from '$lib/survey/photo/taped';
import { signedArea } from '$lib/survey/geometry';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** What a picture does to a flat surface, against a library of linear algebra and closed formulas. */
const dice = xoroshiro128plus(20_261_126);
const uniform = (low: number, high: number): number =>
  low + ((dice.next() >>> 0) / 2 ** 32) * (high - low);
const apart = ([ax, ay]: Place, [bx, by]: Place) => Math.hypot(ax - bx, ay - by);
const tapedOf = (marks: readonly Place[]) =>
  pairs.map(([one, other]) => apart(marks[one] as Place, marks[other] as Place));

describe('the way back from a picture to a flat surface', () => {
  it('is Heckbert’s from a square to four corners (Fundamentals of Texture Mapping, 1989, 2.2.3)', () => {
    const [x, y] = [
      [10, 90, 70, 20],
      [5, 15, 80, 60],
    ] as [number[], number[]];
    const [x0, x1, x2, x3, y0, y1, y2, y3] = [...x, ...y] as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const sx = x0 - x1 + x2 - x3;
    const sy = y0 - y1 + y2 - y3;
    const [dx1, dx2, dy1, dy2] = [x1 - x2, x3 - x2, y1 - y2, y3 - y2];
    const below = dx1 * dy2 - dx2 * dy1;
    const g = (sx * dy2 - dx2 * sy) / below;
    const h = (dx1 * sy - sx * dy1) / below;
    const expected = [
      x1 - x0 + g * x1,
      x3 - x0 + h * x3,
      x0,
      y1 - y0 + g * y1,
      y3 - y0 + h * y3,
      y0,
      g,
      h,
      1,
    ];
    const found = homography(
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      [
        [x0, y0],
        [x1, y1],
        [x2, y2],
        [x3, y3],
      ],
    );
    found?.forEach((value, index) => expect(value).toBeCloseTo(expected[index] as number, 9));
  });

  it('is what singular values give, on a thousand quadrilaterals', () => {
    for (let round = 0; round < 1000; round += 1) {
      const ring = (size: number) =>
        [0, 1, 2, 3].map((corner): Place => {
          const angle = corner * (Math.PI / 2) + uniform(-0.5, 0.5);
          const out = size * uniform(0.5, 1);
          return [size + out * Math.cos(angle), size + out * Math.sin(angle)];
        });
      const [from, to] = [ring(800), ring(1500)];
      const rows = from.flatMap(([px, py], index) => {
        const [u, v] = (to[index] as Place).map((each) => each / 1500) as [number, number];
        const [a, b] = [px / 800, py / 800];
        return [
          [a, b, 1, 0, 0, 0, -u * a, -u * b, -u],
          [0, 0, 0, a, b, 1, -v * a, -v * b, -v],
        ];
      });
      // The ninth equation is empty, so that the last direction is the one all others leave free.
      const free = new SVD(new Matrix([...rows, Array(9).fill(0)])).rightSingularVectors.getColumn(
        8,
      );
      const at: Place = [uniform(400, 1200), uniform(400, 1200)];
      const [x, y] = [at[0] / 800, at[1] / 800];
      const row = (start: number) =>
        (free[start] as number) * x + (free[start + 1] as number) * y + (free[start + 2] as number);
      const { place } = seen(homography(from, to) as readonly number[], at);
      const depth = row(6) / (free[8] as number);
      if (Math.abs(depth) < 0.05) continue;
      expect(place[0]).toBeCloseTo((row(0) / row(6)) * 1500, 3);
      expect(place[1]).toBeCloseTo((row(3) / row(6)) * 1500, 3);
    }
  });
});

describe('four marks from six distances', () => {
  it('enclose what Bretschneider’s formula says, and lie as they lay', () => {
    for (let round = 0; round < 500; round += 1) {
      const marks = [0, 1, 2, 3].map((corner): Place => {
        const angle = corner * (Math.PI / 2) + uniform(-0.4, 0.4);
        return [1500 * Math.cos(angle) * uniform(0.7, 1), 1500 * Math.sin(angle) * uniform(0.7, 1)];
      });
      const taped = tapedOf(marks);
      const [a, b, c, d, p, q] = taped as [number, number, number, number, number, number];
      // With both diagonals: 4 K = sqrt(4 p2 q2 - (b2 + d2 - a2 - c2)2).
      const area = Math.sqrt(4 * p ** 2 * q ** 2 - (b ** 2 + d ** 2 - a ** 2 - c ** 2) ** 2) / 4;
      const layout = layoutOf(taped);
      if (!layout) continue;
      expect(layout.misfit).toBeLessThan(1e-6);
      expect(Math.abs(signedArea(layout.marks))).toBeCloseTo(area, 3);
    }
    expect(layoutOf([3000, 4000, 3000, 4000, 5000, 5000])?.marks[1].map(Math.round)).toEqual([
      1800, 2400,
    ]);
  });
  it('are none where a side is longer than the way round', () => {
    expect(layoutOf([1000, 1000, 1000, 1000, 2100, 500])).toBeNull();
  });
});
