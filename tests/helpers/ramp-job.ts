import type { Job } from '$lib/answers/job';
import { tradeJob } from './trade-jobs';

/** A ramp with a weak skin, a rotten edge whose hole passes a third of the slab, and sound concrete. Invented. */
export const rampJob = (): Job => {
  const job = tradeJob(
    [
      { depth: 5, looseness: ['fractured'], area: 30 },
      { depth: 40, looseness: ['rotten'], area: 2 },
      { area: 20 },
    ],
    { salts: ['de-icing'], freezeThaw: ['often'] },
    { totalArea: 52 },
  );
  const names = ['Ramp', 'Edge by the road', 'Rest'];
  return {
    ...job,
    zones: job.zones.map((zone, place) => ({ ...zone, name: names[place] ?? '' })),
  };
};
