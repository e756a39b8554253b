import { describe, expect, it } from 'vitest';
import { calendarOf, dateOfDay } from '$lib/plan/calendar';
import { dayOf, leftOfDay, nextMorning, stretches, workingAt } from '$lib/plan/clock';
import { dryingBefore } from '$lib/plan/drying';
import { mustWait, notCountedYet, waitingZones } from '$lib/plan/waiting';
import { at, doneIn, logged } from '../helpers/crew-log';
import { tradeJob } from '../helpers/trade-jobs';

// Hours of the calendar from the start of work on day 1: day n begins at 24 (n - 1).
const clock = { hoursPerDay: 8, off: (day: number) => day === 2 || day === 3 };

describe('the clock of the work', () => {
  it('has 24 hours a day, and the stroke of a day belongs to the next', () =>
    expect([0, 7.5, 23.9, 24, 48 - 1e-10, 72].map(dayOf)).toEqual([1, 1, 1, 2, 3, 4]));
  it('goes on the next morning that is no day off', () => {
    expect(workingAt(3, clock)).toBe(3);
    expect(workingAt(8, clock)).toBe(72);
    expect(workingAt(8 - 1e-12, clock)).toBe(72);
    expect(workingAt(30, clock)).toBe(72);
    expect(workingAt(74, clock)).toBe(74);
    expect(workingAt(48 - 1e-12, { ...clock, off: () => false })).toBe(48);
    expect(nextMorning(3, clock)).toBe(72);
    expect(nextMorning(75, clock)).toBe(96);
    expect(leftOfDay(3, clock)).toBe(5);
    expect(leftOfDay(74.5, clock)).toBe(5.5);
  });
  it('lays 15 hours from hour 3 on: five, then eight, then two', () => {
    expect(stretches(3, 15, clock)).toEqual([
      { day: 1, from: 3, to: 8 },
      { day: 4, from: 72, to: 80 },
      { day: 5, from: 96, to: 98 },
    ]);
    expect(stretches(3, 5, clock)).toEqual([{ day: 1, from: 3, to: 8 }]);
    expect(stretches(3, 0, clock)).toEqual([]);
  });
  it('comes to an end where every day is off: after a year that is taken for a mistake', () => {
    const never = { hoursPerDay: 8, off: () => true };
    expect(workingAt(0, never)).toBe(366 * 24);
    expect(workingAt(0, { hoursPerDay: 8, off: (day) => day <= 366 })).toBe(366 * 24);
  });
});

describe('the calendar of a job', () => {
  // ISO 8601: 1 May 2026 is a Friday.
  const calendar = { start: '2026-05-01', weekly: ['sat'], off: ['2026-05-04'] } as const;
  const job = tradeJob(
    [{ depth: 40, looseness: ['hollow'] }],
    {},
    {
      ...{ crew: 3, hoursPerDay: 6, calendar: calendar as never },
    },
  );
  it('counts day 1 as the start, and takes the weekly days and the named ones off', () => {
    const { off, ...rest } = calendarOf(job);
    expect(rest).toEqual({ crew: 3, hoursPerDay: 6 });
    expect([1, 2, 3, 4, 5].map((day) => off?.(day))).toEqual([false, true, false, true, false]);
    expect([1, 2].map((day) => dateOfDay(job, day))).toEqual(['2026-05-01', '2026-05-02']);
  });
  it('is none while there is no start, or nothing is off', () => {
    const bare = tradeJob([{}]);
    expect(calendarOf(bare)).toEqual({ crew: undefined, hoursPerDay: undefined });
    expect(dateOfDay(bare, 1)).toBeNull();
    const daily = calendarOf({ ...bare, calendar: { start: '2026-05-01' } });
    expect([1, 2, 3].map((day) => daily.off?.(day))).toEqual([false, false, false]);
  });
  it('counts from the day on which work began', () => {
    const begun = logged(job, [['z0', 'break-out', doneIn(at(5, '07:00'), at(5, '08:00'))]]);
    expect(dateOfDay(begun, 1)).toBe('2026-05-05');
    // 9 May 2026, day 5 of it, is a Saturday.
    expect([4, 5].map((day) => calendarOf(begun).off?.(day))).toEqual([false, true]);
  });
});

