import { describe, expect, it } from 'vitest';
import type { Place } from '$lib/answers/survey';
import { homography, seen } from '$lib/survey/photo/homography';
import { layoutOf, pairs } from '$lib/survey/photo/taped';
import { photoArea, type PhotoMeasure } from '$lib/survey/photo/area';
import { signedArea } from '$lib/survey/geometry';
import { photoValue } from '$shared/photo-figures';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { onTrial, rounds } from '../helpers/rounds';

/** Areas from photos, against cameras made up here. */
const dice = xoroshiro128plus(20_261_126);
const uniform = (low: number, high: number): number =>
  low + ((dice.next() >>> 0) / 2 ** 32) * (high - low);
/** Box and Muller. */
const normal = (deviation: number): number =>
  deviation * Math.sqrt(-2 * Math.log(uniform(1e-12, 1))) * Math.cos(uniform(0, 2 * Math.PI));

const apart = ([ax, ay]: Place, [bx, by]: Place) => Math.hypot(ax - bx, ay - by);
const tapedOf = (marks: readonly Place[]) =>
  pairs.map(([one, other]) => apart(marks[one] as Place, marks[other] as Place));

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
  tap: photoValue('photo.tap-error'),
  tape: photoValue('photo.tape-error'),
  bend: photoValue('photo.lens-bend'),
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

const cameras = onTrial(rounds(600, 10_000), 300);

describe(`${cameras} cameras`, () => {
  it('see an area whose range covers the truth nine times in ten', () => {
    const count = { cameras: 0, covered: 0, wide: 0, refused: {} as Record<string, number> };
    while (count.cameras < cameras) {
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
      count.wide += (high - low) / 2 / found.area / cameras;
    }
    console.log(
      `${((100 * count.covered) / cameras).toFixed(1)} % of ranges cover the truth; they are +- ${(100 * count.wide).toFixed(1)} % wide on average; refused: ${JSON.stringify(count.refused)}`,
    );
    expect(count.covered / cameras).toBeGreaterThanOrEqual(0.9);
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
