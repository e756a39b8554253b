import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { Plan } from '$lib/plan/plan';
import { crewDaysOf, crewPlace, toolsAt, type CrewPlan } from '$lib/safety/from-plan';
import { crewDays } from '$lib/safety/whole-job';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { hollow } from '../helpers/crew-jobs';

const near = (value: number) => expect.closeTo(value, 9) as number;

/** What a plan lays: step, tool, whose hands, and from when to when on which day. */
type Laid = readonly [StepId, ToolId, readonly number[], number, number, number];
const planOf = (laid: readonly Laid[], more: object = {}): Plan =>
  ({
    schedule: {
      ...{ crew: 2, unknown: ['grind'] },
      placed: laid.map(([step, tool, people, day, from, to]) => ({
        ...{ task: { step, tool: { tool }, zones: ['a'] }, people },
        stretches: [{ day, from, to }],
      })),
    },
    steps: [
      { id: 'water-jet', hours: null },
      { id: 'break-out', hours: 2 },
      { id: 'grind', hours: null },
    ],
    zones: [{ id: 'a', holds: [] }],
    ...more,
  }) as unknown as Plan;

describe('the place a crew works in', () => {
  it('is the harder one that is possible: under a roof, off the floor', () => {
    expect(crewPlace({ site: {} })).toEqual({
      ...{ setting: 'indoors', element: 'steps', taken: ['setting', 'element'] },
    });
    expect(crewPlace({ site: { setting: ['open', 'sheltered'], element: ['slab'] } })).toEqual({
      ...{ setting: 'sheltered', element: 'slab', taken: ['setting'] },
    });
    expect(crewPlace({ site: { setting: ['open'], element: ['slab', 'wall'] } })).toEqual({
      ...{ setting: 'open', element: 'wall', taken: ['element'] },
    });
    expect(crewPlace({ site: { setting: ['open'], element: ['suspended-slab'] } })).toEqual({
      ...{ setting: 'open', element: 'suspended-slab', taken: [] },
    });
    const place = crewPlace({ site: { element: ['slab'] } });
    expect(toolsAt('break-out', place)).toEqual(['jackhammer', 'chipping-hammer']);
    expect(toolsAt('break-out', { ...place, element: 'wall' })).toEqual(['chipping-hammer']);
  });
});

describe('the days of a plan', () => {
  const job = hollow();
  // A tool runs for 0.6 to 0.8 of the time at the task, usually 0.7 (figure `crew.usable`).
  const running = (atTask: number) => ({
    ...{ hours: [near(0.6 * atTask), near(0.8 * atTask)], typical: near(0.7 * atTask) },
    atTask: near(atTask),
  });

  it('give each person the hours at each step that are laid for them', () => {
    const plan = planOf([
      ['break-out', 'jackhammer', [0, 1], 1, 0, 3],
      ['break-out', 'jackhammer', [1], 1, 3, 4],
      ['saw-cut', 'walk-behind-saw', [0], 1, 3, 5],
    ]);
    const task = (step: StepId, tool: ToolId, atTask: number) => ({
      ...{ step, tool, setting: 'open', element: 'slab' },
      ...running(atTask),
    });
    expect(crewDaysOf(plan, job)).toEqual({
      shifts: [
        {
          ...{ days: [1, 1], steps: ['break-out', 'saw-cut'] },
          workers: [
            {
              id: '1',
              tasks: [task('break-out', 'jackhammer', 3), task('saw-cut', 'walk-behind-saw', 2)],
            },
            { id: '2', tasks: [task('break-out', 'jackhammer', 4)] },
          ],
        },
      ],
      crew: 2,
      place: crewPlace(job),
      unknown: ['grind'],
      specialists: ['water-jet'],
    });
    // In equal turns everybody has half of all: 3 h of two, 1 h and 2 h of one.
    const turns = crewDaysOf(plan, { ...job, crewDay: { turns: 'equal' } }).shifts[0]?.workers;
    for (const worker of turns ?? [])
      expect(worker.tasks.map(({ atTask }) => atTask)).toEqual([near(3.5), near(1)]);
  });

  it('are told as one where the same is done on days in a row', () => {
    const on = (day: number, to = 4, who = 0, step: StepId = 'break-out'): Laid => [
      ...([step, 'jackhammer', [who], day, 0, to] as const),
    ];
    const spans = (...laid: Laid[]) => crewDaysOf(planOf(laid), job).shifts.map(({ days }) => days);
    expect(spans(on(2), on(1))).toEqual([[1, 2]]);
    expect(spans(on(1), on(2), on(3))).toEqual([[1, 3]]);
    expect(spans(on(1), on(3))).toEqual([
      [1, 1],
      [3, 3],
    ]);
    for (const other of [on(2, 4.1), on(2, 4, 1), on(2, 4, 0, 'chase-crack')])
      expect(spans(on(1), other)).toHaveLength(2);
    expect(spans(on(1), on(2), on(2, 1, 1, 'chase-crack'))).toHaveLength(2);
    expect(spans(on(1), on(2, 4 + 1e-9))).toHaveLength(1);
    const chase = (day: number, to: number) => on(day, to, 1, 'chase-crack');
    expect(spans(on(1), chase(1, 2), on(2), chase(2, 3))).toHaveLength(2);
    const done = planOf([on(1)], { steps: [{ id: 'water-jet', hours: 2 }] });
    expect(crewDaysOf(done, job).specialists).toEqual([]);
  });

  it('are there and empty where all that is laid must wait', () => {
    const waits = planOf([['break-out', 'jackhammer', [0], 1, 0, 4]], {
      zones: [{ id: 'a', holds: [{}] }],
    });
    const { shifts } = crewDaysOf(waits, job);
    expect(shifts).toEqual([
      { days: [1, 1], steps: [], workers: ['1', '2'].map((id) => ({ id, tasks: [] })) },
    ]);
    expect(crewDays({ shifts } as unknown as CrewPlan)).toBe(0);
  });

  it('take the reader’s tool where the place allows it, with what is known of it', () => {
    const plan = planOf([['break-out', 'jackhammer', [0], 1, 0, 1]]);
    const first = (change: Partial<Job>) =>
      crewDaysOf(plan, { ...job, ...change }).shifts[0]?.workers[0]?.tasks[0];
    const chosen = { crewDay: { tools: { 'break-out': 'chipping-hammer' } } } as const;
    expect(first(chosen)?.tool).toBe('chipping-hammer');
    expect(first({ crewDay: { tools: { 'break-out': 'hand-saw' } } })?.tool).toBe('jackhammer');
    const levels = { noise: 98, vibration: 4, wheel: 200 };
    const known = { ownLevel: 98, ownVibration: 4, wheel: 200 };
    expect(first({ toolLevels: { jackhammer: levels } })).toMatchObject({
      ...{ ...known, ownVibrationFrom: 'maker' },
    });
    expect(first({ toolLevels: { jackhammer: { ...levels, measured: true } } })).toMatchObject({
      ...{ ...known, ownVibrationFrom: 'measured' },
    });
    expect(Object.keys(first({ toolLevels: { jackhammer: {} } }) ?? {})).toEqual([
      ...['step', 'setting', 'element', 'hours', 'typical', 'atTask', 'tool'],
    ]);
    const usable = { own: { 'crew.usable': 0.5 } };
    expect(first(usable)).toMatchObject({ hours: [0.5, 0.5], typical: 0.5 });
  });
});
