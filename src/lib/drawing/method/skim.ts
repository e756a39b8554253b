import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import { circlePath, dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { section, unsound } from '$lib/drawing/motif/concrete';
import { faceAt, halfDone, workAt } from '$lib/drawing/motif/work';

const dust = (field: readonly Point[], seed: number, count = 22): Drawing => [
  ['grain', dotsPath(strewSand(field, [], seed, count))],
];
/** Grit that has done its work, heaped at the foot of a wall. */
export const spentGrit: Drawing = [
  ['tone', 'M26 69C27 62 32 61 36 64S44 66 50 69z'],
  ...dust(
    [
      [25, 68],
      [28, 60],
      [37, 62],
      [54, 69],
    ],
    16,
    46,
  ),
];
/** A hose for dust, from the upper right of a tool. */
const hose = (path: string): Drawing => [['heavy', path]];
/** Which way something turns. */
const turning: Drawing = [['ink', 'M-10 0A10 4 0 0 1 10 0M5.5-4 10 0 5-.5']];

export const grind = (): Drawing => [
  ...halfDone({ depth: 3.5, height: 0.8, step: 8, seed: 21 }),
  ['form', 'M40 45H78V40H40z'],
  ['fine', 'M46 40v5M52 40v5M58 40v5M64 40v5M70 40v5'],
  ['form', 'M44 40C44 32 74 32 74 40z'],
  ['form', 'M53 33V18H65V33z'],
  ['ink', 'M65 22H78L92 14M92 10V18'],
  ...hose('M74 37C86 36 88 26 100 28S112 22 120 24'),
  ...placed(turning, 59, 11),
];

export const edgeWork = (): Drawing => [
  ...halfDone({ depth: 3.5, height: 0.8, step: 8, seed: 22 }),
  ['body', 'M92 0H120V54H92z'],
  ['heavy', 'M92 0V51'],
  ['stone', 'M100 10l6-3 6 4-2 7-8-1zM104 30l5-2 4 4-4 5-5-3z'],
  ['form', 'M66 45H91V41H66z'],
  ['form', 'M70 41C70 35 88 35 88 41z'],
  ['form', 'M76 36 70 26 50 18 48 24 66 31 70 38z'],
  ['ink', 'M58 21 62 12'],
  ...placed(turning, 82, 27, 0, 0.7),
  ...dust(
    [
      [44, 45],
      [46, 34],
      [62, 36],
      [64, 45],
    ],
    4,
    14,
  ),
];

/** A drum of star-shaped cutters. */
export function scarify(): Drawing {
  const star = Array.from({ length: 20 }, (_, index): Point => {
    const angle = (index / 20) * 2 * Math.PI + 0.12;
    const reach = index % 2 ? 15 : 11;
    return [workAt + Math.cos(angle) * reach, faceAt - 7 + Math.sin(angle) * reach];
  });
  return [
    ...halfDone({ depth: 7, height: 3.4, step: 3, seed: 23 }),
    ['form', 'M34 30C34 8 82 8 82 30V36H78C78 28 38 28 38 36H34z'],
    ['form', pathOf(star, true)],
    ['ink', circlePath([workAt, faceAt - 7], 6)],
    ['solid', circlePath([workAt, faceAt - 7], 2)],
    ['ink', 'M82 22 100 8M96 4 105 12'],
    ['ink', 'M50 22A20 20 0 0 1 66 22M62 18 66.5 22 61.5 24'],
    ...dust(
      [
        [12, 50],
        [16, 38],
        [34, 40],
        [40, 50],
      ],
      6,
      18,
    ),
  ];
}

/** Steel balls thrown down inside a closed head, and caught again. */
export const shotblast = (): Drawing => [
  ...halfDone({ depth: 2.5, height: 1.6, step: 4, seed: 24 }),
  ['form', 'M34 45V26L52 6H92V20L76 26 72 45z'],
  ['air', 'M38 44V28L54 10H66L70 26 68 44z'],
  ['fine', 'M38 44V28L54 10H66L70 26 68 44'],
  ['ink', circlePath([60, 17], 6.5) + 'M60 10.5v13M53.5 17h13'],
  ['fine', 'M58 24 54 44M61 24 60 44M55 44 46 30'],
  [
    'solid',
    [
      [57, 28],
      [55.8, 35],
      [54.6, 41],
      [61, 30],
      [60.6, 38],
      [50, 38],
      [47, 32],
      [52.6, 43],
      [44, 36],
    ]
      .map(([x = 0, y = 0]) => circlePath([x, y], 1.4))
      .join(''),
  ],
  // It rolls on the face: what is done lies a little lower.
  ['form', 'M38 42.5a3 3 0 1 0 .1 0zM76 40a3 3 0 1 0 .1 0z'],
  ...hose('M92 13C102 13 104 22 120 18'),
];

/** A blast nozzle with a cone of grit. */
const blast: Drawing = [
  ['fine', 'M0 0-16 20M0 0-6 22M0 0 4 22'],
  [
    'grain',
    dotsPath(
      strewSand(
        [
          [0, 2],
          [-17, 21],
          [5, 22],
        ],
        [],
        9,
        42,
      ),
    ),
  ],
  ['form', 'M-3-1 2.5 2.5 9-6 10.5-12 7-14 2-10z'],
  ['form', 'M7-14 12-11 34-30 30-34z'],
];
/** Grit against a wall, from a pot through a hose, by somebody under a hood that has its own air; spent grit lies below. */
export const abrasiveBlast = (): Drawing => [
  ['air', 'M0 0H120V72H0z'],
  ...placed(halfDone({ depth: 4, height: 2.4, step: 4, seed: 25 }), 72, -24, 90),
  ['ink', 'M22 69H120'],
  ...spentGrit,
  // The pot with its grit, the hose to the nozzle, the air to the hood.
  ['ink', 'M97 56V69M113 56V69'],
  ['form', 'M94 34C94 25 116 25 116 34V52L108 62H102L94 52z'],
  ['form', 'M98 26 96 19H114L112 26z'],
  ...dust(rectangle(96, 34, 114, 52), 13, 26),
  ['heavy', 'M102 62C96 70 84 66 84 56S76 44 58 41'],
  ['ink', 'M77 17C86 8 96 10 99 19'],
  // Who holds it.
  ['form', 'M62 50H70L69 69H61zM71 50H79L81 69H73z'],
  ['form', 'M61 30H79L80 52H61z'],
  ['form', 'M59 35 61 16C62 6 78 6 78 16L82 36C76 39 66 39 59 35z'],
  ['dark', 'M60.6 16H67V24H60z'],
  ['form', 'M74 37 56 38 52 36 51 42 58 44 75 44z'],
  ['form', 'M42 35 43 40 57 43 58 36z'],
  ['fine', 'M42 36 28 22M42 37 28 32M42 38 28 44M42 39 29 54'],
  ...dust(
    [
      [42, 36],
      [27, 20],
      [27, 56],
      [42, 39],
    ],
    14,
    70,
  ),
];

/** The bruised skin taken off the floor of a broken-out patch. */
export function blastClean(): Drawing {
  const floor = roughLine([14, 58], [106, 58], 3.4, 6, 26);
  const under = roughLine([14, 64], [106, 64], 1.4, 9, 27);
  const bruised: readonly Point[] = [
    ...floor.filter(([x]) => x > 48),
    ...under.filter(([x]) => x > 48).reverse(),
  ];
  return [
    ...section([[0, 40], [14, 40], ...floor, [106, 40], [120, 40]], 26),
    ...unsound(bruised, 4),
    ['fine', 'M62 59l3 4M71 58l-2 5M82 59l3 3M92 58l-2 5'],
    ['heavy', pathOf([[0, 40], [14, 40], ...floor, [106, 40], [120, 40]])],
    ['crayon', pathOf(under.filter(([x]) => x > 46))],
    ...placed(blast, 58, 34),
    ...dust(
      [
        [18, 54],
        [22, 36],
        [36, 40],
        [40, 54],
      ],
      15,
      18,
    ),
  ];
}

/** A gun with a bundle of needles that strike one by one. */
const needleGun: Drawing = [
  ['ink', 'M-8 0-3.6-16M-5 1-2.4-16M-2-1-1-16M1.5 1 .6-16M4.6-.5 2.2-16M8 .5 3.6-16'],
  ['form', 'M-5.5-15H5.5L4.6-34H-4.6z'],
  ['form', 'M-6.5-34H6.5V-46H-6.5z'],
  ['fine', 'M-5-20H5M-5-25H5M-5-30H5'],
  ['form', 'M6.5-46 27-36 23-28 6.5-38z'],
  ['ink', 'M9-36q4 7 8 3'],
];
export const needleScale = (): Drawing => [
  ...halfDone({ depth: 4, height: 1.8, step: 3, seed: 27 }),
  ...placed(needleGun, 57, 46, -14),
  ...hose('M72 10C84 10 90 22 104 18S114 10 120 12'),
  ['fine', 'M40 42l-6-5M42 37l-4-7M71 42l6-5M70 37l5-7'],
];
