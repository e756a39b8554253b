import { Matrix, SVD } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { homography, seen } from '$lib/survey/photo/homography';
import { layoutOf, pairs } from '$lib/survey/photo/taped';
import { photoArea, type PhotoMeasure } from '$lib/survey/photo/area';
import { signedArea } from '$lib/survey/geometry';
import { valueOf } from '$shared/figures';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Areas from photos, against a library of linear algebra, closed formulas, and cameras made up here. */
let dice = xoroshiro128plus(20_261_126);
const uniform = (low: number, high: number): number =>
  low + ((dice.next() >>> 0) / 2 ** 32) * (high - low);
/** Box and Muller. */
const normal = (deviation: number): number =>
  deviation * Math.sqrt(-2 * Math.log(uniform(1e-12, 1))) * Math.cos(uniform(0, 2 * Math.PI));

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

interface Camera {
  readonly see: (place: Place) => Place | null;
}
const [width, height] = [1600, 1200];
/** A pinhole above the ground, tilted and turned, with a lens that bends by `bend` at the corner. */
function camera(bend: number): Camera {
  const above = uniform(1200, 1900);
  const back = uniform(300, 3000);
  const around = uniform(0, 2 * Math.PI);
  const from = [back * Math.cos(around), back * Math.sin(around), above] as const;
  const length = Math.hypot(...from);
  const look = from.map((each) => -each / length) as [number, number, number];
  const flat = Math.hypot(look[0], look[1]);
  const right = [look[1] / flat, -look[0] / flat, 0] as const;
  const down = [
    look[1] * right[2] - look[2] * right[1],
    look[2] * right[0] - look[0] * right[2],
    look[0] * right[1] - look[1] * right[0],
  ] as const;
  const roll = normal(0.1);
  const focal = uniform(0.7, 0.95) * width;
  return {
    see([x, y]) {
      const to = [x - from[0], y - from[1], -from[2]] as const;
      const dot = (axis: readonly [number, number, number]) =>
        to[0] * axis[0] + to[1] * axis[1] + to[2] * axis[2];
      const depth = dot(look);
      if (depth < 100) return null;
      const [u, v] = [(focal * dot(right)) / depth, (focal * dot(down)) / depth];
      const [s, t] = [
        u * Math.cos(roll) - v * Math.sin(roll),
        u * Math.sin(roll) + v * Math.cos(roll),
      ];
      const out = 1 - bend * ((s * s + t * t) / ((width / 2) ** 2 + (height / 2) ** 2));
      const [px, py] = [width / 2 + s * out, height / 2 + t * out];
      return px > 0 && px < width && py > 0 && py < height ? [px, py] : null;
    },
  };
}

/** Corners round a middle, each at its own distance. */
const round = (corners: number, [x, y]: Place, low: number, high: number): Place[] =>
  Array.from({ length: corners }, (_, corner) => {
    const angle = ((corner + uniform(-0.3, 0.3)) * 2 * Math.PI) / corners;
    const out = uniform(low, high);
    return [x + out * Math.cos(angle), y + out * Math.sin(angle)];
  });

/** mm of the screen: a phone held upright, zoomed in two to four times. */
const screens = [130, 200, 260];
const shuffledErrors = {
  tap: valueOf('photo.tap-error'),
  tape: valueOf('photo.tape-error'),
  bend: valueOf('photo.lens-bend'),
};

/** One photo with what was tapped and taped, and the true area; null where the frame cuts it off. */
function taken(
  marks: readonly Place[],
  outline: readonly Place[],
): { measure: PhotoMeasure; truth: number } | null {
  const { see } = camera(normal(shuffledErrors.bend));
  const shown = screens[Math.floor(uniform(0, 3))] as number;
  const tap = (shuffledErrors.tap / shown) * width;
  const tapped = (places: readonly Place[]) =>
    places.map((place): Place | null => {
      const at = see(place);
      return at && [at[0] + normal(tap), at[1] + normal(tap)];
    });
  const [m, o] = [tapped(marks), tapped(outline)];
  if ([...m, ...o].some((place) => !place)) return null;
  return {
    measure: {
      width,
      height,
      shown,
      marks: m as Place[],
      outline: o as Place[],
      taped: tapedOf(marks).map((each) => each + normal(shuffledErrors.tape)),
    },
    truth: Math.abs(signedArea(outline)) / 1e6,
  };
}

describe('ten thousand cameras', () => {
  it('see an area whose range covers the truth nine times in ten', () => {
    const count = { cameras: 0, covered: 0, wide: 0, refused: {} as Record<string, number> };
    while (count.cameras < 10_000) {
      const marks = round(4, [uniform(-200, 200), uniform(-200, 200)], 500, 1200);
      const outline = round(
        Math.floor(uniform(3, 9)),
        [uniform(-300, 300), uniform(-300, 300)],
        300,
        1100,
      );
      const photo = taken(marks, outline);
      if (!photo) continue;
      const found = photoArea(photo.measure);
      if (!found.ok) {
        count.refused[found.why] = (count.refused[found.why] ?? 0) + 1;
        continue;
      }
      count.cameras += 1;
      const [low, high] = found.range;
      if (photo.truth >= low && photo.truth <= high) count.covered += 1;
      count.wide += (high - low) / 2 / found.area / 10_000;
    }
    console.log(
      `${(count.covered / 100).toFixed(1)} % of ranges cover the truth; they are +- ${(100 * count.wide).toFixed(1)} % wide on average; refused: ${JSON.stringify(count.refused)}`,
    );
    expect(count.covered).toBeGreaterThanOrEqual(9000);
    // A range as wide as one likes would cover everything.
    expect(count.wide).toBeLessThan(0.15);
  });
});

describe('what the marks must span', () => {
  /** How far areas are off where the marks span this share of what is measured, root mean square. */
  const offAt = (share: number): number => {
    let [sum, count] = [0, 0];
    while (count < 400) {
      const size = 800;
      const outline = round(6, [0, 0], size, size);
      const photo = taken(round(4, [0, 0], share * size, share * size), outline);
      const layout = photo && layoutOf(photo.measure.taped);
      const way = layout && homography(photo.measure.marks, layout.marks);
      if (!photo || !way) continue;
      const area = Math.abs(signedArea(photo.measure.outline.map((at) => seen(way, at).place)));
      // A picture this bad is refused; it would drown the rest.
      const off = Math.min(1, Math.abs(area / 1e6 / photo.truth - 1));
      sum += off ** 2;
      count += 1;
    }
    return Math.sqrt(sum / count);
  };
  it('is half of it: at half the error is tolerable, below it grows fast', () => {
    const [whole, half, quarter] = [1, 0.5, 0.25].map(offAt) as [number, number, number];
    console.log(
      `off by ${[whole, half, quarter].map((each) => `${(100 * each).toFixed(0)} %`).join(', ')} with marks as wide, half and a quarter as wide`,
    );
    expect(half).toBeLessThan(0.25);
    expect(quarter).toBeGreaterThan(2 * half);
  });
});
