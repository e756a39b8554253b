import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import {
  depthInside,
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
 * Where the hammer struck, the face is broken into pieces that still fit each other, the gaps widest
 * round the blow. The nearest ones are out, stones show under them, and they lie beside, broken edges all round.
 */
function fractured(): Drawing {
  const blow: Point = [40, 38];
  const from = (cell: Polygon) => {
    const [x, y] = middleOf(cell);
    return Math.hypot((x - blow[0]) * 0.8, y - blow[1]);
  };
  const broken = cells([-4, -4, 92, 76], 14.5, 337)
    .filter((cell) => from(cell) < 33)
    .sort((one, other) => from(one) - from(other));
  const [out, kept] = [broken.slice(0, 5), broken.slice(5)];
  const fit = kept.map((cell) => shrunk(cell, Math.min(0.955, 0.8 + from(cell) * 0.0045)));
  const stones = out.flatMap((cell) =>
    packStones(cell, { seed: 338, radii: [3.6, 1.4], gap: 0.4, tries: 60 }),
  );
  /** A piece that has come out, turned over where it lies. */
  const beyond = (cell: Polygon, [x, y]: Point, turn: number): Polygon => {
    const [mx, my] = middleOf(cell);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return cell.map(([px, py]): Point => [
      x + ((px - mx) * cos - (py - my) * sin) * 0.82,
      y + ((px - mx) * sin + (py - my) * cos) * 0.82,
    ]);
  };
  const places: readonly Point[] = [
    [106, 14],
    [92, 30],
    [86, 60],
  ];
  const away = places.map((place, index) => beyond(out[index] ?? [], place, 0.8 + index));
  const within = fit.map((cell) => depthInside(cell));
  return [
    ...face(336, 60),
    ['dark', polygonsPath(broken)],
    ['tone', polygonsPath(out.map((cell) => shrunk(cell, 0.9)))],
    ['form', polygonsPath(stones.map(({ corners }) => corners))],
    ['air', polygonsPath(fit)],
    ['ink', polygonsPath(fit)],
    [
      'sand',
      dotsPath(
        strewSand(whole, [], 339, 130).filter((at) => within.some((depth) => depth(at) > 1)),
      ),
    ],
    ['dark', away.map((chip) => shadow(chip, -3)).join('')],
    ['form', polygonsPath(away)],
    ['fine', away.map((chip) => outlineOf(shrunk(chip, 0.62))).join('')],
    ...placed(hammerAbove, 50, 32),
    ...coin([107, 58], perMm),
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
