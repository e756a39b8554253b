import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { planJob } from '$lib/plan/plan';
import { mustWait } from '$lib/plan/waiting';
import { crewHazards } from '$lib/safety/crew-hazards';
import { crewDaysOf, crewPlace, type CrewPlan } from '$lib/safety/from-plan';
import { safetyOf } from '$lib/safety/safety-of';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { hollow, settledJob } from '../helpers/crew-jobs';
import { onTrial, rounds } from '../helpers/rounds';

const crewOf = (job: Job) => crewDaysOf(planJob(job), job);

/** Usual hours of each step over everybody and every day. */
function hoursIn({ shifts }: CrewPlan): Map<StepId, number> {
  const total = new Map<StepId, number>();
  for (const { days, workers } of shifts)
    for (const { step, typical = 0 } of workers.flatMap(({ tasks }) => tasks))
      total.set(step, (total.get(step) ?? 0) + typical * (days[1] - days[0] + 1));
  return total;
}
describe('the crew’s days of a plan', () => {
  it('give every hour of the plan that may be worked to somebody, once', () => {
    let worked = 0;
    fc.assert(
      fc.property(settledJob, fc.boolean(), (drawn, equal) => {
        const job: Job = { ...drawn, crewDay: { turns: equal ? 'equal' : 'one-operator' } };
        const plan = planJob(job);
        const dealt = hoursIn(crewDaysOf(plan, job));
        const wanted = new Map<StepId, number>();
        const waits = mustWait(plan);
        for (const task of plan.tasks)
          if (!waits(task))
            wanted.set(
              task.step,
              (wanted.get(task.step) ?? 0) + (task.hours?.running.typical ?? 0),
            );
        for (const [step, hours] of wanted) {
          if (hours <= 1e-6) continue;
          worked += 1;
          expect((dealt.get(step) ?? 0) / hours, step).toBeCloseTo(1, 4);
        }
      }),
      { numRuns: onTrial(rounds(15, 60), 5) },
    );
    expect(worked).toBeGreaterThan(onTrial(50, 4));
  });

  it('leave a person no longer day than the plan has', () => {
    fc.assert(
      fc.property(settledJob, (drawn) => {
        const plan = planJob(drawn);
        for (const { workers } of crewDaysOf(plan, drawn).shifts)
          for (const { tasks } of workers)
            expect(tasks.reduce((sum, { hours }) => sum + hours[1], 0)).toBeLessThan(
              plan.schedule.hoursPerDay + 1e-6,
            );
      }),
      { numRuns: onTrial(rounds(25, 100), 5) },
    );
  });

  it('put the one machine in one pair of hands, or in turns', () => {
    const job = hollow({ crew: 3 });
    const shares = (crew: CrewPlan, step: StepId) => {
      const found = crew.shifts[0]?.workers.map(
        ({ tasks }) => tasks.find((task) => task.step === step)?.atTask ?? 0,
      );
      return [...(found ?? [])].sort((one, other) => other - one);
    };
    const [first, ...others] = shares(crewOf(job), 'saw-cut');
    expect(first).toBeGreaterThan(0);
    expect(others).toEqual([0, 0]);
    const turns = shares(crewOf({ ...job, crewDay: { turns: 'equal' } }), 'saw-cut');
    expect(turns).toHaveLength(3);
    for (const hours of turns) expect(hours).toBeCloseTo((first ?? 0) / 3, 9);
  });

  it('never make the worst-off person better off with one operator than in turns', () => {
    fc.assert(
      fc.property(settledJob, (drawn) => {
        const worst = (turns: 'one-operator' | 'equal') => {
          const job: Job = { ...drawn, crewDay: { turns } };
          return crewOf(job).shifts.map(({ workers }) => {
            const read = safetyOf({ region: 'us', workers });
            if (!read.ok) throw new Error(JSON.stringify(read.problems));
            const people = read.safety.workers;
            return [
              Math.max(...people.map(({ noise }) => noise.limits.niosh.part.high)),
              Math.max(...people.map(({ vibration }) => vibration.points.high)),
            ];
          });
        };
        const [alone, equal] = [worst('one-operator'), worst('equal')];
        if (alone.length !== equal.length) return;
        for (const [index, day] of alone.entries())
          for (const [end, value] of day.entries())
            expect(value).toBeGreaterThan((equal[index]?.[end] ?? 0) * (1 - 1e-6) - 1e-6);
      }),
      { numRuns: onTrial(rounds(15, 40), 5) },
    );
  });

  it('tells days of the same work once', () => {
    const job = hollow({ crew: 1 });
    const [zone] = job.zones;
    if (!zone) throw new Error('a zone');
    const large = { ...job, zones: [{ ...zone, answers: { ...zone.answers, area: 400 } }] };
    const { shifts } = crewOf(large);
    expect(shifts.some(({ days: [from, to] }) => to - from > 3)).toBe(true);
    const order = shifts.flatMap(({ days }) => days);
    expect(order).toEqual([...order].sort((one, other) => one - other));
  });
});

