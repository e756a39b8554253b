import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import { evenSurface, section, unsound } from '$lib/drawing/motif/concrete';
import { faceAt, type Work } from '$lib/drawing/motif/work';
import { dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';

/** How it looks before, and how when it is done. */
export type Ends = () => readonly [begin: Drawing, done: Drawing];

const across = ({ depth, height, step, seed }: Work) =>
  roughLine([0, faceAt + depth], [120, faceAt + depth], height, step, seed);

/** Nothing done yet: what is unsound lies all over, the crayon under it. */
export function begun(work: Work): Drawing {
  const bottom = faceAt + work.depth;
  return [
    ...section(
      [
        [0, bottom],
        [120, bottom],
      ],
      work.seed,
    ),
    ...unsound(rectangle(0, faceAt, 120, bottom), 4),
    ['ink', pathOf(roughLine([0, faceAt], [120, faceAt], 1.6, 8, work.seed))],
    ['crayon', pathOf(roughLine([0, bottom + 0.5], [120, bottom + 0.5], 1, 9, work.seed))],
  ];
}

/** All of it is off: the floor that the tool leaves, from edge to edge; where the face was is dashed. */
export function finished(work: Work): Drawing {
  const floor = across(work);
  return [
    ...section(floor, work.seed),
    ['heavy', pathOf(floor)],
    ...(work.depth > 5 ? ([['dashed', `M0 ${faceAt}H120`]] as const) : []),
  ];
}

/** An even slab with nothing on it. */
export const bare = (seed: number): Drawing => [
  ...section(evenSurface(faceAt), seed),
  ['heavy', pathOf(evenSurface(faceAt))],
];

/** A hole in the slab from left to right, as deep as given. */
export function pit(left: number, right: number, depth: number, seed: number, height = 3): Drawing {
  const floor = roughLine([left, faceAt + depth], [right, faceAt + depth], height, 6, seed);
  const surface: readonly Point[] = [
    [0, faceAt],
    [left, faceAt],
    ...floor,
    [right, faceAt],
    [120, faceAt],
  ];
  return [...section(surface, seed), ['heavy', pathOf(surface)]];
}

/** Grains that lie on the face. */
export const litter = (
  left: number,
  right: number,
  count: number,
  seed: number,
  high = 6,
): Drawing => [
  [
    'grain',
    dotsPath(strewSand(rectangle(left, faceAt - high, right, faceAt + 0.5), [], seed, count)),
  ],
];

/** As it should be, and as it should not: with the middle of the sign at a place. */
export const tick = (x: number, y: number): Drawing => placed([['heavy', 'M-7 0-2 5.5 7-6']], x, y);
export const cross = (x: number, y: number): Drawing =>
  placed([['heavy', 'M-5.5-5.5 5.5 5.5M5.5-5.5-5.5 5.5']], x, y);

/** Two results side by side: left as it should be, right as it should not. */
export const either = (good: Drawing, bad: Drawing): Drawing => [
  ...good,
  ...bad,
  ['fine', 'M60 2V70'],
  ...tick(14, 11),
  ...cross(106, 11),
];

/** A clock, its hand at so many hours. */
export const clock = (x: number, y: number, hours: number, radius = 12): Drawing => {
  const angle = (hours / 12) * 2 * Math.PI;
  const [dx, dy] = [Math.sin(angle) * radius * 0.6, -Math.cos(angle) * radius * 0.6];
  return placed(
    [
      [
        'form',
        `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`,
      ],
      ['heavy', `M0 ${-radius * 0.7}V0L${dx.toFixed(1)} ${dy.toFixed(1)}`],
      ['fine', `M0 ${-radius + 1}v2M0 ${radius - 1}v-2M${-radius + 1} 0h2M${radius - 1} 0h-2`],
    ],
    x,
    y,
  );
};

/** Clean and bright: strokes that stand off a face. */
export const bright = (x: number, y: number): Drawing =>
  placed([['ink', 'M-9-2-13-6M0-5V-11M9-2 13-6']], x, y);
