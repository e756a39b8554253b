import { describe, expect, it } from 'vitest';
import { momentsOf } from '$lib/answers/task-log';
import { pastOf } from '$lib/plan/past';
import { withSoFar } from '$lib/plan/so-far';
import type { Task } from '$lib/plan/tasks';
import { at, doneIn, logged } from '../helpers/crew-log';
import { job, task, type Told } from '../helpers/told-tasks';

describe('where what was told lies in the days', () => {
  const breaking = task('break-out', 'z0', [2, 4, 8]);
  const saw = task('saw-cut', 'z0', [1, 2, 3], { shared: false });
  const cleaning = task('vacuum', 'z1', [1, 9, 12]);
  const past = (tasks: readonly Task[], told: readonly Told[], people = 2) => {
    const begun = logged(job, told);
    const { tasks: next, soFar } = withSoFar(tasks, begun);
    if (!soFar) throw new Error('nothing told');
    const { told: found, from } = pastOf(soFar, momentsOf(begun), people, 8);
    return { of: next.map((each) => found.get(each)), from };
  };
  it('begins with the first word of the first day, and each day with its own', () => {
    const { of, from } = past(
      [breaking, saw],
      [
        ['z0', 'saw-cut', doneIn(at(4, '08:00'), at(4, '10:00'))],
        ['z0', 'break-out', doneIn(at(6, '09:00'), at(6, '12:00'), 2)],
      ],
    );
    expect(of).toMatchObject([
      { people: [0, 1], stretches: [{ day: 3, from: 48, to: 51 }], done: 51, running: false },
      { people: [0], stretches: [{ day: 1, from: 0, to: 2 }], done: 2, running: false },
    ]);
    expect(from).toBe(51);
  });
  it('puts two goes at one time on two people, and no more than there are', () => {
    const same = doneIn(at(4, '08:00'), at(4, '10:00'), 3);
    const told = [
      ['z0', 'saw-cut', same],
      ['z0', 'break-out', doneIn(at(4, '09:00'), at(4, '11:00'))],
    ] as const satisfies readonly Told[];
    // One saw, one hand; the hammer an hour later takes the other.
    expect(past([saw, breaking], told).of.map((each) => each?.people)).toEqual([[0], [1]]);
    expect(past([saw, breaking], told, 1).of.map((each) => each?.people)).toEqual([[0], [0]]);
    expect(past([breaking], [['z0', 'break-out', same]]).of[0]?.people).toEqual([0, 1]);
  });
  it('keeps a go that goes on where it was begun', () => {
    const spells = { [at(5, '08:00')]: { people: 1 } };
    const { of, from } = past(
      [breaking, cleaning],
      [
        ['z0', 'break-out', doneIn(at(4, '08:00'), at(4, '09:00'))],
        ['z1', 'vacuum', { spells }],
      ],
    );
    expect(of[1]).toMatchObject({
      ...{ people: [], stretches: [{ day: 2, from: 24, to: 24 }], done: null, running: true },
    });
    expect(from).toBe(24);
  });
  it('lays what was ticked off without hours on the day of its tick, as long as a day at the most', () => {
    const { of, from } = past(
      [cleaning, saw],
      [
        ['z1', 'vacuum', { done: at(4, '16:00') }],
        ['z0', 'saw-cut', { done: at(4, '16:00') }],
      ],
    );
    expect(of).toMatchObject([
      { people: [0], stretches: [{ day: 1, from: 0, to: 8 }], done: 8 },
      { people: [1], stretches: [{ day: 1, from: 0, to: 2 }], done: 2 },
    ]);
    // What was ticked off took its time: nobody begins before.
    expect(from).toBe(8);
    const alone = past(
      [cleaning, saw],
      [
        ['z1', 'vacuum', { done: at(4, '16:00') }],
        ['z0', 'saw-cut', { done: at(4, '16:00') }],
      ],
      1,
    );
    expect(alone.of[1]?.stretches).toEqual([{ day: 1, from: 8, to: 10 }]);
  });
  it('goes over several goes of a step, each on its day', () => {
    const spells = {
      [at(4, '07:00')]: { to: at(4, '08:00'), people: 1 },
      [at(5, '07:00')]: { to: at(5, '07:30'), people: 2 },
    };
    const { of, from } = past([breaking], [['z0', 'break-out', { spells }]]);
    expect(of[0]).toMatchObject({
      ...{ people: [0, 1], done: null, running: false },
      stretches: [
        { day: 1, from: 0, to: 1 },
        { day: 2, from: 24, to: 24.5 },
      ],
    });
    // Two hours of hands: one of the 2 to 8, usually 4, and half an hour of two.
    expect(of[0]?.left).toEqual({ low: 0.25, typical: 2, high: 6 });
    expect(from).toBe(24.5);
  });
});
