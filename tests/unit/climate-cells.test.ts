import { describe, expect, test } from 'vitest';
import { readDepth, readNumber, readTemperature } from '$lib/climate/file/cells';
import { depthUnits, temperatureUnits } from '$lib/climate/file/types';

/**
 * How public weather services write a value, a gap and a trace. Common practice, no source:
 * codes are as their files have them.
 */
describe('a cell of a weather file', () => {
  test.each(['', ' ', 'M', 'NA', 'N/A', 'NaN', 'null', 'None', '-', '--', '---', 'x', '*'])(
    '%j says that nobody measured',
    (text) => {
      expect(readNumber(text)).toBeNull();
      for (const unit of temperatureUnits) expect(readTemperature(text, unit)).toBeNull();
      for (const unit of depthUnits) expect(readDepth(text, unit)).toBeNull();
    },
  );

  test.each([
    ...['-9999', '-999', '-999.9', '-99.9', '-99.99', '-9999.9', '-32768', '-32767', '-8888'],
    ...['9999', '9999.9', '99999', '999.9'],
    ' -9999.0 ',
  ])('%s stands for the same', (text) => {
    expect(readNumber(text)).toBeNull();
  });

  test.each([
    ['12', 12],
    ['-3.5', -3.5],
    ['+3.5', 3.5],
    ['.5', 0.5],
    ['-.5', -0.5],
    ['4.', 4],
    [' 7 ', 7],
    ['2,5', 2.5],
    ['-3,5', -3.5],
    ['\u22123.5', -3.5],
  ])('%j is %f', (text, number) => {
    expect(readNumber(text)).toBe(number);
  });

  test.each(['cold', '40F', '1/2', '3/4', '1.2.3', '12 C', '1e3', '0x10', '5.5x', 'x5.5', '5.x'])(
    '%j is neither a number nor a gap',
    (text) => {
      expect(readNumber(text)).toBe('bad');
      for (const unit of temperatureUnits) expect(readTemperature(text, unit)).toBe('bad');
      for (const unit of depthUnits) expect(readDepth(text, unit)).toBe('bad');
    },
  );

  test('a point before three digits is a decimal point: no service parts thousands with it', () => {
    expect(readDepth('1.250', 'mm')).toBe(1.25);
    expect(readDepth('12.125', 'cm')).toBe(121.25);
    expect(readTemperature('-1.250', 'C')).toBe(-1.25);
  });

  test('"1,250" is one and a quarter degree, never a thousand; as rain it could be either and is asked about', () => {
    expect(readTemperature('1,250', 'C')).toBe(1.25);
    expect(readTemperature('-1,250', 'C')).toBe(-1.25);
    expect(readDepth('1,250', 'mm')).toBe('bad');
    // Beyond the most that is measured neither way will do; at it, it will.
    expect(readNumber('1,250', 1.25)).toBe(1.25);
    expect(readNumber('1,250', 1.2)).toBe('bad');
    expect(readNumber('-1,250', 1.2)).toBe('bad');
  });
});

describe('temperatures', () => {
  // By hand: (t - 32) x 5 / 9.
  test.each([
    ['32', 'F', 0],
    ['212', 'F', 100],
    ['-40', 'F', -40],
    ['-40', 'C', -40],
    ['-40', 'tenths-C', -4],
    ['305', 'tenths-C', 30.5],
  ] as const)('%s in %s', (text, unit, celsius) => {
    expect(readTemperature(text, unit)).toBe(celsius);
  });

  test('-99 is a gap in whole degrees, and a frost of 9.9 C in tenths', () => {
    expect(readTemperature('-99', 'C')).toBeNull();
    expect(readTemperature('-99', 'F')).toBeNull();
    expect(readTemperature('-99', 'tenths-C')).toBe(-9.9);
  });
});

describe('depths of rain and snow', () => {
  test.each([
    ['7', 'mm', 7],
    ['7', 'tenths-mm', 0.7],
    ['7', 'cm', 70],
    ['0.5', 'in', 12.7],
  ] as const)('%s in %s', (text, unit, millimetres) => {
    expect(readDepth(text, unit)).toBeCloseTo(millimetres, 9);
  });

  test.each(['T', 'tr', 'Trace', ' t ', '-1'])('%j is a trace: nothing', (text) => {
    expect(readDepth(text, 'mm')).toBe(0);
    expect(readDepth(text, 'in')).toBe(0);
  });

  test('a trace is no temperature', () => expect(readTemperature('T', 'C')).toBe('bad'));

  test('-99 is a gap; 99.99 is one in inches and a wet day in mm', () => {
    expect(readDepth('-99', 'mm')).toBeNull();
    expect(readDepth('99.99', 'in')).toBeNull();
    expect(readDepth('99.99', 'mm')).toBe(99.99);
    expect(readDepth('99.98', 'in')).toBeCloseTo(99.98 * 25.4, 6);
  });
});
