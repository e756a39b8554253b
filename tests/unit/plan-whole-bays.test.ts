import { describe, expect, it } from 'vitest';
import { isKnown, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { drawnBay } from '../helpers/drawn-bay';

const span = (amount: Amount | undefined) => (amount && isKnown(amount) ? amount.span : null);

// Common practice, no source: a bay more than half patched is offered whole.
describe('a bay that can be treated whole', () => {
  it('has both amounts, by the same depth: 4 m2 against what is patched', () => {
    const [bay] = planJob(drawnBay(1500)).wholeBays;
    expect(span(bay?.whole.area)).toEqual([4, 4]);
    const patched = span(bay?.patched.area)?.[0] ?? 0;
    expect(patched).toBeGreaterThan(2);
    expect(patched).toBeLessThan(4);
    const [some, all] = [span(bay?.patched.removed), span(bay?.whole.removed)];
    expect((all?.[1] ?? 0) / (some?.[1] ?? 1)).toBeCloseTo(4 / patched, 6);
    for (const end of span(bay?.whole.bags) ?? [0.5]) expect(Number.isInteger(end)).toBe(true);
  });
  it('is not offered where less than half is patched', () =>
    expect(planJob(drawnBay(500)).wholeBays).toEqual([]));
});
