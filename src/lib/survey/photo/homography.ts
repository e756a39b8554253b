import type { Place } from '$lib/answers/survey';
import { solve } from './solve';

/**
 * What a picture of a flat surface does to it, taken back: nine numbers, row by row, that take a
 * place of the picture to one on the surface (Hartley and Zisserman, Multiple View Geometry, 2.3
 * and 4.1; from memory).
 */
export type Homography = readonly number[];

/** Where a place comes to, and its depth: what lies beyond the horizon has the other sign. */
export function seen(
  [a, b, c, d, e, f, g, h, i]: Homography,
  [x, y]: Place,
): { readonly place: Place; readonly depth: number } {
  const depth = (g as number) * x + (h as number) * y + (i as number);
  return {
    place: [
      ((a as number) * x + (b as number) * y + (c as number)) / depth,
      ((d as number) * x + (e as number) * y + (f as number)) / depth,
    ],
    depth,
  };
}

/**
 * The one that takes four places of a picture to four of the surface.
 * @returns null where three of them lie on one line
 */
export function homography(from: readonly Place[], to: readonly Place[]): Homography | null {
  // Around 1, so that the equations weigh alike.
  const size = Math.max(...from.flat().map(Math.abs), 1e-9);
  const width = Math.max(...to.flat().map(Math.abs), 1e-9);
  const rows = from.flatMap(([px, py], index) => {
    const [x, y] = [px / size, py / size];
    const [u, v] = (to[index] as Place).map((each) => each / width) as [number, number];
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  const found = solve(rows);
  if (!found) return null;
  const [a, b, c, d, e, f, g, h] = found as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return [
    (a * width) / size,
    (b * width) / size,
    c * width,
    (d * width) / size,
    (e * width) / size,
    f * width,
    g / size,
    h / size,
    1,
  ];
}
