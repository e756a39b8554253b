import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { started, type TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { dateOfDay } from '$lib/plan/calendar';
import { planJob } from '$lib/plan/plan';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { at, brokenJob as job, doneIn, logged, took, usual } from '../helpers/crew-log';
import { onTrial, rounds } from '../helpers/rounds';

const before = planJob(job);

describe('what cannot have been so', () => {
  const faultsOf = (log: TaskLog) => {
    const { soFar } = planJob(logged(job, [['z0', 'break-out', log]]));
    return [soFar?.faults.map(({ fault }) => fault), soFar?.taken, soFar?.counted];
  };
  it('is told, and the rest stays', () => {
    expect(faultsOf(doneIn(at(4, '09:00'), at(4, '08:00')))).toEqual([['stop-first'], 0, 0]);
    // Left "started" overnight, stopped the next morning.
    expect(faultsOf(doneIn(at(4, '15:00'), at(5, '07:00')))).toEqual([['too-long'], 0, 0]);
    expect(faultsOf({ ...started({}, at(4, '07:00'), 1), done: at(4, '09:00') })).toEqual([
      ['left-running'],
      0,
      0,
    ]);
    const twice: TaskLog = {
      spells: {
        [at(4, '07:00')]: { to: at(4, '09:00'), people: 1 },
        [at(4, '08:00')]: { to: at(4, '10:00'), people: 1 },
      },
      done: at(4, '10:00'),
    };
    expect(faultsOf(twice)).toEqual([['overlap'], 3, 1]);
    const mixed: TaskLog = {
      spells: {
        [at(4, '07:00')]: { to: at(4, '09:00'), people: 1 },
        [at(4, '12:00')]: { to: at(4, '11:00'), people: 1 },
      },
    };
    expect(faultsOf(mixed)).toEqual([['stop-first'], 2, 0]);
  });
});

describe('the days of a job that has begun', () => {
  it('begin with the first day told; what was done lies on its day, the rest after it', () => {
    const plan = planJob(
      logged(job, [
        [null, 'make-safe', doneIn(at(6, '07:00'), at(6, '07:30'))],
        ['z0', 'break-out', doneIn(at(8, '08:00'), at(8, '12:00'))],
      ]),
    );
    const placed = (step: StepId, zone: string | null = 'z0') =>
      plan.schedule.placed.find(({ task }) => task.step === step && task.zone === zone);
    expect(placed('make-safe', null)).toMatchObject({ from: 0, to: 0.5 });
    expect(placed('break-out')).toMatchObject({ from: 48, to: 52 });
    for (const { task, stretches } of plan.schedule.placed)
      if (task.step !== 'make-safe' && !(task.step === 'break-out' && task.zone === 'z0'))
        for (const { from } of stretches) expect(from).toBeGreaterThanOrEqual(52);
    expect(plan.schedule.left?.typical).toBeGreaterThan(0);
  });

  it('keep a step that goes on where it was begun, and go on with it first', () => {
    const plan = planJob(logged(job, [['z1', 'vacuum', started({}, at(4, '07:00'), 1)]]));
    const running = plan.schedule.placed.find(
      ({ task }) => task.step === 'vacuum' && task.zone === 'z1',
    );
    expect(running?.stretches[0]).toEqual({ day: 1, from: 0, to: 0 });
    // Whichever zone would be sawn second is sawn first where the saw already stands in it.
    const sawn = (of: Job, zone: string) =>
      planJob(of).schedule.placed.find(({ task }) => task.step === 'saw-cut' && task.zone === zone)
        ?.to ?? 0;
    const ready = logged(job, [
      [null, 'make-safe', doneIn(at(4, '06:00'), at(4, '06:30'))],
      ...['z0', 'z1'].map(
        (zone) => [zone, 'sound-and-mark', doneIn(at(4, '06:30'), at(4, '07:00'))] as const,
      ),
    ]);
    const [first, second] = ['z0', 'z1'].sort(
      (one, other) => sawn(ready, one) - sawn(ready, other),
    );
    const saw = logged(ready, [[second ?? '', 'saw-cut', started({}, at(4, '07:00'), 1)]]);
    expect(sawn(saw, second ?? '')).toBeLessThan(sawn(saw, first ?? ''));
  });

  it('are named by the day on which work began, whatever was typed before', () => {
    const typed = { ...job, calendar: { start: '2026-05-01' } };
    expect(dateOfDay(typed, 1)).toBe('2026-05-01');
    const begun = logged(typed, [[null, 'make-safe', doneIn(at(6, '07:00'), at(6, '07:30'))]]);
    expect([1, 2].map((day) => dateOfDay(begun, day))).toEqual(['2026-05-06', '2026-05-07']);
  });

  it('keep what was ticked off without hours on its day, as it was reckoned', () => {
    const plan = planJob(logged(job, [['z0', 'break-out', { done: at(4, '16:00') }]]));
    const done = plan.schedule.placed.find(
      ({ task }) => task.step === 'break-out' && task.zone === 'z0',
    );
    expect(done?.stretches[0]?.day).toBe(1);
    expect(plan.soFar).toMatchObject({ done: 1, counted: 0, taken: 0 });
    expect(usual(plan, 'break-out')).toBe(usual(before, 'break-out'));
  });

  it('have none left when all is done', () => {
    const all = before.tasks.map(
      ({ zone, step }) => [zone, step, { done: at(4, '16:00') }] as const,
    );
    const { soFar, schedule } = planJob(logged(job, all));
    expect(soFar?.left).toEqual({ low: 0, typical: 0, high: 0 });
    expect(schedule.left).toEqual({ count: [0, 0], typical: 0, first: null });
  });
});

describe('any log', () => {
  const hours = fc.integer({ min: 1, max: 600 }).map((minutes) => minutes / 60);
  it('slower work never leaves a shorter rest', () => {
    fc.assert(
      fc.property(hours, hours, hours, (one, two, more) => {
        const left = (first: number) =>
          planJob(
            logged(job, [
              ['z0', 'break-out', took(Math.min(first, 11))],
              ['z0', 'saw-cut', took(two)],
            ]),
          ).soFar;
        const [quick, slow] = [left(one), left(one + more)];
        // What is too far off to be a pace is told and asked about, like a time that cannot be right.
        fc.pre(!quick?.doubted.length && !slow?.doubted.length);
        for (const end of ['low', 'typical', 'high'] as const)
          expect(slow?.left[end]).toBeGreaterThanOrEqual((quick?.left[end] ?? 0) - 1e-9);
      }),
      { numRuns: onTrial(rounds(15, 40), 3) },
    );
  });

  it('taken and left come to the whole, and nobody is set to work before the last word told', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(before.tasks.length - 1), { minLength: 1, maxLength: 8 }),
        fc.array(fc.tuple(hours, fc.boolean(), fc.integer({ min: 4, max: 7 })), {
          minLength: 8,
          maxLength: 8,
        }),
        (places, says) => {
          const logs = places.map((place, index) => {
            const { step, zone } = before.tasks[place] as Task;
            const [long, done, day] = says[index] as [number, boolean, number];
            const { done: end, ...open } = took(long, day);
            return [zone, step, done ? { ...open, done: end as string } : open] as const;
          });
          const plan = planJob(logged(job, logs));
          const { soFar, schedule } = plan;
          const whole = plan.tasks.reduce((sum, { hours: h }) => sum + (h?.atTask.typical ?? 0), 0);
          const unknown = plan.tasks.reduce(
            (sum, task) => sum + (task.hours ? 0 : (soFar?.told.get(task)?.spent.hours ?? 0)),
            0,
          );
          expect((soFar?.taken ?? 0) + (soFar?.left.typical ?? 0) - unknown).toBeCloseTo(whole, 6);
          expect(schedule.placed).toHaveLength(plan.tasks.length);
          const laid = schedule.placed.flatMap(({ people, stretches }) =>
            stretches.flatMap(({ from, to }) => (to > from ? people.map(() => to - from) : [])),
          );
          expect(laid.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: onTrial(rounds(15, 60), 3) },
    );
  });
});
