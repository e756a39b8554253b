import { convert } from 'convert';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heard, onTape } from '../helpers/heard';
import { formatter } from '../helpers/plain-formatter';
import { inchFraction } from '$lib/words/round';
import { shown } from '$lib/words/units';
import { rounds } from '../helpers/rounds';

const metric = formatter('metric');
const us = formatter('us');

describe('lengths', () => {
  it.each([
    [0.41, '0.41 mm', '0.016 in'],
    [1, '1 mm', '1/32 in'],
    [3.2, '3.2 mm', '1/8 in'],
    [6.4, '6.4 mm', '1/4 in'],
    [7, '7 mm', '1/4 in'],
    [19, '19 mm', '3/4 in'],
    [38, '38 mm', '1 1/2 in'],
    [50, '50 mm', '2 in'],
    [100, '100 mm', '4 in'],
    [150, '150 mm', '6 in'],
    [300, '300 mm', '12 in'],
    [2000, '2 m', '6 ft 6 3/4 in'],
    [1100, '1.1 m', '3 ft 7 1/4 in'],
    [4 * 304.8, '1.22 m', '4 ft'],
  ])('says %s mm as the trade does', (value, inMetric, inUs) => {
    expect(metric.length(value)).toBe(inMetric);
    expect(us.length(value)).toBe(inUs);
  });

  it('says a range once with its unit', () => {
    expect(metric.lengths(75, 100)).toBe('75 to 100 mm');
    expect(us.lengths(75, 100)).toBe('3 to 4 in');
    expect(us.lengths(3.2, 6.4)).toBe('1/8 to 1/4 in');
    // As people in the trade say it, not 13/16.
    expect(us.lengths(20, 50)).toBe('3/4 to 2 in');
    expect(metric.lengths(5, 5)).toBe('5 mm');
  });

  // NRMCA CIP 20 prints "1/8 to 1/4 in. (3 to 6 mm)"; a ruler has no tenths of a millimetre.
  it('says a figure that is a fraction of an inch in whole mm, and what a reader gave as it was given', () => {
    expect(metric.figure('depth.thin')).toBe('3 mm');
    expect(metric.span('depth.thin', 'depth.shallow')).toBe('3 to 6 mm');
    expect(us.span('depth.thin', 'depth.shallow')).toBe('1/8 to 1/4 in');
    expect(metric.end('hollow.skin-usual', 'low')).toBe('3 mm');
    expect(metric.edge(6.4)).toBe('6 mm');
    expect(us.edge(6.4)).toBe('1/4 in');
    // Thinner than a ruler shows, and what is no fraction of an inch.
    expect(metric.figure('blast.nozzle-wear')).toBe('1.6 mm');
    expect(metric.figure('crack.width.dry-air')).toBe('0.41 mm');
    expect(formatter('metric', { 'depth.thin': 3.2 }).figure('depth.thin')).toBe('3.2 mm');
  });

  it('never says inches further than half its finest step or 2 % from the truth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 900, noNaN: true }), (value) => {
        // Reference: the `convert` library.
        const inches = convert(value, 'millimeters').to('inches');
        // 20 mm and 3/4 in stand for each other in the trade: common practice, no source.
        if (inches > 0.75 && value <= 20) {
          expect(us.length(value)).toBe('3/4 in');
          return;
        }
        const off = Math.abs(heard(us.length(value)) - inches);
        // Sixteenths below half an inch, eighths from there: common practice, no source.
        const half = inches < 1 / 2 ? 1 / 32 : 1 / 16;
        expect(off).toBeLessThanOrEqual(Math.max(half, inches * 0.02) + 1e-9);
      }),
    );
  });

  // Common practice, no source: nobody marks 13/16 in on a slab; who measured it is told it again.
  it('says 20 mm as 3/4 in, and sixteenths that were typed as they were', () => {
    expect(us.length(20)).toBe('3/4 in');
    expect(us.lengths(6.4, 20)).toBe('1/4 to 3/4 in');
    expect(us.length((13 / 16) * 25.4)).toBe('13/16 in');
    expect(us.length((5 / 16) * 25.4)).toBe('5/16 in');
  });

  it('never says a longer length as a shorter one', () => {
    const inches = (value: number) => {
      const parts = inchFraction(value);
      return parts ? parts.whole + parts.numerator / parts.denominator : value;
    };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (value, more) => {
          expect(inches(value)).toBeLessThanOrEqual(inches(value + more) + 1e-3);
        },
      ),
      { numRuns: rounds(500, 2000) },
    );
  });

  it('writes every fraction in its lowest terms', () => {
    for (let sixteenths = 1; sixteenths < 64; sixteenths++) {
      const parts = inchFraction(sixteenths / 16);
      expect(parts).not.toBeNull();
      if (!parts?.numerator) continue;
      expect(parts.numerator % 2).toBe(1);
      expect(parts.numerator).toBeLessThan(parts.denominator);
    }
  });
});

