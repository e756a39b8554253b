import { describe, expect, it } from 'vitest';
import { exactText } from '$lib/answers/exact-text';
import { numberIn, waysOf } from '$lib/answers/number-text';
import { readNumber, showNumber, type NumberField } from '$lib/answers/parse-number';

// How people write numbers: common practice, no source. By hand.
describe('a text that is one number', () => {
  it.each([
    ['12', 12],
    ['0', 0],
    ['007', 7],
    ['12.', 12],
    ['12,', 12],
    ['.25', 0.25],
    [',25', 0.25],
    ['12.2500', 12.25],
    ['+4', 4],
    ['+ 4', 4],
    ['-4', -4],
    ['- 4', -4],
    ['−4', -4],
    ['1 000', 1000],
    ['1  000', 1000],
    ['12 000 000', 12_000_000],
    ['1\u00a0000', 1000],
    ['1\u2007000', 1000],
    ['1\u2009000', 1000],
    ['1\u202f000', 1000],
    ['1 000,25', 1000.25],
    ['1 000.25', 1000.25],
    ['1,000,000', 1_000_000],
    ['1,000,000.5', 1_000_000.5],
    ['123,456.', 123_456],
    ['1.000.000', 1_000_000],
    ['1.000.000,5', 1_000_000.5],
    ['123.456,', 123_456],
    ['1/2', 0.5],
    ['-1/2', -0.5],
    ['- 1 1/2', -1.5],
    ['1 1/2', 1.5],
    ['12  3/16', 12.1875],
    ['12 3 / 16', 12.1875],
    ['13 / 16', 0.8125],
    ['1 000 1/2', 1000.5],
    ['1¼', 1.25],
    ['1 ½', 1.5],
    ['¾', 0.75],
    ['3⅓', 10 / 3],
    ['⅔', 2 / 3],
    ['2⅛', 2.125],
    ['2⅜', 2.375],
    ['2⅝', 2.625],
    ['2⅞', 2.875],
    ['-2⅞', -2.875],
  ])('%s is %s', (text, value) => {
    expect(numberIn(text)).toBeCloseTo(value, 12);
    expect(numberIn(` ${text}\t`)).toBeCloseTo(value, 12);
  });

  it.each([
    ...['', ' ', '-', '+', '.', ',', '/', '1/', '/2', '1/0', '0/0', 'a', '1a', 'a1', '1e3'],
    ...['1 2', '1 00', '1 0000', '10 0001', '1 2 3/4 5', 'x 1/2', '1/2 x', '1/2/3', '1.5 1/2 2'],
    ...['1,00,000', '1,0000,000', '1234,567,890', '1.00.000', '1234.567.890', '1,000.5.5'],
    ...['1.000,5,5', '1,000,00', '1.000.00', '--1', '+-1', '1-', '½ 1', 'x1,000,000', '1,000,000x'],
    ...['x1.000.000', '1.000.000x', 'x12', '12x', '1.2.3', '1..2', '1,,2', '1 1½'],
  ])('“%s” is none', (text) => expect(numberIn(text)).toBeNull());
});

describe('a separator before three digits', () => {
  const two = (text: string) => waysOf(text).map((way) => way.text);
  it.each([
    ['1,250', ['1250', '1.25']],
    ['1.250', ['1250', '1.25']],
    ['12.345', ['12345', '12.3450']],
    ['999.000', ['999000', '999']],
    ['120,500', ['120500', '120.5']],
    ['-1,250', ['-1250', '-1.25']],
    ['1,250 ft', ['1250 ft', '1.25 ft']],
    ['1,250 ft 6 in', ['1250 ft 6 in', '1.25 ft 6 in']],
    ['1.001', ['1001', '1.0010']],
    ['1,250 12', ['1250 12', '1.25 12']],
    ['1,250 1234', ['1250 1234', '1.25 1234']],
  ])('%s can be a thousand and more, or one and a bit', (text, ways) =>
    expect(two(text)).toEqual(ways),
  );
  it('in two numbers gives four ways, each with the number that was told apart first', () => {
    expect(waysOf('1,250 x 2.500')).toEqual([
      { text: '1250 x 2500', number: 1250 },
      { text: '1250 x 2.5', number: 1250 },
      { text: '1.25 x 2500', number: 1.25 },
      { text: '1.25 x 2.5', number: 1.25 },
    ]);
  });
  it.each([
    ...['0,125', '0.125', '.125', '1234.567', '1,25', '1,2500', '1.250,5', '1,250.5', '1.250.000'],
    ...['12 345,678', '1,250 000', '1250', '1 250', '01,250', '1/250', '', 'deep'],
  ])('%s can be read in one way', (text) => expect(waysOf(text)).toEqual([{ text, number: NaN }]));
});

