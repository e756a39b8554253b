import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { started, type TaskLog } from '$lib/answers/day-log';
import { figureTerm, isKnown, typicalOf } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { valueOf } from '$shared/figures';
import { settledJob } from '../helpers/crew-jobs';
import { at, brokenJob as job, doneIn, logged, taskOf, took, usual } from '../helpers/crew-log';
import { onTrial } from '../helpers/rounds';

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
      { numRuns: onTrial(20, 3) },
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
    const [[from, spell] = []] = Object.entries(took(9).spells ?? {});
    const both: TaskLog = {
      ...took(9),
      spells: { [from ?? '']: { people: 1, ...spell, together: true } },
    };
    const one = planJob(
      logged(job, [
        ['z0', 'break-out', both],
        ['z1', 'break-out', both],
      ]),
    );
    expect(one.soFar?.taken).toBeCloseTo(9, 9);
    const [a, b] = ['z0', 'z1'].map((zone) => usual(before, 'break-out', zone));
    expect(usual(one, 'break-out')).toBeCloseTo((9 * (a ?? 0)) / ((a ?? 0) + (b ?? 0)), 9);
    const ratio = 9 / ((a ?? 0) + (b ?? 0));
    expect(usual(one, 'vacuum')).toBeCloseTo(usual(before, 'vacuum') * ratio ** (1 / 3), 9);
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

  it('less than the least teach nothing, and what is too far off neither', () => {
    const short = before.tasks.find(
      ({ hours }) => hours && hours.atTask.typical < valueOf('pace.least'),
    );
    expect(short).toBeDefined();
    const quick = planJob(logged(job, [[short?.zone ?? null, short?.step ?? 'vacuum', took(2)]]));
    expect(quick.soFar).toMatchObject({ counted: 0, pace: null, done: 1 });
    const slip = planJob(logged(job, [['z0', 'break-out', took(1 / 60)]]));
    // A start and a done pressed within a minute: a slip of the thumb, that shortens no day of others.
    expect(slip.soFar?.doubted.map(({ step }) => step)).toEqual(['break-out']);
    expect(slip.soFar).toMatchObject({ counted: 0, ratio: null, pace: null });
    expect(usual(slip, 'vacuum')).toBe(usual(before, 'vacuum'));
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

describe('a step that was begun and is not done', () => {
  const [reckoned, hours] = [usual(job, 'break-out'), 1];
  const open: TaskLog = { spells: took(hours).spells ?? {} };
  const begun = planJob(logged(job, [['z0', 'break-out', open]]));
  it('teaches nothing, and has left what it was reckoned to take less what it has', () => {
    expect(begun.soFar).toMatchObject({ ratio: null, pace: null, counted: 0 });
    const told = [...(begun.soFar?.told.values() ?? [])][0];
    expect(told?.left?.typical).toBeCloseTo(reckoned - hours, 9);
    expect(usual(begun, 'break-out')).toBeCloseTo(reckoned, 9);
  });
  it('has the least left where its hours are used up', () => {
    const long: TaskLog = { spells: took(11).spells ?? {} };
    const { soFar } = planJob(logged(job, [['z1', 'saw-cut', long]]));
    const told = [...(soFar?.told.values() ?? [])][0];
    expect(told?.left?.typical).toBeCloseTo(
      Math.min(usual(before, 'saw-cut', 'z1'), valueOf('share.step')),
      9,
    );
  });
});
