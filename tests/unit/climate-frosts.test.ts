import { describe, expect, test } from 'vitest';
import { isSouthern, usualFrosts, winterTest } from '$lib/climate/frosts';
import { readWeather } from '$lib/climate/weather';
import { inventDays } from '../helpers/weather';

describe('first and last frost', () => {
  // Frost from 10 November to 20 March, and never otherwise. Invented.
  const winterly = ({ month, day }: { month: number; day: number }) =>
    month > 11 || month < 3 || (month === 11 && day >= 10) || (month === 3 && day <= 20);
  const north = inventDays(2001, 2006, (date) =>
    winterly(date) ? { min: -2, max: 4 } : { min: 8, max: 18 },
  );

  test('north of the equator', () => {
    const frosts = usualFrosts(north, false);
    expect(frosts).toEqual({
      first: { month: 11, day: 10 },
      last: { month: 3, day: 20 },
      winters: 6,
    });
    const inWinter = winterTest(frosts);
    expect([
      inWinter({ month: 11, day: 9 }),
      inWinter({ month: 11, day: 10 }),
      inWinter({ month: 3, day: 20 }),
      inWinter({ month: 3, day: 21 }),
    ]).toEqual([false, true, true, false]);
  });

  test('south of it, half a year on, by the weather itself', () => {
    const south = inventDays(2001, 2006, ({ month, day }) =>
      month === 7 || (month === 6 && day >= 5) || (month === 8 && day <= 25)
        ? { min: -1, max: 6, rain: 1 }
        : { min: 10, max: month <= 3 ? 30 : 20, rain: 0 },
    );
    const weather = readWeather(south);
    expect(weather.south).toBe(true);
    expect(weather.frosts).toMatchObject({
      first: { month: 6, day: 5 },
      last: { month: 8, day: 25 },
    });
    // 26 days of June, 31 of July, 25 of August, a millimetre each.
    expect(weather.winterRain).toBeCloseTo(82, 9);
  });

  test('a single calendar year gives both', () => {
    expect(
      usualFrosts(
        north.filter(({ year }) => year === 2003),
        false,
      ),
    ).toEqual({ first: { month: 11, day: 10 }, last: { month: 3, day: 20 }, winters: 1 });
  });

  // By hand: of 10 and 13 November the earlier half is rounded outward, 11; of 20 and 23 March 22.
  test('between two winters lies the middle, rounded to the longer winter', () => {
    const two = inventDays(2001, 2003, ({ year, month, day }) => {
      const late = year === 2002 || (year === 2003 && month < 7) ? 3 : 0;
      const first = month > 11 || (month === 11 && day >= 10 + (year === 2002 ? 3 : 0));
      const last = month < 3 || (month === 3 && day <= 20 + late);
      return first || last ? { min: -2, max: 4 } : { min: 8, max: 18 };
    }).filter(({ year, month }) => (year === 2001 ? month >= 8 : year === 2002 || month < 8));
    const frosts = usualFrosts(two, false);
    expect(frosts).toEqual({
      first: { month: 11, day: 11 },
      last: { month: 3, day: 23 },
      winters: 2,
    });
  });

  test('frost in every second winter is not usual; in two of three it is, unless the reader asks for more', () => {
    // Winters begin in August; frost on 5 January alone.
    const winters = (...frosty: boolean[]) =>
      inventDays(2001, 2001 + frosty.length, ({ year, month, day }) =>
        frosty[year - 2002] && month === 1 && day === 5 ? { min: 0, max: 4 } : { min: 3, max: 9 },
      ).filter(
        ({ year, month }) =>
          (year > 2001 || month >= 8) && (year <= 2000 + frosty.length || month < 8),
      );
    const day = { month: 1, day: 5 };
    const none = { first: null, last: null };
    expect(usualFrosts(winters(true, false), false)).toEqual({ ...none, winters: 2 });
    const most = winters(true, false, true);
    expect(usualFrosts(most, false)).toEqual({ first: day, last: day, winters: 3 });
    expect(usualFrosts(most, false, { 'frost.most-winters': 0.7 })).toEqual({
      ...none,
      winters: 3,
    });
    expect(usualFrosts([], false)).toEqual({ ...none, winters: 0 });
  });

  test('where frost does not come in most winters there is none, and no winter rain', () => {
    const mild = inventDays(2001, 2006, (date) => ({
      min: date.year === 2003 && date.month === 1 && date.day === 5 ? -1 : 6,
      max: 15,
      rain: 3,
    }));
    const weather = readWeather(mild);
    expect(weather.frosts).toMatchObject({ first: null, last: null });
    expect(weather).toMatchObject({
      winterRain: 0,
      index: 0,
      weathering: 'negligible',
      frequency: 'never',
    });
  });
});

