import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import type { SettledSite } from './types';

/**
 * What the place and the size of a zone allow: which tools can stand there, and in which order of
 * gentleness they are tried.
 */

const floors = {
  slab: true,
  'suspended-slab': true,
  steps: false,
  'suspended-steps': false,
  wall: false,
  soffit: false,
} as const;

/** Whether walk-behind machines can stand and turn on this part of a building. */
export const isFloor = (element: SettledSite['element']): boolean => floors[element];

/**
 * Every ladder, gentlest first; the first sufficient method is advised. Methods on none are named
 * as alternatives with what they cost, not chosen.
 * `recess` is a firm hollow that is to be filled: nothing flat and nothing on wheels gets into it.
 * Source: common practice, no published source.
 */
export const ladders = {
  floor: ['pressure-wash', 'grind', 'scarify', 'shotblast', 'break-out'],
  'floor-spot': ['pressure-wash', 'grind', 'needle-scale', 'abrasive-blast', 'break-out'],
  'off-floor': ['pressure-wash', 'grind', 'abrasive-blast', 'needle-scale', 'break-out'],
  'off-floor-spot': ['pressure-wash', 'grind', 'needle-scale', 'abrasive-blast', 'break-out'],
  'off-floor-wide': ['pressure-wash', 'abrasive-blast', 'break-out'],
  recess: ['pressure-wash', 'abrasive-blast', 'break-out'],
} as const satisfies Record<string, readonly MethodId[]>;
export type Place = keyof typeof ladders;

/** Whether so little is to be done that no walk-behind machine, and no specialist, is worth setting up. */
export const isSpot = ({ area }: { readonly area: number | 'unknown' }): boolean =>
  area !== 'unknown' && area < valueOf('place.spot');

/**
 * The place of a zone. An area nobody knows counts as neither small nor large.
 * @param area m2
 * Source: common practice, no published source (figures `place.spot`, `place.wide`).
 */
export function placeOf(
  element: SettledSite['element'],
  area: number | 'unknown',
  firmHollow: boolean,
): Place {
  if (firmHollow) return 'recess';
  const spot = isSpot({ area });
  if (isFloor(element)) return spot ? 'floor-spot' : 'floor';
  if (spot) return 'off-floor-spot';
  return area !== 'unknown' && area > valueOf('place.wide') ? 'off-floor-wide' : 'off-floor';
}
