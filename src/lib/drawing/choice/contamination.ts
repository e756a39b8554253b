import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { pathOf } from '$lib/drawing/points';
import { evenSurface, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';

const slab = (seed: number): Drawing => [
  ...section(evenSurface(42), seed),
  ['heavy', pathOf(evenSurface(42))],
];
/** A skin on the surface that ends in a torn edge. */
const skin = (thick: number, end: number): Drawing => [
  ['tone', `M0 ${42 - thick}H${end}l-3 ${thick * 0.4} 2 ${thick * 0.3}-3 ${thick * 0.3}H0z`],
  ['ink', `M0 ${42 - thick}H${end}l-3 ${thick * 0.4} 2 ${thick * 0.3}-3 ${thick * 0.3}`],
];

const oil = (): Drawing => [
  ...slab(61),
  [
    'dark',
    'M22 42C30 38.5 84 38.5 94 42C88 50 80 47 74 56C69 49 62 52 57 64C52 50 46 53 41 50C35 47 28 49 22 42z',
  ],
  ['dark', dropPath([58, 20], 1.3) + dropPath([58, 33], 0.8)],
  ['form', 'M44-2H72V5C68 10 62 6 58 11C54 6 48 10 44 5z'],
];

const thinCoating = (): Drawing => [
  ...slab(62),
  ...skin(2.6, 82),
  ['ink', 'M84 39.4C88 38 91 34.5 94 35M86 41C92 41 95 37 99 37.5'],
  ['form', 'M22 33H46V24H22zM28 24 31 12H37L40 24z'],
  ['form', 'M31.4 12 32 3H36L36.6 12z'],
  ['fine', 'M24 33v6M28 33v6M32 33v6M36 33v6M40 33v6M44 33v6'],
];

const thickCoating = (): Drawing => [
  ...slab(63),
  ...skin(14, 84),
  ['fine', 'M0 35H80M0 38.5H81M0 31.5H82'],
  ['ink', 'M92 42l4-8 10-3 7 6-4 5zM96 34l5 8'],
];

const rubbery = (): Drawing => [
  ...slab(64),
  [
    'tone',
    'M0 34H66C88 34 98 24 92 12C89 6 79 6 77 12C76 17 82 19 84 15L88 20C81 27 70 23 71 12C73 0 93-2 98 10C105 28 90 41 68 42H0z',
  ],
  [
    'ink',
    'M0 34H62C86 34 96 24 91 13C88 7 80 7 78 12C77 16 81 18 83 15L88 19C81 26 71 22 72 12C74 0 93-1 98 10C104 27 90 41 68 42',
  ],
  ['fine', 'M72 42l4-3M80 42l6-5M88 42l8-7'],
];

function saltBloom(): Drawing {
  const needle = (x: number, reach: number) =>
    `M${x} 41l${-reach * 0.7}${-reach}M${x} 41v${-reach * 1.4}M${x} 41l${reach * 0.7}${-reach}M${x} 41l${-reach * 0.35}${-reach * 1.3}M${x} 41l${reach * 0.35}${-reach * 1.3}`;
  const tufts: readonly (readonly [number, number])[] = [
    [10, 5],
    [24, 9],
    [38, 6],
    [53, 11],
    [70, 8],
    [84, 5],
    [97, 10],
    [111, 6],
  ];
  return [
    ...slab(65),
    ['ink', tufts.map(([x, reach]) => needle(x, reach)).join('')],
    // Salt comes up with the water that dries out of the concrete.
    [
      'fine',
      'M24 62V49M21.5 52.5 24 48.5 26.5 52.5M54 62V49M51.5 52.5 54 48.5 56.5 52.5M97 62V49M94.5 52.5 97 48.5 99.5 52.5',
    ],
  ];
}

function growth(): Drawing {
  const tuft = (size: number): Drawing => [
    ['tone', 'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0z'],
    ['ink', 'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0'],
    ['fine', 'M-8-2v-3M-3-2v-5M2-2v-4M7-2v-4'],
    ['ink', `M-4-10C-5-16-8-18-9-19M4-9C5-17 4-20 3-${20 + size}M9-8C11-14 14-16 15-17`],
    [
      'solid',
      'M-10.5-19.5a1.8 1.8 0 1 0 3.6 0a1.8 1.8 0 1 0-3.6 0zM13.5-17.5a1.8 1.8 0 1 0 3.6 0a1.8 1.8 0 1 0-3.6 0z',
    ],
  ];
  return [
    ...slab(66),
    ...placed(tuft(2), 26, 42),
    ...placed(tuft(4), 62, 42, 0, 1.25),
    ...placed(tuft(1), 98, 42, 0, 0.9),
    ['ink', 'M26 42c2 6-2 8 0 13M62 42c-2 6 3 9 0 16M98 42c2 5-2 6 0 10'],
  ];
}

/** What lies on the concrete, or in it, that a repair will not stick to. */
export const contamination: Record<Choice<'contamination'>, () => Drawing> = {
  oil,
  'thin-coating': thinCoating,
  'thick-coating': thickCoating,
  'rubbery-coating': rubbery,
  'salt-bloom': saltBloom,
  growth,
};
