import { describe, expect, it } from 'vitest';
import type { TaskLog } from '$lib/answers/day-log';
import { faultOf, spentOn, typedFault } from '$lib/plan/spent';
import type { Task } from '$lib/plan/tasks';
import { at, doneIn, logged } from '../helpers/crew-log';
import { job, task, hour, type Told } from '../helpers/told-tasks';

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
    // Each go is shared out for itself: that of another step, or of another time, is another.
    const saws = ['z0', 'z1'].map((zone) => task('saw-cut', zone, [1, 2, 3]));
    const sawn: TaskLog = {
      spells: { [at(4, '07:00')]: { to: at(4, '11:00'), people: 1, together: true } },
    };
    const later: TaskLog = {
      spells: {
        ...both.spells,
        [at(4, '12:00')]: { to: at(4, '14:00'), people: 1, together: true },
      },
    };
    const goes = ['z0', 'z1'].flatMap((zone): Told[] => [
      [zone, 'break-out', later],
      [zone, 'saw-cut', sawn],
    ]);
    expect(spent([breaking, other, ...saws], ...goes).of.map((each) => each?.hours)).toEqual([
      ...[1.5, 4.5, 2, 2],
    ]);
    // Two zones begun at one moment side by side are two goes.
    const apart = ['z0', 'z1'].map((zone): Told => [
      zone,
      'break-out',
      { spells: { [at(4, '07:00')]: { to: at(4, '11:00'), people: 1 } } },
    ]);
    expect(spent([breaking, other], ...apart).of.map((each) => each?.hours)).toEqual([4, 4]);
  });
});
