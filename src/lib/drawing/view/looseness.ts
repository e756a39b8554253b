import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import {
  depthInside,
  dotsPath,
  pathOf,
  polygonsPath,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { hammerAbove, scraperAbove } from './tools';
import { coin, face } from './ground';
import { lit, middleOf, outlineOf, ragged, shadow, shrunk } from './hollow';
import { cells } from './net';
import { drawnLoss, scale, type Box } from './scaling';

/** Sheet units per mm: all six to one scale. */
const perMm = 0.75;
const beside = coin([107, 60], perMm);
const all: Box = [0, 0, 120, 72];

/** Share of the face that the scraper has lifted off in the picture of flaking. */
export const flakedShare = 0.3;

const rings = (reach: readonly number[]) =>
  reach.map((r) => `M${46 - r} 40a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0${-2 * r} 0`).join('');

const tight = (): Drawing => [
  ...face(301),
  ['fine', rings([10, 17, 24, 31])],
  ...placed(hammerAbove, 46, 40),
  ...beside,
];

/** A brush pushed from the left: a swept lane behind it, and the dust it lifted before it. */
function powdery(): Drawing {
  const heap = ragged([80, 36], 11, 27, 311, { corners: 30, rough: 0.3 });
  const far: Polygon = [
    [70, 4],
    [116, 2],
    [118, 48],
    [100, 52],
    [70, 70],
  ];
  return [
    ['air', 'M0 0H120V72H0z'],
    [
      'sand',
      dotsPath(
        strewSand(
          [
            [0, 0],
            [120, 0],
            [120, 72],
            [0, 72],
          ],
          [],
          312,
          260,
        ),
      ),
    ],
    ['body', 'M0 13H62V59H0z'],
    ['fine', 'M0 18H54M0 25H58M0 32H55M0 39H58M0 46H54M0 53H57'],
    ['tone', outlineOf(heap)],
    ['grain', dotsPath([...strewSand(heap, [], 313, 170), ...strewSand(far, [], 314, 90)])],
    ['form', 'M54 11H68V61H54z'],
    ['fine', 'M57 11V61M61 11V61M65 11V61'],
    ['form', 'M54 31 22 30C12 30 12 42 22 42L54 41z'],
    ['fine', 'M88 14c4-6 10-4 9 1M98 30c5-5 11-1 8 4M92 58c5-4 9 0 7 5'],
    ...coin([107, 60], perMm),
  ];
}

function flaking(): Drawing {
  const loss = scale(all, flakedShare, { seed: 321, depth: 2, broad: 34 });
  /** A thin flake with its shadow: what the scraper has lifted. */
  const flake = (x: number, y: number, across: number, down: number, seed: number): Drawing => {
    const outline = ragged([x, y], across, down, seed, { corners: 9, rough: 0.5 });
    return [
      ['dark', shadow(outline, -2.4)],
      ['form', outlineOf(outline)],
    ];
  };
  return [
    ...face(322, 40),
    ...drawnLoss(loss),
    [
      'sand',
      dotsPath(
        strewSand(
          [
            [0, 0],
            [120, 0],
            [120, 72],
            [0, 72],
          ],
          [],
          324,
          260,
        ).filter((at) => loss.inside(at) > 0),
      ),
    ],
    ...flake(20, 20, 12, 8, 325),
    ...flake(86, 16, 10, 7, 326),
    ...flake(28, 58, 9, 6, 327),
    ...flake(60, 34, 13, 9, 328),
    ...placed(scraperAbove, 66, 38, 28),
    ...beside,
  ];
}

/** Stones and chips that lie loose side by side, darkness between them. */
function fractured(): Drawing {
  const field = ragged([50, 36], 50, 35, 331, { corners: 26, rough: 0.22 });
  const within = depthInside(field);
  const pieces = cells([2, 2, 98, 70], 13, 332)
    .filter((cell) => within(middleOf(cell)) > 3)
    .map((cell, index) => shrunk(cell, index % 3 ? 0.86 : 0.74));
  const away = [
    ragged([104, 14], 6, 5, 333, { corners: 7, rough: 0.4 }),
    ragged([112, 32], 4, 4, 334, { corners: 6, rough: 0.4 }),
    ragged([98, 30], 3, 2.6, 335, { corners: 6, rough: 0.4 }),
  ];
  return [
    ...face(336, 50),
    ['dark', outlineOf(field)],
    ['form', polygonsPath(pieces)],
    ['dark', away.map((chip) => shadow(chip, -2)).join('')],
    ['form', polygonsPath(away)],
    ...placed(hammerAbove, 52, 40),
    ...beside,
  ];
}

/** A whole skin that has let go: a corner of it is gone, and darkness shows under the rest. */
function hollow(): Drawing {
  const lost: Polygon = [
    [12, 62],
    [18, 50],
    [27, 47],
    [33, 52],
    [41, 54],
    [44, 62],
    [36, 67],
    [22, 68],
  ];
  return [
    ...face(341),
    ['crayon-open', 'M16 18C34 4 74 4 90 18S98 56 78 64 30 68 14 62 2 34 16 18z'],
    [
      'fine',
      'M28 30c4-4 6 4 10 0M26 37c4-4 6 4 10 0M28 44c4-4 6 4 10 0M58 28c4-4 6 4 10 0M62 52c4-4 6 4 10 0M74 36c4-4 6 4 10 0',
    ],
    ['dark', outlineOf(lost)],
    ['tone', outlineOf(lit(lost, [28, 57], 9))],
    ['ink', 'M27 47 30 40 28 34M41 54 49 55 54 60'],
    ...placed(hammerAbove, 48, 40),
    ...beside,
  ];
}

/** No edge and no bottom: crumbs all over, and a hole dug into them with a trowel. */
function rotten(): Drawing {
  const middle: Point = [44, 40];
  const pit = ragged(middle, 25, 20, 351, { corners: 24, rough: 0.3 });
  const field: Polygon = [
    [0, 0],
    [120, 0],
    [120, 72],
    [0, 72],
  ];
  const crumbs = packStones(field, { seed: 352, radii: [5, 1.6], gap: 0.7, tries: 420 }).filter(
    ({ centre: [x, y] }) =>
      Math.hypot((x - middle[0]) / 26, (y - middle[1]) / 21) > 1 &&
      Math.hypot(x - 107, y - 60) > 12,
  );
  return [
    ['tone', pathOf(field, true)],
    ['grain', dotsPath(strewSand(field, crumbs, 353, 190))],
    ['form', polygonsPath(crumbs.map(({ corners }) => corners))],
    ['dark', outlineOf(pit)],
    ['tone', outlineOf(lit(pit, middle, 15))],
    ['grain', dotsPath(strewSand(lit(pit, middle, 15), [], 354, 60))],
    ['form', 'M50 46C56 36 66 32 74 33L79 38C79 46 72 54 60 56z'],
    ['form', 'M76 34 84 28 108 4 114 10 90 33 80 39z'],
    ...beside,
  ];
}

/** How the surface lets go, seen from above, each with the tool that finds it. */
export const looseness: Record<Choice<'looseness'>, () => Drawing> = {
  tight,
  powdery,
  flaking,
  fractured,
  hollow,
  rotten,
};
