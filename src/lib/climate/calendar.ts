/**
 * Dates as numbers: days since 1 January 1970 in the Gregorian calendar, no time of day, no time zone.
 * The arithmetic counts from 1 March, so that the leap day comes last in its year.
 */

/** A day of the year without a year. Month and day count from 1. */
export interface MonthDay {
  readonly month: number;
  readonly day: number;
}

export interface CalendarDate extends MonthDay {
  readonly year: number;
}

const daysInMonth = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const daysPer400Years = 146097;
const daysBefore1970 = 719468;

const isLeapYear = (year: number): boolean =>
  (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Whether there was such a day. */
export function isRealDate({ year, month, day }: CalendarDate): boolean {
  const longest = daysInMonth[month - 1];
  if (!Number.isInteger(year) || longest === undefined || !(day >= 1 && day <= longest))
    return false;
  return month !== 2 || day < 29 || isLeapYear(year);
}

/** Days since 1 January 1970. */
export function dayNumber({ year, month, day }: CalendarDate): number {
  const shifted = month > 2 ? year : year - 1;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const monthFromMarch = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * daysPer400Years + dayOfEra - daysBefore1970;
}

/** Days in the twelve months that begin on the first of `month` in `year`. */
export const daysInYearFrom = (year: number, month: number): number =>
  dayNumber({ year: year + 1, month, day: 1 }) - dayNumber({ year, month, day: 1 });

/** The place of a day in a table of 366 days that begins on 1 January: 0 to 365. 29 February is always counted. */
export function placeInYear({ month, day }: MonthDay): number {
  let place = day - 1;
  for (let before = 1; before < month; before += 1) place += daysInMonth[before - 1] ?? 0;
  return place;
}

/** The day at a place in that table. */
export function dayAtPlace(place: number): MonthDay {
  let left = ((place % 366) + 366) % 366;
  for (const [index, length] of daysInMonth.entries()) {
    if (left < length) return { month: index + 1, day: left + 1 };
    left -= length;
  }
  throw new RangeError(`no day at place ${place}`);
}
