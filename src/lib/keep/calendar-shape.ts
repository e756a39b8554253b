import * as v from 'valibot';
import { isDate } from '$lib/answers/dates';
import { weekdays, type WorkCalendar } from '$lib/answers/job';
import { bounds } from './bounds';
import { list, object, picked, says, unique } from './shapes';

const expected = says({ id: 'date' });
const date = v.pipe(
  v.string(expected),
  v.regex(/^\d{4}-\d{2}-\d{2}$/, expected),
  v.check(isDate, expected),
);

/** Start and days off. Somebody has to work on one day of the week. */
export const calendarShape: v.GenericSchema<WorkCalendar, WorkCalendar> = object({
  start: v.exactOptional(date),
  weekly: v.exactOptional(
    v.pipe(
      list(picked(weekdays, { id: 'names', choices: weekdays }), weekdays.length - 1),
      unique<(typeof weekdays)[number]>(),
    ),
  ),
  off: v.exactOptional(v.pipe(list(date, bounds.daysOff), unique<string>())),
});
