import type { NumberQuestion } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { rectangle } from '$lib/drawing/points';
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

/** What is to be measured, with its dimension arrows. */
export const typed: Record<NumberQuestion, () => Drawing> = { thickness, area, crackLength };
