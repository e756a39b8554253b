import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { firstPoints, readForOwner } from '$lib/plan/conclusion';
import { planJob } from '$lib/plan/plan';
import { settledJob } from '../helpers/crew-jobs';
import { tradeJob } from '../helpers/trade-jobs';
import { rounds } from '../helpers/rounds';

const read = (job: Job) => readForOwner(job, planJob(job));
const anyJob = fc
  .tuple(settledJob, fc.option(fc.double({ min: 1, max: 2000, noNaN: true }), { nil: undefined }))
  .map(([job, totalArea]): Job => ({ ...job, ...(totalArea !== undefined && { totalArea }) }));

// Common practice, no source: whoever reads a sheet aloud does not read one sentence twice.
describe('what stands open on the sheet', () => {
  it('says no point twice, and none that the conclusion has said', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const given = read(job);
        const shown = Object.values(firstPoints(given)).flatMap(({ speaksFor, against }) => [
          ...speaksFor,
          ...against,
        ]);
        const keys = shown.map((point) => JSON.stringify(point));
        expect(new Set(keys).size).toBe(keys.length);
      }),
      { numRuns: rounds(15, 40) },
    );
    // Cracks like a map: the conclusion sends for the laboratory, and no line repeats that.
    const map = read(
      tradeJob([{ depth: 35, looseness: ['rotten'], area: 6 }], {
        warnings: { yes: ['map-cracking'], maybe: [] },
      }),
    );
    expect(map.conclusion).toBe('laboratory-first');
    const ids = Object.values(firstPoints(map)).flatMap(({ speaksFor, against }) =>
      [...speaksFor, ...against].map(({ id }) => id),
    );
    expect(ids.length).toBeGreaterThan(0);
    expect(ids).not.toContain('map-cracking');
  });
});
