import { describe, expect, it } from 'vitest';
import { wholePercents } from '$lib/plan/whole-percents';

const told = (...shares: readonly number[]) =>
  wholePercents(shares).map((share) => Math.round(1e6 * share) / 1e4);

// Largest remainder (Hamilton): rounded down, and what is missing goes to those that lost most.
describe('shares of one surface, as they are told', () => {
  it('add up to 100, where rounding each by itself comes to 101 or 99', () => {
    // By themselves 46, 33, 22: 101.
    expect(told(0.456, 0.329, 0.215)).toEqual([46, 33, 21]);
    // By themselves 33, 33, 33: 99.
    expect(told(1 / 3, 1 / 3, 1 / 3)).toEqual([34, 33, 33]);
    expect(told(0.5, 0, 0.5)).toEqual([50, 0, 50]);
    expect(told(1, 0)).toEqual([100, 0]);
    // A hair of arithmetic is no percent.
    expect(told(0.1 + 0.2, 0.7)).toEqual([30, 70]);
  });
  it('leave what is less than one percent as it is, and nothing else is all of it then', () => {
    expect(told(0.997, 0.003)).toEqual([99, 0.3]);
    expect(told(0.625, 0.372, 0.003)).toEqual([62, 37, 0.3]);
    expect(told(0.497, 0.497, 0.006)).toEqual([50, 49, 0.6]);
    expect(told(0.984, 0.004, 0.004, 0.004, 0.004)).toEqual([98, 0.4, 0.4, 0.4, 0.4]);
  });
  it('are none further than one percent from what they are, on a thousand surfaces', () => {
    let seed = 7;
    const dice = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
    for (let round = 0; round < 1000; round++) {
      const parts = Array.from({ length: 7 }, () => dice() ** 3);
      const all = parts.reduce((sum, part) => sum + part, 0);
      const shares = parts.map((part) => part / all);
      const percents = told(...shares);
      const whole = shares.map((share, place) => (share < 0.01 ? 0 : (percents[place] ?? 0)));
      const small = shares.filter((share) => share < 0.01).reduce((sum, share) => sum + share, 0);
      const left = small > 0 ? Math.max(1, Math.round(100 * small)) : 0;
      expect(whole.reduce((sum, percent) => sum + percent, 0)).toBe(100 - left);
      for (const [place, percent] of percents.entries())
        expect(Math.abs(percent - 100 * (shares[place] ?? 0))).toBeLessThanOrEqual(1);
    }
  });
});
