import { placed, type Drawing } from '$lib/drawing/mark';
import { barAlong, barEnd } from '$lib/drawing/motif/bar';
import { air, concrete, section } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { soundFace } from '$lib/drawing/motif/work';
import { circlePath, dotsPath, pathOf, rectangle, type Polygon } from '$lib/drawing/points';

/** A hole round a bar, open all round, and a gauge behind it. */
export const barsFree = (): Drawing => {
  const hole: Polygon = [
    [26, 22],
    [32, 62],
    [88, 62],
    [94, 22],
  ];
  return [
    ...section(
      [
        [0, 22],
        [120, 22],
      ],
      81,
    ),
    ['air', pathOf(hole, true)],
    ['air', 'M24 16H96V23H24z'],
    ['heavy', 'M0 22H26L32 62H88L94 22H120'],
    ...barEnd([60, 40], 8),
    ['crayon', 'M44 40a16 16 0 1 0 32 0a16 16 0 1 0-32 0z'],
    ['ink', 'M60 49V61M57.5 52 60 49 62.5 52M57.5 58 60 61 62.5 58'],
  ];
};

/** A bright bar in its hole, and a cloth along it. */
export const barsClean = (): Drawing => [
  ...air,
  ...concrete(rectangle(0, 58, 120, 72), 82),
  ['heavy', 'M0 24H10L14 58H106L110 24H120'],
  ...barAlong(12, 108, 44, 5),
  ['form', 'M46 30C52 24 66 24 72 30L76 52C70 57 50 57 42 52z'],
  ['fine', 'M52 32l-3 18M59 30V53M66 32l3 18'],
  ['ink', 'M84 32H102M97.5 28.5 102 32 97.5 35.5M34 32H18M22.5 28.5 18 32 22.5 35.5'],
];

/** A drill, and its dust caught for the laboratory. */
export const chloride = (): Drawing => [
  ...soundFace(83),
  ['air', 'M40 45H46V66H40z'],
  ['ink', 'M40 46V66H46V46'],
  ['form', 'M41 62V30H45V62L43 65z'],
  ['fine', 'M41 58l4-4M41 52l4-4M41 46l4-4M41 40l4-4'],
  ['form', 'M36 30V24H50V30zM30 6H64V24H30zM54 24H63V40H56z'],
  ['form', 'M82 28H108V46H82z'],
  ['tone', 'M82 38C90 35 100 40 108 37V46H82z'],
  ['ink', 'M82 28H108V46H82zM80 28H110'],
  ['grain', 'M52 43h0M56 44h0M62 42h0M68 44h0M74 43h0M50 40h0'],
];

/** A fresh broken face sprayed: what stays clear has lost its alkali, what turns dark still has it. */
export const carbonation = (): Drawing => [
  ...air,
  ...concrete(rectangle(0, 22, 78, 72), 84),
  ['tone', 'M0 44 14 42 26 46 40 43 54 46 66 43 78 45V72H0z'],
  ['hatch', 'M4 70 26 48M16 72 40 47M30 72 54 47M44 72 68 46M58 72 78 52M70 72 78 64'],
  ['heavy', 'M0 22H78V72'],
  ['ink', 'M0 44 14 42 26 46 40 43 54 46 66 43 78 45'],
  ['form', 'M100 36H114V66H100zM103 36V28H111V36z'],
  ['form', 'M96 20H114V28H96z'],
  ['ink', 'M96 24H92M110 28C112 32 118 32 118 26'],
  ['grain', 'M88 20h0M88 28h0M84 24h0M83 17h0M83 31h0M87 34h0'],
];

/** A meter between a bar and a probe that stands on the face. */
export const halfCell = (): Drawing => [
  ...soundFace(85),
  ['air', 'M8 45H22V64H8z'],
  ['ink', 'M8 46V60H22V46'],
  ...barAlong(8, 120, 60, 3),
  ['form', 'M44 4H80V26H44z'],
  ['ink', 'M50 20A12 12 0 0 1 74 20M62 20 70 11'],
  ['ink', 'M50 26C50 40 16 30 15 57M74 26C74 34 98 22 98 28'],
  ['form', 'M94 26H102V42H94zM92 42H104V46H92z'],
];

/** A clear sheet taped down on all sides, with drops under it. */
export const plasticSheet = (): Drawing => [
  ...soundFace(86),
  ['form', 'M14 45C22 34 98 34 106 45z'],
  ['tone', 'M6 42H24V46H6zM96 42H114V46H96z'],
  ['ink', 'M6 42H24V46H6zM96 42H114V46H96z'],
  ['form', dropPath([42, 42.5], 0.55) + dropPath([60, 41.5], 0.55) + dropPath([78, 42.5], 0.55)],
  [
    'ink',
    'M42 62V53M39.5 56 42 52.5 44.5 56M60 62V53M57.5 56 60 52.5 62.5 56M78 62V53M75.5 56 78 52.5 80.5 56',
  ],
];

/** A probe in a sleeved hole, deep in the slab, and its reading. */
export const humidity = (): Drawing => [
  ...soundFace(87),
  ['air', 'M54 45H66V66H54z'],
  ['ink', 'M54 46V66H66V46'],
  ['form', 'M57 20H63V62H57z'],
  ['solid', circlePath([60, 61], 3.4)],
  ['form', 'M52 16H68V22H52z'],
  ['ink', 'M60 16C60 6 84 4 88 12'],
  ['form', 'M82 12H114V30H82z'],
  [
    'ink',
    'M88 25l8-8M88 18.5a1.6 1.6 0 1 0 3.2 0a1.6 1.6 0 1 0-3.2 0zM93.5 24a1.6 1.6 0 1 0 3.2 0a1.6 1.6 0 1 0-3.2 0z',
  ],
  ['fine', 'M102 17H108M102 21H108M102 25H106'],
];

/** Full pores under a dull, dry face: dark, with no shine. */
export const surfaceDamp = (): Drawing => [
  ...soundFace(88),
  ['tone', 'M0 47H120V62H0z'],
  [
    'grain',
    dotsPath([
      [10, 52],
      [24, 56],
      [36, 51],
      [50, 57],
      [63, 52],
      [77, 56],
      [90, 51],
      [104, 56],
      [114, 52],
    ]),
  ],
  ['heavy', 'M0 46H120'],
  ...placed(
    [
      ['form', 'M-7-20H7V-6L4 0H-4L-7-6z'],
      ['ink', 'M-12-14 12-2M12-14-12-2'],
    ],
    88,
    32,
  ),
  ['form', 'M20 24C24 18 40 18 46 24L52 40C46 44 24 44 16 40z'],
  ['fine', 'M26 26l-3 13M34 25V40M41 26l3 13'],
];

/** A barrel of slurry, its mud settled, and a strip of indicator paper dipped in. */
export const slurryPh = (): Drawing => [
  ...soundFace(89),
  ['form', 'M26 8H66V45H26z'],
  ['tone', 'M26 18H66V45H26z'],
  ['hatch', 'M28 44 38 34M36 44 46 34M44 44 54 34M52 44 62 34M60 44 66 38'],
  ['heavy', 'M26 8V45H66V8'],
  ['ink', 'M26 18H66M23 8H69M26 34H66'],
  ['form', 'M50 2H56V28H50z'],
  ['dark', 'M50 20H56V28H50z'],
  ['form', 'M80 12H114V22H80z'],
  ['tone', 'M88 12H97V22H88z'],
  ['solid', 'M106 12H114V22H106z'],
  ['ink', 'M80 12H114V22H80zM88 12V22M97 12V22M106 12V22M110 34V26M107 29 110 25.5 113 29'],
];
