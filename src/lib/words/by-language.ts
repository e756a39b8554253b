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

/** Making one is slow, using one is not. */
const writing = (how: Intl.DateTimeFormatOptions) => {
  let made: Intl.DateTimeFormat | undefined;
  return (time: Date | number): string =>
    (made ??= new Intl.DateTimeFormat(locale, how)).format(time);
};
const midnight = (iso: string) => new Date(`${iso}T00:00:00Z`);
const timeZone = 'UTC';
const inFull = writing({ dateStyle: 'long' });
const inFullOfDay = writing({ dateStyle: 'long', timeZone });
const inShort = writing({ weekday: 'short', day: 'numeric', month: 'short', timeZone });
const withTime = writing({ dateStyle: 'medium', timeStyle: 'short' });
const ofEveryYear = writing({ day: 'numeric', month: 'long', timeZone });
const ofOneYear = writing({ dateStyle: 'medium', timeZone });
const months = {
  long: writing({ month: 'long', timeZone }),
  short: writing({ month: 'short', timeZone }),
  narrow: writing({ month: 'narrow', timeZone }),
};

/** Today, or the day of a moment, in full: "4 May 2026". */
export const dayWords = (time: Date | number): string => inFull(time);

/** A day of the calendar in full: "4 May 2026" for "2026-05-04". */
export const isoDayWords = (iso: string): string => inFullOfDay(midnight(iso));

/** A day of the calendar in short: "Mon 4 May" for "2026-05-04". */
export const shortDay = (iso: string): string => inShort(midnight(iso));

/** A day with the time on the reader's clock: "4 May 2026, 07:30". */
export const timeWords = (time: Date | number): string => withTime(time);

/** A day of every year, of months counted from 1: "4 May". */
export const dayOfYear = ({ month, day }: { month: number; day: number }): string =>
  ofEveryYear(Date.UTC(2000, month - 1, day));

/** A day of one year, of months counted from 1: "4 May 1998". */
export const shortDate = ({ year, month, day }: { year: number; month: number; day: number }) =>
  ofOneYear(Date.UTC(year, month - 1, day));

/** A month counted from 1: "January", "Jan" or "J". */
export const monthName = (month: number, length: 'long' | 'short' | 'narrow' = 'long'): string =>
  months[length](Date.UTC(2000, month - 1, 1));
