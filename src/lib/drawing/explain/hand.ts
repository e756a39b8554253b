import { roughLine } from '$lib/drawing/lines';
import { pathOf, polygonsPath, rectangle, type Point } from '$lib/drawing/points';
import { packStones } from '$lib/drawing/stones';

/** Points of a rough line from x0 to x1 about height y, `amp` up and down. */
export const roughPoints = (
  x0: number,
  x1: number,
  y: number,
  amp: number,
  step: number,
  seed: number,
): readonly Point[] => roughLine([x0, y], [x1, y], amp * 2, step, seed);

/** The same as a path. */
export const roughPath = (...line: Parameters<typeof roughPoints>): string =>
  pathOf(roughPoints(...line));

/** Stones of about that size scattered over a box, as one path. */
export function stones(
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
  size: number,
  seed: number,
): string {
  const box = rectangle(x, y, x + width, y + height);
  const packing = { seed, radii: [size * 1.1, size * 0.5], gap: size / 6, tries: 240 } as const;
  return polygonsPath(packStones(box, packing).map(({ corners }) => corners));
}
