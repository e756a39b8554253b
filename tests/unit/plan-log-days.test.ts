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
  it('gives what follows to the hand that is free, and keeps who is at something out of it', () => {
    const chisel = task('free-bar', 'z0', [1, 2, 3]);
    const go = (from: string, to: string, people = 1) => doneIn(at(4, from), at(4, to), people);
    // The first hand goes on where it has ended; told in another order it is the same.
    const after = [
      ['z0', 'break-out', go('10:00', '12:00')],
      ['z0', 'saw-cut', go('08:00', '10:00')],
    ] as const satisfies readonly Told[];
    expect(past([breaking, saw], after).of).toMatchObject([
      { people: [0], stretches: [{ day: 1, from: 2, to: 4 }] },
      { people: [0], stretches: [{ day: 1, from: 0, to: 2 }] },
    ]);
    // Hands are given by the hour, whichever is told first.
    const across = [
      ['z0', 'break-out', go('10:00', '12:00')],
      ['z0', 'saw-cut', go('08:00', '11:00')],
    ] as const satisfies readonly Told[];
    expect(past([breaking, saw], across).of).toMatchObject([{ people: [1] }, { people: [0] }]);
    // More goes than hands: whoever is soonest free.
    const three = [
      ['z0', 'saw-cut', go('08:00', '12:00')],
      ['z0', 'break-out', go('08:00', '10:00')],
      ['z0', 'free-bar', go('09:00', '09:30')],
    ] as const satisfies readonly Told[];
    expect(past([saw, breaking, chisel], three).of.map((each) => each?.people)).toEqual([
      ...[[0], [1], [1]],
    ]);
  });
  it('names the hands of several goes in their order', () => {
    const spells = {
      [at(4, '08:30')]: { to: at(4, '09:00'), people: 1 },
      [at(4, '10:00')]: { to: at(4, '11:00'), people: 2 },
    };
    const told = [
      ['z0', 'saw-cut', doneIn(at(4, '08:00'), at(4, '10:00'))],
      ['z0', 'break-out', { spells }],
    ] as const satisfies readonly Told[];
    expect(past([saw, breaking], told).of[1]?.people).toEqual([0, 1]);
  });
  it('lays a tick of a later day on that day', () => {
    const { of, from } = past(
      [saw, cleaning],
      [
        ['z0', 'saw-cut', doneIn(at(4, '08:00'), at(4, '10:00'))],
        ['z1', 'vacuum', { done: at(6, '07:00') }],
      ],
    );
    expect(of[1]).toMatchObject({ stretches: [{ day: 3, from: 48, to: 56 }], done: 56 });
    expect(from).toBe(56);
  });
  it('keeps the night on which clocks go back, 25 hours long, one day', () => {
    const [first, last] = ['2026-10-25T00:10:00+02:00', '2026-10-25T23:50:00+01:00'] as const;
    const until = '2026-10-25T01:10:00+02:00';
    const { of } = past(
      [saw, cleaning],
      [
        ['z0', 'saw-cut', doneIn(first, until)],
        ['z1', 'vacuum', { done: last }],
      ],
    );
    expect(of[1]?.stretches).toMatchObject([{ day: 1 }]);
  });
  it('counts from the first day, whichever zone is told first', () => {
    const { of } = past(
      [saw, cleaning],
      [
        ['z0', 'saw-cut', doneIn(at(6, '08:00'), at(6, '10:00'))],
        ['z1', 'vacuum', doneIn(at(4, '08:00'), at(4, '09:00'))],
      ],
    );
    expect(of).toMatchObject([{ stretches: [{ day: 3 }] }, { stretches: [{ day: 1 }] }]);
  });
  it('lays one go over two zones one after the other', () => {
    const other = task('break-out', 'z1', [2, 4, 8]);
    const spells = { [at(4, '08:00')]: { to: at(4, '12:00'), people: 1, together: true as const } };
    const { of } = past(
      [breaking, other],
      [
        ['z0', 'break-out', { spells }],
        ['z1', 'break-out', { spells }],
      ],
    );
    expect(of).toMatchObject([
      { stretches: [{ day: 1, from: 0, to: 2 }] },
      { stretches: [{ day: 1, from: 2, to: 4 }] },
    ]);
  });
  it('lays what is done and was never stopped for as long as it was reckoned', () => {
    const spells = { [at(4, '08:00')]: { people: 1 } };
    const { of } = past([saw], [['z0', 'saw-cut', { spells, done: at(4, '16:00') }]]);
    expect(of[0]).toMatchObject({ people: [0], stretches: [{ day: 1, from: 0, to: 2 }] });
    expect(of[0]?.running).toBe(false);
  });
  it('keeps a tick on its day, and begins the rest after it', () => {
    const ticked = [
      ['z0', 'saw-cut', doneIn(at(4, '08:00'), at(4, '10:00'))],
      ['z1', 'vacuum', { done: at(4, '10:00') }],
    ] as const satisfies readonly Told[];
    // The second hand had from morning on for it: 8 of its 9 hours.
    expect(past([saw, cleaning], ticked).from).toBe(8);
    // One hand that has worked for 20 hours since midnight: the tick takes the end of the day.
    const night = [
      ['z0', 'break-out', doneIn(at(4, '00:00'), at(4, '10:00'))],
      ['z0', 'saw-cut', doneIn(at(4, '10:00'), at(4, '20:00'))],
      ['z1', 'vacuum', { done: at(4, '20:00') }],
    ] as const satisfies readonly Told[];
    const { of, from } = past([breaking, saw, cleaning], night, 1);
    expect(of[2]?.stretches).toEqual([{ day: 1, from: 16, to: 24 }]);
    expect(from).toBe(24);
  });
});
