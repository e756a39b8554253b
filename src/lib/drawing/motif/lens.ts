import { roughLine } from '$lib/drawing/lines';
import type { Drawing } from '$lib/drawing/mark';
import { circlePath, pathOf, type Point, type Polygon } from '$lib/drawing/points';
import { concrete } from './concrete';

/** The part of a circle between two heights, as a polygon; heights outside are cut to the circle. */
export function slice([x, y]: Point, radius: number, top: number, bottom: number): Polygon {
  const from = Math.max(top, y - radius);
  const to = Math.max(from, Math.min(bottom, y + radius));
  const heights = Array.from({ length: 9 }, (_, index) => from + ((to - from) * index) / 8);
  const half = (at: number) => Math.sqrt(Math.max(0, radius ** 2 - (at - y) ** 2));
  return [
    ...heights.map((at): Point => [x - half(at), at]),
    ...heights.reverse().map((at): Point => [x + half(at), at]),
  ];
}

/** Left and right end of a level line across a circle. */
export function chord([x, y]: Point, radius: number, at: number): readonly [Point, Point] {
  const half = Math.sqrt(Math.max(0, radius ** 2 - (at - y) ** 2));
  return [
    [x - half, at],
    [x + half, at],
  ];
}

/**
 * A magnifying lens over a surface: concrete below `surface`, air above, the rim last.
 * @param from the place on the sheet that is magnified
 * @param inside what else is seen through it, drawn over the concrete
 */
export function lens(
  centre: Point,
  radius: number,
  surface: number,
  from: Point,
  inside: Drawing,
  seed = 5,
): Drawing {
  const below = slice(centre, radius, surface, centre[1] + radius);
  const angle = Math.atan2(centre[1] - from[1], centre[0] - from[0]);
  const side: Point = [Math.sin(angle) * radius, -Math.cos(angle) * radius];
  const rays = [1, -1].map((sign) =>
    pathOf([from, [centre[0] + side[0] * sign, centre[1] + side[1] * sign]]),
  );
  return [
    ['fine', rays.join('') + circlePath(from, 2)],
    ['air', circlePath(centre, radius)],
    ...concrete(below, seed, { radii: [radius / 3, radius / 11], tries: 80 }),
    ['ink', pathOf(roughLine(...chord(centre, radius, surface), 0.8, 6, seed))],
    ...inside,
    ['heavy', circlePath(centre, radius)],
  ];
}
