import { describe, expect, test } from 'vitest';
import { allowedHours, dayLevel, noiseRules, partOf } from '$lib/safety/noise-limits';
import { noiseOfDay } from '$lib/safety/noise';
import { ratingFor } from '$lib/safety/protector';
import { settleTask } from '$lib/safety/tasks';
import { rangeOf } from '$shared/figures';

/** One unit in the last printed digit of a number. */
const lastDigit = (printed: string): number => 10 ** -(printed.split('.')[1]?.length ?? 0);

describe('29 CFR 1910.95 Appendix A', () => {
  // Table G-16a, reference duration in hours. 80 to 86 read in a copy of the table; the printed
  // rows named in the regulation's examples too; the others from memory, all within the footnote
  // T = 8 / 2^((L - 90) / 5).
  const tableG16a: readonly (readonly [number, string])[] = [
    [80, '32'],
    [81, '27.9'],
    [82, '24.3'],
    [83, '21.1'],
    [84, '18.4'],
    [85, '16'],
    [86, '13.9'],
    [87, '12.1'],
    [88, '10.6'],
    [89, '9.2'],
    [90, '8'],
    [91, '7.0'],
    [92, '6.1'],
    [93, '5.3'],
    [94, '4.6'],
    [95, '4'],
    [96, '3.5'],
    [97, '3.0'],
    [98, '2.6'],
    [99, '2.3'],
    [100, '2'],
    [101, '1.7'],
    [102, '1.5'],
    [103, '1.3'],
    [104, '1.1'],
    [105, '1'],
    [106, '0.87'],
    [107, '0.76'],
    [108, '0.66'],
    [109, '0.57'],
    [110, '0.5'],
    [111, '0.44'],
    [112, '0.38'],
    [113, '0.33'],
    [114, '0.29'],
    [115, '0.25'],
    [116, '0.22'],
    [117, '0.19'],
    [118, '0.16'],
    [119, '0.14'],
    [120, '0.125'],
    [121, '0.11'],
    [122, '0.095'],
    [123, '0.082'],
    [124, '0.072'],
    [125, '0.063'],
    [126, '0.054'],
    [127, '0.047'],
    [128, '0.041'],
    [129, '0.036'],
    [130, '0.031'],
  ];
  test('all 51 rows of Table G-16a', () => {
    expect(tableG16a.map(([level]) => level)).toEqual(
      Array.from({ length: 51 }, (_, index) => 80 + index),
    );
  });
  test.each(tableG16a)('Table G-16a: %d dBA for %s h', (level, printed) => {
    const hours = allowedHours('osha-limit', level);
    expect(Math.abs(hours - Number(printed))).toBeLessThan(lastDigit(printed));
    // The row used in full is a dose of 100 percent, as near as the row is printed.
    expect(100 * partOf('osha-limit', level, hours)).toBeCloseTo(100, 9);
  });

  // Table A-1, dose in percent to TWA in dB, from memory; agrees with TWA = 16.61 log10(D / 100) + 90,
  // which was read in the appendix.
  test.each([
    [10, 73.4],
    [25, 80.0],
    [50, 85.0],
    [75, 87.9],
    [100, 90.0],
    [150, 92.9],
    [200, 95.0],
    [400, 100.0],
  ])('a dose of %d percent is a TWA of %d dB', (dose, twa) => {
    expect(dayLevel('osha-limit', dose / 100)).toBeCloseTo(twa, 1);
    expect(dayLevel('osha-limit', dose / 100)).toBeCloseTo(16.61 * Math.log10(dose / 100) + 90, 2);
  });

  test('the action level is a dose of 50 percent: 1910.95(c)', () => {
    expect(partOf('osha-action', 95, 2)).toBeCloseTo(2 * partOf('osha-limit', 95, 2), 12);
    expect(noiseRules['osha-action'].exchange).toBe(noiseRules['osha-limit'].exchange);
  });

  test('nothing is counted below the start of the table', () => {
    expect(partOf('osha-limit', 79.9, 8)).toBe(0);
    expect(partOf('osha-limit', 80, 32)).toBeCloseTo(1, 12);
  });

  test('Appendix B: an NRR of 33, less 7, halved in the field, takes off 13 dB', () => {
    expect(ratingFor(13)).toBeCloseTo(33, 12);
    expect(ratingFor(0)).toBe(0);
  });
});

