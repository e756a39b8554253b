import { describe, expect, it } from 'vitest';
import { dewPoint as ours } from '$lib/readiness/dew-point';
import { rangeOf, type FigureId } from '$shared/figures';

/**
 * Dew point in °C of air at t °C, humidity as a share: the Magnus formula with the constants of the
 * World Meteorological Organization's guide to instruments (from memory: check a copy).
 */
function dewPoint(t: number, humidity: number): number {
  const g = Math.log(humidity) + (17.62 * t) / (243.12 + t);
  return (243.12 * g) / (17.62 - g);
}

describe('how far the dew point lies below the air', () => {
  // Psychrometric tables, from memory: 20 °C and 50 % give 9.3 °C, 25 °C and 60 % give 16.7 °C.
  it.each([
    [20, 0.5, 9.3],
    [25, 0.6, 16.7],
  ])('the formula agrees with the tables at %s °C and %s', (t, humidity, published) => {
    expect(Math.abs(dewPoint(t, humidity) - published)).toBeLessThan(0.15);
    expect(Math.abs(ours(t, humidity * 100) - published)).toBeLessThan(0.15);
  });

  it('is the air itself when the air is full of water, and never above it', () => {
    for (let t = -20; t <= 45; t += 5) {
      expect(ours(t, 100)).toBeCloseTo(t, 10);
      for (let humidity = 5; humidity < 100; humidity += 5)
        expect(ours(t, humidity)).toBeLessThan(t);
    }
    expect(ours(20, 0)).toBe(-Infinity);
  });

  it.each([
    ['dew.below-air-half', 0.5],
    ['dew.below-air-seven-tenths', 0.7],
    ['dew.below-air-nine-tenths', 0.9],
  ] as const)('%s holds from 5 to 30 °C, to half a degree', (id, humidity) => {
    const [least, most] = rangeOf(id satisfies FigureId);
    for (let t = 5; t <= 30; t += 1) {
      const below = t - dewPoint(t, humidity);
      expect(below).toBeGreaterThanOrEqual(least - 0.26);
      expect(below).toBeLessThanOrEqual(most + 0.26);
    }
    expect(Math.abs(5 - dewPoint(5, humidity) - least)).toBeLessThan(0.26);
    expect(Math.abs(30 - dewPoint(30, humidity) - most)).toBeLessThan(0.26);
  });
});