// December to February against June to August: the seasons of the World Meteorological Organization.
describe('on which side of the equator', () => {
  const only = (months: readonly number[], warm: (month: number) => number | null) =>
    inventDays(2001, 2001, ({ month }) => ({ max: months.includes(month) ? warm(month) : null }));

  test.each([12, 1, 2].flatMap((winter) => [6, 7, 8].map((summer) => [winter, summer] as const)))(
    'month %i against month %i',
    (winter, summer) => {
      const warmer = (month: number) => only([winter, summer], (m) => (m === month ? 20.5 : 20));
      expect(isSouthern(warmer(winter))).toBe(true);
      expect(isSouthern(warmer(summer))).toBe(false);
      // Alike all year, as at the equator: counted as in the north.
      expect(isSouthern(only([winter, summer], () => 20))).toBe(false);
    },
  );

  test.each([3, 4, 5, 9, 10, 11])('month %i tells nothing', (month) => {
    for (const max of [60, -60])
      for (const south of [true, false]) {
        const days = only([1, 7, month], (m) =>
          m === month ? max : (m === 1) === south ? 21 : 20,
        );
        expect(isSouthern(days)).toBe(south);
      }
  });

  test('half a year alone tells nothing, however warm or cold', () => {
    for (const max of [30, -30])
      for (const half of [
        [12, 1, 2],
        [6, 7, 8],
      ])
        expect(isSouthern(only(half, () => max))).toBe(false);
  });

  test('a day without a maximum does not count as one of 0 C', () => {
    const days = inventDays(2001, 2001, ({ month, day }) => ({
      max: month === 1 ? (day === 1 ? 21 : null) : month === 7 ? 20 : null,
    }));
    expect(isSouthern(days)).toBe(true);
  });
});

test('south of the equator a calendar year has nearly all of a winter, and gives both frosts', () => {
  // The figure: winters from August in the north are winters from February in the south.
  const year = inventDays(2003, 2003, ({ month, day }) => ({
    min:
      (month > 5 || (month === 5 && day >= 10)) && (month < 9 || (month === 9 && day <= 20))
        ? -2
        : 8,
  }));
  const both = { first: { month: 5, day: 10 }, last: { month: 9, day: 20 } };
  const whole = inventDays(2003, 2004, ({ month, day }) => ({
    min:
      (month > 5 || (month === 5 && day >= 10)) && (month < 9 || (month === 9 && day <= 20))
        ? -2
        : 8,
  }));
  const winter = whole.filter(({ year: y, month }) => (y === 2003 ? month >= 2 : month < 2));
  expect(usualFrosts(winter, true)).toEqual({ ...both, winters: 1 });
  // January of the year before it is another winter, and the end of this one is missing.
  expect(usualFrosts(year, true)).toMatchObject({ first: both.first, last: null });
});

test('a winter that is whole but for more days than may be missing tells nothing where it had no frost', () => {
  const mild = inventDays(2001, 2002, () => ({ min: 5 })).filter(({ year, month }) =>
    year === 2001 ? month >= 8 : month < 8,
  );
  const with15Missing = mild.map((day, at) =>
    at >= 100 && at < 115 ? { ...day, min: null } : day,
  );
  const with16Missing = mild.map((day, at) =>
    at >= 100 && at < 116 ? { ...day, min: null } : day,
  );
  expect(usualFrosts(mild, false)).toEqual({ first: null, last: null, winters: 1 });
  expect(usualFrosts(with15Missing, false).winters).toBe(1);
  expect(usualFrosts(with16Missing, false).winters).toBe(0);
});

// The figure: 15 days may be missing of a year. Of these, only those count that could hide an earlier
// first frost, or a later last one.
describe('days missing within a winter', () => {
  const frosty = (month: number, day: number) =>
    month > 11 || month < 3 || (month === 11 && day >= 10) || (month === 3 && day <= 20);
  const winter = (missing: number, from: number) =>
    inventDays(2001, 2002, ({ year, month, day }) => {
      const gap = month === from && day <= missing;
      return { min: gap ? null : frosty(month, day) ? -2 : 8, year };
    }).filter(({ year, month }) => (year === 2001 ? month >= 8 : month < 8));
  const first = { month: 11, day: 10 };
  const last = { month: 3, day: 20 };

  test.each([
    [15, 9, { first, last, winters: 1 }],
    [16, 9, { first: null, last, winters: 0 }],
    [15, 5, { first, last, winters: 1 }],
    [16, 5, { first, last: null, winters: 0 }],
    // Between the two nothing is hidden.
    [31, 1, { first, last, winters: 1 }],
  ])('%i days of month %i', (missing, month, frosts) => {
    expect(usualFrosts(winter(missing, month), false)).toEqual(frosts);
  });
});