describe('US units against the convert library', () => {
  const close = (text: string, expected: number) =>
    expect(Math.abs(heard(text) - expected)).toBeLessThanOrEqual(
      Math.max(expected * 0.005, 0.0006),
    );

  it.each([0.3, 1, 2.5, 12.5, 120, 4321])('for %s of each', (value) => {
    const feet = convert(value, 'meters').to('feet');
    // Half of what a tape is read to there: a quarter of an inch, an inch, a foot.
    const half = (feet < 10 ? 1 / 8 : feet < 100 ? 1 / 2 : 6) / 12;
    expect(Math.abs(onTape(us.distance(value)) - feet)).toBeLessThanOrEqual(half + 1e-9);
    const area = convert(value, 'square meters').to('square feet');
    expect(Math.abs(heard(us.area(value)) - area)).toBeLessThanOrEqual(area < 10 ? 0.05 : 0.5);
    close(us.volume(value), convert(value, 'cubic meters').to('cubic feet') / 27);
    close(
      us.mass(value),
      value < 907
        ? convert(value, 'kilograms').to('pounds')
        : convert(value, 'kilograms').to('pounds') / 2000,
    );
    close(us.stress(value), convert(value, 'megapascals').to('pounds per square inch'));
  });

  it('turns degrees', () => {
    for (const value of [-10, 0, 10, 37])
      expect(us.temperature(value)).toBe(
        `${Math.round(convert(value, 'celsius').to('fahrenheit'))} °F`,
      );
    expect(metric.temperature(10)).toBe('10 °C');
  });

  it('knows the factors of units that appear only in figures', () => {
    expect(shown.L.us.factor).toBeCloseTo(convert(1, 'liters').to('US liquid gallons'), 9);
    expect(shown.km.us.factor).toBeCloseTo(convert(1, 'kilometers').to('miles'), 9);
    expect(shown.t.us.factor).toBeCloseTo(convert(1, 'metric tons').to('short tons'), 9);
    expect(shown['m3/min'].us.factor).toBeCloseTo(convert(1, 'cubic meters').to('cubic feet'), 9);
    expect(shown['kg/m3'].us.factor).toBeCloseTo(
      convert(1, 'kilograms').to('pounds') / convert(1, 'cubic meters').to('cubic feet'),
      9,
    );
    // Carbon by weight is the same number in pounds; of haulage it is told by the short ton and mile.
    expect(us.figure('carbon.repair-mortar')).toMatch(/^[\d.]+ to [\d.]+ lb CO₂e per lb$/);
    expect(shown['kgCO2e/kg'].us.factor).toBe(1);
    expect(shown['kgCO2e/t km'].us.factor).toBeCloseTo(
      convert(1, 'kilograms').to('pounds') /
        convert(1, 'metric tons').to('short tons') /
        convert(1, 'kilometers').to('miles'),
      9,
    );
    expect(shown['h/m3'].us.factor * shown['m3/h'].us.factor).toBeCloseTo(1, 12);
  });
});

describe('the rest', () => {
  it('lists, ratios and times', () => {
    expect(metric.list(['oil', 'paint', 'moss'])).toBe('oil, paint and moss');
    expect(metric.either(['oil', 'paint', 'moss'])).toBe('oil, paint or moss');
    expect(metric.list(['oil'])).toBe('oil');
    expect(metric.csp(7)).toBe('CSP 7');
    expect(metric.csp([5, 10])).toBe('CSP 5 to 10');
    expect(metric.share(0.6049)).toBe('60%');
    expect(metric.percent(33.4)).toBe('33%');
    expect(metric.fraction(0.5)).toBe('half');
    expect(metric.fraction(0.3333)).toBe('a third');
    expect(metric.fraction(0.42)).toBe('42%');
    expect(metric.hours(0.25)).toBe('15 minutes');
    expect(metric.hours(1)).toBe('1 hour');
    expect(metric.hours(2.5)).toBe('2.5 hours');
    expect(metric.mass(850)).toBe('850 kg');
    expect(metric.mass(2400)).toBe('2.4 t');
    expect(us.mass(1000)).toBe('1.1 US tons');
    expect(metric.number(12345.6)).toBe('12,346');
  });

  it.each([
    [1, '1 minute'],
    [90, '90 minutes'],
    [60, '1 hour'],
    [1440, '24 hours'],
    [5000, '3 days'],
    [10000, '7 days'],
    [20000, '2 weeks'],
  ])('says %s minutes', (minutes, text) => {
    expect(metric.duration(minutes)).toBe(text);
  });

  it('names the unit to type in, and types a value in it', () => {
    expect(metric.unitOf('mm')).toBe('mm');
    expect(us.unitOf('mm')).toBe('in');
    expect(us.unitOf('m2')).toBe('sq ft');
    expect(us.typed('mm', 25.4)).toBe('1');
    expect(us.typed('m2', 1)).toBe('10.8');
  });
});
