import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import { placed, type Drawing } from '$lib/drawing/mark';
import {
  circlePath,
  dotsPath,
  pathOf,
  polygonsPath,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';
import { packStones, strewSand } from '$lib/drawing/stones';
import { all, boot, coin, face } from './ground';
import { outlineOf, ragged, shadow } from './hollow';
import { scale } from './scaling';
import { scraperAbove } from './tools';

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

/** Paint: it wears off and curls in small scales, with brush strokes in what is left. */
function thinCoating(): Drawing {
  const strokes = Array.from(
    { length: 12 },
    (_, row) => `M0 ${3 + row * 6}C40 ${row * 6} 80 ${6 + row * 6} 120 ${2 + row * 6}`,
  );
  const loss = scale([0, 0, 120, 72], 0.34, { seed: 811, depth: 0.4, broad: 40 });
  return [
    ['tone', 'M0 0H120V72H0z'],
    ['fine', strokes.join('')],
    ['air', polygonsPath(loss.outlines)],
    ['sand', dotsPath(strewSand(all, [], 812, 260).filter((at) => loss.inside(at) > 0))],
    ['ink', polygonsPath(loss.outlines)],
    // A roller with its last stroke.
    ['form', 'M16 40H52V54H16z'],
    ['fine', 'M22 40V54M46 40V54'],
    ['ink', 'M52 47H60V60H38V64'],
    ['form', 'M35 62H41V72H35z'],
    ...beside,
  ];
}

/** A hard layer several millimetres thick, broken off: its edge throws shade on the bare concrete. */
function thickCoating(): Drawing {
  const thick = 9 * near;
  const edge = [...roughLine([64, 0], [50, 72], 16, 9, 821)];
  const layer: Polygon = [...edge, [0, 72], [0, 0]];
  const slabs = [
    ragged([88, 20], 14, 9, 823, { corners: 8, rough: 0.4 }),
    ragged([78, 50], 8, 6, 824, { corners: 7, rough: 0.4 }),
  ];
  return [
    ...face(822, 160),
    ['dark', [layer, ...slabs].map((piece) => shadow(piece, -thick)).join('')],
    ['tone', polygonsPath([layer, ...slabs])],
    ['ink', polygonsPath(slabs) + pathOf(edge)],
    ['ink', 'M54 30 40 24 30 34 14 28M40 24 36 10'],
    ...placed(scraperAbove, 66, 35, -20, 0.9),
    ...beside,
  ];
}

/** A skin that peels: one corner of it is drawn back and rolled over. */
const rubbery = (): Drawing => [
  ...face(831, 120),
  ['tone', 'M0 0H120V20L64 72H0z'],
  ['dark', 'M120 20 64 72H74L120 30z'],
  ['form', 'M120 4C96 8 80 22 66 34S44 54 44 72H60C62 64 66 58 76 50L108 24C112 21 116 20 120 20z'],
  ['fine', 'M120 10C100 14 84 28 72 40S52 58 52 72M120 15C104 19 92 30 80 42S60 60 57 72'],
  // Dents of a finger nail in what still lies.
  ['ink', 'M16 18q5-6 10 0M36 14q5-6 10 0M20 40q5-6 10 0M52 26q4-6 9-1'],
  ['fine', 'M17 20q4-3 8 0M37 16q4-3 8 0M21 42q4-3 8 0M53 27.5q3-3 7 0'],
  ...beside,
];

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
