import { handLine, roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import {
  dotsPath,
  hatch,
  pathOf,
  polygonsPath,
  rectangle,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { packStones, strewSand, type Packing } from '$lib/drawing/stones';

/** Width and height of the sheet of a choice's drawing. */
export const sheet = { width: 120, height: 72 } as const;
export const air: Drawing = [['air', pathOf(rectangle(0, 0, sheet.width, sheet.height), true)]];

/** A piece of concrete seen in section: stones and sand, no outline. */
export function concrete(field: Polygon, seed: number, packing: Partial<Packing> = {}): Drawing {
  const stones = packStones(field, { seed, radii: [6.5, 1.8], gap: 1.1, tries: 110, ...packing });
  return [
    ['body', pathOf(field, true)],
    ['sand', dotsPath(strewSand(field, stones, seed + 1, 34))],
    ['stone', polygonsPath(stones.map(({ corners }) => corners))],
  ];
}

/** Concrete that will not hold: washed with crayon, and hatched for those who see no colour. */
export const unsound = (field: Polygon, spacing = 4.5): Drawing => [
  ['wash', pathOf(field, true)],
  ['hatch', hatch(field, spacing)],
];

/** Where the surface of a section lies on the sheet. */
const surfaceAt = 32;

/**
 * A section that fills the sheet below its surface.
 * @param surface from the left edge to the right edge
 */
export function section(surface: readonly Point[], seed: number): Drawing {
  const field: Polygon = [...surface, [sheet.width, sheet.height], [0, sheet.height]];
  return [...air, ...concrete(field, seed)];
}

/** An even surface across the sheet. */
export const evenSurface = (y = surfaceAt): readonly Point[] =>
  handLine([0, y], [sheet.width, y], 3);

/** A rough surface across the sheet. */
export const roughSurface = (height: number, step: number, seed: number, y = surfaceAt) =>
  roughLine([0, y], [sheet.width, y], height, step, seed);

/** The strokes that mean earth under a line. */
export function earth(left: number, right: number, y: number): Drawing {
  const strokes: string[] = [];
  for (let x = left + 5; x <= right; x += 9) strokes.push(`M${x} ${y}l-4 5M${x + 3} ${y}l-4 5`);
  return [['fine', strokes.join('')]];
}

/** A slanted block with its top face open to view; the top is left for what lies on it. */
export const block = {
  top: [
    [4, 44],
    [32, 14],
    [116, 14],
    [88, 44],
  ] as Polygon,
  /** From shares along and across the top (0 to 1) to the sheet. */
  onTop: (along: number, across: number): Point => [4 + 84 * along + 28 * across, 44 - 30 * across],
  /** The block itself: top, front in section, side. */
  drawing: (seed: number): Drawing => [
    ...air,
    ['body', 'M4 44 32 14H116V38L88 68H4z'],
    ...concrete(rectangle(4, 44, 88, 68), seed, { radii: [5.5, 1.6], tries: 70 }),
    ['tone', 'M88 44 116 14V38L88 68z'],
  ],
  edges: [['ink', 'M4 44 32 14H116V38L88 68H4zH88L116 14M88 44V68']] as Drawing,
};
