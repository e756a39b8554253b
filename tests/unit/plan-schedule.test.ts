import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layTasks } from '$lib/plan/schedule';
import { planJob } from '$lib/plan/plan';
import { layDays } from '$lib/plan/days';
import type { Task } from '$lib/plan/tasks';
import { settledJob } from '../helpers/crew-jobs';
import { faultsOf } from '../helpers/schedule-check';
import { tradeJob } from '../helpers/trade-jobs';
import { onTrial, rounds } from '../helpers/rounds';

describe('every schedule', () => {
  it('keeps precedence, people, machines, waits, the 24 hours and the hours of work', () => {
    let laid = 0;
    fc.assert(
      fc.property(settledJob, fc.integer({ min: 4, max: 10 }), (job, hoursPerDay) => {
        const plan = planJob({ ...job, hoursPerDay });
        laid += plan.schedule.placed.length;
        expect(faultsOf(plan)).toEqual([]);
      }),
      { numRuns: onTrial(rounds(15, 60), 3) },
    );
    expect(laid).toBeGreaterThan(onTrial(rounds(120, 500), 20));
  });
  it('rests on days off', () => {
    const weekend = (day: number) => day % 7 === 6 || day % 7 === 0;
    const plan = planJob(
      tradeJob([{ depth: 40, looseness: ['hollow'], area: 60 }], {}, { crew: 1 }),
    );
    const schedule = layDays(plan.tasks, { crew: 1, off: weekend });
    expect(faultsOf({ ...plan, schedule }, weekend)).toEqual([]);
    expect(schedule.calendarDays).toBeGreaterThan(schedule.typicalCount);
  });
  it('is found out when it is spoilt', () => {
    const plan = planJob(tradeJob([{ depth: 40, looseness: ['hollow'], area: 20 }]));
    const spoil = (step: string, by: number) => ({
      ...plan,
      schedule: {
        ...plan.schedule,
        placed: plan.schedule.placed.map((each) =>
          each.task.step === step
            ? {
                ...each,
                from: each.from + by,
                to: each.to + by,
                stretches: each.stretches.map((piece) => ({
                  ...piece,
                  from: piece.from + by,
                  to: piece.to + by,
                })),
              }
            : each,
        ),
      },
    });
    for (const [step, by] of [
      ['cover', 30],
      ['break-out', -1],
      ['last-clean', 9],
      ['vacuum', 40],
    ] as const)
      expect(faultsOf(spoil(step, by)), step).not.toEqual([]);
  });
});

describe('against the best there is', () => {
  /** Hand and machine tasks of some zones without nights, so that the optimum can be had by trying all. */
  const make = (lengths: readonly (readonly [number, number])[]): Task[] =>
    (['saw-cut', 'break-out'] as const).flatMap((step, place) =>
      lengths.map((pair, zone): Task => {
        const hours = { low: pair[place], typical: pair[place], high: pair[place] } as never;
        return {
          step,
          zone: String(zone),
          zones: [String(zone)],
          tool: { tool: place ? 'jackhammer' : 'walk-behind-saw' },
          amount: null,
          hours: { running: hours, atTask: hours },
          labour: null,
          shared: false,
          leaves: null,
        };
      }),
    );
  /** Tries every order; each task as early as it can. Both tools are one, so two people keep both going. */
  function best(tasks: readonly Task[], people: number): number {
    let found = Infinity;
    const walk = (
      left: readonly number[],
      free: number[],
      machine: Map<string, number>,
      zone: Map<string, number>,
      end: number,
    ): void => {
      if (end >= found) return;
      if (!left.length) {
        found = end;
        return;
      }
      for (const index of left) {
        const task = tasks[index] as Task;
        const key = String(task.zone);
        if (
          task.step === 'break-out' &&
          left.some((other) => tasks[other]?.zone === task.zone && other !== index)
        )
          continue;
        for (const person of new Set(free.map((until) => free.indexOf(until)))) {
          const from = Math.max(
            free[person] ?? 0,
            machine.get(task.tool.tool) ?? 0,
            zone.get(key) ?? 0,
          );
          const to = from + (task.hours?.atTask.typical ?? 0);
          walk(
            left.filter((other) => other !== index),
            free.map((until, who) => (who === person ? to : until)),
            new Map(machine).set(task.tool.tool, to),
            new Map(zone).set(key, to),
            Math.max(end, to),
          );
        }
      }
    };
    walk(
      tasks.map((_, index) => index),
      Array<number>(people).fill(0),
      new Map(),
      new Map(),
      0,
    );
    return found;
  }
  it('small jobs come close to it', () => {
    const ratios: number[] = [];
    const length = fc.integer({ min: 1, max: 8 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(length, length), { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 1, max: 2 }),
        (lengths, people) => {
          const tasks = make(lengths);
          const laid = layTasks(tasks, people, { hoursPerDay: 24, off: () => false }, 'typical');
          const end = Math.max(...laid.map(({ to }) => to));
          const least = best(tasks, people);
          expect(end).toBeGreaterThan(least - 1e-9);
          ratios.push(end / least);
        },
      ),
      { numRuns: onTrial(rounds(25, 100), 3) },
    );
    const mean = ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
    process.stdout.write(
      `  schedule against the optimum: mean ${mean.toFixed(3)}, worst ${Math.max(...ratios).toFixed(3)}\n`,
    );
    // Two resources in a row, list by longest way: never twice the optimum (Graham's bound).
    expect(Math.max(...ratios)).toBeLessThan(2);
  });
});
