import type { Choice } from '$lib/answers/questions';
import { amplitudeOf, roughLine } from '$lib/drawing/lines';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { dotsPath, pathOf, polygonsPath, type Point, type Polygon } from '$lib/drawing/points';
import { air, concrete, evenSurface, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { packStones, strewSand } from '$lib/drawing/stones';

/** Sheet units per mm: all ten grades to one scale, so that they can be told apart side by side. */
const perMm = 3.4;

/** A piece of the surface: its top open to view, its front cut through. */
const [left, right, faceAt, backAt, foot] = [2, 88, 46, 20, 70];
/** From shares along and across the top to the sheet. */
const onTop = (along: number, across: number): Point => [
  left + (right - left) * along + 18 * across,
  faceAt - (faceAt - backAt) * across,
];
const top: Polygon = [onTop(0, 0), onTop(0, 1), onTop(1, 1), onTop(1, 0)];

/** A line along the top; what is farther away is drawn a little lower. */
const ridge = (across: number, height: number, step: number, seed: number) =>
  roughLine(onTop(0.02, across), onTop(0.98, across), height * (1 - across * 0.3), step, seed);
const ridges = (count: number, height: number, step: number, seed: number): string =>
  Array.from({ length: count }, (_, row) =>
    pathOf(ridge((row + 0.7) / (count + 0.4), height, step, seed + row)),
  ).join('');
const grains = (ink: 'sand' | 'grain', count: number, seed: number): Mark => [
  ink,
  dotsPath(strewSand(top, [], seed, count)),
];

/** What the tool that a grade is named after leaves on the top. Heights in sheet units. */
const marksOf: readonly ((height: number) => Drawing)[] = [
  () => [grains('sand', 14, 221)],
  () => [
    [
      'fine',
      [0.14, 0.34, 0.54, 0.74, 0.92]
        .map((along, at) => {
          const [x, y] = onTop(along, at % 2 ? 0.66 : 0.32);
          return `M${x - 8} ${y + 2}q8-9 16-1`;
        })
        .join(''),
    ],
  ],
  () => [grains('sand', 130, 223)],
  (height) => [['fine', ridges(5, height * 0.4, 6, 224)]],
  () => [grains('grain', 60, 225), grains('sand', 60, 226)],
  (height) => [['ink', ridges(4, height * 0.5, 7, 227)]],
  () => [
    [
      'form',
      polygonsPath(
        packStones(top, { seed: 228, radii: [5, 2.4], gap: 1.2, tries: 60 }).map(
          ({ corners }) => corners,
        ),
      ),
    ],
  ],
  (height) => [['fine', ridges(3, height * 0.9, 4, 229)], grains('grain', 24, 230)],
  (height) => [['heavy', ridges(3, height * 0.55, 6, 231)]],
  (height) => [
    [
      'tone',
      pathOf([...ridge(0.45, height, 9, 233), ...[...ridge(0.2, height, 9, 234)].reverse()], true),
    ],
    ['ink', ridges(2, height, 9, 235)],
  ],
];

/** A rule with a stroke every 5 mm, beside the cut. */
const rule: Drawing = [
  ['form', `M107 ${faceAt - 7 * perMm}H117V${faceAt + 7 * perMm}H107z`],
  ['ink', [-5, 0, 5].map((mm) => `M107 ${faceAt + mm * perMm}h5`).join('')],
];

/** A surface of one grade. */
const grade = (csp: number) => (): Drawing => {
  const height = amplitudeOf(csp) * perMm;
  const step = 3 + csp * 0.6;
  const cut = roughLine([left, faceAt], [right, faceAt], height, step, 200 + csp);
  const back = roughLine(onTop(0, 1), onTop(1, 1), height * 0.7, step, 240 + csp);
  const [corner, far] = [onTop(1, 0), onTop(1, 1)] as const;
  return [
    ...air,
    ['body', pathOf([...back, ...[...cut].reverse()], true)],
    ...(marksOf[csp - 1]?.(height) ?? []),
    ['tone', pathOf([corner, far, [far[0], far[1] + 24], [right, foot]], true)],
    ...concrete([...cut, [right, foot], [left, foot]], 210 + csp, { radii: [5, 1.6], tries: 46 }),
    [
      'ink',
      pathOf(back) + pathOf([onTop(0, 1), onTop(0, 0), [left, foot], [right, foot], corner, far]),
    ],
    ['heavy', pathOf(cut)],
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
      'heavy',
      'M50 24a9 9 0 1 0 18 0a9 9 0 1 0-18 0zM59 11V6M59 37v5M46 24h-5M72 24h5M50 15l-4-4M68 15l4-4M50 33l-4 4M68 33l4 4',
    ],
  ],
};
