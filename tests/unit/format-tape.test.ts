import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spanWords } from '$words/plan/amounts';
import { formatter, untied } from '../helpers/plain-formatter';

const metric = formatter('metric');
const us = formatter('us');

describe('what somebody reads on a tape', () => {
  // Common practice, no source: no tape shows 3.61 ft.
  it.each([
    [1.1, '1.1 m', '3 ft 7 1/4 in'],
    [0.3, '0.3 m', '11 3/4 in'],
    [0.3048 * 12, '3.66 m', '12 ft'],
    [0.3048 * 12.5, '3.81 m', '12 ft 6 in'],
    [0.3048 * (6 + 3 / 16 / 12), '1.83 m', '6 ft 3/16 in'],
    [0.3048 * 11.999, '3.66 m', '12 ft'],
    [7, '7 m', '23 ft'],
    [7.25, '7.25 m', '23 ft 9 in'],
    [120, '120 m', '394 ft'],
    [0, '0 m', '0 in'],
  ])('says %s m as a tape shows it', (value, inMetric, inUs) => {
    expect(metric.distance(value)).toBe(inMetric);
    expect(us.distance(value)).toBe(inUs);
  });
  it('never says feet with a point, nor twelve inches', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5e4, noNaN: true }), (value) => {
        for (const text of [us.length(value), us.distance(value / 10)])
          expect(text).not.toMatch(/\.\d+ ft|\b12 (\d+\/\d+ )?in$.*ft|ft 12/);
      }),
    );
  });
  it('says square feet whole from ten on, and as they were typed', () => {
    expect(us.area(6)).toBe('65 sq ft');
    expect(us.area(12.5 * 0.3048 ** 2)).toBe('12.5 sq ft');
    expect(us.area(0.5)).toBe('5.4 sq ft');
  });
  // ASTM D3276, as makers print it: 3 °C or 5 °F above the dew point.
  it('says degrees apart as a thermometer shows them', () => {
    expect(us.between('K', 3, 3)).toBe('5 °F');
    expect(us.between('K', 2, 3)).toBe('4 to 5 °F');
    expect(metric.between('K', 3, 3)).toBe('3 °C');
  });
  it('says rain in inches however much it is', () => {
    expect(us.rain(1100)).toBe('43.3 in');
    expect(metric.rain(110)).toBe('110 mm');
  });
});

// What somebody measured comes back as the tape had it, in every list of amounts.
it('an amount that was measured is told as a tape shows it, a range as it is rounded', () => {
  expect(untied(spanWords([4, 4], 'm', us))).toBe('13 ft 1 in');
  expect(untied(spanWords([6, 6], 'm2', us))).toBe('65 sq ft');
  expect(spanWords([4, 4], 'm', metric)).toBe('4 m');
  expect(spanWords([18, 40], 'm', us)).toBe('59 to 140 ft');
});
