import { explainers } from '$lib/learn/library.server';
import { valueOf } from '$shared/figures';
import { describe, expect, it } from 'vitest';

/**
 * The table an engineer is called by. Source of the limits: UFGS 03931, 25 % of one bar and 20 % of
 * two or more neighbours; the rest is arithmetic (a round section goes with the square of its
 * thickness), rounded up, since stopping a little early is the safe side.
 */
const rows = [
  ...(explainers.find(({ slug }) => slug === 'bar-loss')?.body ?? '').matchAll(
    /^\| (\d+) \(([\d.]+)\) \| ([\d.]+) \(([\d.]+)\) \| ([\d.]+) \(([\d.]+)\) \|$/gm,
  ),
].map((row) => row.slice(1).map(Number));
const up = (value: number, digits: number) => Math.ceil(value * 10 ** digits) / 10 ** digits;

describe('what must be left of a bar', () => {
  it('is told for three bars', () => expect(rows).toHaveLength(3));

  it.each(rows)('of %d mm', (bar = 0, inches, one, oneInches, two, twoInches) => {
    expect(inches).toBeCloseTo(bar / 25.4, 2);
    for (const [left, leftInches, share] of [
      [one, oneInches, valueOf('bar.loss-one')],
      [two, twoInches, valueOf('bar.loss-neighbours')],
    ] as const) {
      const exact = bar * Math.sqrt(1 - share);
      expect(left).toBe(up(exact, 1));
      expect(leftInches).toBe(up(exact / 25.4, 2));
    }
  });
});
