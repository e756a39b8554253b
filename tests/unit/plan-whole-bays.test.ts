import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { isKnown, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { tradeJob } from '../helpers/trade-jobs';

const span = (amount: Amount | undefined) => (amount && isKnown(amount) ? amount.span : null);

/** A bay of 2 by 2 m, hollow over a square of that side. */
const drawn = (side: number): Job => ({
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

// Common practice, no source: a bay more than half patched is offered whole.
describe('a bay that can be treated whole', () => {
  it('has both amounts, by the same depth: 4 m2 against what is patched', () => {
    const [bay] = planJob(drawn(1500)).wholeBays;
    expect(span(bay?.whole.area)).toEqual([4, 4]);
    const patched = span(bay?.patched.area)?.[0] ?? 0;
    expect(patched).toBeGreaterThan(2);
    expect(patched).toBeLessThan(4);
    const [some, all] = [span(bay?.patched.removed), span(bay?.whole.removed)];
    expect((all?.[1] ?? 0) / (some?.[1] ?? 1)).toBeCloseTo(4 / patched, 6);
    for (const end of span(bay?.whole.bags) ?? [0.5]) expect(Number.isInteger(end)).toBe(true);
  });
  it('is not offered where less than half is patched', () =>
    expect(planJob(drawn(500)).wholeBays).toEqual([]));
});
