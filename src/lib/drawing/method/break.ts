import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import { circlePath, dotsPath, pathOf, type Point, type Polygon } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { barAlong, barEnd } from '$lib/drawing/motif/bar';
import { section, sheet, unsound } from '$lib/drawing/motif/concrete';
import { hammer } from '$lib/drawing/motif/tools';
import { faceAt, halfDone, soundFace } from '$lib/drawing/motif/work';

/** A power hammer upright, its point at the origin. */
const powerHammer: Drawing = [
  ['form', 'M-1 0 1 0 2.4-6V-18H-2.4V-6z'],
  ['form', 'M-6-18H6L7-24V-38H-7V-24z'],
  ['fine', 'M-7-29H7M-7-33H7'],
  ['form', 'M-15-44H15V-40H-15z'],
];
const chips: Drawing = [
  ['form', 'M22 38l6-4 6 3-2 5-7 1zM34 26l5-3 5 4-4 5-5-1zM14 28l4-3 4 3-3 4-4-1z'],
  ['fine', 'M30 46l-3-4M40 42l-2-5M24 50l-4-3'],
];

/** A hollow in the face from left to right, squared and with a rough floor. */
function pit(
  left: number,
  right: number,
  depth: number,
  seed: number,
): { floor: readonly Point[]; marks: Drawing } {
  const floor = roughLine([left, faceAt + depth], [right, faceAt + depth], 3, 6, seed);
  const surface: Polygon = [
    [0, faceAt],
    [left, faceAt],
    ...floor,
    [right, faceAt],
    [sheet.width, faceAt],
  ];
  return { floor, marks: [...section(surface, seed), ['heavy', pathOf(surface)]] };
}

export const breakOut = (): Drawing => [
  ...halfDone({ depth: 16, height: 5, step: 6, seed: 31 }),
  ...chips,
  ...placed(powerHammer, 61, 57, 24, 1),
];

/** A round blade, square to the face, water on it. */
export const sawCut = (): Drawing => [
  ...soundFace(32),
  ...unsound(
    [
      [70, 46],
      [120, 46],
      [120, 60],
      [74, 62],
      [66, 54],
    ],
    4,
  ),
  ['heavy', 'M0 46H120'],
  ['crayon', 'M56 47V60'],
  ['form', circlePath([56, 34], 20)],
  ['fine', 'M56 14v4M56 54v-4M36 34h4M76 34h-4M42 20l3 3M70 20l-3 3M42 48l3-3M70 48l-3-3'],
  ['form', 'M33 34A23 23 0 0 1 79 34H70A14 14 0 0 0 42 34z'],
  ['solid', circlePath([56, 34], 3)],
  ['form', 'M76 26 100 10 104 16 82 32z'],
  ['ink', 'M28 12l-2 6M34 8l-2 6M26 24l-2 6'],
  ['tone', 'M54.5 46H57.5V54H54.5z'],
  ['ink', 'M54.5 47V54H57.5V47'],
];

const crackLine = 'M58 58l-3 4 4 4-3 6';

/** A groove beside and along a crack, both edges broken back to where they ring. */
export const chaseCrack = (): Drawing => [
  ...pit(34, 84, 12, 33).marks,
  ['ink', crackLine],
  ['crayon', 'M33 47L36 59 82 59 85 47'],
  ...placed(powerHammer, 70, 55, 18, 0.9),
  ['form', 'M18 34l6-3 5 3-2 5-7 0zM30 22l4-2 4 3-4 4z'],
];

/** A narrow square groove cut along a crack. */
export const routeCrack = (): Drawing => [
  ...pit(50, 66, 13, 34).marks,
  ['ink', crackLine],
  ['crayon', 'M49 47V60H67V47'],
  ['form', 'M53 58V38H63V58L58 60z'],
  ['fine', 'M53 56l10-5M53 51l10-5M53 46l10-5'],
  ['form', 'M46 38V20H70V38z'],
  ['form', 'M46 26H30V32H46zM70 26H86V32H70z'],
  ['ink', 'M48 13A11 4 0 0 1 68 13M63.5 9 68 13 62.5 13.5'],
];

/** Clear space all round a bar, so that the repair closes behind it. */
export const freeBar = (): Drawing => {
  const hole: Polygon = [[24, 24], ...roughLine([34, 62], [86, 62], 3, 7, 35), [96, 24]];
  return [
    ...section(
      [
        [0, 24],
        [120, 24],
      ],
      35,
    ),
    ['air', pathOf(hole, true)],
    ['air', 'M22 18H98V25H22z'],
    ['heavy', 'M0 24H24M96 24H120'],
    ['ink', pathOf(hole)],
    ['crayon', pathOf(hole)],
    ...barEnd([60, 44], 7),
    ['ink', 'M60 51.5V60M57.5 54 60 51 62.5 54M57.5 57.8 60 60.8 62.5 57.8'],
    ...placed(powerHammer, 74, 56, 28, 0.9),
  ];
};

/** Rust off a bar, all round. */
export const cleanBar = (): Drawing => [
  ...pit(8, 112, 20, 36).marks,
  ...barAlong(8, 112, 52, 4.5),
  [
    'grain',
    dotsPath(
      strewSand(
        [
          [72, 46],
          [110, 46],
          [110, 58],
          [72, 58],
        ],
        [],
        9,
        60,
      ),
    ),
  ],
  ['form', circlePath([56, 40], 11)],
  [
    'fine',
    Array.from({ length: 18 }, (_, index) => {
      const angle = (index / 18) * 2 * Math.PI;
      return pathOf([
        [56 + Math.cos(angle) * 6, 40 + Math.sin(angle) * 6],
        [56 + Math.cos(angle + 0.2) * 11, 40 + Math.sin(angle + 0.2) * 11],
      ]);
    }).join(''),
  ],
  ['solid', circlePath([56, 40], 3)],
  ['form', 'M58 37 80 14 86 19 62 43z'],
  ['ink', 'M40 30A20 20 0 0 1 54 22M49 19 54 22 51 26'],
  ['fine', 'M42 52l-6-4M42 56l-7 1M44 60l-5 4'],
];

export const stripCoating = (): Drawing => [
  ...soundFace(37),
  ['tone', 'M68 39H120V46H68z'],
  ['ink', 'M120 39H70'],
  ['tone', 'M70 39C62 39 58 32 62 26C66 21 74 25 71 30L67 28C67 26 65 28 64 30C63 35 66 39 72 46z'],
  ['ink', 'M70 39C62 39 58 32 62 26C66 21 74 25 71 30L67 28C67 26 65 28 64 30C63 35 66 39 70 46'],
  ['form', 'M66 46 50 41 46 45z'],
  ['form', 'M50 45 46 39 18 26 14 32 42 46z'],
];

/** The head of a hammer on a crack's edge, and the edge that gives. */
export const tapCrack = (): Drawing => [
  ...soundFace(38),
  ['dark', 'M66 46l-4 7 3 6-4 7 1 6h1l1-6 4-7-3-6 5-7z'],
  ...unsound(
    [
      [68, 46],
      [88, 46],
      [78, 55],
      [68, 60],
      [66, 54],
    ],
    4,
  ),
  ['heavy', 'M0 46H120'],
  ['fine', 'M36 28c-4-2-3-5-7-6M34 34c-6-1-5-4-11-4'],
  ...placed(hammer, 52, 44.5),
];
