import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { started, type TaskLog } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { figureTerm, isKnown, typicalOf } from '$lib/plan/amount';
import { planJob, type Plan } from '$lib/plan/plan';
import type { Task } from '$lib/plan/tasks';
import { crewDaysOf } from '$lib/safety/from-plan';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { settledJob } from '../helpers/crew-jobs';
import { at, doneIn, logged } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

const broken = { depth: 40, looseness: ['hollow'], finish: ['overlay'], area: 6 };
const job = tradeJob([broken, { ...broken, area: 3 }], {}, { crew: 2, hoursPerDay: 8 });
const taskOf = ({ tasks }: Plan, step: StepId, zone: string | null = 'z0'): Task => {
  const found = tasks.find((each) => each.step === step && each.zone === zone);
  if (!found) throw new Error(`no ${step}`);
  return found;
};
const usual = (of: Job | Plan, step: StepId, zone: string | null = 'z0'): number =>
  taskOf('tasks' in of ? of : planJob(of), step, zone).hours?.atTask.typical ?? 0;
/** A log of a step that took so many hours from 07:00 on. */
const took = (hours: number, day = 4, people = 1): TaskLog => {
  const minutes = Math.round(hours * 60);
  const end = 7 * 60 + minutes;
  const text = `${String(Math.floor(end / 60)).padStart(2, '0')}:${String(end % 60).padStart(2, '0')}`;
  return doneIn(at(day, '07:00'), at(day, text), people);
};
const before = planJob(job);

describe('without a word of the crew', () => {
  it('the plan is the same to the last bit', () => {
    fc.assert(
      fc.property(settledJob, (any) => {
        const plan = planJob(any);
        expect(plan.soFar).toBeNull();
        expect(plan.schedule.left).toBeNull();
        const bare = { ...any, zones: any.zones.map((zone) => ({ ...zone })) };
        expect(JSON.stringify(planJob(bare).tasks)).toBe(JSON.stringify(plan.tasks));
      }),
      { numRuns: 20 },
    );
    // A note alone, or a step that goes on, teaches no pace.
    for (const log of [{ note: 'Gate locked' }, started({}, at(4, '07:00'), 1)]) {
      const plan = planJob(logged(job, [['z0', 'break-out', log]]));
      expect(plan.tasks.map(({ hours }) => hours)).toEqual(before.tasks.map(({ hours }) => hours));
      expect(plan.soFar).toMatchObject({ ratio: null, pace: null, done: 0 });
    }
  });
});

