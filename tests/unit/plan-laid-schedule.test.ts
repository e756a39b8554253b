import { describe, expect, it } from 'vitest';
import { layTasks } from '$lib/plan/schedule';
import type { Task } from '$lib/plan/tasks';
import { task, tool, same, clock, lay } from '../helpers/laid-tasks';

// By hand. Source: common practice, no source, for what waits for what.
describe('a schedule', () => {
  it('goes on the next morning where the day ends, and lays each end of a range', () => {
    const tasks = [task('break-out', 'a', [3, 6, 10]), task('vacuum', 'a', [1, 4, 5])];
    expect(lay(tasks)).toEqual([
      ['break-out a', [0], 0, 6],
      ['vacuum a', [0], 6, 26],
    ]);
    expect(lay(tasks, 1, 'low')).toEqual([
      ['break-out a', [0], 0, 3],
      ['vacuum a', [0], 3, 4],
    ]);
    expect(lay(tasks, 1, 'high').at(-1)).toEqual(['vacuum a', [0], 26, 31]);
    expect(layTasks(tasks, 1, clock, 'typical')[1]?.stretches).toEqual([
      { day: 1, from: 6, to: 8 },
      { day: 2, from: 24, to: 26 },
    ]);
  });
  it('begins first what holds up the longest way', () => {
    expect(
      lay([task('scarify', 'a', 2), task('scarify', 'b', 1), task('grind', 'b', 4)], 1),
    ).toEqual([
      ['scarify a', [0], 5, 7],
      ['scarify b', [0], 0, 1],
      ['grind b', [0], 1, 5],
    ]);
  });
  it('begins first what has to dry or to cure longest', () => {
    const short = [task('scarify', 'a', 2), task('grind', 'a', 6)];
    const cured = [
      task('saw-cut', 'b', 2),
      task('cure', 'b', null, { lasting: { ...same(168), figure: 'traffic.cars' } }),
    ];
    const wait = { after: 'saw-cut', hours: same(24), figure: 'dry.before-blasting' };
    const dried = [task('saw-cut', 'b', 2), task('blast-clean', 'b', 1, { wait })];
    for (const long of [cured, dried])
      expect(lay([...short, ...long]).map(([name, , from]) => [name, from])).toEqual([
        ...[
          ['scarify a', 2],
          ['grind a', 4],
        ],
        ...[
          ['saw-cut b', 0],
          [`${long[1]?.step} b`, expect.any(Number)],
        ],
      ]);
  });
  it('runs one machine in one place, and hand work side by side', () => {
    const two = (more: object) => [task('scarify', 'a', 3, more), task('scarify', 'b', 2, more)];
    expect(lay(two(tool('scarifier')), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [0], 3, 5],
    ]);
    expect(lay(two(tool('hand-tools')), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [1], 0, 2],
    ]);
    // Two hammers of one kind run at once: hand-held tools are shared by whoever is free.
    expect(lay(two({ ...tool('chipping-hammer'), shared: true }), 2)).toEqual([
      ['scarify a', [0], 0, 3],
      ['scarify b', [1], 0, 2],
    ]);
  });
  it('shares hand work among whoever is free, in shares of a quarter of an hour at the least', () => {
    expect(lay([task('vacuum', 'a', 6, { shared: true })], 3)).toEqual([
      ['vacuum a', [0, 1, 2], 0, 2],
    ]);
    expect(lay([task('vacuum', 'a', 0.5, { shared: true })], 3)).toEqual([
      ['vacuum a', [0, 1], 0, 0.25],
    ]);
    expect(lay([task('vacuum', 'a', 0.1, { shared: true })], 3)).toEqual([
      ['vacuum a', [0], 0, 0.1],
    ]);
  });
  it('vacuums nowhere before the dust of all zones is made, nor before all is safe', () => {
    const tasks = [
      task('make-safe', null, 1),
      task('break-out', 'a', 2),
      task('break-out', 'b', 5),
      task('vacuum', 'a', 1),
    ];
    expect(lay(tasks, 2)).toEqual([
      ['make-safe job', [0], 0, 1],
      ['break-out a', [1], 1, 3],
      ['break-out b', [0], 1, 6],
      ['vacuum a', [0], 6, 7],
    ]);
  });
  it('begins nowhere before all places are safe, told zone by zone or for the job', () => {
    const made = [task('make-safe', 'a', 1), task('make-safe', 'b', 5)];
    expect(lay([...made, task('break-out', 'a', 2)], 2).at(-1)?.[2]).toBe(5);
  });
  it('washes nowhere before the dust of all zones is up, and last of all what is wetted anyway', () => {
    const from = (...tasks: readonly Task[]) => lay(tasks, 2).at(-1)?.[2];
    const vacuumed = [task('vacuum', 'a', 1), task('vacuum', 'b', 5)];
    expect(from(...vacuumed, task('pressure-wash', 'a', 2))).toBe(5);
    expect(from(...vacuumed, task('degrease', 'a', 2))).toBe(1);
    expect(
      from(task('degrease', 'a', 1), task('degrease', 'b', 4), task('final-wash', 'a', 2)),
    ).toBe(4);
  });
  it('shares hands out evenly among what is begun at once', () => {
    const shared = (zone: string) => task('vacuum', zone, 8, { shared: true });
    expect(lay([shared('a'), shared('b')], 4)).toEqual([
      ['vacuum a', [0, 1], 0, 4],
      ['vacuum b', [2, 3], 0, 4],
    ]);
    expect(lay([shared('a'), shared('b')], 3).map(([, people]) => people)).toEqual([[0, 1], [2]]);
  });
  it('goes on in the order of the plan where nothing holds up more', () => {
    const tasks = [task('scarify', 'a', 1), task('grind', 'a', 2), task('grind', 'b', 2)];
    expect(lay(tasks)).toEqual([
      ['scarify a', [0], 0, 1],
      ['grind a', [0], 1, 3],
      ['grind b', [0], 3, 5],
    ]);
  });
  it('waits for what dries through nights, and lets go on by itself what cures', () => {
    const wait = { after: 'saw-cut', hours: same(24), figure: 'dry.before-blasting' };
    const tasks = [
      task('saw-cut', 'a', 2),
      task('blast-clean', 'a', 1, { wait }),
      task('cure', 'a', null, { lasting: { ...same(168), figure: 'traffic.cars' } }),
    ];
    expect(lay(tasks)).toEqual([
      ['saw-cut a', [0], 0, 2],
      ['blast-clean a', [0], 26, 27],
      ['cure a', [], 27, 195],
    ]);
    expect(layTasks(tasks, 1, clock, 'typical').map(({ dries }) => dries)).toEqual([
      ...[undefined, undefined, 195],
    ]);
    // It is counted from the step it waits for, not from whatever came last.
    const later = [tasks[0], task('break-out', 'a', 4), tasks[1]] as Task[];
    expect(lay(later).at(-1)).toEqual(['blast-clean a', [0], 26, 27]);
    expect(lay([task('break-out', 'a', 2), tasks[1] as Task]).at(-1)).toEqual([
      ...['blast-clean a', [0], 2, 3],
    ]);
  });
  it('cleans last in one go: the next morning where the day is too short, unless no day is long enough', () => {
    const tasks = (hours: number) => [task('break-out', 'a', 7), task('last-clean', 'a', hours)];
    expect(lay(tasks(2)).at(-1)).toEqual(['last-clean a', [0], 24, 26]);
    expect(lay(tasks(1)).at(-1)).toEqual(['last-clean a', [0], 7, 8]);
    expect(lay(tasks(8)).at(-1)).toEqual(['last-clean a', [0], 24, 32]);
    expect(lay(tasks(9)).at(-1)).toEqual(['last-clean a', [0], 7, 32]);
  });
  it('lays from what lies behind on, first what somebody is at', () => {
    const tasks = [task('scarify', 'a', 5), task('scarify', 'b', 2), task('grind', 'a', 3)];
    const behind = { people: [1], stretches: [{ day: 1, from: 0, to: 1 }], done: null };
    const told = new Map([[tasks[1], { ...behind, running: true, left: same(1.5) }]]);
    const past = { told, from: 4 } as never;
    const placed = layTasks(tasks, 1, clock, 'typical', undefined, past);
    expect(placed.map(({ people, from, to }) => [people, from, to])).toEqual([
      [[0], 5.5, 26.5],
      [[1, 0], 0, 5.5],
      [[0], 26.5, 29.5],
    ]);
    expect(placed[1]?.stretches).toEqual([
      { day: 1, from: 0, to: 1 },
      { day: 1, from: 4, to: 5.5 },
    ]);
    const done = new Map([[tasks[0], { ...behind, done: 3, running: false, left: same(0) }]]);
    const rest = layTasks(tasks, 1, clock, 'typical', undefined, { told: done, from: 4 } as never);
    expect(rest.map(({ people, from, to }) => [people, from, to])).toEqual([
      [[1], 0, 3],
      [[0], 7, 25],
      [[0], 4, 7],
    ]);
  });
});
