import type { Choice } from '$lib/answers/questions';
import { amplitudeOf, roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { pathOf } from '$lib/drawing/points';
import { air, concrete, evenSurface, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';

/** Sheet units per mm: all ten grades to one scale, so that they can be told apart side by side. */
const perMm = 4;
const faceAt = 34;

/** A rule with a stroke every 5 mm, beside the surface. */
const rule: Drawing = [
  ['form', `M104 ${faceAt - 22}H116V${faceAt + 22}H104z`],
  ['fine', [-20, -10, 0, 10, 20].map((mm) => `M104 ${faceAt + (mm * perMm) / 4}h5`).join('')],
];

/** A surface of one grade, in section. */
const grade = (csp: number) => (): Drawing => {
  const height = amplitudeOf(csp) * perMm;
  const step = 3 + csp * 0.7;
  const surface = roughLine([0, faceAt], [100, faceAt], height, step, 200 + csp);
  return [
    ...air,
    ...concrete([...surface, [100, 72], [0, 72]], 210 + csp),
    ['heavy', pathOf(surface)],
    ['ink', 'M100 34V72'],
    ...rule,
  ];
};

const sheetOf = (lines: string): Drawing => [
  ...air,
  ['form', 'M36 6H76L86 16V66H36z'],
  ['ink', 'M76 6V16H86'],
  ['fine', lines],
];

const noSheet = (): Drawing => [
  ...sheetOf(''),
  ['dashed', 'M44 26H78M44 36H78M44 46H78M44 56H66'],
  ['heavy', 'M30 68 92 4'],
];

/** The least roughness a data sheet asks for. */
export const makerProfile: Record<Choice<'makerProfile'>, () => Drawing> = {
  'no-sheet': noSheet,
  'csp-1': grade(1),
  'csp-2': grade(2),
  'csp-3': grade(3),
  'csp-4': grade(4),
  'csp-5': grade(5),
  'csp-6': grade(6),
  'csp-7': grade(7),
  'csp-8': grade(8),
  'csp-9': grade(9),
  'csp-10': grade(10),
};

const slab = (seed: number): Drawing => [
  ...section(evenSurface(46), seed),
  ['heavy', pathOf(evenSurface(46))],
];

/** What moisture a data sheet asks for. */
export const makerMoisture: Record<Choice<'makerMoisture'>, () => Drawing> = {
  'no-sheet': () => sheetOf('M44 26H78M44 36H78M44 46H78M44 56H66'),
  damp: () => [
    ...slab(231),
    ['tone', 'M0 46H120V58C100 62 80 55 60 60S20 56 0 60z'],
    ['heavy', 'M0 46H120'],
    ['form', dropPath([44, 32], 2) + dropPath([66, 26], 1.5)],
  ],
  dry: () => [
    ...slab(232),
    [
      'ink',
      'M50 24a9 9 0 1 0 18 0a9 9 0 1 0-18 0zM59 11V6M59 37v5M46 24h-5M72 24h5M50 15l-4-4M68 15l4-4M50 33l-4 4M68 33l4 4',
    ],
  ],
};
