import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { briefingOf, mostLines, rowsToSign } from '$lib/safety/briefing';
import { crewHazards } from '$lib/safety/crew-hazards';
import { dustParts } from '$lib/safety/dust-strip';
import { crewDaysOf } from '$lib/safety/from-plan';
import { hazardsOf } from '$lib/safety/mix';
import { safetyOf } from '$lib/safety/safety-of';
import { crewDays, wholeJobOf } from '$lib/safety/whole-job';
import { formatter } from '$lib/words/format';
import { briefingLine } from '$words/safety';
import { settledJob } from '../helpers/crew-jobs';
import { tradeJob } from '../helpers/trade-jobs';
import { onTrial } from '../helpers/rounds';

const say = formatter('metric');

// Common practice, no source: what is read aloud is short, and every line can be done.
describe('the briefing of any day', () => {
  it('has eight lines at most, none twice, none empty, and ends with who may stop', () => {
    fc.assert(
      fc.property(settledJob, fc.constantFrom('us', 'elsewhere'), (job, region) => {
        const plan = planJob(job);
        const { shifts, crew } = crewDaysOf(plan, job);
        for (const shift of shifts) {
          const result = safetyOf({ region, workers: shift.workers, crew });
          if (!result.ok) throw new Error('refused');
          const { safety } = result;
          const hazards = crewHazards(
            job,
            plan.steps.filter(({ id }) => shift.steps.includes(id)),
          );
          const lines = briefingOf(safety, hazards, ['Ramp']);
          expect(lines.length).toBeLessThanOrEqual(mostLines);
          expect(lines.at(-1)?.id).toBe('anyone');
          expect(lines.some(({ id }) => id === 'leave')).toBe(true);
          const told = lines.map((line) => briefingLine(say, line, safety).line);
          expect(new Set(told).size).toBe(told.length);
          for (const line of told) {
            expect(line).not.toBe('');
            // No turn that nobody can keep, no rating that nobody sells (NRR up to 33, from memory).
            expect(line).not.toMatch(/\b[0-9] min\b/);
            for (const [, rating] of line.matchAll(/\(NRR\) of (\d+)/g))
              expect(Number(rating)).toBeLessThanOrEqual(33);
          }
        }
      }),
      { numRuns: onTrial(25, 5) },
    );
  });
  it('tells of the mask wherever one of the tasks asks for one', () => {
    const job = tradeJob([{ depth: 40, looseness: ['hollow'], area: 20 }], {
      setting: ['indoors'],
    });
    const [shift] = crewDaysOf(planJob(job), job).shifts;
    const result = safetyOf({ region: 'us', workers: shift?.workers ?? [] });
    if (!result.ok) throw new Error('refused');
    const asked = result.safety.workers.some(({ silica }) => silica.protection !== 0);
    expect(asked).toBe(true);
    expect(briefingOf(result.safety, [], []).map(({ id }) => id)).toContain('mask');
  });
  it('has a row to sign for everybody, and some for whoever joins', () =>
    expect([1, 2, 6, 50].map(rowsToSign)).toEqual([8, 8, 10, 14]));
  // Common practice, no source: chips from a hammer and a saw blind; goggles are read out on such days.
  it('reads out eyes and flying pieces where a hammer, a saw or blasting is on the day', () => {
    const job = tradeJob([{ depth: 40, looseness: ['hollow'], area: 20 }], {}, { crew: 2 });
    const plan = planJob(job);
    for (const shift of crewDaysOf(plan, job).shifts) {
      const result = safetyOf({ region: 'elsewhere', workers: shift.workers });
      if (!result.ok) throw new Error('refused');
      const hazards = hazardsOf(job, shift, plan);
      const told = briefingOf(result.safety, hazards, []).map(
        (line) => briefingLine(say, line, result.safety).line,
      );
      const flies = shift.steps.some((step) =>
        ['saw-cut', 'break-out', 'blast-clean', 'abrasive-blast'].includes(step),
      );
      if (flies)
        expect(told.some((line) => /fly/.test(line) && /face shield over them/.test(line))).toBe(
          true,
        );
      expect(told.length).toBeLessThanOrEqual(mostLines);
    }
  });
});

describe('shown from the one reckoning', () => {
  const job = tradeJob([{ depth: 40, looseness: ['hollow'], area: 20 }], {}, { crew: 2 });
  const crewPlan = crewDaysOf(planJob(job), job);
  it('hours in dust are those the table counts, end to end', () => {
    for (const dustHours of ['at-task', 'tool-running'] as const) {
      const result = safetyOf({
        region: 'us',
        workers: crewPlan.shifts[0]?.workers ?? [],
        dustHours,
      });
      if (!result.ok) throw new Error('refused');
      for (const worker of result.safety.workers) {
        const parts = dustParts(worker).filter(({ counted }) => counted);
        expect(parts.at(-1)?.to ?? 0).toBeCloseTo(worker.silica.hours.high, 9);
        for (const [index, { from }] of parts.entries())
          expect(from).toBeCloseTo(parts[index - 1]?.to ?? 0, 9);
      }
    }
  });
  // 29 CFR 1926.1153 (c)(3): the hours of Table 1 tasks add up; shotblasting is in no row.
  it('hours in no row of the table lie in a bar of their own', () => {
    const tasks = (['shotblast', 'saw-cut', 'break-out'] as const).map((step) => ({
      step,
      setting: 'open' as const,
      hours: [2, 2] as const,
    }));
    const result = safetyOf({ region: 'elsewhere', workers: [{ id: '1', tasks }] });
    const [worker] = result.ok ? result.safety.workers : [];
    if (!worker) throw new Error('refused');
    expect(dustParts(worker)).toMatchObject([
      { tool: 'walk-behind-saw', counted: true, from: 0, to: 2 },
      { counted: true, from: 2, to: 4 },
      { tool: 'shotblaster', counted: false, from: 0, to: 2 },
    ]);
    expect(worker.silica.column).toBe('up-to-4');
  });
  it('the whole job has the work of all its days', () => {
    const whole = wholeJobOf(crewPlan, 'us');
    if (!whole?.ok) throw new Error('refused');
    const hours = (lists: readonly { tasks: readonly { hours: readonly [number, number] }[] }[]) =>
      lists.flatMap(({ tasks }) => tasks).reduce((sum, task) => sum + task.hours[1], 0);
    const byDay = crewPlan.shifts.reduce(
      (sum, { days, workers }) => sum + (days[1] - days[0] + 1) * hours(workers),
      0,
    );
    expect(hours(whole.safety.workers)).toBeCloseTo(byDay, 6);
    expect(crewDays(crewPlan)).toBeGreaterThan(0);
    const { everything } = whole.safety.sharing;
    const { worstSharing } = whole.safety;
    if (everything.can === 'share' && worstSharing.can === 'share')
      expect(everything.people).toBeLessThanOrEqual(worstSharing.people);
  });
});
