/**
 * Working time among the hours of the calendar. Hour 0 is the start of work on day 1; day n begins
 * at 24 (n - 1), and its work ends `hoursPerDay` later.
 */
export interface Clock {
  readonly hoursPerDay: number;
  /** Whether nobody works on a day, counted from 1. */
  readonly off: (day: number) => boolean;
}

const hoursInDay = 24;
const roundOff = 1e-9;
/** More days off in a row than this are taken for a mistake, so that a search ends. */
const longestBreak = 366;

/** The day an hour belongs to, counted from 1. An end of work at the stroke of its day still belongs to it. */
export const dayOf = (hour: number): number => Math.floor(hour / hoursInDay + roundOff) + 1;

const dayStart = (day: number): number => (day - 1) * hoursInDay;

/** The first moment at or after `hour` at which somebody can work. */
export function workingAt(hour: number, { hoursPerDay, off }: Clock): number {
  let day = dayOf(hour);
  let at = Math.max(hour, dayStart(day));
  if (at - dayStart(day) >= hoursPerDay - roundOff) at = dayStart((day += 1));
  for (let tries = 0; off(day) && tries < longestBreak; tries++) at = dayStart((day += 1));
  return at;
}

/** A stretch of work on one day. */
export interface Stretch {
  readonly day: number;
  readonly from: number;
  readonly to: number;
}

/** The stretches that `work` hours take from a working moment on. */
export function stretches(from: number, work: number, clock: Clock): Stretch[] {
  const found: Stretch[] = [];
  let at = from;
  let left = work;
  while (left > roundOff) {
    at = workingAt(at, clock);
    const day = dayOf(at);
    const now = Math.min(left, dayStart(day) + clock.hoursPerDay - at);
    found.push({ day, from: at, to: at + now });
    at += now;
    left -= now;
  }
  return found;
}

/** Hours of work left on the day of a working moment. */
export const leftOfDay = (at: number, { hoursPerDay }: Clock): number =>
  dayStart(dayOf(at)) + hoursPerDay - at;

/** The start of the next day on which somebody works. */
export const nextMorning = (at: number, clock: Clock): number =>
  workingAt(dayStart(dayOf(at) + 1), clock);
