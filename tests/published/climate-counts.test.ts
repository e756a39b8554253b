import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import datasets from 'vega-datasets';
import { describe, expect, test } from 'vitest';
import { cyclesFromCounts, freezingTests, isMeasured } from '$lib/climate/cycles';
import { readWeather } from '$lib/climate/weather';
import { inventDays, readFile } from '../helpers/weather';

/**
 * Western Regional Climate Center, period-of-record monthly climate summaries:
 * mean days a year with the minimum at or below 32 F, and with the maximum at or below 32 F.
 */
describe('freezing-cycle days against published long-term counts', () => {
  test('Westcliffe, Colorado: 220.4 less 22.6', () => {
    expect(cyclesFromCounts(220.4, 22.6)).toBeCloseTo(197.8, 6);
  });

  test('Vail, Colorado: 250.7 less 70.8', () => {
    expect(cyclesFromCounts(250.7, 70.8)).toBeCloseTo(179.9, 6);
  });

  test('ten years built from the monthly counts of Westcliffe give the yearly count back', () => {
    const frost = [30.3, 27.4, 28.9, 23.7, 15.1, 2.9, 0.2, 0.4, 9.7, 23.9, 28.1, 29.9];
    const ice = [6.5, 4.3, 2.0, 0.4, 0, 0, 0, 0, 0, 0.1, 3.0, 6.2];
    // Tenths of a day become whole days spread over ten years: 30.3 is 30 days in seven years and 31 in three.
    const share = (mean: number, year: number) =>
      Math.floor(mean) + (year % 10 < Math.round((mean % 1) * 10) ? 1 : 0);
    const days = inventDays(2000, 2009, ({ year, month, day }) => {
      const [frosty, frozen] = [frost[month - 1] ?? 0, ice[month - 1] ?? 0];
      // The days at the edge stand exactly at 32 F, so that "at or below" is what counts them.
      if (day <= share(frozen, year)) return { min: -10, max: 0 };
      return day <= share(frosty, year) ? { min: 0, max: 5 } : { min: 3, max: 15 };
    });
    const weather = readWeather(days);
    // The months as printed add up to 220.5 and 22.5; the printed years are 220.4 and 22.6.
    expect(weather.cycles?.direct).toBeCloseTo(198.0, 6);
    expect(Math.abs((weather.cycles?.direct ?? 0) - 197.8)).toBeLessThanOrEqual(0.3);
    expect(weather.cycles?.byDifference).toBeCloseTo(weather.cycles?.direct ?? NaN, 6);
    for (const { month, cycles } of weather.months)
      expect(cycles).toBeCloseTo((frost[month - 1] ?? 0) - (ice[month - 1] ?? 0), 6);
  });
});

/**
 * National Oceanic and Atmospheric Administration, daily observations, as handed out in
 * vega-datasets 3.2.1, data/weather.csv. The counts were made outside this project.
 */
describe('freezing-cycle days against daily observations', () => {
  const entry = createRequire(import.meta.url).resolve('vega-datasets');
  const file = readFileSync(join(entry, '../../data/weather.csv'));
  const read = (station: string) =>
    readFile(new Uint8Array(file), (layout) => ({ ...layout, station }));
  const counts = { Seattle: [19, 29, 20, 15], 'New York': [44, 72, 63, 52] };

  test('the counts were made on this version of the data', () => {
    expect(datasets.version).toBe('3.2.1');
  });

  test.each(Object.entries(counts))('%s, 2012 to 2015', (station, expected) => {
    const { days, problems } = read(station);
    expect(problems).toEqual([]);
    expect(days).toHaveLength(1461);
    const weather = readWeather(days);
    expect(weather.years.map(({ cycles }) => cycles)).toEqual(expected);
    expect(weather.years.map(({ frost, ice }) => cyclesFromCounts(frost, ice))).toEqual(expected);
  });

  test('the inequality matters: strictly below and strictly above, New York 2013 would have 60', () => {
    const days = read('New York').days.filter(isMeasured);
    const in2013 = days.filter(({ year }) => year === 2013);
    expect(in2013.filter(({ min, max }) => min < 0 && max > 0)).toHaveLength(60);
    expect(in2013.filter(freezingTests().isCycle)).toHaveLength(72);
  });

  test('with both cities in one file the second is named with its first row', () => {
    const { days, problems } = readFile(new Uint8Array(file));
    expect(days).toEqual([]);
    // 1 row of names and 1,461 days of the first city come before it.
    expect(problems).toEqual([{ id: 'two-stations', row: 1463, text: 'New York', count: 2 }]);
  });

  /** ASTM C62 maps the north-east of the United States as severe, the coast of Washington as moderate: from memory. */
  test('the weathering class agrees with the map', () => {
    expect(readWeather(read('New York').days).weathering).toBe('severe');
    expect(readWeather(read('Seattle').days).weathering).toBe('moderate');
  });
});
