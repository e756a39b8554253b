import { expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { earsOver } from '$lib/safety/ears-over';
import { crewDaysOf } from '$lib/safety/from-plan';
import { safetyOf } from '$lib/safety/safety-of';
import { tradeJob } from '../helpers/trade-jobs';

// One rule for both pages: muffs over plugs take off 18 dB (29 CFR 1910.95 Appendix B, halved; the second
// from memory), so as many people as bring a day down to that.
it('the plan and the crew’s day agree on how many it takes for a day too loud even with both worn', () => {
  const zone = { depth: 40, looseness: ['hollow'], texture: ['sandy'], finish: ['overlay'] };
  const job = { ...tradeJob([{ ...zone, area: 12 } as never]), crew: 2 };
  const plan = planJob(job);
  const over = earsOver(plan, job, 'us');
  if (!over) throw new Error('not too loud');
  const helps = crewDaysOf(plan, job).shifts.flatMap(({ workers }) => {
    const result = safetyOf({ region: 'us', workers, crew: 2 });
    return result.ok ? result.safety.workers : [];
  });
  const people = helps.flatMap(({ ears, help }) =>
    ears?.by === 'neither' && help?.change === 'people' ? [help.people] : [],
  );
  // The card counts for the day as it lies; a plan laid for more people has more of it in a day.
  expect(people.length).toBeGreaterThan(0);
  expect(Math.min(...people)).toBeGreaterThan(2);
  for (const each of people) expect(over.with?.people ?? Infinity).toBeGreaterThanOrEqual(each);
});
