import { describe, expect, it } from 'vitest';
import type { TaskLog } from '$lib/answers/day-log';
import { momentsOf } from '$lib/answers/task-log';
import { pastOf } from '$lib/plan/past';
import { kindOf } from '$lib/plan/pace';
import { doneOf, withSoFar } from '$lib/plan/so-far';
import { faultOf, spentOn, typedFault } from '$lib/plan/spent';
import type { Task } from '$lib/plan/tasks';
import type { StepId } from '$shared/methods';
import { workOrder } from '$lib/advice/steps/work';
import { at, doneIn, logged } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

// What a crew told of its work, reckoned by hand. Invented.
const job = tradeJob([{}, {}]);
const task = (
  step: StepId,
  zone: string | null,
  hours: readonly [number, number, number] | null,
  more: object = {},
): Task => {
  const reach = hours && { low: hours[0], typical: hours[1], high: hours[2] };
  return {
    ...{ step, zone, zones: zone === null ? ['z0', 'z1'] : [zone], tool: { tool: 'hand-tools' } },
    ...{ amount: null, shared: true, leaves: null },
    hours: reach && { running: reach, atTask: reach },
    labour: hours && { span: [hours[0], hours[2]], typical: hours[1], unit: 'h', working: [] },
    ...more,
  } as Task;
};
type Told = readonly [string | null, StepId, TaskLog];
const hour = (time: string) => Date.parse(at(4, time));

describe('a time that cannot be', () => {
  const go = (from: string, to?: string) => ({ from: at(4, from), ...(to && { to: at(4, to) }) });
  it('is stopped before it was started, or goes on for more than 12 hours', () => {
    expect(faultOf(go('08:00', '07:59'), 'open')).toBe('stop-first');
    expect(faultOf(go('08:00', '08:00'), 'open')).toBeNull();
    expect(faultOf(go('06:00', '18:00'), 'open')).toBeNull();
    expect(faultOf(go('06:00', '18:01'), 'open')).toBe('too-long');
  });
  it('was never stopped, of a step that is done', () => {
    expect(faultOf(go('08:00'), 'done')).toBe('left-running');
    expect(faultOf(go('08:00'), 'running')).toBeNull();
  });
  it('is still to come', () => {
    const now = hour('10:00');
    expect(typedFault(go('08:00', '10:01'), now)).toBe('to-come');
    expect(typedFault(go('11:00', '09:00'), now)).toBe('to-come');
    expect(typedFault(go('10:01'), now)).toBe('to-come');
    expect(typedFault(go('08:00', '10:00'), now)).toBeNull();
    expect(typedFault(go('10:00'), now)).toBeNull();
    expect(typedFault(go('09:00', '08:00'), now)).toBe('stop-first');
  });
});

