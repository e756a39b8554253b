import { plusDays, weekdayOf } from '$lib/answers/dates';
import type { Job } from '$lib/answers/job';
import { beganOn } from '$lib/answers/task-log';
import type { Calendar } from './days';

/** What of a job names its days. */
type Dated = Partial<Pick<Job, 'calendar' | 'log' | 'zones'>>;

/** Day 1: the day on which work began; until then the start that was typed. */
const dayOne = (job: Dated): string | undefined => beganOn(job) ?? job.calendar?.start;

/** How the days of a job are counted: its crew, its hours, and its days off once it has a start. */
export function calendarOf(job: Job): Calendar {
  const { crew, hoursPerDay, calendar: { weekly = [], off = [] } = {} } = job;
  const start = dayOne(job);
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
export function dateOfDay(job: Dated, day: number): string | null {
  const start = dayOne(job);
  return start === undefined ? null : plusDays(start, day - 1);
}
