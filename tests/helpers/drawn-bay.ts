import type { Job } from '$lib/answers/job';
import { tradeJob } from './trade-jobs';

/** A bay of 2 by 2 m, hollow over a square of that side. */
export const drawnBay = (side: number): Job => ({
  ...tradeJob([{ depth: 40, looseness: ['hollow'], area: 4 }], { thickness: 150 }),
  survey: {
    slab: { length: 2000, width: 2000 },
    marks: [
      {
        kind: 'spot',
        zone: tradeJob([{}]).zones[0]?.id ?? '',
        depth: 40,
        corners: [
          [200, 200],
          [200 + side, 200],
          [200 + side, 200 + side],
          [200, 200 + side],
        ],
      },
    ],
  } as Job['survey'] & object,
});
