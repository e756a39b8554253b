import { placed, type Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { roughLine } from '$lib/drawing/lines';
import { concrete, air } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { brush } from '$lib/drawing/motif/tools';
import { faceAt, halfDone, soundFace } from '$lib/drawing/motif/work';

/** A spray lance, its nozzle at the origin, handle to the upper right. */
const lance: Drawing = [
  ['form', 'M-1.5-1 3.5-4.5 5.5-2 .5 1.5z'],
  ['ink', 'M4.5-3.2 40-28'],
  ['form', 'M40-30 46-34 54-22 50-19 46-25.5 42-26z'],
  ['ink', 'M46-34C58-42 60-26 70-34'],
];
/** A fan of water from the nozzle down to the face. */
const fan = (x: number, y: number, left: number, right: number): Drawing => [
  [
    'fine',
    Array.from({ length: 7 }, (_, index) =>
      pathOf([
        [x, y],
        [left + ((right - left) * index) / 6, faceAt - 1],
      ]),
    ).join(''),
  ],
];
const spatter = (left: number, right: number, seed: number): Drawing => {
  const field: Point[] = [
    [left, faceAt - 1],
    [left + 6, faceAt - 15],
    [right - 4, faceAt - 8],
    [right, faceAt - 1],
  ];
  return [['grain', dotsPath(strewSand(field, [], seed, 16))]];
};

export const pressureWash = (): Drawing => [
  ...halfDone({ depth: 3, height: 1, step: 6, seed: 11 }),
  ...fan(68, 24, 44, 66),
  ...spatter(18, 44, 3),
  ...placed(lance, 68, 24),
];

/** One hard, narrow jet inside a screen: it takes weak concrete and leaves stones standing. */
export function waterJet(): Drawing {
  const floor = roughLine([0, 60], [58, 60], 9, 7, 8);
  return [
    ...halfDone({ depth: 15, height: 9, step: 7, seed: 12 }),
    ['stone', 'M8 58l4-5 6 2 1 5-6 3zM28 60l5-6 6 3-1 6-7 2z'],
    ['form', 'M38 12H80V22H38z'],
    ['ink', 'M38 22V44M80 22V44M44 12V4M74 12V4'],
    ['form', 'M55 18H63V28L60.5 32H57.5L55 28z'],
    ['heavy', `M59 32V${String(floor.length && 58)}`],
    ['fine', 'M57 34 56 56M61 34 62 47'],
    ['ink', 'M59 12C59 2 76 8 92 2'],
    [
      'grain',
      dotsPath(
        strewSand(
          [
            [40, 44],
            [42, 32],
            [54, 40],
            [54, 58],
            [42, 56],
          ],
          [],
          5,
          16,
        ),
      ),
    ],
  ];
}

export const finalWash = (): Drawing => [
  ...soundFace(13),
  ...fan(84, 22, 62, 82),
  ['tone', 'M0 46C8 41 40 43 62 45V46z'],
  ['ink', 'M2 42C14 40 40 42 60 44.5M30 36H10M14.5 32 9.5 36 14.5 40'],
  ...placed(lance, 84, 22, 0, 0.9),
];

export const degrease = (): Drawing => [
  ...soundFace(14),
  ['dark', 'M70 46C76 44 104 44 112 46C104 54 96 51 91 60C86 52 78 53 70 46z'],
  [
    'form',
    [
      [24, 40, 5],
      [34, 36, 6],
      [45, 40, 5.5],
      [16, 42, 3.5],
      [54, 42, 3.6],
      [29, 28, 2.6],
      [40, 25, 2],
    ]
      .map(
        ([x = 0, y = 0, r = 0]) =>
          `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`,
      )
      .join(''),
  ],
  ...placed(brush, 66, 45),
];

export const stripGrowth = (): Drawing => [
  ...soundFace(15),
  ...[74, 96].flatMap((x) =>
    placed(
      [
        ['tone', 'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0z'],
        [
          'ink',
          'M-13 0C-13-7-9-8-7-7C-6-12 1-13 3-9C7-12 12-8 13 0M-4-10C-5-16-8-18-9-19M4-9C5-17 4-20 3-22',
        ],
        ['ink', 'M-2 0c2 4-2 6 0 10'],
      ] as Drawing,
      x,
      faceAt,
    ),
  ),
  ['form', 'M60 46 65 39.5 72 44.8 71 46z'],
  ['form', 'M65 40 35 20 37.5 16.5 68 36.8z'],
  ['tone', 'M18 40C22 33 32 36 34 42C30 45 22 45 18 40z'],
  ['ink', 'M18 40C22 33 32 36 34 42C30 45 22 45 18 40zM40 36l6 3M36 30l5 5'],
];

/** Damp through, and no water standing: half dark, half dry, with a drop between. */
export const wetOrDry = (): Drawing => [
  ...air,
  ...concrete(
    [
      [0, faceAt],
      [120, faceAt],
      [120, 72],
      [0, 72],
    ],
    16,
  ),
  ['tone', 'M0 46H56C54 54 58 62 52 72H0z'],
  ['stone', 'M10 56l6-3 5 4-3 5-7-1zM32 60l5-4 6 3-2 6-7 0zM26 51l4-1 1 4-4 1z'],
  ['heavy', 'M0 46H120'],
  ['form', dropPath([28, 34], 2)],
  [
    'ink',
    'M60 20V40M84 20a9 9 0 1 0 18 0a9 9 0 1 0-18 0zM93 7V3M93 33v4M80 20h-4M106 20h4M84 11l-3-3M102 11l3-3M84 29l-3 3M102 29l3 3',
  ],
];