describe('what is open', () => {
  it('is read as the harder place, and said', () => {
    expect(crewPlace(hollow())).toEqual({ setting: 'open', element: 'slab', taken: [] });
    const open = crewPlace(
      hollow({}, { setting: ['sheltered', 'open'], element: ['slab', 'wall'] }),
    );
    expect(open).toEqual({
      setting: 'sheltered',
      element: 'wall',
      taken: ['setting', 'element'],
    });
    expect(crewPlace({ site: {} }).setting).toBe('indoors');
  });
  it('puts steps without hours on no day and names them', () => {
    const job = hollow();
    const [zone] = job.zones;
    if (!zone) throw new Error('a zone');
    const answers = { ...zone.answers, area: 'unknown' as const };
    const crew = crewOf({ ...job, zones: [{ ...zone, answers }] });
    expect(crew.unknown).toContain('break-out');
    expect(crew.shifts.flatMap(({ steps }) => steps)).not.toContain('break-out');
  });
});

describe('the reader’s own tools', () => {
  it('lay their levels and wheel over the usual ones', () => {
    const job = hollow({
      toolLevels: {
        'chipping-hammer': { noise: 98, vibration: 4, measured: true },
        'walk-behind-saw': { vibration: 3, wheel: 350 },
      },
    });
    const tasks = crewOf(job).shifts.flatMap(({ workers }) => workers[0]?.tasks ?? []);
    expect(tasks.find(({ tool }) => tool === 'chipping-hammer')).toMatchObject({
      ownLevel: 98,
      ownVibration: 4,
      ownVibrationFrom: 'measured',
    });
    expect(tasks.find(({ tool }) => tool === 'walk-behind-saw')).toMatchObject({
      ownVibration: 3,
      ownVibrationFrom: 'maker',
      wheel: 350,
    });
  });
  it('take another tool of the step, but none that the place does not allow', () => {
    const toolOf = (job: Job) =>
      crewOf(job).shifts[0]?.workers[0]?.tasks.find(({ step }) => step === 'saw-cut')?.tool;
    expect(toolOf(hollow({ crewDay: { tools: { 'saw-cut': 'hand-saw' } } }))).toBe('hand-saw');
    expect(
      toolOf(
        hollow({ crewDay: { tools: { 'saw-cut': 'walk-behind-saw' } } }, { element: ['steps'] }),
      ),
    ).toBe('hand-saw');
  });
});

describe('against hand arithmetic', () => {
  // HSE ready reckoner: points = 2 a^2 an hour (from a secondary copy of the table).
  it('the points of one day with the hammer of the patch', () => {
    const own = { 'vibration.demolition-hammer': 6 };
    const job = hollow({ crew: 2, own });
    const shift = crewOf(job).shifts.find(({ steps }) => steps.includes('break-out'));
    const task = shift?.workers
      .flatMap(({ tasks }) => tasks)
      .find(({ step }) => step === 'break-out');
    if (!shift || !task) throw new Error('expected breaking out');
    const read = safetyOf({ region: 'us', workers: [{ id: '2', tasks: [task] }] }, own);
    if (!read.ok) throw new Error('expected a result');
    const points = read.safety.workers[0]?.vibration.points;
    expect(points?.low).toBeCloseTo(2 * 36 * task.hours[0], 6);
    expect(points?.high).toBeCloseTo(2 * 36 * task.hours[1], 6);
    expect(valueOf('vibration.action-points')).toBe(100);
  });
});

describe('hazards of a day', () => {
  it('take what may be there as there', () => {
    const steps = [{ id: 'grind' as const, zones: ['a'] }];
    const names = (job: Job) => crewHazards(job, steps).map(({ hazard }) => hazard);
    expect(names(hollow())).not.toContain('lead-asbestos');
    const maybe = hollow({}, { warnings: { yes: [], maybe: ['old-coating-or-adhesive'] } });
    expect(names(maybe)).toContain('lead-asbestos');
    expect(names(hollow({}, { element: ['slab', 'soffit'] }))).toContain('overhead');
    for (const { steps: bringing } of crewHazards(hollow(), steps))
      expect(bringing).toEqual(['grind']);
  });
});
