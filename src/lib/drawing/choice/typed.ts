import type { NumberQuestion } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { rectangle } from '$lib/drawing/points';
import { barAlong, barEnd } from '$lib/drawing/motif/bar';
import { air, concrete, earth } from '$lib/drawing/motif/concrete';
import { acrossArrow, downArrow } from '$lib/drawing/motif/small';

const thickness = (): Drawing => [
  ...air,
  ...concrete(rectangle(28, 16, 114, 58), 101),
  ...earth(28, 114, 58),
  ['ink', 'M28 14V60M114 14V60M26 58H116'],
  ['heavy', 'M26 16H116'],
  ['fine', 'M8 16H25M8 58H25'],
  ['ink', downArrow(15, 16, 58)],
];

const area = (): Drawing => [
  ...air,
  ...concrete(
    [
      [24, 6],
      [114, 6],
      [114, 54],
      [24, 54],
    ],
    102,
    { radii: [3, 1.2], tries: 50 },
  ),
  ['ink', 'M24 6H114V54H24z'],
  ['tone', 'M40 16C56 10 92 12 102 22C106 36 92 46 74 45C56 47 38 42 38 30z'],
  ['ink', 'M40 16C56 10 92 12 102 22C106 36 92 46 74 45C56 47 38 42 38 30z'],
  ['fine', 'M38 56V69M104 56V69M22 12H8M22 46H8'],
  ['ink', acrossArrow(38, 104, 63) + downArrow(14, 12, 46)],
];

const crackLength = (): Drawing => [
  ...air,
  ['body', 'M6 6H114V48H6z'],
  ['ink', 'M6 6H114V48H6z'],
  ['heavy', 'M16 34l12-6 8 4 14-10 10 5 12-9 9 4 12-8 9 4'],
  ['fine', 'M16 37V66M102 21V66'],
  ['ink', acrossArrow(16, 102, 60)],
];

/** A slab in section, for what is measured at a bar in it. */
const slab = (seed: number): Drawing => [
  ...air,
  ...concrete(rectangle(4, 12, 116, 66), seed, { tries: 60 }),
  ['fine', 'M4 12V66M116 12V66'],
  ['heavy', 'M2 12H118'],
];

const barCover = (): Drawing => [
  ...slab(103),
  ...barEnd([44, 50], 10),
  ['fine', 'M44 40H84'],
  ['heavy', downArrow(76, 13.5, 40)],
];

const barDiameter = (): Drawing => [
  ...slab(104),
  ...barEnd([60, 34], 14),
  ['fine', 'M46 34V62M74 34V62'],
  ['heavy', acrossArrow(46, 74, 57)],
];

const barSpacing = (): Drawing => [
  ...slab(105),
  ...barEnd([24, 34], 8),
  ...barEnd([96, 34], 8),
  ['fine', 'M24 34V62M96 34V62'],
  ['heavy', acrossArrow(24, 96, 56)],
];

const barLength = (): Drawing => [
  ...air,
  ...concrete(rectangle(4, 20, 116, 60), 106),
  ['air', 'M22 26 30 22 92 22 100 30 96 50 30 52 20 44z'],
  ['ink', 'M22 26 30 22 92 22 100 30 96 50 30 52 20 44z'],
  ...barAlong(18, 102, 38),
  ['fine', 'M18 42V66M102 42V66'],
  ['ink', acrossArrow(18, 102, 62)],
];

/** A floor from above, with a wall along two of its sides. */
const borderLength = (): Drawing => [
  ...air,
  ['body', 'M20 18H112V66H20z'],
  ['ink', 'M112 18V66H20'],
  ['form', 'M10 8H112V18H20V66H10z'],
  [
    'hatch',
    'M14 8l-4 4M26 8 10 24M38 8 28 18M50 8 40 18M62 8 52 18M74 8 64 18M86 8 76 18M98 8 88 18M110 8l-10 10M20 26 10 36M20 38 10 48M20 50 10 60',
  ],
  ['heavy', 'M112 18H20V66'],
  ['crayon', 'M112 23H25V66'],
];

/** What is to be measured, with its dimension arrows. */
export const typed: Record<NumberQuestion, () => Drawing> = {
  thickness,
  area,
  crackLength,
  barCover,
  barDiameter,
  barSpacing,
  barLength,
  borderLength,
};
