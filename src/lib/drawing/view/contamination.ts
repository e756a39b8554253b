import type { Choice } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import {
  circlePath,
  dotsPath,
  pathOf,
  polygonsPath,
  rectangle,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { concrete } from '$lib/drawing/motif/concrete';
import { randomFrom } from '$lib/drawing/random';
import { packStones, strewSand } from '$lib/drawing/stones';
import { all, boot, coin, face } from './ground';
import { outlineOf, ragged, shadow, shrunk } from './hollow';
import { scale } from './scaling';

/** Sheet units per mm: close by, and from standing height. */
const [near, far] = [0.75, 0.2];
const beside = coin([107, 60], near);

/** A dark soaked patch with drips round it, and a bead of water that stands on it. A boot beside. */
function oil(): Drawing {
  const patch = ragged([42, 30], 30, 20, 801, { corners: 40, rough: 0.14 });
  const drips = [
    [80, 14, 5],
    [92, 22, 2.6],
    [74, 30, 2],
    [12, 58, 3],
    [86, 8, 1.8],
  ].map(([x = 0, y = 0, r = 0]) => circlePath([x, y], r));
  return [
    ...face(802),
    ['tone', outlineOf(ragged([43, 31], 37, 25, 803, { corners: 40, rough: 0.16 }))],
    ['dark', outlineOf(patch) + drips.join('')],
    ...bead([34, 28], 6),
    ...bead([52, 34], 4),
    ...boot([54, 58], far),
  ];
}
/** A drop of water that stays round: a ring with a glint. */
function bead([x, y]: Point, radius: number): Drawing {
  return [
    ['form', circlePath([x, y], radius)],
    [
      'fine',
      `M${x - radius * 0.55} ${y}A${radius * 0.6} ${radius * 0.6} 0 0 1 ${x} ${y - radius * 0.55}`,
    ],
  ];
}

/** Paint: a skin with no thickness, gone in patches, small scales of it curling up; a brush with it. */
function thinCoating(): Drawing {
  const loss = scale([0, 0, 120, 72], 0.32, { seed: 811, depth: 0.4, broad: 40 });
  const curl = (x: number, y: number): Drawing =>
    placed(
      [
        ['form', 'M-7 3C-5-4 4-5 7-1C4-2 1 0 2 3z'],
        ['fine', 'M-4 2C-3-1 0-2 3-1.6'],
      ],
      x,
      y,
    );
  return [
    ['tone', 'M0 0H120V72H0z'],
    ['air', polygonsPath(loss.outlines)],
    ['sand', dotsPath(strewSand(all, [], 812, 260).filter((at) => loss.inside(at) > 0))],
    ['ink', polygonsPath(loss.outlines)],
    ...curl(74, 16),
    ...curl(30, 12),
    ...curl(82, 66),
    // A brush, its bristles full of paint.
    ['form', 'M40 38 16 40 20 43 13 46 19 49 13 52 18 55 15 57 40 60z'],
    ['fine', 'M40 42 22 43M40 46 18 46.5M40 50 18 50.5M40 55 20 54.5'],
    ['dark', 'M20 39.7 16 40 20 43 13 46 19 49 13 52 18 55 15 57 20 57.6z'],
    ['form', 'M40 37H49V61H40z'],
    ['form', 'M49 42C58 39 62 45 82 45C87 45 87 53 82 53C62 53 58 59 49 56z'],
    ...beside,
  ];
}

/**
 * A hard glossy layer of several coats, chipped through down to the concrete: the coats show as
 * steps in its rim, and the roller that laid it stands on it.
 */
function thickCoating(): Drawing {
  const thick = 5 * near;
  const rim = ragged([32, 40], 30, 26, 825, { corners: 9, rough: 0.34 });
  const floor = shrunk(rim, 0.7);
  return [
    ['tone', pathOf(all, true)],
    // Light on the gloss.
    ['air', 'M50 72 100 26 120 8V17L62 72zM70 72 120 27V31L75 72z'],
    ['form', outlineOf(rim)],
    ['ink', outlineOf(shrunk(rim, 0.86))],
    ['air', outlineOf(floor)],
    ['dark', shadow(floor, thick)],
    ['sand', dotsPath(strewSand(floor, [], 822, 120))],
    ['ink', outlineOf(floor)],
    // A piece of it, as thick as it is, its coats along the broken side.
    ['dark', 'M66 60 72 66 88 67 94 58 90 68 72 71z'],
    ['form', 'M64 48 66 58 74 64 86 65 92 56V48L86 56 74 55z'],
    ['fine', 'M65 53 74 59.6 86 60.6 92 52'],
    ['tone', 'M64 48 72 40 84 41 92 48 86 56 74 55z'],
    ['ink', 'M64 48 72 40 84 41 92 48 86 56 74 55z'],
    // A roller from above, wet with it.
    ['ink', 'M112 14H117V0'],
    ['form', 'M66 5H112V22H66z'],
    ['tone', 'M68 7H110V20H68z'],
    ['fine', 'M72 10H86M92 9H104M76 17H90M98 17H108'],
    ...beside,
  ];
}

/** A soft layer: a finger sinks into it, and a hand pulls the end of it up in a bow, threads still hanging on. */
const rubbery = (): Drawing => [
  ...face(831, 40),
  ...concrete(rectangle(0, 52, 120, 72), 832, { radii: [4.6, 1.6] }),
  ['heavy', 'M0 52H120'],
  ['fine', 'M69 50V52M74 47V52M80 42 79 52M86 34 84 52M91 26 89 52'],
  ['tone', rubber],
  ['ink', rubber],
  ['fine', 'M58 46C76 46 82 36 87 25M44 49H56'],
  // A finger pressed into it.
  ['form', 'M16 0V36C16 51 34 51 34 36V0z'],
  ['fine', 'M20 36C20 46 30 46 30 36C30 32 20 32 20 36zM18 20q7 3 14 0'],
  // A fist that holds the end.
  ['form', 'M86 8C85 2 92-1 100 0L120-2V22L108 25C100 27 92 24 91 19z'],
  ['ink', 'M91 19C90 14 96 12 100 14L108 16M92 8 100 7M96 2 102 3'],
];
const rubber =
  'M0 43H8C13 43 12 39 15 39C17 39 16 48 25 48S33 39 35 39C38 39 37 43 42 43H54C72 43 78 33 84 20C86 15 88 12 92 10L98 16C94 20 93 26 90 33C84 45 76 52 56 52H0z';

/** A crust of needles along a crack and in blots, whiter than all round it. */
function saltBloom(): Drawing {
  const next = randomFrom(841);
  const crack = 'M0 30 14 34 26 30 40 38 54 34 68 42 84 36 98 42 120 38';
  const spots: Polygon[] = [
    ragged([24, 32], 17, 12, 842, { corners: 34, rough: 0.5 }),
    ragged([60, 38], 21, 15, 843, { corners: 40, rough: 0.5 }),
    ragged([92, 36], 15, 10, 844, { corners: 30, rough: 0.5 }),
    ragged([40, 60], 8, 6, 845, { corners: 20, rough: 0.5 }),
    ragged([78, 12], 9, 6, 846, { corners: 20, rough: 0.5 }),
  ];
  const stars = spots
    .flatMap((spot, index) => strewSand(spot, [], 850 + index, 16))
    .map(([x, y]) => {
      const reach = 1.6 + next() * 1.6;
      return [0, 60, 120]
        .map((angle) => {
          const [dx, dy] = [
            Math.cos((angle * Math.PI) / 180) * reach,
            Math.sin((angle * Math.PI) / 180) * reach,
          ];
          return `M${(x - dx).toFixed(1)} ${(y - dy).toFixed(1)}l${(2 * dx).toFixed(1)} ${(2 * dy).toFixed(1)}`;
        })
        .join('');
    });
  return [
    ['tone', 'M0 0H120V72H0z'],
    ['sand', dotsPath(strewSand(all, [], 847, 60))],
    ['ink', crack],
    ['form', polygonsPath(spots)],
    ['fine', stars.join('')],
    ...beside,
  ];
}

/** Cushions with small leaves, thickest along a crack. */
function growth(): Drawing {
  const cushions = packStones(
    [
      [0, 0],
      [92, 0],
      [84, 72],
      [0, 72],
    ],
    { seed: 861, radii: [13, 3.4], gap: 0, tries: 130 },
  ).filter(({ centre: [x, y] }) => Math.abs(y - 22 - x * 0.28) < 22);
  const leaf: Drawing = [
    [
      'solid',
      'M0 0C-3-2-4-5-2-7C0-5 1-3 0 0C3-2 4-5 2-7C0-5-1-3 0 0C-4 0-6-2-6-4C-3-4-1-3 0 0C4 0 6-2 6-4C3-4 1-3 0 0z',
    ],
  ];
  return [
    ...face(862, 80),
    ['ink', 'M0 22 20 30 44 32 70 42 96 46 120 56'],
    ['dark', cushions.map(({ corners }) => shadow(corners, -3)).join('')],
    [
      'tone',
      cushions
        .map(({ centre, radius }) =>
          outlineOf(
            ragged(centre, radius, radius, Math.round(centre[0] * 7 + centre[1]), {
              corners: 22,
              rough: 0.3,
            }),
          ),
        )
        .join(''),
    ],
    [
      'ink',
      cushions
        .map(({ centre, radius }) =>
          outlineOf(
            ragged(centre, radius, radius, Math.round(centre[0] * 7 + centre[1]), {
              corners: 22,
              rough: 0.3,
            }),
          ),
        )
        .join(''),
    ],
    ...cushions.flatMap(({ centre: [x, y], radius }) =>
      radius > 4
        ? [
            ...placed(leaf, Math.round(x), Math.round(y + 2), 0, radius > 8 ? 0.9 : 0.6),
            ...(radius > 8
              ? [
                  ...placed(leaf, Math.round(x - 5), Math.round(y + 7), -25, 0.7),
                  ...placed(leaf, Math.round(x + 5), Math.round(y + 6), 25, 0.7),
                  ...placed(leaf, Math.round(x), Math.round(y - 3), 10, 0.7),
                ]
              : []),
          ]
        : [],
    ),
    ...beside,
  ];
}

/** What lies on the concrete, or in it, seen from above. */
export const contamination: Record<Choice<'contamination'>, () => Drawing> = {
  oil,
  'thin-coating': thinCoating,
  'thick-coating': thickCoating,
  'rubbery-coating': rubbery,
  'salt-bloom': saltBloom,
  growth,
};
