import { isRealDate, type CalendarDate } from '$lib/climate/calendar';
import type { DateOrder } from './types';

/** The first three letters of each month as files have them, in English and Spanish. */
const monthNames = [
  ['jan', 'ene'],
  ['feb'],
  ['mar'],
  ['apr', 'abr'],
  ['may'],
  ['jun'],
  ['jul'],
  ['aug', 'ago'],
  ['sep'],
  ['oct'],
  ['nov'],
  ['dec', 'dic'],
];

const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/;
const packed = /^(\d{4})(\d{2})(\d{2})(?:\d{2}|\d{4})?$/;
const yearLast = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})(?:[T ,].*)?$/;
const named = /^(\d{1,2})[-/. ]([A-Za-z]{3,10})\.?[-/. ](\d{4})$/;

/** A date as it may stand in a cell, or null. `order` is asked only where the year comes last. */
export function parseDate(text: string, order: DateOrder | null): CalendarDate | null {
  const found = yearFirst.exec(text) ?? packed.exec(text);
  if (found) return real(Number(found[1]), Number(found[2]), Number(found[3]));
  const last = yearLast.exec(text);
  if (last) {
    const [one, two, year] = [Number(last[1]), Number(last[2]), Number(last[3])];
    if (order === 'dmy') return real(year, two, one);
    return order === 'mdy' ? real(year, one, two) : null;
  }
  const word = named.exec(text);
  if (!word) return null;
  const name = (word[2] ?? '').slice(0, 3).toLowerCase();
  const month = monthNames.findIndex((names) => names.includes(name)) + 1;
  return real(Number(word[3]), month, Number(word[1]));
}

function real(year: number, month: number, day: number): CalendarDate | null {
  const date = { year, month, day };
  return isRealDate(date) ? date : null;
}

/** Whether a cell looks like a date in any order. */
export const looksLikeDate = (text: string): boolean =>
  parseDate(text, 'dmy') !== null || parseDate(text, 'mdy') !== null;

/** What the dates of a file say about their order. */
export type OrderFound =
  | { readonly order: DateOrder }
  /** Nothing tells: every day is 12 or less, and the rows do not run on either way. */
  | { readonly order: null }
  /** Two rows that cannot both be right, by their place in the list given. */
  | { readonly conflict: readonly [number, number] };

/**
 * Which number is the day where the year comes last. A number over 12 tells; without one,
 * rows that run from day to day in one order and jump in the other do.
 * @param texts the cells of the date column, in the file's order
 */
export function findOrder(texts: readonly string[]): OrderFound {
  let [dayFirst, monthFirst, open] = [-1, -1, 0];
  for (const [index, text] of texts.entries()) {
    const last = yearLast.exec(text);
    if (!last) continue;
    open += 1;
    if (Number(last[1]) > 12 && Number(last[2]) <= 12 && dayFirst < 0) dayFirst = index;
    if (Number(last[2]) > 12 && Number(last[1]) <= 12 && monthFirst < 0) monthFirst = index;
  }
  if (!open) return { order: 'ymd' };
  if (dayFirst >= 0 && monthFirst >= 0) return { conflict: [dayFirst, monthFirst] };
  if (dayFirst >= 0) return { order: 'dmy' };
  if (monthFirst >= 0) return { order: 'mdy' };
  const [dmy, mdy] = [countSteps(texts, 'dmy'), countSteps(texts, 'mdy')];
  if (dmy === mdy) return { order: null };
  return { order: dmy > mdy ? 'dmy' : 'mdy' };
}

/** How often a row is the day after the row before it. */
function countSteps(texts: readonly string[], order: DateOrder): number {
  let steps = 0;
  let before: CalendarDate | null = null;
  for (const text of texts) {
    const date = parseDate(text, order);
    if (date && before && date.month === before.month && date.day === before.day + 1) steps += 1;
    before = date;
  }
  return steps;
}
