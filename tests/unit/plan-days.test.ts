import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isDate, plusDays, weekdayOf } from '$lib/answers/dates';
import type { Job } from '$lib/answers/job';
import { calendarOf, dateOfDay } from '$lib/plan/calendar';
import { openHours, openTooLong } from '$lib/plan/days';
import { planJob } from '$lib/plan/plan';
import { settledJob } from '../helpers/crew-jobs';
import { faultsOf } from '../helpers/schedule-check';
import { tradeJob } from '../helpers/trade-jobs';
import { onTrial } from '../helpers/rounds';

const weekend = { start: '2026-05-01', weekly: ['sat', 'sun'] } as const;

describe('dates', () => {
  // ISO 8601: 1 May 2026 is a Friday; 2024 has a 29 February, 2026 has none.
  it('are those of the calendar', () => {
    expect(weekdayOf('2026-05-01')).toBe('fri');
    expect(plusDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(plusDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(['2024-02-29', '2026-02-29', '2026-6-1', '2026-06-31'].map(isDate)).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
  it('count the days of a job from its start', () => {
    expect(dateOfDay({ calendar: weekend }, 4)).toBe('2026-05-04');
    expect(dateOfDay({}, 4)).toBeNull();
  });
});

describe('days off', () => {
  it('are kept by every schedule, with the 24 hours and every wait', () => {
    fc.assert(
      fc.property(settledJob, (given) => {
        const job: Job = { ...given, calendar: { ...weekend, off: ['2026-05-05'] } };
        const { off } = calendarOf(job);
        expect([1, 2, 3, 4, 5, 6].map((day) => off?.(day))).toEqual([
          false,
          true,
          true,
          false,
          true,
          false,
        ]);
        const plan = planJob(job);
        expect(faultsOf(plan, off)).toEqual([]);
        expect(openTooLong(plan.schedule.covering)).toEqual([]);
        for (const row of plan.dayRows) if (row.off) expect(row.work).toEqual([]);
      }),
      { numRuns: onTrial(30, 3) },
    );
  });
  it('count for nothing while there is no start', () => {
    const job = tradeJob([{ depth: 40, looseness: ['hollow'], area: 60 }], {}, { crew: 1 });
    const { schedule } = planJob({ ...job, calendar: { weekly: ['sat', 'sun'] } });
    expect(schedule.placed).toEqual(planJob(job).schedule.placed);
  });
  // Common practice, no source: what lies open over a weekend is cleaned again.
  it('would be found out where a cleaned surface lay open over them', () => {
    const covering = {
      a: { last: 8, cover: 72 },
      b: { last: 72, cover: 73 },
      c: { last: 8, cover: null },
    };
    expect(openTooLong(covering)).toEqual(['a']);
    expect(openHours(covering.c)).toBeNull();
  });
});

describe('the rows of the days', () => {
  // Two people may run two hammers of one kind at once; nobody is in two places.
  it('show every hour of every person once, and never two at a time', () => {
    fc.assert(
      fc.property(settledJob, fc.integer({ min: 1, max: 4 }), (given, crew) => {
        const { dayRows, schedule } = planJob({ ...given, crew });
        const shown = dayRows.reduce((sum, { from, to, lanes }) => {
          const hours = lanes
            .filter((lane) => lane.of === 'person')
            .flatMap(({ pieces }) => pieces.map((piece) => piece.to - piece.from));
          return sum + (to - from + 1) * hours.reduce((all, each) => all + each, 0);
        }, 0);
        const laid = schedule.placed.reduce(
          (sum, { people, stretches }) =>
            sum + people.length * stretches.reduce((all, { from, to }) => all + to - from, 0),
          0,
        );
        expect(shown).toBeCloseTo(laid, 4);
        for (const { lanes } of dayRows)
          for (const { pieces } of lanes.filter((lane) => lane.of === 'person'))
            for (const [index, piece] of pieces.entries())
              expect(piece.from).toBeGreaterThanOrEqual((pieces[index - 1]?.to ?? 0) - 1e-5);
      }),
      { numRuns: onTrial(25, 3) },
    );
  });
  it('show drying that goes on through the night', () => {
    const { dayRows } = planJob(tradeJob([{ depth: 40, looseness: ['hollow'], area: 4 }]));
    expect(dayRows.some(({ waits }) => waits.some(({ to }) => to === 24))).toBe(true);
  });
});
