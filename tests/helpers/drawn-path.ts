import type { Drawing } from '$lib/drawing/mark';

type Place = readonly [x: number, y: number];

/** The lines of SVG path data made of M, L, l and z alone: what a browser would draw. */
export function linesOf(path: string): readonly (readonly Place[])[] {
  const lines: Place[][] = [];
  let here: Place = [0, 0];
  for (const [, command = '', rest = ''] of path.matchAll(/([MLlz])([^MLlz]*)/g)) {
    if (command === 'z') continue;
    const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    if (command === 'M') lines.push([]);
    for (let index = 0; index + 1 < numbers.length; index += 2) {
      const [x = 0, y = 0] = [numbers[index], numbers[index + 1]];
      // Pairs after the first of an M are lines, measured as its letter says.
      here = command === 'l' ? [here[0] + x, here[1] + y] : [x, y];
      lines.at(-1)?.push(here);
    }
  }
  return lines;
}

/** The area a filled path covers, by the shoelace formula; islands count against it. */
export const areaOfPath = (path: string): number =>
  Math.abs(
    linesOf(path).reduce(
      (sum, line) =>
        sum +
        line.reduce((part, [x, y], index) => {
          const [nx, ny] = line[(index + 1) % line.length] ?? [x, y];
          return part + (x * ny - nx * y) / 2;
        }, 0),
      0,
    ),
  );

/** The first path of a drawing with a kind of ink. */
export const pathWith = (drawing: Drawing, ink: string): string =>
  drawing.find(([own]) => own === ink)?.[1] ?? '';

/**
 * How many pieces lines cut a sheet into, counted as a child colours them in: the sheet is laid
 * out in small squares, ten to a unit, and each piece is filled up to the lines.
 */
export function piecesBetween(
  lines: ReturnType<typeof linesOf>,
  width: number,
  height: number,
): number {
  const [columns, rows, fine] = [width * 10, height * 10, 10];
  const taken = new Uint8Array(columns * rows);
  for (const line of lines)
    line.slice(1).forEach((to, index) => {
      const from = line[index] ?? to;
      const steps = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) * fine * 3) || 1;
      for (let step = 0; step <= steps; step++) {
        const column = Math.round((from[0] + ((to[0] - from[0]) * step) / steps) * fine);
        const row = Math.round((from[1] + ((to[1] - from[1]) * step) / steps) * fine);
        for (const [right, down] of [
          [0, 0],
          [1, 0],
          [0, 1],
        ] as const)
          if (column + right < columns && row + down < rows)
            taken[(row + down) * columns + column + right] = 1;
      }
    });
  let pieces = 0;
  for (let start = 0; start < taken.length; start++) {
    if (taken[start]) continue;
    let size = 0;
    const open = [start];
    taken[start] = 1;
    while (open.length) {
      const at = open.pop() ?? 0;
      size++;
      const column = at % columns;
      for (const next of [
        column > 0 ? at - 1 : -1,
        column < columns - 1 ? at + 1 : -1,
        at - columns,
        at + columns,
      ])
        if (next >= 0 && next < taken.length && !taken[next]) {
          taken[next] = 1;
          open.push(next);
        }
    }
    // What is caught between two strokes is no piece.
    if (size > 200) pieces++;
  }
  return pieces;
}