describe('what was told of each step', () => {
  const spent = (tasks: readonly Task[], ...told: Told[]) => {
    const found = spentOn(tasks, logged(job, told));
    return { of: tasks.map((each) => found.spent.get(each)), faults: found.faults };
  };
  const breaking = task('break-out', 'z0', [2, 4, 8]);
  const other = task('break-out', 'z1', [2, 12, 16]);
  it('is its goes, the hours of each hand, and when it was done', () => {
    const log = doneIn(at(4, '07:00'), at(4, '09:30'), 2);
    const piece = { start: at(4, '07:00'), from: hour('07:00'), to: hour('09:30'), people: 2 };
    const all = { sure: true, together: null, open: null, done: at(4, '09:30') };
    expect(spent([breaking, other], ['z0', 'break-out', log])).toEqual({
      of: [{ ...all, state: 'done', hours: 5, pieces: [{ ...piece, together: false }] }, undefined],
      faults: [],
    });
    // One machine is one machine, however many stand at it.
    const saw = task('saw-cut', 'z0', [1, 2, 3], { shared: false });
    expect(spent([saw], ['z0', 'saw-cut', log]).of[0]?.hours).toBe(2.5);
  });
  it('counts each hour once where goes overlap, and says so', () => {
    const spells = {
      [at(4, '07:00')]: { to: at(4, '10:00'), people: 1 },
      [at(4, '08:00')]: { to: at(4, '09:00'), people: 1 },
      [at(4, '09:30')]: { to: at(4, '11:00'), people: 1 },
    };
    const { of, faults } = spent([breaking], ['z0', 'break-out', { spells }]);
    expect(of[0]).toMatchObject({ state: 'stopped', hours: 4, sure: true, open: null, done: null });
    expect(of[0]?.pieces.map(({ from, to }) => [from, to])).toEqual([
      [hour('07:00'), hour('10:00')],
      [hour('10:00'), hour('11:00')],
    ]);
    const fault = { step: 'break-out', zone: 'z0', fault: 'overlap' };
    expect(faults).toMatchObject([
      { ...fault, from: at(4, '08:00') },
      { ...fault, from: at(4, '09:30') },
    ]);
    // One after the other at the same moment is no overlap.
    const next = {
      [at(4, '07:00')]: { to: at(4, '08:00'), people: 1 },
      [at(4, '08:00')]: { to: at(4, '09:00'), people: 1 },
    };
    expect(spent([breaking], ['z0', 'break-out', { spells: next }]).faults).toEqual([]);
  });
  it('leaves out what cannot be, so that its hours are not sure; what goes on counts nothing yet', () => {
    const wrong = {
      [at(4, '07:00')]: { to: at(4, '06:00'), people: 1 },
      [at(4, '08:00')]: { to: at(4, '09:00'), people: 1 },
    };
    expect(spent([breaking], ['z0', 'break-out', { spells: wrong }]).of[0]).toMatchObject({
      ...{ hours: 1, sure: false, state: 'stopped' },
    });
    const open = {
      [at(4, '07:00')]: { to: at(4, '08:00'), people: 1 },
      [at(4, '09:00')]: { people: 1 },
    };
    expect(spent([breaking], ['z0', 'break-out', { spells: open }])).toMatchObject({
      of: [{ hours: 1, sure: true, state: 'running', open: at(4, '09:00') }],
      faults: [],
    });
  });
  it('shares one go over zones as their hours are reckoned, one after the other', () => {
    const both: TaskLog = {
      spells: { [at(4, '07:00')]: { to: at(4, '11:00'), people: 1, together: true } },
    };
    const told = ['z0', 'z1'].map((zone): Told => [zone, 'break-out', both]);
    // 4 and 12 hours reckoned: one hour and three of the four.
    const { of } = spent([breaking, other], ...told);
    expect(of.map((each) => each?.pieces.map(({ from, to }) => [from, to]))).toEqual([
      [[hour('07:00'), hour('08:00')]],
      [[hour('08:00'), hour('11:00')]],
    ]);
    expect(of.map((each) => [each?.hours, each?.together])).toEqual([
      [1, at(4, '07:00')],
      [3, at(4, '07:00')],
    ]);
    // Where nothing was reckoned, by halves; alone, all of it.
    const unknown = [task('break-out', 'z0', null), task('break-out', 'z1', null)];
    expect(spent(unknown, ...told).of.map((each) => each?.hours)).toEqual([2, 2]);
    expect(spent([breaking], told[0] as Told).of[0]?.hours).toBe(4);
    // Two zones begun at one moment side by side are two goes.
    const apart = ['z0', 'z1'].map((zone): Told => [
      zone,
      'break-out',
      { spells: { [at(4, '07:00')]: { to: at(4, '11:00'), people: 1 } } },
    ]);
    expect(spent([breaking, other], ...apart).of.map((each) => each?.hours)).toEqual([4, 4]);
  });
});

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
    expect(rest?.labour).toMatchObject({ working: [{ what: 'pace', unit: 'ratio' }] });
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