// Common practice, no source: dry tools and a sealant wait for what was wetted.
describe('drying', () => {
  it('is waited for by shot, grit, dry grinders, scarifiers and the tool at the edge, after what was wetted last', () => {
    for (const step of [
      ...(['shotblast', 'abrasive-blast', 'blast-clean', 'grind', 'scarify', 'edge-work'] as const),
    ])
      for (const wet of [
        'degrease',
        'saw-cut',
        // Hammers have water at the point: OSHA 1926.1153, table 1, and the settings of this site.
        'break-out',
        'chase-crack',
        'free-bar',
        'pressure-wash',
        'final-wash',
        'water-jet',
      ] as const)
        expect(dryingBefore(step, ['make-safe', wet, 'vacuum'], true), `${step} ${wet}`).toEqual({
          ...{ after: wet, figure: 'dry.before-blasting' },
        });
    expect(
      dryingBefore('blast-clean', ['degrease', 'saw-cut', 'break-out', 're-sound'], true)?.after,
    ).toBe('break-out');
  });
  it('is waited for by the checks after a wash, whatever goes on: drop and tape want it dry', () => {
    for (const dryFinish of [true, false])
      expect(dryingBefore('check-ready', ['vacuum', 'final-wash'], dryFinish)).toEqual({
        ...{ after: 'final-wash', figure: 'dry.before-blasting' },
      });
    expect(dryingBefore('check-ready', ['saw-cut', 'shotblast', 'vacuum'], true)).toBeUndefined();
  });
  it('takes as long as under a coating in a crack, and before a finish that wants it dry', () => {
    const slow = { after: 'final-wash', figure: 'dry.before-coating' };
    expect(dryingBefore('route-crack', ['final-wash'], false)).toEqual(slow);
    expect(dryingBefore('wet-or-dry', ['final-wash', 'check-ready'], true)).toEqual(slow);
    expect(dryingBefore('wet-or-dry', ['final-wash', 'check-ready'], false)).toBeUndefined();
  });
  it('is not waited for by hammers, nor twice, nor where nothing was wetted', () => {
    for (const step of ['break-out', 'needle-scale', 'vacuum', 'final-wash'] as const)
      expect(dryingBefore(step, ['saw-cut'], true), step).toBeUndefined();
    expect(dryingBefore('blast-clean', ['saw-cut', 'scarify'], true)).toBeUndefined();
    expect(dryingBefore('grind', ['make-safe', 'sound-and-mark'], true)).toBeUndefined();
    expect(dryingBefore('grind', [], true)).toBeUndefined();
  });
});

describe('zones that wait', () => {
  const zones = [
    { id: 'a', holds: [{ rule: 'moving-crack' }] },
    { id: 'b', holds: [] },
  ] as never;
  const task = (...of: string[]) => ({ zones: of }) as never;
  it('are those with something to clear; a step waits where all its zones do', () => {
    expect([...waitingZones({ zones })]).toEqual(['a']);
    const waits = mustWait({ zones });
    expect([task('a'), task('b'), task('a', 'b'), task()].map(waits)).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
  it('count all the same once somebody began there', () => {
    const [begun, open, untold] = [task('a'), task('a'), task('a')];
    const told = new Map([
      [begun, { spent: { state: 'running' } }],
      [open, { spent: { state: 'open' } }],
    ]);
    const waits = notCountedYet({ zones, soFar: { told } as never });
    expect([begun, open, untold, task('b')].map(waits)).toEqual([false, true, true, false]);
    expect(notCountedYet({ zones, soFar: null })(begun)).toBe(true);
  });
});
