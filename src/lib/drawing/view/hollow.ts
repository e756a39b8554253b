import { randomFrom } from '$lib/drawing/random';
import { pathOf, polygonsPath, sidesOf, type Point, type Polygon } from '$lib/drawing/points';

/** Twice the signed area of a polygon: positive where its corners turn clockwise on the sheet. */
const turnOf = (polygon: Polygon): number =>
  sidesOf(polygon).reduce((sum, [[x1, y1], [x2, y2]]) => sum + x1 * y2 - x2 * y1, 0);

const onRim = ([x, y]: Point): boolean => x < 0.05 || y < 0.05 || x > 119.95 || y > 71.95;

/** Area of a polygon in square sheet units. */
export const areaOf = (polygon: Polygon): number => Math.abs(turnOf(polygon)) / 2;

/** A broken outline round a point: no corner like the next, as concrete breaks. */
export function ragged(
  [x, y]: Point,
  across: number,
  down: number,
  seed: number,
  { corners = 22, rough = 0.24 }: { corners?: number; rough?: number } = {},
): Polygon {
  const next = randomFrom(seed);
  return Array.from({ length: corners }, (_, index): Point => {
    const angle = ((index + (next() - 0.5) * 0.7) / corners) * 2 * Math.PI;
    const reach = 1 - rough / 2 + (next() - 0.5) * rough;
    return [x + Math.cos(angle) * across * reach, y + Math.sin(angle) * down * reach];
  });
}

/**
 * The shadow that the rim of a hollow throws into it. The light comes from the upper left at 45
 * degrees, so that the shadow is as broad as the hollow is deep: the depth can be read from above.
 * @param depth in sheet units; below 0 for what stands out, whose shadow falls outside
 */
export function shadow(outline: Polygon, depth: number): string {
  const reach = Math.abs(depth) * Math.SQRT1_2;
  const inward = Math.sign(turnOf(outline)) * Math.sign(depth);
  return polygonsPath(
    sidesOf(outline)
      // Where the sheet ends there is no rim.
      .filter(([from, to]) => !(onRim(from) && onRim(to)))
      // A side whose inner face looks away from the light.
      .filter(([[x1, y1], [x2, y2]]) => (x2 - x1 - (y2 - y1)) * inward > 0)
      .map(([[x1, y1], [x2, y2]]): Polygon => [
        [x1, y1],
        [x2, y2],
        [x2 + reach, y2 + reach],
        [x1 + reach, y1 + reach],
      ]),
  );
}

/** The part of a star-shaped hollow that the light reaches: what is left beside its shadow. */
export function lit(outline: Polygon, middle: Point, depth: number): Polygon {
  const reach = depth * Math.SQRT1_2;
  const moved = outline.map(([x, y]): Point => [x + reach, y + reach]);
  const centre: Point = [middle[0] + reach * 0.55, middle[1] + reach * 0.55];
  const count = 40;
  return Array.from({ length: count }, (_, index): Point => {
    const angle = (index / count) * 2 * Math.PI;
    const far = Math.min(rayTo(outline, centre, angle), rayTo(moved, centre, angle));
    return [centre[0] + Math.cos(angle) * far, centre[1] + Math.sin(angle) * far];
  });
}

/** How far it is from a point to a polygon's outline, in a direction given in radians. */
export function rayTo(polygon: Polygon, [x, y]: Point, angle: number): number {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  const hits = sidesOf(polygon).flatMap(([[x1, y1], [x2, y2]]) => {
    const [sx, sy] = [x2 - x1, y2 - y1];
    const cross = dx * sy - dy * sx;
    if (!cross) return [];
    const along = ((x1 - x) * sy - (y1 - y) * sx) / cross;
    const share = ((x1 - x) * dy - (y1 - y) * dx) / cross;
    return along > 0 && share >= 0 && share <= 1 ? [along] : [];
  });
  return hits.length ? Math.min(...hits) : 0;
}

export const outlineOf = (polygon: Polygon): string => pathOf(polygon, true);

/** The mean of a polygon's corners. */
export const middleOf = (polygon: Polygon): Point => [
  polygon.reduce((sum, [x]) => sum + x, 0) / polygon.length,
  polygon.reduce((sum, [, y]) => sum + y, 0) / polygon.length,
];

/** The same polygon, smaller round its middle. */
export function shrunk(polygon: Polygon, to: number): Polygon {
  const [mx, my] = middleOf(polygon);
  return polygon.map(([x, y]): Point => [mx + (x - mx) * to, my + (y - my) * to]);
}
