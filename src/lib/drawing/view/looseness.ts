import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import { concrete } from '$lib/drawing/motif/concrete';
import { hammer } from '$lib/drawing/motif/tools';
import {
  dotsPath,
  pathOf,
  polygonsPath,
  rectangle,
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
const whole = rectangle(...all);

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

/** A fingertip wiped over it comes away white, and the lane it leaves is powder again. Nothing is gone that could be measured. */
function powdery(): Drawing {
  const lane: Polygon = [
    [12, 12],
    [62, 27],
    [56, 43],
    [8, 28],
  ];
  const heap = ragged([60, 38], 12, 15, 313, { corners: 26, rough: 0.4 });
  const sides = [
    ragged([34, 11], 24, 5, 318, { corners: 26, rough: 0.5 }),
    ragged([28, 43], 26, 5, 319, { corners: 26, rough: 0.5 }),
  ];
  return [
    ...face(312, 0),
    ['sand', dotsPath(strewSand(whole, [], 314, 430))],
    ['tone', [heap, ...sides].map(outlineOf).join('')],
    ['air', 'M12 13C19 8 26 10 64 26L58 43 14 27C8 24 8 17 12 13z'],
    ['fine', 'M12 13C19 8 26 10 64 26M58 43 14 27C8 24 8 17 12 13'],
    ['tone', outlineOf(heap)],
    [
      'grain',
      dotsPath([
        ...strewSand(lane, [], 315, 26),
        ...strewSand(heap, [], 316, 90),
        ...sides.flatMap((side, index) => strewSand(side, [], 320 + index, 50)),
      ]),
    ],
    ['fine', 'M70 12c4-6 10-4 9 1M84 20c5-5 11-1 8 4M52 58c5-4 9 0 7 5M34 60c3-5 9-4 8 1'],
    [
      'form',
      'M58 29C63 25 69 27 84 33C92 28 108 30 120 34V72H84C80 66 80 60 82 56L60 44C53 40 53 33 58 29z',
    ],
    ['ink', 'M82 56C86 58 92 58 94 54M84 33C88 36 90 40 88 43M86 66C92 66 98 62 98 56'],
    ['fine', 'M59 32C56 35 56 38 59 40.4L64 42.4 67 34.6 62 32C61 31.5 60 31.4 59 32zM76 34l-3 8'],
    ['grain', 'M57 32h0M55 36h0M57 41h0M62 45h0M66 47h0M62 28h0M67 28h0M61 37h0M64 39h0'],
    ...coin([14, 60], perMm),
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
    ['sand', dotsPath(strewSand(whole, [], 324, 260).filter((at) => loss.inside(at) > 0))],
    ...flake(20, 20, 12, 8, 325),
    ...flake(86, 16, 10, 7, 326),
    ...flake(28, 58, 9, 6, 327),
    ...flake(60, 34, 13, 9, 328),
    ...placed(scraperAbove, 66, 38, 28),
    ...beside,
  ];
}

/**
 * The slab cut open under the hammer: its upper part is in pieces with gaps between them, some knocked
 * up and away. Below them it is whole.
 */
function fractured(): Drawing {
  const [top, bottom] = [26, 45];
  const blow: Point = [54, top];
  const floor = roughLine([0, bottom], [120, bottom], 5, 6, 335);
  const near = (cell: Polygon) => Math.abs(middleOf(cell)[0] - blow[0]);
  // Where the hammer hits there is a hole.
  const pieces = cells([-6, top, 126, bottom + 1], 12, 337).filter(
    (cell) => near(cell) > 9 || middleOf(cell)[1] > top + 12,
  );
  const thrown = pieces.map((cell): Polygon => {
    const [x, y] = middleOf(cell);
    const lift = near(cell) < 34 && y < top + 10 ? (34 - near(cell)) * 0.26 : 0;
    const turn = lift * 0.06 * Math.sign(x - blow[0]);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return shrunk(cell, 0.88).map(([px, py]): Point => [
      x + (px - x) * cos - (py - y) * sin + lift * 0.5 * Math.sign(x - blow[0]),
      y + (px - x) * sin + (py - y) * cos - lift,
    ]);
  });
  const flying: readonly (readonly [number, number, number])[] = [
    [26, 10, 5],
    [38, 4, 3],
    [12, 17, 3.4],
    [92, 13, 4.6],
    [104, 18, 3],
  ];
  const chips = flying.map(([x, y, r], index) =>
    ragged([x, y], r, r * 0.8, 340 + index, { corners: 6, rough: 0.4 }),
  );
  return [
    ...face(336, 40),
    ['dark', pathOf([[0, top], [120, top], ...[...floor].reverse()], true)],
    ['form', polygonsPath(thrown)],
    ...concrete([...floor, [120, 72], [0, 72]], 338, { radii: [5, 1.8] }),
    ['heavy', pathOf(floor)],
    ['form', polygonsPath(chips)],
    ['fine', 'M34 18 30 14M44 14 41 9M80 20 86 16'],
    ...placed(hammer, blow[0], top + 4, 0, 1.15),
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
  const crumbs = packStones(whole, { seed: 352, radii: [5, 1.6], gap: 0.7, tries: 420 }).filter(
    ({ centre: [x, y] }) =>
      Math.hypot((x - middle[0]) / 26, (y - middle[1]) / 21) > 1 &&
      Math.hypot(x - 107, y - 60) > 12,
  );
  return [
    ['tone', pathOf(whole, true)],
    ['grain', dotsPath(strewSand(whole, crumbs, 353, 190))],
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
