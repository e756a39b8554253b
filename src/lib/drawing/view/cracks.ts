import type { Choice } from '$lib/answers/questions';
import type { UnitSystem } from '$lib/answers/units';
import { shifted } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { circlePath, pathOf, polygonsPath, type Point } from '$lib/drawing/points';
import { lettered } from '$lib/drawing/motif/lettering';
import { randomFrom } from '$lib/drawing/random';
import { coin, face } from './ground';
import { ragged, shadow } from './hollow';

/** Sheet units per mm: all five to one scale. */
const perMm = 0.7;
const beside = coin([107, 60], perMm);
/** Widths drawn, in mm: paper, some 0.1 mm thick, does not go into the first; a coin goes into the others. */
export const drawnWidth = { hairline: 0.1, open: 3 } as const;

/** From one place to another, wandering as a crack does: now a long stretch, now a short one. */
function wander(from: Point, to: Point, astray: number, seed: number): readonly Point[] {
  const next = randomFrom(seed);
  const count = 13;
  let off = 0;
  return Array.from({ length: count + 1 }, (_, index): Point => {
    const along = index && index < count ? (index + (next() - 0.5) * 0.9) / count : index / count;
    off = off * 0.7 + (next() - 0.5) * astray;
    return [from[0] + (to[0] - from[0]) * along + off, from[1] + (to[1] - from[1]) * along];
  });
}
const line = (seed: number): readonly Point[] => wander([74, 0], [46, 72], 10, seed);
/** Both edges of a gap of a width in mm, as one outline. */
const gap = (mm: number, seed: number) => {
  const middle = line(seed);
  const half = (mm * perMm) / 2;
  return [...shifted(middle, -half, 0), ...[...shifted(middle, half, 0)].reverse()];
};

const none = (): Drawing => [...face(601, 110), ...beside];

/** Too fine to be drawn as wide as it is: drawn as a hair, with its width lettered beside it. */
const hairline = (units: UnitSystem): Drawing => [
  ...face(611),
  ['fine', pathOf(line(622))],
  ['fine', 'M18 32H50M46 29.5 51 32 46 34.5'],
  ...lettered(drawnWidth.hairline, units, 8, 22),
  ...beside,
];

const open = (units: UnitSystem): Drawing => [
  ...face(621),
  ['dark', pathOf(gap(drawnWidth.open, 622), true)],
  ['fine', 'M18 32H50M46 29.5 51 32 46 34.5'],
  ...lettered(drawnWidth.open, units, 18, 22),
  ...beside,
];

/** The edges have broken away on both sides, and bits lie about. */
function crumbling(): Drawing {
  const middle = line(622);
  const left = wander([56, 0], [28, 72], 14, 632);
  const right = [...wander([90, 0], [64, 72], 14, 633)].reverse();
  const broken = [...left, ...right];
  const bits = [
    [44, 22, 4],
    [70, 16, 5],
    [38, 44, 5],
    [62, 44, 4],
    [42, 62, 3],
    [57, 58, 5],
    [80, 34, 3],
    [90, 20, 3],
    [22, 52, 3],
    [16, 66, 4],
    [30, 14, 3],
  ].map(([x = 0, y = 0, r = 0], index) =>
    ragged([x, y], r, r * 0.8, 640 + index, { corners: 7, rough: 0.5 }),
  );
  return [
    ...face(631),
    ['tone', pathOf(broken, true)],
    ['dark', shadow(broken, 3)],
    ['ink', pathOf(left) + pathOf(right)],
    [
      'dark',
      pathOf([...shifted(middle, -1.6, 0), ...[...shifted(middle, 1.6, 0)].reverse()], true),
    ],
    ['dark', bits.map((bit) => shadow(bit, -1.4)).join('')],
    ['form', polygonsPath(bits)],
    ...beside,
  ];
}

/** One crack twice: in the sun it closes, in the frost it opens, and the pencil line across it has parted. */
const moving = (): Drawing => {
  const half = (mm: number, along: number) => pathOf(shifted(gap(mm, 622), along, 0), true);
  return [
    ...face(651, 50),
    ['dark', half(1, -32) + half(10, 30)],
    ['heavy', 'M60 0V72'],
    ['form', circlePath([14, 15], 5.5)],
    [
      'ink',
      'M14 6.5V3M14 23.5V27M5.5 15H2M22.5 15H26M8 9 5.6 6.6M20 9 22.4 6.6M8 21 5.6 23.4M20 21 22.4 23.4',
    ],
    // A crystal of frost.
    ['ink', 'M66 15H84M70.5 7.2 79.5 22.8M79.5 7.2 70.5 22.8'],
    // Drawn across it once.
    ['heavy', 'M18 38H46M72 38H85M100 38H112'],
    ['ink', 'M6 58H16M12 54.5 16.5 58 12 61.5M44 58H34M38 54.5 33.5 58 38 61.5'],
    ['ink', 'M75 58H66M70 54.5 65.5 58 70 61.5M94 58H103M99 54.5 103.5 58 99 61.5'],
  ];
};

/** What cracks there are, seen from above. */
export const cracks: Record<Choice<'cracks'>, (units: UnitSystem) => Drawing> = {
  none,
  hairline,
  open,
  crumbling,
  moving,
};
