import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { pathOf, rectangle, type Polygon } from '$lib/drawing/points';
import { barEnd } from '$lib/drawing/motif/bar';
import { air, concrete, earth } from '$lib/drawing/motif/concrete';
import { reaching, standing } from '$lib/drawing/motif/people';

const fine = { radii: [3.6, 1.2] as const, tries: 120 };

const slab = (): Drawing => [
  ...air,
  ...concrete(rectangle(6, 40, 114, 56), 3, fine),
  ...earth(2, 118, 56),
  ['ink', 'M6 38.5V57.5M114 38.5V57.5M3 56H117'],
  ['heavy', 'M4 40H116'],
  ...placed(standing, 84, 39, 0, 1.2),
];

function steps(): Drawing {
  const outline: Polygon = [
    [8, 62],
    [8, 52],
    [34, 52],
    [34, 40],
    [60, 40],
    [60, 28],
    [114, 28],
    [114, 62],
  ];
  return [
    ...air,
    ...concrete(outline, 5, fine),
    ...earth(2, 118, 62),
    ['ink', 'M3 62H117M114 28V62'],
    ['heavy', 'M8 62V52H34V40H60V28H114'],
    ...placed(standing, 47, 39.5, 0, 1.2),
  ];
}

/** A flight from a landing to a landing, with somebody under it. */
const suspendedSteps = (): Drawing => {
  const outline: Polygon = [
    [4, 52],
    [30, 52],
    [30, 42],
    [52, 42],
    [52, 32],
    [74, 32],
    [74, 22],
    [116, 22],
    [116, 32],
    [82, 32],
    [46, 58],
    [4, 58],
  ];
  return [
    ...air,
    ...concrete(outline, 6, { ...fine, radii: [2.8, 1.1] }),
    ['ink', 'M4 50V60M4 58H46L82 32H116V20'],
    ['heavy', 'M4 52H30V42H52V32H74V22H116'],
    ['fine', 'M2 68H118'],
    ...placed(standing, 64, 31.5, 0, 1),
    ...placed(standing, 98, 67.5, 0, 1),
  ];
};

const suspended = (): Drawing => [
  ...air,
  ...concrete(rectangle(4, 26, 116, 38), 7, { ...fine, radii: [2.8, 1.1] }),
  ...concrete(rectangle(12, 38, 22, 66), 8, { ...fine, radii: [2.6, 1.1] }),
  ...concrete(rectangle(98, 38, 108, 66), 9, { ...fine, radii: [2.6, 1.1] }),
  ['ink', 'M4 24.5V39.5M116 24.5V39.5M3 38H12V67M22 67V38H98V67M108 67V38H117'],
  ['heavy', 'M3 26H117'],
  ['fine', 'M2 66H118'],
  ...[30, 43, 56, 69, 82].flatMap((x) => barEnd([x, 34.5], 1.8)),
  ...placed(standing, 76, 25, 0, 1),
  ...placed(standing, 44, 65.5, 0, 1),
];

const wall = (): Drawing => [
  ...air,
  ...concrete(rectangle(50, 4, 66, 64), 11, fine),
  ...concrete(rectangle(40, 58, 76, 68), 12, fine),
  ...earth(78, 118, 58),
  ...earth(2, 38, 58),
  ['ink', 'M66 3V58H76V68H40V58H50M49 4H67M2 58H40M76 58H118'],
  ['heavy', 'M50 2V58'],
  ...placed(standing, 32, 57.5, 0, 1.2),
];

const soffit = (): Drawing => [
  ...air,
  ...concrete(rectangle(4, 6, 116, 22), 13, fine),
  ['ink', 'M4 4.5V23.5M116 4.5V23.5M3 6H117'],
  ['heavy', 'M3 22H117'],
  [
    'ink',
    pathOf([
      [3, 64],
      [117, 64],
    ]),
  ],
  ['form', 'M47 64V50H71V64M43 50H75'],
  ...placed(reaching, 58, 49.5, 0, 1.05),
];

/** What the zone is part of; the heavy line is the face that is looked at. */
export const element: Record<Choice<'element'>, () => Drawing> = {
  slab,
  steps,
  'suspended-steps': suspendedSteps,
  'suspended-slab': suspended,
  wall,
  soffit,
};
