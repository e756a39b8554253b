import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, polygonsPath } from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { all, coin, face } from './ground';
import { lit, shadow } from './hollow';

/** Sheet units per mm: a hand's breadth across. */
const perMm = 1;
const beside = coin([104, 56], perMm);

/** Trowelled: close, with the long sweeps of the trowel that lies on it. */
const smooth = (): Drawing => [
  ...face(501, 0),
  ['fine', 'M4 62C30 24 66 16 116 20M2 44C24 16 54 8 100 8M22 70C44 46 70 38 90 38'],
  ['form', 'M34 26 78 14 82 28 38 40z'],
  ['form', 'M50 25 66 20.6 67 25 51 29.4z'],
  ['ink', 'M58 23V30'],
  ...beside,
];

/** Broomed or worn: sand stands all over it, in fine furrows. */
const sandy = (): Drawing => [
  ...face(511, 0),
  ['sand', dotsPath(strewSand(all, [], 512, 620))],
  ['grain', dotsPath(strewSand(all, [], 513, 150))],
  [
    'sand',
    Array.from(
      { length: 9 },
      (_, row) => `M0 ${4 + row * 8}C30 ${2 + row * 8} 60 ${7 + row * 8} 120 ${3 + row * 8}`,
    ).join(''),
  ],
  ...beside,
];

/** Hollows with shade in them, and stones that stand bare. */
function pitted(): Drawing {
  const pits = packStones(all, { seed: 521, radii: [9, 2.6], gap: 2.4, tries: 170 }).filter(
    ({ centre: [x, y], radius }) => Math.hypot(x - 104, y - 56) > 13 + radius,
  );
  const bare = pits.filter((_, index) => index % 4 === 1).map(({ corners }) => corners);
  const holes = pits.filter((_, index) => index % 4 !== 1);
  return [
    ...face(522, 60),
    ['dark', polygonsPath(holes.map(({ corners }) => corners))],
    [
      'tone',
      polygonsPath(holes.map(({ corners, centre, radius }) => lit(corners, centre, radius * 0.62))),
    ],
    ['dark', bare.map((stone) => shadow(stone, -1.6)).join('')],
    ['form', polygonsPath(bare)],
    ...beside,
  ];
}

/** How the surface feels under the hand, seen from above. */
export const texture: Record<Choice<'texture'>, () => Drawing> = { smooth, sandy, pitted };
