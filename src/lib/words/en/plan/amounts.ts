import type { Amount, Span } from '$lib/plan/amount';
import type { UnitSystem } from '$lib/answers/units';
import type { Unit } from '$shared/types';
import type { Say } from '$lib/words/types';
import { ownLanguage } from '$words/language';
import { minutesIn, shown, type Shown, type ShownUnit } from '$lib/words/units';

/** Digits of a computed range that are worth saying: its ends are further apart than that. */
const rangeDigits = 2;
const litresPerCubicMetre = 1000;
const cubicFeetPerCubicYard = 27;
/** Below this many m3, or this many cubic yards, a volume reads better in the smaller unit. */
const smallVolume = { metric: 0.1, us: 1 } as const;
const largeMass = { metric: 1000, us: 2000 } as const;
const minuteStep = 5;

/** The unit a number of this size is shown in: its label, and how many of it one engine unit is. */
export function shownAs(unit: Unit, size: number, units: UnitSystem): Shown {
  if (unit === 'm3' && size * shown.m3[units].factor < smallVolume[units])
    return units === 'metric'
      ? { label: 'L', factor: litresPerCubicMetre }
      : { label: ownLanguage.units.cubicFoot, factor: shown.m3.us.factor * cubicFeetPerCubicYard };
  if (unit === 'kg' && size * shown.kg[units].factor >= largeMass[units])
    return { label: shown.t[units].label, factor: shown.t[units].factor / 1000 };
  if (unit in shown) return shown[unit as ShownUnit][units];
  return { label: unit === 'ratio' ? '' : unit, factor: 1 };
}

/** Ends of a range to two digits, the low end down and the high end up, so that it never shrinks. */
function rounded([low, high]: Span, digits: number): Span {
  if (low === high) return [low, high];
  const step = (value: number) =>
    value === 0 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
  // A whole number of steps that arithmetic left a hair beside stays that number.
  const hair = 1e-9;
  return [
    Math.floor(low / step(low) + hair) * step(low),
    Math.ceil(high / step(high) - hair) * step(high),
  ];
}

/** "3 to 5", or "3" where both ends are the same when said. */
const ends = ([low, high]: Span, say: Say): string => say.ends(say.number(low), say.number(high));

/** Steps in which hours are said, by the size up to which they hold: nobody plans finer. */
const hourSteps: readonly (readonly [below: number, step: number])[] = [
  [4, 0.25],
  [20, 0.5],
  [Infinity, 1],
];
/** Hours outwards to a step of their own size. */
function roundedHours([low, high]: Span): Span {
  const step = (value: number) => hourSteps.find(([below]) => value < below)?.[1] ?? 1;
  const hair = 1e-9;
  return [
    Math.floor(low / step(low) + hair) * step(low),
    Math.ceil(high / step(high) - hair) * step(high),
  ];
}

/** Hours: in minutes, outwards to five, where there are fewer than one. */
function hours(span: Span, say: Say): string {
  if (span[1] >= 1) {
    const text = ends(span[0] === span[1] ? span : roundedHours(span), say);
    return text === '1' ? '1 hour' : `${text} hours`;
  }
  const minutes = span.map((value, end) => {
    const steps = (value * minutesIn.hour) / minuteStep;
    return minuteStep * Math.max(1, end ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9));
  });
  return `${ends([minutes[0] as number, minutes[1] as number], say)} minutes`;
}

/**
 * A range of something in words, rounded so that it promises no more than it knows.
 * Things counted (bags, skips) are whole: a part of one has to be bought too.
 * @param largest the largest number that stands beside it, so that all are in one unit
 */
export function spanWords(
  span: Span,
  unit: Unit,
  say: Say,
  largest = span[1],
  digits = rangeDigits,
): string {
  if (unit === 'h') return hours(span, say);
  if (unit === 'count') return ends([Math.ceil(span[0]), Math.ceil(span[1])], say);
  if (unit === 'mm') return say.lengths(...span);
  // What was measured is told as a tape shows it; ranges are reckoned, and rounded.
  if (say.units === 'us' && span[0] === span[1]) {
    if (unit === 'm') return say.distance(span[0]);
    if (unit === 'm2') return say.area(span[0]);
  }
  const { label, factor } = shownAs(unit, largest, say.units);
  const text = ends(rounded([span[0] * factor, span[1] * factor], digits), say);
  return label ? `${text} ${label}` : text;
}

/** The amount in words; null where something is missing to work it out. */
export const amountWords = (amount: Amount, say: Say, largest?: number): string | null =>
  'span' in amount ? spanWords(amount.span, amount.unit, say, largest) : null;
