import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { rowsOn } from '$lib/ui/crew/log-rows';
import { formatter } from '$lib/words/format';
import { rowLines } from '$words/plan/days';
import { stepInPlan } from '$words/plan/order';
import { stepWords } from '$words/steps';
import { tradeJob } from '../helpers/trade-jobs';

const say = formatter('metric');
const lines = (plan: ReturnType<typeof planJob>) =>
  plan.dayRows.flatMap((row) => rowLines(row, plan, say)).join('\n');

// Common practice, no source: a foreman who reads the days finds every piece of work on one of them.
describe('the days of a plan tell the whole of the work', () => {
  it('covering is on a day, in the plan and in the crew’s day, though nobody has timed it', () => {
    const plan = planJob(tradeJob([{ depth: 40, looseness: ['hollow'], area: 6 }]));
    expect(plan.steps.map(({ id }) => id)).toContain('cover');
    const days = plan.dayRows.filter(({ untimed }) => untimed.includes('cover'));
    expect(days).toHaveLength(1);
    expect(lines(plan)).toMatch(/hours not counted: \d+ Cover it/);
    const [day] = days;
    if (!day) throw new Error('no day');
    expect(rowsOn(plan, [day.from, day.to]).map(({ step }) => step)).toContain('cover');
    // It comes after the last cleaning, never before.
    const cleaned = plan.dayRows.findLastIndex(({ work }) =>
      work.some(({ step }) => step === 'last-clean'),
    );
    expect(plan.dayRows.indexOf(day)).toBeGreaterThanOrEqual(cleaned);
  });

  it('a crack that is routed is sealed by name, and one that is chased is filled', () => {
    const routed = planJob(
      tradeJob(
        [
          {
            looseness: ['tight'],
            depth: ['film'],
            cracks: ['open'],
            crackLength: 4,
            finish: ['sealer'],
          },
        ],
        { freezeThaw: ['rare'] },
      ),
    );
    expect(routed.steps.map(({ id }) => id)).toContain('route-crack');
    expect(lines(routed)).toContain('seal the routed crack');
    const chased = planJob(
      tradeJob([
        {
          looseness: ['tight'],
          depth: ['film'],
          cracks: ['crumbling'],
          crackLength: 4,
          finish: ['sealer'],
        },
      ]),
    );
    expect(chased.steps.map(({ id }) => id)).toContain('chase-crack');
    expect(lines(chased)).toContain('fill the chased crack');
    // Where no crack is, nothing is said of one.
    const none = planJob(
      tradeJob([{ depth: 40, looseness: ['hollow'], cracks: ['none'], area: 6 }]),
    );
    expect(stepInPlan(none, 'wet-or-dry', stepWords(say))).toBe(stepWords(say)['wet-or-dry'].name);
  });
});
