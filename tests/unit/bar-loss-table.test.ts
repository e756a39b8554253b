import { explainers } from '$lib/learn/library.server';
import { valueOf } from '$shared/figures';
import { describe, expect, it } from 'vitest';

/**
 * The table an engineer is called by. Source of the limits: UFGS 03931, 25 % of one bar and 20 % of
 * two or more neighbours; the rest is arithmetic (a round section goes with the square of its
 * thickness), rounded up, since stopping a little early is the safe side.
 */
const body = explainers.find(({ slug }) => slug === 'bar-loss')?.body ?? '';
const rowsOf = (first: string) =>
  [...body.matchAll(new RegExp(`^\\| ${first} \\| ([\\d.]+) \\| ([\\d.]+) \\|$`, 'gm'))].map(
    (row) => row.slice(1).map(Number),
  );
const metric = rowsOf('(\\d+)');
const american = rowsOf('No\\. (\\d), ([\\d.]+)');
const up = (value: number, digits: number) => Math.ceil(value * 10 ** digits) / 10 ** digits;
const leftOf = (bar: number, digits: number) =>
  (['bar.loss-one', 'bar.loss-neighbours'] as const).map((share) =>
    up(bar * Math.sqrt(1 - valueOf(share)), digits),
  );

describe('what must be left of a bar', () => {
  it('is told for three bars of each kind', () =>
    expect([metric.length, american.length]).toEqual([3, 3]));

  it.each(metric)('of %d mm', (bar = 0, one, two) => {
    expect([one, two]).toEqual(leftOf(bar, 1));
  });

  // ASTM A615, Table 1: No. 4 is 0.500 in, No. 5 0.625 in, No. 6 0.750 in.
  it.each(american)('of No. %d', (number = 0, inches = 0, one, two) => {
    expect({ 4: 0.5, 5: 0.625, 6: 0.75 }[number]).toBe(inches);
    expect([one, two]).toEqual(leftOf(inches, 3));
  });
});
