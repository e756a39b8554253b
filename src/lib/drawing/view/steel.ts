import type { Choice } from '$lib/answers/questions';
import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { dotsPath, pathOf, rectangle, type Point, type Polygon } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { face, rule } from './ground';
import { lit, outlineOf, ragged, rayTo } from './hollow';

/** Sheet units per mm: all four to one scale, the rule of 300 mm along the foot. */
const perMm = 0.36;
const beside = rule(6, 63, perMm);
/** Diameter of the bar drawn, in mm; a usual one. Cover over it, in mm. */
const bar = { thick: 16, cover: 40 } as const;
const half = (bar.thick / 2) * perMm;
const barAt = 32;

const ribs = (left: number, right: number, gap = 4.4): string => {
  const all: string[] = [];
  for (let x = left; x < right; x += gap)
    all.push(`M${x.toFixed(1)} ${barAt - half}l1.8 ${half * 2}`);
  return all.join('');
};

/** Left and right of the bar where it comes to light. */
type Span = readonly [left: number, right: number];

/** A hole as deep as the bar lies; the ends of the bar run on under the concrete. */
function opened(seed: number, inside: (span: Span) => Drawing, rust: number): Drawing {
  const middle: Point = [58, 31];
  const outline = ragged(middle, 46, 24, seed, { corners: 26, rough: 0.24 });
  const span: Span = [
    middle[0] - rayTo(outline, [middle[0], barAt], Math.PI),
    middle[0] + rayTo(outline, [middle[0], barAt], 0),
  ];
  const [left, right] = span.map((x) => Math.round(x));
  return [
    ...face(seed + 2, 40),
    ['grain', dotsPath(strewSand(ragged(middle, 58, 29, seed + 1), [], seed + 3, rust))],
    ['dark', outlineOf(outline)],
    ['tone', outlineOf(lit(outline, middle, bar.cover * perMm * 0.6))],
    ...inside(span),
    ['ink', outlineOf(outline)],
    [
      'dashed',
      [barAt - half, barAt + half].map((y) => `M0 ${y}H${left}M${right} ${y}H120`).join(''),
    ],
    ...beside,
  ];
}

const noneSeen = (): Drawing => [
  ...face(701, 110),
  ['ink', 'M46 30C52 21 68 21 74 30C68 39 52 39 46 30z'],
  ['solid', 'M56.5 30a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z'],
  ...beside,
];

/** Blotches in a straight line, over a bar that is not to be seen, and streaks that ran from them. */
function rustStain(): Drawing {
  const blots = [
    [18, 30, 12, 6],
    [45, 33, 15, 7],
    [74, 30, 13, 6],
    [103, 32, 12, 5],
  ].map(([x = 0, y = 0, across = 0, down = 0], index) =>
    ragged([x, y], across, down, 711 + index, { corners: 18, rough: 0.4 }),
  );
  const streaks: Polygon[] = [
    [
      [38, 36],
      [46, 38],
      [43, 58],
      [40, 56],
    ],
    [
      [72, 34],
      [78, 34],
      [77, 54],
      [74, 50],
    ],
    [
      [14, 34],
      [20, 34],
      [19, 48],
      [17, 46],
    ],
  ];
  return [
    ...face(716, 60),
    ['dashed', `M0 ${barAt - half}H120M0 ${barAt + half}H120`],
    ['tone', [...blots, ...streaks].map(outlineOf).join('')],
    ['grain', dotsPath(blots.flatMap((blot, index) => strewSand(blot, [], 717 + index, 90)))],
    ['fine', 'M0 31 12 30 22 32 36 31 48 33 60 31 72 30 84 32 98 31 108 32 120 31'],
    ...beside,
  ];
}

const exposed = (): Drawing =>
  opened(
    721,
    ([left, right]) => [
      ['form', pathOf(rectangle(left, barAt - half, right, barAt + half), true)],
      ['fine', ribs(left + 2, right - 3)],
    ],
    0,
  );

/** Eaten ragged, thinner in its middle, scales of rust beside it. */
const corroded = (): Drawing =>
  opened(
    731,
    ([left, right]) => {
      const side = (down: number, seed: number) =>
        roughLine([left, barAt + down], [right, barAt + down], 1.6, 4, seed);
      return [
        [
          'dark',
          pathOf([...side(-half * 0.6, 735), ...[...side(half * 0.6, 736)].reverse()], true),
        ],
        [
          'form',
          'M30 24l8-2 5 3-7 3zM52 25l7-3 7 2-5 4zM74 25l6-2 6 3-6 2zM38 38l7-1 4 3-8 2zM62 38l8-1 5 3-9 2z',
        ],
        ['grain', dotsPath(strewSand(rectangle(left + 4, 22, right - 4, 43), [], 737, 120))],
      ];
    },
    260,
  );

/** What is to be seen of the steel, from in front. */
export const steel: Record<Choice<'steel'>, () => Drawing> = {
  'none-seen': noneSeen,
  'rust-stain': rustStain,
  exposed,
  corroded,
};
