import { valueOf, type OwnFigures } from '$shared/figures';
import { daysInYearFrom, type MonthDay } from './calendar';
import { freezingTests, isMeasured } from './cycles';
import { rainWithoutSnow } from './rain';
import type { Day, MonthCount, YearCount } from './types';

/** The days of each twelve months that begin on the first of `start`, by the year they begin in. */
export function splitYears(days: readonly Day[], start: number): Map<number, Day[]> {
  const years = new Map<number, Day[]>();
  for (const day of days) {
    const year = day.month >= start ? day.year : day.year - 1;
    const inside = years.get(year);
    if (inside) inside.push(day);
    else years.set(year, [day]);
  }
  return years;
}

/**
 * Rain between the frosts of one year, mm; null where too many of those days lack it.
 * The snow rule is kept to each day: light snow, or a wrong unit of snow, never takes off the rain of another.
 */
function winterRain(
  days: readonly Day[],
  inWinter: (day: MonthDay) => boolean,
  own?: OwnFigures,
): number | null {
  let [rain, missing] = [0, 0];
  for (const day of days) {
    if (!inWinter(day)) continue;
    if (day.rain === null) missing += 1;
    else rain += rainWithoutSnow(day.rain, day.snow ?? 0, own);
  }
  return missing > valueOf('weather.missing-days', own) ? null : rain;
}

/** Counts one year, and judges whether it is whole enough to count. */
export function countYear(
  year: number,
  days: readonly Day[],
  start: number,
  inWinter: (day: MonthDay) => boolean,
  own?: OwnFigures,
): YearCount {
  const { isFrost, isIce, isCycle } = freezingTests(own);
  let [frost, ice, cycles, measured] = [0, 0, 0, 0];
  for (const day of days) {
    if (!isMeasured(day)) continue;
    measured += 1;
    if (isFrost(day)) frost += 1;
    if (isIce(day)) ice += 1;
    if (isCycle(day)) cycles += 1;
  }
  const missing = daysInYearFrom(year, start) - measured;
  const kept = missing <= valueOf('weather.missing-days', own);
  return {
    year,
    frost,
    ice,
    cycles,
    missing,
    kept,
    winterRain: kept ? winterRain(days, inWinter, own) : null,
  };
}

/** Mean counts of each month over the years given. */
export function countMonths(
  years: readonly (readonly Day[])[],
  own?: OwnFigures,
): readonly MonthCount[] {
  const repair = valueOf('repair.temperature', own);
  const seal = valueOf('seal.temperature', own);
  const { isFrost, isIce, isCycle } = freezingTests(own);
  const share = years.length ? 1 / years.length : 0;
  const months = Array.from({ length: 12 }, (_, index) => ({
    month: index + 1,
    frost: 0,
    ice: 0,
    cycles: 0,
    coldAllDay: 0,
    coldAtNight: 0,
    coldToSeal: 0,
  }));
  for (const day of years.flat()) {
    const month = months[day.month - 1];
    if (!month || !isMeasured(day)) continue;
    if (isFrost(day)) month.frost += share;
    if (isIce(day)) month.ice += share;
    if (isCycle(day)) month.cycles += share;
    if (day.max < repair) month.coldAllDay += share;
    else if (day.min < repair) month.coldAtNight += share;
    if (day.max < seal) month.coldToSeal += share;
  }
  return months;
}
