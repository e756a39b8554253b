import { roughLine } from '$lib/drawing/lines';
import { pathOf, type Point, type Polygon } from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';
import type { Box } from './scaling';

/** The half of a convex polygon that lies nearer to `own` than to `other`. */
function nearer(polygon: Polygon, own: Point, other: Point): Polygon {
  const [mx, my] = [(own[0] + other[0]) / 2, (own[1] + other[1]) / 2];
  const [dx, dy] = [other[0] - own[0], other[1] - own[1]];
  const side = ([x, y]: Point) => (x - mx) * dx + (y - my) * dy;
  return polygon.flatMap((corner, index) => {
    const after = polygon[(index + 1) % polygon.length] ?? corner;
    const [here, there] = [side(corner), side(after)];
    const kept = here <= 0 ? [corner] : [];
    if (here <= 0 === there <= 0) return kept;
    const share = here / (here - there);
    return [
      ...kept,
      [
        corner[0] + (after[0] - corner[0]) * share,
        corner[1] + (after[1] - corner[1]) * share,
      ] as Point,
    ];
  });
}

/**
 * Cells of a net of cracks over a box. There are as many as a mesh of the asked width makes, to
 * the nearest whole one: so the mean cell is as wide as asked, and no cell is like the next.
 * @param mesh side in sheet units of a square as large as the mean cell
 */
export function cells(
  [left, top, right, bottom]: Box,
  mesh: number,
  seed: number,
): readonly Polygon[] {
  const next = randomFrom(seed);
  const [width, height] = [right - left, bottom - top];
  const count = Math.max(1, Math.round((width * height) / mesh ** 2));
  const kept: Point[] = [];
  // Each middle is the farthest from the others among some tried: cells of about one size.
  while (kept.length < count) {
    let best: Point = [left, top];
    let far = -1;
    for (let attempt = 0; attempt < 8; attempt++) {
      const tried: Point = [left + next() * width, top + next() * height];
      const clear = Math.min(...kept.map(([x, y]) => Math.hypot(x - tried[0], y - tried[1])), 1e9);
      if (clear > far) [best, far] = [tried, clear];
    }
    kept.push(best);
  }
  const box: Polygon = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  return kept.map((own) =>
    kept.reduce((cell, other) => (other === own ? cell : nearer(cell, own, other)), box),
  );
}

/** The cracks between the cells, each drawn once, a little off the straight. */
export function cracksBetween(
  all: readonly Polygon[],
  [left, top, right, bottom]: Box,
  seed: number,
): string {
  const drawn = new Set<string>();
  const near = (one: number, other: number) => Math.abs(one - other) < 0.05;
  return all
    .flatMap((cell) =>
      cell.map((from, index): [Point, Point] => [from, cell[(index + 1) % cell.length] ?? from]),
    )
    .filter(([[x1, y1], [x2, y2]]) => {
      const rim =
        [left, right].some((x) => near(x1, x) && near(x2, x)) ||
        [top, bottom].some((y) => near(y1, y) && near(y2, y));
      const name = `${((x1 + x2) / 2).toFixed(1)} ${((y1 + y2) / 2).toFixed(1)}`;
      if (rim || drawn.has(name)) return false;
      drawn.add(name);
      return true;
    })
    .map(([from, to], index) => pathOf(roughLine(from, to, 1.4, 5, seed + index)))
    .join('');
}
