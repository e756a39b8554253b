import { valueOf } from '$shared/figures';
import { choicesOf, type DepthBand } from './questions';

export const depthBands = choicesOf('depth');

/** The upper edge of each band in mm, and whether the edge itself belongs to the band. */
const edges: readonly { band: DepthBand; upTo: number; included: boolean }[] = [
  { band: 'film', upTo: valueOf('depth.film'), included: false },
  { band: 'under-3', upTo: valueOf('depth.thin'), included: false },
  { band: '3-to-6', upTo: valueOf('depth.shallow'), included: true },
  { band: '6-to-20', upTo: valueOf('depth.spall-small'), included: true },
  { band: '20-to-50', upTo: valueOf('depth.deep'), included: true },
];

/**
 * The band a measured depth falls in.
 * @param depth mm, zero or more
 * @param thickness mm of the whole slab; a depth that reaches it goes through
 */
export function bandOf(depth: number, thickness: number | 'unknown'): DepthBand {
  if (thickness !== 'unknown' && depth >= thickness) return 'through';
  return (
    edges.find(({ upTo, included }) => (included ? depth <= upTo : depth < upTo))?.band ?? 'over-50'
  );
}

/**
 * The depths in mm that a band covers, lower and upper edge.
 * The open-ended bands end at the slab's thickness where it is known.
 */
export function rangeOfBand(band: DepthBand, thickness: number | 'unknown'): [number, number] {
  const whole = thickness === 'unknown' ? Infinity : thickness;
  if (band === 'through') return [thickness === 'unknown' ? valueOf('depth.deep') : whole, whole];
  const index = edges.findIndex((edge) => edge.band === band);
  const lower = index === 0 ? 0 : (edges.at(index === -1 ? -1 : index - 1)?.upTo ?? 0);
  const upper = edges[index]?.upTo ?? whole;
  return [Math.min(lower, whole), Math.min(upper, whole)];
}

const places = Object.fromEntries(depthBands.map((band, place) => [band, place])) as Readonly<
  Record<DepthBand, number>
>;
/** Whether a depth band reaches at least as deep as another. */
export const atLeast = (band: DepthBand, other: DepthBand): boolean =>
  places[band] >= places[other];

/**
 * Every depth at which something can change: the edges of the bands, and half and all of the
 * thickness where it is known. For each, a depth just on either side, in mm.
 */
export function depthEdges(
  thickness: number | 'unknown',
): readonly { at: number; below: number; above: number }[] {
  const nudge = 0.01;
  const all = edges.map(({ upTo, included }) =>
    included
      ? { at: upTo, below: upTo, above: upTo + nudge }
      : { at: upTo, below: upTo - nudge, above: upTo },
  );
  if (thickness === 'unknown') return all;
  // Half and all of the slab take the place of a band edge at the same depth: they weigh more.
  const own = [thickness * valueOf('depth.full-limit'), thickness].map((at) => ({
    at,
    below: at - nudge,
    above: at,
  }));
  return [...all.filter(({ at }) => !own.some((edge) => edge.at === at)), ...own]
    .filter(({ at }) => at <= thickness)
    .sort((one, other) => one.at - other.at);
}
