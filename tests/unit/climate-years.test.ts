import { describe, expect, test } from 'vitest';
import { dayAtPlace, placeInYear } from '$lib/climate/calendar';
import { usualFrosts, winterTest } from '$lib/climate/frosts';
import type { Day } from '$lib/climate/types';
import { readWeather } from '$lib/climate/weather';
import { inventDays } from '../helpers/weather';

const near = (value: number) => expect.closeTo(value, 9) as number;

// By hand. Frost in January (over freezing by day) and February (frozen all day), 2 mm of rain a day.
const invented = (
  change: (date: { year: number; month: number; day: number }) => Partial<Day> = () => ({}),
) =>
  inventDays(2001, 2002, (date) => ({
    ...(date.month === 1
      ? { min: -2, max: 4.9 }
      : date.month === 2
        ? { min: -5, max: 0 }
        : date.month === 3
          ? { min: 4.9, max: 9.9 }
          : { min: 5, max: 10 }),
    rain: 2,
    ...change(date),
  }));

describe('two years of one station', () => {
  test('are counted by year and by month, with the frosts, the rain between them and the index', () => {
    const year = { frost: 59, ice: 28, cycles: 31, missing: 0, kept: true, winterRain: 118 };
    const nothing = { frost: 0, ice: 0, cycles: 0, coldAllDay: 0, coldAtNight: 0, coldToSeal: 0 };
    // Under 5 C nothing is repaired, under 10 C nothing sealed (figures `repair.temperature`, `seal.temperature`).
    const months = [
      { ...nothing, frost: near(31), cycles: near(31), coldAllDay: near(31), coldToSeal: near(31) },
      { ...nothing, frost: near(28), ice: near(28), coldAllDay: near(28), coldToSeal: near(28) },
      { ...nothing, coldAtNight: near(31), coldToSeal: near(31) },
    ];
    expect(readWeather(invented())).toEqual({
      from: { year: 2001, month: 1, day: 1 },
      to: { year: 2002, month: 12, day: 31 },
      ...{ south: false, yearStarts: 1, snowKnown: false },
      years: [
        { year: 2001, ...year },
        { year: 2002, ...year },
      ],
      months: Array.from({ length: 12 }, (_, at) => ({ ...nothing, ...months[at], month: at + 1 })),
      cycles: { direct: 31, byDifference: 31 },
      frosts: { first: { month: 1, day: 1 }, last: { month: 2, day: 28 }, winters: 1 },
      ...{
        winterRain: 118,
        index: near((31 * 118) / 25.4),
        weathering: 'moderate',
        frequency: 'some',
      },
    });
  });

  test('may lack the rain of fifteen winter days, and of any day in summer', () => {
    const dry =
      (from: number, days: number) =>
      ({ year, month, day }: Day | { year: number; month: number; day: number }) =>
        year === 2001 && month === from && day <= days ? { rain: null } : {};
    const rain = (from: number, days: number) => readWeather(invented(dry(from, days)));
    expect(rain(1, 15).years.map(({ winterRain }) => winterRain)).toEqual([88, 118]);
    expect(rain(1, 15).winterRain).toBe(103);
    expect(rain(1, 16).years.map(({ winterRain }) => winterRain)).toEqual([null, 118]);
    expect(rain(1, 16).winterRain).toBe(118);
    expect(rain(6, 30).years.map(({ winterRain }) => winterRain)).toEqual([118, 118]);
    const none = readWeather(invented(() => ({ rain: null })));
    expect(none).toMatchObject({ winterRain: null, index: null, weathering: null });
    const gaps = ({ month, day }: { month: number; day: number }) =>
      month === 1 && day <= 16 ? { rain: null } : {};
    expect(readWeather(invented(gaps)).winterRain).toBeNull();
  });

  test('know of snow where any day does, and count no day that was not measured', () => {
    const one = readWeather(
      invented(({ year, month, day }) =>
        year === 2001 && month === 1 && day === 1 ? { snow: 0 } : {},
      ),
    );
    expect(one.snowKnown).toBe(true);
    const { months, years } = readWeather(
      invented(({ month, day }) => (month === 1 && day <= 5 ? { min: null } : {})),
    );
    expect(months[0]).toMatchObject({
      frost: near(26),
      cycles: near(26),
      coldAllDay: near(26),
      coldAtNight: 0,
    });
    expect(years[0]).toMatchObject({ missing: 5, frost: 54, cycles: 26 });
  });
});

describe('winters', () => {
  const winters = (lasts: readonly (number | null)[]) =>
    inventDays(2001, 2001 + lasts.length, ({ year, month, day }) => {
      const last = lasts[year - 2002];
      return { min: last !== null && month === 1 && day === last ? 0 : 3, max: 9 };
    }).filter(
      ({ year, month }) =>
        (year > 2001 || month >= 8) && (year <= 2000 + lasts.length || month < 8),
    );
  test('without frost stand beyond all others, at either end', () => {
    // Of 5, 20 and none: the middle of the first frosts is the 20th, of the last ones the 5th.
    expect(usualFrosts(winters([5, 20, null]), false)).toEqual({
      ...{ first: { month: 1, day: 20 }, last: { month: 1, day: 5 }, winters: 3 },
    });
  });
  test('last from the first frost to the last, within a year or over its end', () => {
    const inWinter = (first: [number, number], last: [number, number]) => {
      const [from, to] = [first, last].map(([month, day]) => ({ month, day })) as never[];
      const test_ = winterTest({ first: from ?? null, last: to ?? null, winters: 1 });
      return (
        [
          [1, 4],
          [1, 5],
          [1, 20],
          [1, 21],
          [12, 31],
        ] as const
      ).map(([month, day]) => test_({ month, day }));
    };
    expect(inWinter([1, 5], [1, 20])).toEqual([false, true, true, false, false]);
    expect(inWinter([1, 5], [1, 5])).toEqual([false, true, false, false, false]);
    expect(inWinter([1, 21], [1, 4])).toEqual([true, false, false, true, true]);
  });
});

test('the days of a leap year have the places 0 to 365, and each place its day, round and round', () => {
  const days = inventDays(2004, 2004, () => ({})).map(({ month, day }) => ({ month, day }));
  for (const [place, day] of days.entries()) {
    expect(placeInYear(day)).toBe(place);
    for (const round of [-366, 0, 366]) expect(dayAtPlace(place + round)).toEqual(day);
  }
});
