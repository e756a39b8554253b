import fc from 'fast-check';
import type { DayLog, Moment, TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { withLogs } from '$lib/answers/task-log';
import { planJob, type Plan } from '$lib/plan/plan';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { tradeJob } from './trade-jobs';

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

const broken = { depth: 40, looseness: ['hollow'], finish: ['overlay'], area: 6 };
/** Two zones that are broken out, invented. */
export const brokenJob = tradeJob(
  [broken, { ...broken, area: 3 }],
  {},
  { crew: 2, hoursPerDay: 8 },
);
/** A task of a plan. */
export const taskOf = ({ tasks }: Plan, step: StepId, zone: string | null = 'z0'): Task => {
  const found = tasks.find((each) => each.step === step && each.zone === zone);
  if (!found) throw new Error(`no ${step}`);
  return found;
};
/** Hours at the task that a step usually takes. */
export const usual = (of: Job | Plan, step: StepId, zone: string | null = 'z0'): number =>
  taskOf('tasks' in of ? of : planJob(of), step, zone).hours?.atTask.typical ?? 0;
/** A log of a step that took so many hours from 07:00 on. */
export const took = (hours: number, day = 4, people = 1): TaskLog => {
  const minutes = Math.round(hours * 60);
  const end = 7 * 60 + minutes;
  const text = `${String(Math.floor(end / 60)).padStart(2, '0')}:${String(end % 60).padStart(2, '0')}`;
  return doneIn(at(day, '07:00'), at(day, text), people);
};
