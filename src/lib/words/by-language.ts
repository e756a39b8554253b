import { ownLanguage } from '$words/language';

/** What every language does in a way of its own, by the locale of the build: capitals, order, dates. */
const { locale } = ownLanguage;

/** A text as the beginning of a sentence, or of a line. */
export const capital = (text: string): string =>
  text.charAt(0).toLocaleUpperCase(locale) + text.slice(1);

/** A text as it goes on inside a sentence. What begins with a code in capitals (CSP) keeps it. */
export const lowered = (text: string): string =>
  /^\p{Lu}{2}/u.test(text) ? text : text.charAt(0).toLocaleLowerCase(locale) + text.slice(1);

/** For sorting names: capitals and accents count last. */
export const inOrder = (one: string, other: string): number =>
  one.localeCompare(other, locale, { sensitivity: 'base' });

/** A whole number with the marks of the language: "12,500". */
export const wholeNumber = (value: number): string => value.toLocaleString(locale);

/** A number with one decimal: "1.5". */
export const inTenths = (value: number): string =>
  value.toLocaleString(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 });

const written = (time: Date | number, how: Intl.DateTimeFormatOptions): string =>
  new Intl.DateTimeFormat(locale, how).format(time);
const midnight = (iso: string) => new Date(`${iso}T00:00:00Z`);
const timeZone = 'UTC';

/** Today, or the day of a moment, in full: "4 May 2026". */
export const dayWords = (time: Date | number): string => written(time, { dateStyle: 'long' });

/** A day of the calendar in full: "4 May 2026" for "2026-05-04". */
export const isoDayWords = (iso: string): string =>
  written(midnight(iso), { dateStyle: 'long', timeZone });

/** A day of the calendar in short: "Mon 4 May" for "2026-05-04". */
export const shortDay = (iso: string): string =>
  written(midnight(iso), { weekday: 'short', day: 'numeric', month: 'short', timeZone });

/** A day with the time on the reader's clock: "4 May 2026, 07:30". */
export const timeWords = (time: Date | number): string =>
  written(time, { dateStyle: 'medium', timeStyle: 'short' });

/** A day of every year, of months counted from 1: "4 May". */
export const dayOfYear = ({ month, day }: { month: number; day: number }): string =>
  written(Date.UTC(2000, month - 1, day), { day: 'numeric', month: 'long', timeZone });

/** A day of one year, of months counted from 1: "4 May 1998". */
export const shortDate = ({ year, month, day }: { year: number; month: number; day: number }) =>
  written(Date.UTC(year, month - 1, day), { dateStyle: 'medium', timeZone });

/** A month counted from 1: "January", "Jan" or "J". */
export const monthName = (month: number, length: 'long' | 'short' | 'narrow' = 'long'): string =>
  written(Date.UTC(2000, month - 1, 1), { month: length, timeZone });