describe('hours that were taken', () => {
  // By hand: reckoned r, taken 1.5 r; the kind's own pace is 1.5 to the power of two thirds, others' of one third.
  const reckoned = usual(job, 'break-out');
  const slow = logged(job, [['z0', 'break-out', took(1.5 * reckoned)]]);
  const plan = planJob(slow);

  it('stand for the finished step, and its kind goes on at its pace', () => {
    const done = taskOf(plan, 'break-out');
    expect(done.hours?.atTask.low).toBe(done.hours?.atTask.high);
    expect(usual(plan, 'break-out')).toBeCloseTo(1.5 * reckoned, 1);
    const ratio = usual(plan, 'break-out') / reckoned;
    expect(plan.soFar?.ratio).toBeCloseTo(ratio, 9);
    expect(usual(plan, 'break-out', 'z1')).toBeCloseTo(
      usual(before, 'break-out', 'z1') * ratio ** (2 / 3),
      9,
    );
    expect(usual(plan, 'vacuum')).toBeCloseTo(usual(before, 'vacuum') * ratio ** (1 / 3), 9);
  });

  it('show in the working of what is left, whose ends stay as far apart', () => {
    const { labour } = taskOf(plan, 'break-out', 'z1');
    const { labour: old } = taskOf(before, 'break-out', 'z1');
    if (!labour || !old || !isKnown(labour) || !isKnown(old)) throw new Error('no hours');
    expect(labour.working.at(-1)).toMatchObject({ what: 'pace' });
    expect(labour.span[1] / labour.span[0]).toBeCloseTo(old.span[1] / old.span[0], 9);
    expect(typicalOf(labour) / typicalOf(old)).toBeGreaterThan(1.2);
  });

  it('come to the whole: what was taken and what is left', () => {
    const { soFar } = plan;
    const whole = plan.tasks.reduce((sum, { hours }) => sum + (hours?.atTask.typical ?? 0), 0);
    expect((soFar?.taken ?? 0) + (soFar?.left.typical ?? 0)).toBeCloseTo(whole, 9);
  });

  it('go into the days and what each person breathes', () => {
    const late = planJob(logged(job, [['z0', 'break-out', took(11)]]));
    expect(late.schedule.typicalCount).toBeGreaterThanOrEqual(before.schedule.typicalCount);
    const [first] = crewDaysOf(late, job).shifts;
    const hours = first?.workers.flatMap(({ tasks }) =>
      tasks.flatMap(({ step, atTask }) => (step === 'break-out' ? (atTask ?? 0) : [])),
    );
    expect(Math.max(...(hours ?? []))).toBeCloseTo(11, 6);
  });

  it('count for each pair of hands where hands share it, and once where one machine does it', () => {
    const two = planJob(logged(job, [['z0', 'break-out', took(2, 4, 2)]]));
    expect(two.soFar?.taken).toBeCloseTo(4, 9);
    expect(taskOf(before, 'saw-cut').shared).toBe(false);
    expect(planJob(logged(job, [['z0', 'saw-cut', took(2, 4, 2)]])).soFar?.taken).toBeCloseTo(2, 9);
  });

  it('do not count while it is stopped', () => {
    const log: TaskLog = {
      spells: {
        [at(4, '07:00')]: { to: at(4, '08:00'), people: 1 },
        [at(5, '07:00')]: { to: at(5, '07:30'), people: 1 },
      },
      done: at(5, '07:30'),
    };
    expect(planJob(logged(job, [['z0', 'break-out', log]])).soFar?.taken).toBeCloseTo(1.5, 9);
  });

  it('are right over a change of the clocks', () => {
    // 25 October 2026, 03:00 summer time becomes 02:00 winter time in the middle of Europe: the hour
    // from 02:00 to 03:00 comes twice (EU directive 2000/84). On the wall an hour and a half passes.
    const night = doneIn('2026-10-25T01:30:00+02:00', '2026-10-25T03:00:00+01:00');
    expect(planJob(logged(job, [['z0', 'break-out', night]])).soFar?.taken).toBeCloseTo(2.5, 9);
  });

  it('of zones gone over in one go are shared out as they were reckoned, and teach one thing', () => {
    const [[from, spell] = []] = Object.entries(took(3).spells ?? {});
    const both: TaskLog = {
      ...took(3),
      spells: { [from ?? '']: { people: 1, ...spell, together: true } },
    };
    const one = planJob(
      logged(job, [
        ['z0', 'break-out', both],
        ['z1', 'break-out', both],
      ]),
    );
    expect(one.soFar?.taken).toBeCloseTo(3, 9);
    const [a, b] = ['z0', 'z1'].map((zone) => usual(before, 'break-out', zone));
    expect(usual(one, 'break-out')).toBeCloseTo((3 * (a ?? 0)) / ((a ?? 0) + (b ?? 0)), 9);
    const ratio = 3 / ((a ?? 0) + (b ?? 0));
    expect(usual(one, ('free-bar' as StepId) in {} ? 'free-bar' : 'vacuum')).toBeCloseTo(
      usual(before, 'vacuum') * ratio ** (1 / 3),
      9,
    );
  });

  it('of two zones that two people did side by side count each', () => {
    const each = planJob(
      logged(job, [
        ['z0', 'break-out', took(3)],
        ['z1', 'break-out', took(3)],
      ]),
    );
    expect(each.soFar).toMatchObject({ counted: 2 });
    expect(each.soFar?.taken).toBeCloseTo(6, 9);
  });

  it('less than the least teach nothing, and what is far off counts as its bound', () => {
    const short = before.tasks.find(
      ({ hours }) => hours && hours.atTask.typical < valueOf('pace.least'),
    );
    expect(short).toBeDefined();
    const quick = planJob(logged(job, [[short?.zone ?? null, short?.step ?? 'vacuum', took(2)]]));
    expect(quick.soFar).toMatchObject({ counted: 0, pace: null, done: 1 });
    const slip = planJob(logged(job, [['z0', 'break-out', took(1 / 60)]]));
    expect(slip.soFar?.capped.map(({ step }) => step)).toEqual(['break-out']);
    expect(usual(slip, 'vacuum')).toBeCloseTo(
      usual(before, 'vacuum') * (1 / valueOf('pace.most')) ** (1 / 3),
      9,
    );
  });

  it('give way to the reader’s own figure, which the ratio is then taken against', () => {
    const { labour } = taskOf(before, 'break-out');
    const figure = labour && isKnown(labour) ? labour.working.at(-1)?.figure : undefined;
    if (!figure || !labour) throw new Error('no rate');
    // Who has seen it take 1.5 times as long and types that rate is not counted slow a second time.
    const rate = (typicalOf(figureTerm('rate', figure)) * 1.5) as number;
    const own = planJob({ ...slow, own: { [figure]: rate } });
    expect(own.soFar?.ratio).toBeCloseTo(1, 1);
  });
});

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
          ).soFar?.left;
        const [quick, slow] = [left(one), left(one + more)];
        for (const end of ['low', 'typical', 'high'] as const)
          expect(slow?.[end]).toBeGreaterThanOrEqual((quick?.[end] ?? 0) - 1e-9);
      }),
      { numRuns: 40 },
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
      { numRuns: 60 },
    );
  });
});
