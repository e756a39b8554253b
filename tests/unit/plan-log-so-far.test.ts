import { describe, expect, it } from 'vitest';
import type { TaskLog } from '$lib/answers/day-log';
import { kindOf } from '$lib/plan/pace';
import { doneOf, withSoFar } from '$lib/plan/so-far';
import type { Task } from '$lib/plan/tasks';
import { workOrder } from '$lib/advice/steps/work';
import { at, doneIn, logged } from '../helpers/crew-log';
import { job, task, type Told } from '../helpers/told-tasks';

describe('how far a job has come', () => {
  const breaking = task('break-out', 'z0', [2, 4, 8]);
  const cleaning = task('vacuum', 'z0', [1, 2, 3]);
  const covering = task('cover', 'z0', null);
  const tasks = [breaking, cleaning, covering];
  const zero = { low: 0, typical: 0, high: 0 };
  it('is nothing while nobody has told', () => {
    expect(withSoFar(tasks, job)).toEqual({ tasks, soFar: null });
    const elsewhere = logged(job, [['z1', 'saw-cut', { done: at(4, '09:00') }]]);
    expect(withSoFar(tasks, elsewhere)).toEqual({ tasks, soFar: null });
  });
  it('has what is done at what it took, and the rest at the pace of that', () => {
    const begun = logged(job, [['z0', 'break-out', doneIn(at(4, '07:00'), at(4, '13:00'))]]);
    const { tasks: next, soFar } = withSoFar(tasks, begun);
    const [done, rest, cover] = next;
    // 6 hours, of which the tool runs 60 to 80 %, usually 70.
    expect(done?.hours?.atTask).toEqual({ low: 6, typical: 6, high: 6 });
    expect(done?.hours?.running.low).toBeCloseTo(3.6, 9);
    expect(done?.hours?.running.typical).toBeCloseTo(4.2, 9);
    expect(done?.hours?.running.high).toBeCloseTo(4.8, 9);
    expect(done?.labour).toMatchObject({
      unit: 'h',
      working: [
        { what: 'taken', span: [6, 6], unit: 'h' },
        { what: 'share', figure: 'crew.usable' },
      ],
    });
    // One task at 1.5 times moves every other kind by a third of the way.
    const pace = 1.5 ** (1 / 3);
    for (const kind of ['running', 'atTask'] as const)
      for (const [end, value] of [
        ['low', 1],
        ['typical', 2],
        ['high', 3],
      ] as const)
        expect(rest?.hours?.[kind][end]).toBeCloseTo(value * pace, 9);
    expect(rest?.labour).toMatchObject({ unit: 'h', working: [{ what: 'pace', unit: 'ratio' }] });
    expect(cover).toBe(covering);
    expect(soFar).toMatchObject({
      ...{ tasks: 2, done: 1, running: 0, taken: 6, ratio: 1.5, counted: 1 },
      ...{ doubted: [], faults: [] },
    });
    expect(soFar?.left.typical).toBeCloseTo(2 * pace, 9);
    expect(soFar?.left.low).toBeCloseTo(pace, 9);
    expect(soFar?.left.high).toBeCloseTo(3 * pace, 9);
    expect(soFar?.pace?.typical).toBeCloseTo(pace, 9);
    expect(soFar?.pace?.low).toBeLessThan(pace);
    expect(soFar?.pace?.high).toBeGreaterThan(pace);
    expect(soFar?.told.get(done as Task)?.left).toEqual(zero);
    expect(doneOf({ tasks: next, soFar } as never, 'break-out')).toEqual({ done: 1, all: 1 });
    expect(doneOf({ tasks: next, soFar } as never, 'vacuum')).toBeNull();
    expect(doneOf({ tasks, soFar: null } as never, 'break-out')).toBeNull();
  });
  it('goes on at a pace that weighs each kind by the hours of it that are left', () => {
    const told = ['z0', 'break-out', doneIn(at(4, '07:00'), at(4, '13:00'))] as const;
    const [breaking, cleaning] = tasks as [Task, Task];
    const more = task('break-out', 'z1', [2, 4, 8]);
    const { soFar } = withSoFar([breaking, more, cleaning], logged(job, [told]));
    // 1.5 times: its own kind moves by two thirds of the way, 4 h of it; the others by one third, 2 h.
    const [own, others] = [1.5 ** (2 / 3), 1.5 ** (1 / 3)];
    expect(soFar?.pace?.typical).toBeCloseTo((4 * own + 2 * others) / 6, 9);
    expect(soFar?.left.typical).toBeCloseTo(4 * own + 2 * others, 9);
    // Nothing left goes at no pace.
    expect(withSoFar([breaking], logged(job, [told])).soFar?.pace).toBeNull();
  });
  it('of what was begun is what it was reckoned to take less what it took, a quarter of an hour at the least', () => {
    const spells = { [at(4, '07:00')]: { to: at(4, '10:00'), people: 1 } };
    const { tasks: next, soFar } = withSoFar(tasks, logged(job, [['z0', 'break-out', { spells }]]));
    const left = { low: 0.25, typical: 1, high: 5 };
    expect(soFar?.told.get(next[0] as Task)?.left).toEqual(left);
    expect(next[0]?.hours?.atTask).toEqual({ low: 3.25, typical: 4, high: 8 });
    const running = next[0]?.hours?.running;
    expect(running?.low).toBeCloseTo(3.25 * 0.8, 9);
    expect(running?.typical).toBeCloseTo(4 * 0.7, 9);
    expect(running?.high).toBeCloseTo(8 * 0.6, 9);
    expect(next[0]?.labour).toEqual({
      span: [running?.low, running?.high],
      ...{ typical: running?.typical, unit: 'h', working: [] },
    });
    expect(next[1]).toBe(cleaning);
    expect(soFar).toMatchObject({ done: 0, running: 0, taken: 3, ratio: null, pace: null });
    // The vacuum's two hours are still to come as well.
    expect(soFar?.left).toEqual({ low: 1.25, typical: 3, high: 8 });
  });
  it('tells what goes on, and what was ticked off without hours, which teaches nothing', () => {
    const told = logged(job, [
      ['z0', 'break-out', { done: at(4, '09:00') }],
      ['z0', 'vacuum', { spells: { [at(4, '09:00')]: { people: 1 } } }],
      ['z0', 'cover', { spells: { [at(4, '07:00')]: { to: at(4, '08:00'), people: 1 } } }],
    ]);
    const { tasks: next, soFar } = withSoFar(tasks, told);
    expect(next.slice(0, 3)).toEqual(tasks);
    expect(soFar).toMatchObject({
      ...{ tasks: 3, done: 1, running: 1, taken: 1, counted: 0, ratio: null, pace: null },
      left: { low: 1, typical: 2, high: 3 },
    });
    expect(soFar?.told.get(next[2] as Task)?.left).toBeNull();
  });
  it('believes no task four times off, and none reckoned shorter than a quarter of an hour', () => {
    const after = (reckoned: number, minutes: string) => {
      const one = task('break-out', 'z0', [reckoned, reckoned, reckoned]);
      const log = doneIn(at(4, '07:00'), at(4, minutes));
      const { soFar } = withSoFar([one, cleaning], logged(job, [['z0', 'break-out', log]]));
      return [soFar?.counted, soFar?.doubted.map(({ step }) => step), soFar?.ratio];
    };
    expect(after(1, '11:00')).toEqual([1, [], 4]);
    expect(after(1, '11:01')).toEqual([0, ['break-out'], null]);
    expect(after(4, '08:00')).toEqual([1, [], 0.25]);
    expect(after(4, '07:59')).toEqual([0, ['break-out'], null]);
    expect(after(0.25, '07:30')).toEqual([1, [], 2]);
    expect(after(0.24, '07:30')).toEqual([0, [], null]);
  });
  it('takes zones gone over in one go for one thing told', () => {
    const pair = [task('break-out', 'z0', [1, 1, 1]), task('break-out', 'z1', [3, 3, 3]), cleaning];
    const log: TaskLog = {
      spells: { [at(4, '07:00')]: { to: at(4, '13:00'), people: 1, together: true } },
      done: at(4, '13:00'),
    };
    const told = ['z0', 'z1'].map((zone): Told => [zone, 'break-out', log]);
    const { tasks: next, soFar } = withSoFar(pair, logged(job, told));
    expect(soFar).toMatchObject({ counted: 2, ratio: 1.5, taken: 6 });
    expect(next[2]?.hours?.atTask.typical).toBeCloseTo(2 * 1.5 ** (1 / 3), 9);
    // Told apart, the same two move the others further.
    const apart = [
      ['z0', 'break-out', doneIn(at(4, '07:00'), at(4, '08:30'))],
      ['z1', 'break-out', doneIn(at(4, '07:00'), at(4, '11:30'))],
    ] as const satisfies readonly Told[];
    const more = withSoFar(pair, logged(job, apart)).tasks[2];
    expect(more?.hours?.atTask.typical).toBeGreaterThan(2 * 1.5 ** 0.4 - 1e-9);
  });
});

describe('steps of one pace', () => {
  // Common practice, no source: one sort of tool in one concrete.
  it.each([
    ['break-out', 'chase-crack free-bar'],
    ['saw-cut', 'route-crack'],
    ['grind', 'scarify shotblast needle-scale edge-work strip-coating'],
    ['abrasive-blast', 'blast-clean clean-bar'],
    ['pressure-wash', 'degrease strip-growth vacuum final-wash last-clean'],
    ['sound-and-mark', 'tap-crack re-sound check-ready moisture-test'],
    ['make-safe', ''],
    ['cover', ''],
  ] as const)('%s', (step, others) => {
    const alike = workOrder.filter((each) => each !== step && kindOf(each) === kindOf(step));
    expect(alike.sort()).toEqual(others.split(' ').filter(Boolean).sort());
  });
});