describe('a number as its field shows it', () => {
  const field = (
    unit: NumberField['unit'],
    units: NumberField['units'],
    most = 1e9,
  ): NumberField => ({
    unit,
    units,
    range: [-most, most],
  });
  const feet = field('m', 'us');
  const inches = field('mm', 'us');
  const metric = field('mm', 'metric');
  it.each([
    // Typed in these units: all its digits.
    [12.5, metric, '12.5'],
    [0, metric, '0'],
    [-7, metric, '-7'],
    [1234567, metric, '1234567'],
    [0.0000005, metric, '0.0000005'],
    [-0.0000005, metric, '-0.0000005'],
    [1e-7 * 25.4, inches, '0.0000001'],
    [1234567891, field('mm', 'metric', 1e10), '1234567891'],
    [-1234567890, field('mm', 'metric', 1e10), '-1234567890'],
    // Or its fraction, thirds to sixty-fourths.
    [25.4 / 3, inches, '1/3'],
    [-25.4 / 3, inches, '-1/3'],
    [(25.4 * 25) / 3, inches, '8 1/3'],
    [(-25.4 * 25) / 3, inches, '-8 1/3'],
    [(25.4 * 61) / 63, inches, '61/63'],
    [(25.4 * 1) / 64, inches, '0.015625'],
    [25.4 * (12345 + 1 / 64), inches, '12345 1/64'],
    // In feet what was typed in metres, to four digits; from a thousand on, to seven.
    [1, feet, '3.2810'],
    [10, feet, '32.81'],
    [-10, feet, '-32.81'],
    [304.7, feet, '999.7'],
    [304.8, feet, '1000'],
    [305, feet, '1000.656'],
    [-305, feet, '-1000.656'],
    [30000, feet, '98425.2'],
    // A tape is read to the hundredth of an inch at the finest; below a tenth two digits count.
    [4, inches, '0.16'],
    [-4, inches, '-0.16'],
    [1, inches, '0.039'],
    [-1, inches, '-0.039'],
    [2.53, inches, '0.1'],
    [2.56, inches, '0.1'],
    [100, inches, '3.94'],
    // Four digits of strength and of heat.
    [1.5, field('MPa', 'us'), '217.6'],
    [21, field('C', 'us'), '69.8'],
    [-40, field('C', 'us'), '-40'],
    [2, field('kN', 'us'), '449.6'],
    [1.5, field('MPa', 'metric'), '1.5'],
    [0.25, { ...field('plain', 'us'), factor: 100 }, '25'],
    [0.25, field('plain', 'us'), '0.25'],
    // Could be 1234 as well, so one digit more; where 1234 would not fit there is no other way.
    [1.234, metric, '1.2340'],
    [-1.234, metric, '-1.2340'],
    [1.234, field('mm', 'metric', 1000), '1.234'],
    [0.234, metric, '0.234'],
  ] as const)('%s in its field %o: %s', (value, of, text) => {
    expect(showNumber(value, of)).toBe(text);
    const again = readNumber(text, of);
    const share = of.units === 'us' && of.unit === 'mm' ? 0.05 : 5e-4;
    expect(Math.abs((again.ok ? again.value : NaN) - value)).toBeLessThanOrEqual(
      Math.abs(value) * share,
    );
  });
});

describe('a number written exactly', () => {
  it.each([
    [1.5, 'm2', 'metric', '1.5'],
    [1.234, 'm2', 'metric', '1.2340'],
    [999.125, 'mm', 'metric', '999.1250'],
    [0.234, 'm2', 'metric', '0.234'],
    [1234.567, 'm', 'metric', '1234.567'],
    [1.2345, 'm', 'metric', '1.2345'],
    [1e-7, 'm', 'metric', '0.0000001'],
    [1.25e-9, 'm', 'metric', '0.00000000125'],
    [25.4, 'mm', 'us', '1'],
    [1.5 * 25.4, 'mm', 'us', '1.5'],
    [304.8, 'm', 'us', '1000'],
    [0.3048 * 1.234, 'm', 'us', '1.2340'],
    // All seventeen digits: with sixteen it would come back a hair beside 3.
    [3, 'mm', 'us', '0.11811023622047245'],
    [0.3048 ** 2, 'm2', 'us', '1'],
  ] as const)('%s %s for a reader of %s units: %s', (value, unit, units, text) =>
    expect(exactText(value, unit, units)).toBe(text),
  );
  it('is in metric where no row of inches comes back as it', () => {
    let metric = 0;
    for (let value = 0.1; value < 400; value += 0.7) {
      const text = exactText(value, 'mm', 'us');
      const field: NumberField = { unit: 'mm', range: [0, 1000], units: 'us' };
      expect(readNumber(text, field)).toEqual({ ok: true, value });
      if (text.endsWith(' mm')) metric += 1;
    }
    expect(metric).toBeGreaterThan(0);
  });
});
