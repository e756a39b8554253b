import { rangeOf, valueOf } from '$shared/figures';
import type { Point } from './points';
import { randomFrom } from './random';

/**
 * Peak-to-valley height in mm with which a concrete surface profile is drawn.
 * Only the top of the scale has a published height (CSP 10). Below it the height is let fall
 * with the square of the step, so that CSP 1 is as good as smooth: an assumption of the drawing,
 * to tell the steps apart, and used for nothing else.
 */
export function amplitudeOf(profile: number): number {
  const [, roughest] = rangeOf('csp.scale');
  return valueOf('csp.10-amplitude') * (profile / roughest) ** 2;
}

/**
 * A broken line from one point to another, rough to both sides of the straight one.
 * @param height peak to valley
 * @param step mean length of a facet
 */
export function roughLine(
  [x1, y1]: Point,
  [x2, y2]: Point,
  height: number,
  step: number,
  seed: number,
): readonly Point[] {
  const next = randomFrom(seed);
  const length = Math.hypot(x2 - x1, y2 - y1);
  const facets = Math.max(1, Math.round(length / step));
  const side = length ? ([-(y2 - y1) / length, (x2 - x1) / length] as const) : ([0, 0] as const);
  return Array.from({ length: facets + 1 }, (_, index): Point => {
    const atEnd = index === 0 || index === facets;
    const along = atEnd ? index / facets : (index + (next() - 0.5) * 0.7) / facets;
    // Peaks and valleys take turns, each of its own height, as a cutter or a chisel leaves them.
    const off = atEnd ? 0 : ((index % 2 ? 1 : -1) * (0.15 + next() * 0.85) * height) / 2;
    return [x1 + (x2 - x1) * along + side[0] * off, y1 + (y2 - y1) * along + side[1] * off];
  });
}

/** A straight line as a steady hand draws it: true to a third of a unit. */
export const handLine = (from: Point, to: Point, seed: number): readonly Point[] =>
  roughLine(from, to, 0.7, 16, seed);

/** The same points pushed sideways: `down` is added to each y. */
export const shifted = (points: readonly Point[], right: number, down: number): readonly Point[] =>
  points.map(([x, y]): Point => [x + right, y + down]);
