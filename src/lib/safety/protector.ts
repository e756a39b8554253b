import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { mapBounds } from './bounds';
import type { Bounds } from './types';

export const protectorCautionIds = [
  'rating-is-laboratory',
  'fit-it-and-check',
  'hear-the-warnings',
  'quieter-first',
] as const;
export type ProtectorCautionId = (typeof protectorCautionIds)[number];

/** What a hearing protector has to do to bring a day down to a limit. */
export interface Protector {
  /** Decibels it must really take off at the ear. */
  readonly needed: Bounds;
  /** Rating (NRR, dB) its label must carry for that, after derating; 0 where none is needed. */
  readonly rating: Bounds;
  /** True where the rating asked for may be higher than any on sale: plugs and muffs together, and less time. */
  readonly beyondOne: boolean;
  readonly cautions: readonly ProtectorCautionId[];
}

/** The figures the derating leans on. */
export const protectorFigures: readonly FigureId[] = [
  'noise.rating-a-weighted',
  'noise.rating-derating',
  'noise.rating-highest',
];

/**
 * The rating that leaves a wanted attenuation in real use: rating = wanted / (1 - derating) + 7,
 * which is 29 CFR 1910.95 Appendix B for levels in dB(A), with the field derating on top.
 * @param wanted dB really taken off at the ear
 */
export function ratingFor(wanted: number, own?: OwnFigures): number {
  if (wanted <= 0) return 0;
  const kept = 1 - valueOf('noise.rating-derating', own) / 100;
  return wanted / kept + valueOf('noise.rating-a-weighted', own);
}

/** What a rating takes off at the ear in real use, dB: the other way round. */
export function takenOff(rating: number, own?: OwnFigures): number {
  const kept = 1 - valueOf('noise.rating-derating', own) / 100;
  return Math.max(0, (rating - valueOf('noise.rating-a-weighted', own)) * kept);
}

/** The protector that brings a day's mean level down to a limit, both dB(A). */
export function protectorFor(level: Bounds, limit: number, own?: OwnFigures): Protector {
  const needed = mapBounds(level, (value) => Math.max(0, value - limit));
  const rating = mapBounds(needed, (wanted) => ratingFor(wanted, own));
  return {
    needed,
    rating,
    beyondOne: rating.high > valueOf('noise.rating-highest', own),
    cautions: protectorCautionIds,
  };
}
