import { weekdays, type Weekday } from './job';

/** Dates of the calendar as in ISO 8601, "2026-05-04", reckoned without any clock. */

const dayMs = 86_400_000;

const msOf = (date: string): number => Date.parse(`${date}T00:00:00Z`);
const isoOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

/** Whether a text is a day that there is: not the 31st of June. */
export const isDate = (text: string): boolean =>
  Number.isFinite(msOf(text)) && isoOf(msOf(text)) === text;

/** So many days later. */
export const plusDays = (date: string, days: number): string => isoOf(msOf(date) + days * dayMs);

export const weekdayOf = (date: string): Weekday =>
  weekdays[(new Date(msOf(date)).getUTCDay() + 6) % 7] as Weekday;
