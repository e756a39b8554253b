import { describe, expect, test } from 'vitest';
import { rainWithoutSnow, weatheringClass, weatheringIndex } from '$lib/climate/rain';
import { valueOf } from '$shared/figures';

/**
 * Environment Canada, Canadian climate normals 1971-2000: precipitation in mm of water, snow in cm
 * of depth, and rain measured apart, in mm. The snow rule is from ASTM C62 (from memory).
 */
interface Normal {
  readonly place: string;
  readonly month: string;
  readonly precipitation: number;
  readonly snow: number;
  readonly rain: number;
}
const normal = (
  place: string,
  month: string,
  precipitation: number,
  snow: number,
  rain: number,
): Normal => ({ place, month, precipitation, snow, rain });

const edges = [
  normal('Montreal Trudeau', 'March', 73.6, 36.0, 35.8),
  normal('Montreal Trudeau', 'November', 92.6, 21.9, 71.2),
  normal('Ottawa Macdonald-Cartier', 'March', 73.9, 39.8, 36.3),
  normal('Ottawa Macdonald-Cartier', 'April', 72.4, 11.0, 60.5),
  normal('Ottawa Macdonald-Cartier', 'October', 79.4, 4.1, 74.9),
  normal('Ottawa Macdonald-Cartier', 'November', 80.1, 21.9, 59.8),
  normal('Toronto', 'November', 75.7, 8.1, 67.3),
];
const midwinter = [
  normal('Montreal Trudeau', 'January', 78.3, 52.5, 27.2),
  normal('Montreal Trudeau', 'February', 61.5, 43.3, 19.8),
  normal('Ottawa Macdonald-Cartier', 'December', 81.5, 57.2, 31.3),
  normal('Ottawa Macdonald-Cartier', 'January', 70.2, 55.2, 25.2),
  normal('Ottawa Macdonald-Cartier', 'February', 58.9, 46.0, 17.6),
  normal('Toronto', 'January', 61.2, 38.2, 29.1),
];
const mmPerCm = 10;
const byRule = ({ precipitation, snow }: Normal) => rainWithoutSnow(precipitation, snow * mmPerCm);
const error = (one: Normal) => byRule(one) / one.rain - 1;

describe('the snow rule against rain measured apart', () => {
  test('as worked by hand', () => {
    expect(byRule(edges[0] as Normal)).toBeCloseTo(37.6, 6);
    expect(byRule(edges[2] as Normal)).toBeCloseTo(34.1, 6);
    expect(byRule(edges[6] as Normal)).toBeCloseTo(67.6, 6);
  });

  test.each(edges)('$place, $month: within 7 %', (one) => {
    expect(Math.abs(error(one))).toBeLessThanOrEqual(0.07);
  });

  test.each(midwinter)('$place, $month: low, by 41 % at most', (one) => {
    expect(error(one)).toBeLessThan(0);
    expect(error(one)).toBeGreaterThanOrEqual(-0.41);
  });

  test('Ottawa, November to March together: a sixth low', () => {
    const winter = [...edges, ...midwinter].filter(
      ({ place, month }) =>
        place.startsWith('Ottawa') &&
        ['November', 'December', 'January', 'February', 'March'].includes(month),
    );
    const sum = (of: (one: Normal) => number) => winter.reduce((all, one) => all + of(one), 0);
    expect(winter).toHaveLength(5);
    expect(sum(byRule) / sum(({ rain }) => rain)).toBeCloseTo(0.85, 2);
  });
});

/** ASTM C62, note: below 50 negligible and 500 and above severe, as published; the middle from memory. */
describe('the weathering index and its classes', () => {
  test('the limits belong to the class above them', () => {
    expect(valueOf('weathering.moderate')).toBe(50);
    expect(valueOf('weathering.severe')).toBe(500);
    const cases = [
      [0, 'negligible'],
      [49.99, 'negligible'],
      [50, 'moderate'],
      [499.99, 'moderate'],
      [500, 'severe'],
      [1500, 'severe'],
    ] as const;
    for (const [index, expected] of cases) expect(weatheringClass(index)).toBe(expected);
  });

  test('days times inches: 50 days and 10 inches are 500', () => {
    expect(weatheringIndex(50, 254)).toBeCloseTo(500, 9);
  });
});