describe('29 CFR 1926.52', () => {
  // Table D-2, hours and dBA; read in the regulation.
  test.each([
    [8, 90],
    [6, 92],
    [4, 95],
    [3, 97],
    [2, 100],
    [1.5, 102],
    [1, 105],
    [0.5, 110],
    [0.25, 115],
  ])('Table D-2: %d h at %d dBA', (printed, level) => {
    // Printed to the half or quarter hour: 6.06, 3.03 and 1.52 h by the formula.
    expect(Math.abs(allowedHours('osha-limit', level) / printed - 1)).toBeLessThan(0.02);
  });

  test('the sample of (d)(2)(iii): 110 for 1/4 h, 100 for 1/2 h, 90 for 1 1/2 h is 0.938 (from memory; sum derived)', () => {
    const part =
      partOf('osha-limit', 110, 0.25) +
      partOf('osha-limit', 100, 0.5) +
      partOf('osha-limit', 90, 1.5);
    expect(part).toBeCloseTo(0.9375, 12);
    expect(part).toBeCloseTo(0.938, 3);
  });

  test('the same sample as a day of three tools', () => {
    const periods: readonly (readonly [number, number])[] = [
      [110, 0.25],
      [100, 0.5],
      [90, 1.5],
    ];
    const day = noiseOfDay(
      periods.map(([ownLevel, hours]) => ({
        ...settleTask({ step: 'break-out', setting: 'open', hours: [hours, hours], ownLevel }),
      })),
    );
    expect(day.limits['osha-limit'].part.high).toBeCloseTo(0.9375, 12);
    expect(day.limits['osha-limit'].standing).toBe('under');
    expect(day.limits['osha-action'].standing).toBe('over');
    // 2.25 h use up 0.9375, so 2.25 / 0.9375 - 2.25 = 0.15 h of the same mix are left.
    expect(day.limits['osha-limit'].hoursLeft.low).toBeCloseTo(0.15, 9);
  });
});

describe('NIOSH 98-126, Table 1-1 (as reported)', () => {
  // Level, then hours, minutes, seconds.
  const table: readonly (readonly [number, number, number, number])[] = [
    [80, 25, 24, 0],
    [81, 20, 10, 0],
    [82, 16, 0, 0],
    [83, 12, 42, 0],
    [84, 10, 5, 0],
    [85, 8, 0, 0],
    [86, 6, 21, 0],
    [87, 5, 2, 0],
    [88, 4, 0, 0],
    [89, 3, 10, 0],
    [90, 2, 31, 0],
    [91, 2, 0, 0],
    [92, 1, 35, 0],
    [93, 1, 16, 0],
    [94, 1, 0, 0],
    [95, 0, 47, 37],
    [96, 0, 37, 48],
    [97, 0, 30, 0],
    [98, 0, 23, 49],
    [100, 0, 15, 0],
    [101, 0, 11, 54],
    [102, 0, 9, 27],
    [103, 0, 7, 30],
    [104, 0, 5, 57],
    [105, 0, 4, 43],
    [106, 0, 3, 45],
    [107, 0, 2, 59],
    [108, 0, 2, 22],
    [109, 0, 1, 53],
    [110, 0, 1, 29],
    [111, 0, 1, 11],
    [112, 0, 0, 56],
    [113, 0, 0, 45],
    [114, 0, 0, 35],
    [115, 0, 0, 28],
  ];
  test.each(table)('%d dBA for %d h %d min %d s', (level, hours, minutes, seconds) => {
    const printed = hours * 3600 + minutes * 60 + seconds;
    // Rows with hours are printed to the minute, the others to the second.
    const printing = hours > 0 ? 60 : 1;
    expect(Math.abs(allowedHours('niosh', level) * 3600 - printed)).toBeLessThan(printing);
  });

  test('99 dBA is printed as 18 min 59 s, which its own formula does not give', () => {
    expect(allowedHours('niosh', 99) * 3600).toBeCloseTo((480 * 60) / 2 ** (14 / 3), 6);
    expect(Math.round(allowedHours('niosh', 99) * 3600)).toBe(18 * 60 + 54);
  });
});

describe('levels at the operator', () => {
  // Read in the lists themselves: Ontario's guide to the noise regulation, Appendix D; the OSHA talk of 2003
  // for the chipping hammer.
  test.each([
    ['noise.jackhammer', 100, 115],
    ['noise.concrete-saw', 97, 103],
    ['noise.blast-nozzle', 111, 117],
    ['noise.compressor', 85, 104],
    ['noise.chipping-hammer', 103, 113],
  ] as const)('%s from %d to %d dB(A)', (figure, low, high) => {
    expect(rangeOf(figure)).toEqual([low, high]);
  });
});

describe('equal energy: SCENIHR 2008, Table 3', () => {
  // 85 dB(A) for 8 h and what it names as the same dose.
  test.each([
    [85, 8],
    [88, 4],
    [91, 2],
    [94, 1],
    [97, 0.5],
    [100, 0.25],
  ])('%d dB(A) for %d h is LEX,8h 85', (level, hours) => {
    const lex = dayLevel('eu-upper', partOf('eu-upper', level, hours));
    // Three decibels are 1.995 in energy, not 2: the row drifts by 0.01 dB a step.
    expect(Math.abs(lex - 85)).toBeLessThan(0.06);
    expect(lex).toBeCloseTo(level + 10 * Math.log10(hours / 8), 9);
  });
  test('LEX,8h is the same whichever limit it is held against: 2003/10/EC', () => {
    for (const limit of ['eu-lower', 'eu-upper', 'eu-limit'] as const)
      expect(dayLevel(limit, partOf(limit, 96, 3))).toBeCloseTo(96 + 10 * Math.log10(3 / 8), 9);
    expect(allowedHours('eu-lower', 80)).toBeCloseTo(8, 12);
    expect(allowedHours('eu-upper', 85)).toBeCloseTo(8, 12);
    expect(allowedHours('eu-limit', 87)).toBeCloseTo(8, 12);
  });
});
