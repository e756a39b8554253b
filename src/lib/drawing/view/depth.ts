import { rangeOfBand } from '$lib/answers/depth';
import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { concrete } from '$lib/drawing/motif/concrete';
import { chord, slice } from '$lib/drawing/motif/lens';
import {
  circlePath,
  dotsPath,
  pathOf,
  polygonsPath,
  rectangle,
  type Point,
} from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { coin, face } from './ground';
import { lit, outlineOf, ragged, shadow } from './hollow';
import { drawnLoss, scale, stonesIn, type Box } from './scaling';
import { valueOf } from '$shared/figures';

/** Sheet units per mm: all seven to one scale. */
const perMm = 0.6;
const sheet: Box = [0, 0, 120, 72];
const whole = rectangle(...sheet);
const beside = coin([109, 61], perMm);

/** Depth drawn in mm: the most the band allows, or the middle of the one that ends with the slab. */
const drawn = (band: Choice<'depth'>): number => {
  const [least, most] = rangeOfBand(band, valueOf('thickness.usual-slab'));
  return band === 'over-50' ? (least + most) / 2 : most;
};

/**
 * Nothing, or a skin: the slab cut open is whole. Only under a glass is there a step, where the
 * cement skin has worn off the sand.
 */
function film(): Drawing {
  const edge = 30;
  const middle: Point = [50, 38];
  const radius = 27;
  const skin = middle[1] - 3;
  const bare = skin + 3.4;
  const [, right] = chord(middle, radius, bare);
  const left = slice(middle, radius, skin, bare).filter(([x]) => x < middle[0]);
  const skinPath = pathOf([...left, [53, bare], [50, bare - 1.6], [51, skin]], true);
  const under = slice(middle, radius, bare, middle[1] + radius);
  const stones = packStones(under, { seed: 402, radii: [8, 2.6], gap: 1.6, tries: 90 });
  return [
    ...face(401, 50),
    ...concrete(rectangle(0, edge, 120, 72), 403, { radii: [4.6, 1.6], tries: 150 }),
    ['heavy', `M0 ${edge}H50`],
    ['fine', `M50 ${edge}H120`],
    // The glass, its handle to the lower right.
    ['form', 'M68 60 73 55 93 67 90 72 86 72z'],
    ['air', circlePath(middle, radius)],
    ['body', pathOf(under, true)],
    ['sand', dotsPath(strewSand(under, stones, 404, 40))],
    ['stone', polygonsPath(stones.map(({ corners }) => corners))],
    ['tone', skinPath],
    ['ink', skinPath],
    ['ink', pathOf(roughLine([52, bare], right, 1.2, 3, 405))],
    [
      'grain',
      dotsPath([
        [56, bare],
        [61, bare],
        [65, bare],
        [70, bare],
        [73, bare],
      ]),
    ],
    ['heavy', circlePath(middle, radius)],
    ...coin([104, 14], perMm),
  ];
}

/** How a skin comes off in patches: sand in them, stones flush, or stones standing out of them. */
function scaled(band: Choice<'depth'>, share: number, seed: number): Drawing {
  const depth = drawn(band) * perMm;
  const loss = scale(sheet, share, { seed, depth, broad: 40 });
  const stones =
    band === 'under-3'
      ? []
      : stonesIn(loss, sheet, { seed: seed + 1, radii: [6, 2.2], gap: 1.4, tries: 190 });
  const sand = strewSand(whole, [], seed + 2, band === 'under-3' ? 420 : 160);
  return [
    ...face(seed + 3, 40),
    ...drawnLoss(loss),
    ['sand', dotsPath(sand.filter((at) => loss.inside(at) > 0.03))],
    ['stone', polygonsPath(stones)],
    ['fine', polygonsPath(stones)],
    ...beside,
  ];
}

/** A hole whose shadow is as broad as it is deep. */
function hole(
  band: Choice<'depth'>,
  seed: number,
  bottom: (floor: readonly Point[]) => Drawing,
  [middle, across, down]: readonly [Point, number, number] = [[50, 36], 45, 31],
): Drawing {
  const outline = ragged(middle, across, down, seed, { corners: 26, rough: 0.2 });
  const floor = lit(outline, middle, drawn(band) * perMm);
  return [
    ...face(seed + 1, 60),
    ['dark', outlineOf(outline)],
    ['tone', outlineOf(floor)],
    ...bottom(floor),
    ['ink', outlineOf(outline)],
  ];
}

const rubble =
  (seed: number, largest: number) =>
  (floor: readonly Point[]): Drawing => {
    const stones = packStones(floor, { seed, radii: [largest, 1.8], gap: 1, tries: 150 });
    return [
      ['sand', dotsPath(strewSand(floor, stones, seed + 1, 60))],
      ['dark', stones.map(({ corners }) => shadow(corners, -1.6)).join('')],
      ['form', polygonsPath(stones.map(({ corners }) => corners))],
    ];
  };

/** Earth and grass at the bottom: the slab is gone here. */
const earth = (floor: readonly Point[]): Drawing => [
  ['body', pathOf(floor, true)],
  [
    'fine',
    strewSand(floor, [], 471, 60)
      .map(([x, y]) => `M${x.toFixed(1)} ${y.toFixed(1)}l-3 4.4`)
      .join(''),
  ],
  [
    'ink',
    [
      [88, 70],
      [104, 66],
      [115, 60],
    ]
      .map(([x, y]) => `M${x} ${y}l-3-6M${x} ${y}v-8M${x} ${y}l3-6`)
      .join(''),
  ],
];

/** How deep the damage goes, seen from above: what shows in it, and how far its rim throws shade. */
export const depth: Record<Choice<'depth'>, () => Drawing> = {
  film,
  'under-3': () => scaled('under-3', 0.45, 411),
  '3-to-6': () => scaled('3-to-6', 0.5, 421),
  '6-to-20': () => [...hole('6-to-20', 431, rubble(432, 7)), ...beside],
  '20-to-50': () => [...hole('20-to-50', 441, rubble(442, 6)), ...beside],
  'over-50': () => [...hole('over-50', 451, rubble(452, 4)), ...beside],
  through: () => [...hole('through', 461, earth, [[70, 54], 64, 50]), ...coin([109, 10], perMm)],
};
