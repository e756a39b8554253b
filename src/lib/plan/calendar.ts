import { plusDays, weekdayOf } from '$lib/answers/dates';
import type { Job } from '$lib/answers/job';
import type { Calendar } from './days';

/** How the days of a job are counted: its crew, its hours, and its days off once it has a start. */
export function calendarOf({ crew, hoursPerDay, calendar = {} }: Job): Calendar {
  const { start, weekly = [], off = [] } = calendar;
  return {
    crew,
    hoursPerDay,
    ...(start !== undefined && {
      off: (day: number) => {
        const date = plusDays(start, day - 1);
        return off.includes(date) || weekly.includes(weekdayOf(date));
      },
    }),
  };
}

/** The date of a day of the job; null while it has no start. */
export const dateOfDay = ({ calendar }: Pick<Job, 'calendar'>, day: number): string | null =>
  calendar?.start === undefined ? null : plusDays(calendar.start, day - 1);
