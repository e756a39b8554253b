import * as v from 'valibot';
import { isMoment, type DayLog, type Spell, type TaskLog } from '$lib/answers/day-log';
import { rangeOf } from '$shared/figures';
import { stepIds } from '$shared/methods';
import { behind, name, object, says, whole } from './shapes';

const expected = says({ id: 'wall-time' });
const moment = v.pipe(
  v.string(expected),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/, expected),
  v.check(isMoment, expected),
);

const spell: v.GenericSchema<Spell, Spell> = object({
  to: v.exactOptional(moment),
  people: whole(rangeOf('limit.crew')),
  together: v.exactOptional(v.literal(true, says({ id: 'truth' }))),
});

const most = rangeOf('limit.log-spells')[1];
const goes = says({ id: 'goes', most });
/** Keys that a record passes over in silence instead of refusing them. */
const passedOver = ['__proto__', 'prototype', 'constructor'];
const spells = behind(
  v.pipe(v.record(moment, spell, goes), v.maxEntries(most, goes)),
  (value) =>
    !Array.isArray(value) && !passedOver.some((key) => Object.hasOwn((value ?? {}) as object, key)),
);

const task: v.GenericSchema<TaskLog, TaskLog> = object({
  spells: v.exactOptional(spells),
  done: v.exactOptional(moment),
  note: v.exactOptional(name),
});

/** What the crew told of its steps, as the job file and the link have it. */
export const logShape: v.GenericSchema<DayLog, DayLog> = object(
  Object.fromEntries(stepIds.map((id) => [id, v.exactOptional(task)])) as Record<
    (typeof stepIds)[number],
    v.ExactOptionalSchema<typeof task, undefined>
  >,
);
