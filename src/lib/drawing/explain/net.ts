import { pathOf, type Point } from '$lib/drawing/points';
import { randomFrom } from '$lib/drawing/random';

/** A net of cracks over a box: meshes about `mesh` wide, none quite like the next. */
export function crackNet(
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
  mesh: number,
  seed: number,
): string {
  const roll = randomFrom(seed);
  const columns = Math.round(width / mesh);
  const rows = Math.round(height / mesh);
  const inside = (value: number, from: number, size: number) =>
    Math.min(Math.max(value, from), from + size);
  const knots = Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (__, column): Point => [
      inside(x + (column + (row % 2 ? 0.5 : 0) + (roll() - 0.5) * 0.7) * mesh, x, width),
      inside(y + (row + (roll() - 0.5) * 0.7) * mesh, y, height),
    ]),
  );
  return knots
    .flatMap((line, row) => [
      pathOf(line),
      // Like bricks: each mesh hangs on the one above at another place than its neighbour.
      ...line.flatMap((from, column) => {
        const to = knots[row + 1]?.[column];
        return to && roll() < 0.85 ? [pathOf([from, to])] : [];
      }),
    ])
    .join('');
}
