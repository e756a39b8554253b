import { valueOf, type OwnFigures } from '$shared/figures';
import { dayLevel, partOf, type NoiseLimitId } from './noise-limits';
import { takenOff } from './protector';

/** What the ears need where a day's noise, at usual values, takes more than a limit. */
export interface Ears {
  /** Decibels to take off at the ear. */
  readonly needed: number;
  /** What does it: one protector, plugs and muffs together, or not even these. */
  readonly by: 'one' | 'both' | 'neither';
}

/** What one good protector, and plugs and muffs together, take off at the ear in real use, dB. */
export function takenOffBy(own?: OwnFigures): { readonly one: number; readonly both: number } {
  const one = takenOff(valueOf('noise.rating-highest', own), own);
  return { one, both: one + valueOf('noise.rating-second', own) };
}

/**
 * What the ears need where noise takes `part` of a limit. Source: 29 CFR 1910.95 Appendix B with the
 * field derating; the second protector's share is figure `noise.rating-second`.
 */
export function earsFor(part: number, limit: NoiseLimitId, own?: OwnFigures): Ears {
  const needed = dayLevel(limit, part, own) - dayLevel(limit, 1, own);
  const { one, both } = takenOffBy(own);
  return { needed, by: needed <= one ? 'one' : needed <= both ? 'both' : 'neither' };
}

/**
 * Fewest people whose equal turns at all the loud work of a day would do with both worn.
 * @param whole parts of the limit that the work of all takes
 * @param beside parts that are heard from others’ machines all the same; not counted where they alone are too much
 */
export function peopleWithBoth(
  whole: number,
  beside: number,
  limit: NoiseLimitId,
  own?: OwnFigures,
): number {
  const most = mostWithBoth(limit, own);
  return Math.ceil(whole / (beside < most ? most - beside : most) - 1e-9);
}

/** How many times a limit a day may take at the most, plugs and muffs worn together. */
export const mostWithBoth = (limit: NoiseLimitId, own?: OwnFigures): number =>
  partOf(limit, dayLevel(limit, 1, own) + takenOffBy(own).both, valueOf('noise.day', own), own);
