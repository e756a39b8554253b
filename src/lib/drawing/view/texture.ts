import type { Choice } from '$lib/answers/questions';
import type { Drawing } from '$lib/drawing/mark';
import { concrete } from '$lib/drawing/motif/concrete';
import { dotsPath, pathOf, rectangle, type Point } from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import { all, coin, face } from './ground';
import { lit, outlineOf, ragged } from './hollow';

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

/**
 * Holes of all sizes, a pencil in one of them: the light comes from the upper left, so each is dark
 * there and lit at its lower rim. The nearest edge of the slab is cut, and there they are bites in it.
 */
function pitted(): Drawing {
  const edge = 54;
  const large = { centre: [34, 25], radius: 12 } as const;
  const clear = ([x, y]: Point, radius: number) =>
    Math.hypot(x - 101, y - 34) > 14 + radius &&
    Math.hypot(x - large.centre[0], y - large.centre[1]) > 14 + radius &&
    // The pencil lies over what is to the upper right of its hole.
    Math.abs(15 * (x - 40) + 41 * (y - 25)) / 44 > radius + 7;
  const pits = packStones(rectangle(0, 0, 120, edge), {
    seed: 521,
    radii: [8, 2],
    gap: 2,
    tries: 320,
  }).filter(({ centre, radius }) => clear(centre, radius));
  const holes = [large, ...pits].map(({ centre, radius }, index) => ({
    centre,
    radius,
    outline: ragged(centre, radius, radius * 0.8, 530 + index, { corners: 18, rough: 0.26 }),
  }));
  const bites = [
    [12, 9],
    [39, 5],
    [62, 10],
    [90, 6],
    [110, 4],
  ] as const;
  const front: readonly Point[] = [
    [0, edge],
    ...bites.flatMap(([x, r], index) =>
      ragged([x, edge], r, r, 560 + index, { corners: 20, rough: 0.2 })
        .filter(([, y]) => y >= edge)
        .reverse(),
    ),
    [120, edge],
  ];
  return [
    ...face(522, 60),
    ['dark', holes.map(({ outline }) => outlineOf(outline)).join('')],
    [
      'tone',
      holes
        .map(({ outline, centre, radius }) => outlineOf(lit(outline, centre, radius * 1.12)))
        .join(''),
    ],
    // It goes down into the dark of the hole.
    ['body', 'M37 22 79.5 6.5 82.5 14.7 40 30.2z'],
    ['ink', 'M37 22 79.5 6.5 82.5 14.7 40 30.2'],
    ['fine', 'M38 24.8 80.5 9.2M39 27.6 81.5 12'],
    ['dark', `M0 ${edge}H120V72H0z`],
    ...concrete([...front, [120, 72], [0, 72]], 523, { radii: [4, 1.4] }),
    ['heavy', pathOf(front)],
    ...coin([101, 34], perMm),
  ];
}

/** How the surface feels under the hand, seen from above. */
export const texture: Record<Choice<'texture'>, () => Drawing> = { smooth, sandy, pitted };
