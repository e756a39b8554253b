import { describe, expect, it } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import { planJob } from '$lib/plan/plan';
import { partsRuns, zonesByDay } from '$lib/plan/where';

describe('which part on which day', () => {
  const job = demoJob('larch-row');
  const plan = planJob(job);
  const order = job.zones.map(({ id }) => id);

  it('has every task of a zone on every day it takes, and nothing else', () => {
    const told = [...zonesByDay(plan.schedule)].flatMap(([day, zones]) =>
      zones.flatMap(({ zone, steps }) => steps.map((step) => `${day} ${zone} ${step}`)),
    );
    const placed = plan.schedule.placed.flatMap(({ task, people, stretches }) =>
      task.zone !== null && people.length
        ? stretches.map(({ day }) => `${day} ${task.zone} ${task.step}`)
        : [],
    );
    expect(new Set(told)).toEqual(new Set(placed));
    expect(told.length).toBeGreaterThan(5);
    // Days on which somebody works, and no other, as the calendar of the plan lays them.
    const laid = plan.schedule.days.filter((day) => day.laid.length).map(({ number }) => number);
    for (const day of zonesByDay(plan.schedule).keys()) expect(laid).toContain(day);
  });

  it('takes days in a row with the same parts together, zones in the order of the job', () => {
    const on = (day: number, zone: string) =>
      ({
        task: { zone, step: 'saw-cut' },
        people: [0],
        stretches: [{ day, from: 0, to: 1 }],
      }) as never;
    expect(
      partsRuns(
        { placed: [on(1, 'd'), on(1, 'a'), on(2, 'a'), on(2, 'd'), on(3, 'a'), on(5, 'a')] },
        order,
      ),
    ).toEqual([
      { from: 1, to: 2, zones: ['a', 'd'] },
      { from: 3, to: 3, zones: ['a'] },
      { from: 5, to: 5, zones: ['a'] },
    ]);
  });

  it('leaves out what nobody does, and what is done once for the job', () => {
    const one = { stretches: [{ day: 1, from: 0, to: 1 }] };
    const placed = [
      { ...one, task: { zone: 'a', step: 'cure' }, people: [] },
      { ...one, task: { zone: null, step: 'wash-out' }, people: [0] },
    ] as never;
    expect(zonesByDay({ placed }).size).toBe(0);
  });
});
