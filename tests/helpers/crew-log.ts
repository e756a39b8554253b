import fc from 'fast-check';
import type { DayLog, Moment, TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { withLogs } from '$lib/answers/task-log';
import type { StepId } from '$shared/methods';

/** A moment of May 2026 in a place two hours ahead of UTC. */
export const at = (day: number, time: string): Moment =>
  `2026-05-${String(day).padStart(2, '0')}T${time}:00+02:00`;

/** A step done in one go. */
export const doneIn = (from: Moment, to: Moment, people = 1): TaskLog => ({
  spells: { [from]: { to, people } },
  done: to,
});

/** The job with logs of steps of its zones; null is the job itself. */
export const logged = (
  job: Job,
  logs: readonly (readonly [string | null, StepId, TaskLog])[],
): Job =>
  withLogs(
    job,
    logs.map(([zone, step, log]) => ({ zone, step, log })),
  );

const anyMoment = fc
  .tuple(
    fc.integer({ min: 1, max: 28 }),
    fc.integer({ min: 0, max: 23 }),
    fc.integer({ min: 0, max: 59 }),
    fc.constantFrom('+02:00', '-05:00', '+00:00', '+05:30'),
  )
  .map(
    ([day, hour, minute, offset]): Moment =>
      `2026-05-${[day, hour].map((part) => String(part).padStart(2, '0')).join('T')}:${String(minute).padStart(2, '0')}:00${offset}`,
  );

const anySpell = fc.record(
  {
    people: fc.integer({ min: 1, max: 4 }),
    to: anyMoment,
    together: fc.constant(true as const),
  },
  { requiredKeys: ['people'], noNullPrototype: true },
);
const anyTaskLog = fc
  .record(
    {
      spells: fc.dictionary(anyMoment, anySpell, {
        minKeys: 1,
        maxKeys: 3,
        noNullPrototype: true,
      }),
      done: anyMoment,
      note: fc.constantFrom('Rain', 'Two bars more', 'Sägeblatt stumpf'),
    },
    { requiredKeys: [], noNullPrototype: true },
  )
  .filter((log) => Object.keys(log).length > 0);

/** Any log of a few steps, sense or none. */
export const anyDayLog = (steps: readonly StepId[]): fc.Arbitrary<DayLog> =>
  fc.dictionary(fc.constantFrom(...steps), anyTaskLog, {
    minKeys: 1,
    maxKeys: 3,
    noNullPrototype: true,
  }) as unknown as fc.Arbitrary<DayLog>;
