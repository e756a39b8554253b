import type { Region } from '$lib/answers/crew-day';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';

export const noiseLimitIds = [
  'osha-action',
  'osha-limit',
  'niosh',
  'eu-lower',
  'eu-upper',
  'eu-limit',
] as const;
export type NoiseLimitId = (typeof noiseLimitIds)[number];

/** The noise limit that protectors and sharing aim at: the recommended one in the US, where the legal one is laxer. */
export const noiseAim: Readonly<Record<Region, NoiseLimitId>> = {
  us: 'niosh',
  elsewhere: 'eu-upper',
};

/** How time is traded for level. `energy`: equal energy, exactly ten decibels for a factor of ten. */
interface NoiseRule {
  readonly criterion: FigureId;
  readonly exchange: FigureId | 'energy';
  /** Periods quieter than this add nothing. */
  readonly threshold?: FigureId;
}

/**
 * Every limit as a level for the reference day, with its exchange rate. The action level of the
 * OSHA rule is half its dose, and with a 5 dB exchange half the dose is 5 dB less.
 */
export const noiseRules: Readonly<Record<NoiseLimitId, NoiseRule>> = {
  'osha-action': {
    criterion: 'noise.osha-action',
    exchange: 'noise.osha-exchange',
    threshold: 'noise.osha-threshold',
  },
  'osha-limit': {
    criterion: 'noise.osha-criterion',
    exchange: 'noise.osha-exchange',
    threshold: 'noise.osha-threshold',
  },
  niosh: { criterion: 'noise.niosh-criterion', exchange: 'noise.niosh-exchange' },
  'eu-lower': { criterion: 'noise.eu-lower', exchange: 'energy' },
  'eu-upper': { criterion: 'noise.eu-upper', exchange: 'energy' },
  'eu-limit': { criterion: 'noise.eu-limit', exchange: 'energy' },
};

/** The figures a limit leans on. */
export function figuresOfLimit(limit: NoiseLimitId): readonly FigureId[] {
  const { criterion, exchange, threshold } = noiseRules[limit];
  return [
    'noise.day',
    criterion,
    ...(exchange === 'energy' ? [] : [exchange]),
    ...(threshold ? [threshold] : []),
  ];
}

/** Decibels for a factor of e in time, so that both kinds of trade share one formula. */
function decibelsPerE({ exchange }: NoiseRule, own?: OwnFigures): number {
  return exchange === 'energy' ? 10 / Math.LN10 : valueOf(exchange, own) / Math.LN2;
}

/**
 * Hours at a steady level that use up a limit.
 * OSHA: T = 8 / 2^((L - 90) / 5) (29 CFR 1910.95 Table G-16a, footnote). NIOSH: 3 dB from 85.
 * EU: equal energy. Infinity below the rule's threshold.
 * @param level dB(A)
 */
export function allowedHours(limit: NoiseLimitId, level: number, own?: OwnFigures): number {
  const rule = noiseRules[limit];
  if (rule.threshold && level < valueOf(rule.threshold, own)) return Infinity;
  const above = level - valueOf(rule.criterion, own);
  return valueOf('noise.day', own) * Math.exp(-above / decibelsPerE(rule, own));
}

/** The part of a limit that some hours at a steady level use up; 1 is all of it. Parts add. */
export const partOf = (
  limit: NoiseLimitId,
  level: number,
  hours: number,
  own?: OwnFigures,
): number => hours / allowedHours(limit, level, own);

/**
 * The steady level over the reference day that would use up the same part: the time-weighted
 * average of OSHA and NIOSH, LEX,8h of the EU, dB(A). Minus infinity for a silent day.
 * OSHA prints it as TWA = 16.61 log10(D / 100) + 90; 16.61 is 5 / log10(2) rounded.
 */
export function dayLevel(limit: NoiseLimitId, part: number, own?: OwnFigures): number {
  const rule = noiseRules[limit];
  return valueOf(rule.criterion, own) + decibelsPerE(rule, own) * Math.log(part);
}
