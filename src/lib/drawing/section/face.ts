import type { Texture } from '$lib/answers/questions';
import { amplitudeOf, roughLine } from '$lib/drawing/lines';
import type { Point } from '$lib/drawing/points';
import { rangeOf } from '$shared/figures';

const found = {
  smooth: 'csp.found.smooth',
  sandy: 'csp.found.sandy',
  pitted: 'csp.found.pitted',
} as const;

/** Peak to valley of a profile on the sheet: to scale, and never finer than the pen. */
const roughness = (profile: number, scale: number): number =>
  Math.max(0.7, amplitudeOf(profile) * scale);

/** A piece of face along the section, as rough as the texture found there. In along and into. */
export function foundFace(
  from: number,
  to: number,
  texture: Texture | null,
  scale: number,
  seed: number,
): readonly Point[] {
  const [, roughest] = texture ? rangeOf(found[texture]) : [0, 1];
  const height = roughness(roughest, scale);
  return roughLine([from, height * 0.2], [to, height * 0.2], height, Math.max(4, height), seed);
}

/**
 * The floor that preparing leaves: as rough as the method leaves it, or a steady line while
 * no method is settled.
 */
export function leftFloor(
  from: Point,
  to: Point,
  profile: number | null,
  scale: number,
  seed: number,
): readonly Point[] {
  const height = profile === null ? 1.2 : roughness(profile, scale);
  return roughLine(from, to, height, Math.max(6, Math.min(16, height * 1.6)), seed);
}
