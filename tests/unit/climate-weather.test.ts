import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frequencyOfWeather, possibleReadings } from '$lib/climate/answer';
import { dayAtPlace, dayNumber, isRealDate, placeInYear } from '$lib/climate/calendar';
import { cyclesFromCounts } from '$lib/climate/cycles';
import { readWeather } from '$lib/climate/weather';
import { valueOf } from '$shared/figures';
import { bytesOf, inventDays, isoDate, readFile, wave } from '../helpers/weather';
import { nightly, rounds } from '../helpers/rounds';

describe('the calendar', () => {
  test('agrees with the language’s own, over 600 years', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1600, max: 2200 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 31 }),
        (year, month, day) => {
          const there = new Date(Date.UTC(year, month - 1, day));
          expect(isRealDate({ year, month, day })).toBe(there.getUTCMonth() === month - 1);
          if (isRealDate({ year, month, day }))
            expect(dayNumber({ year, month, day })).toBe(there.getTime() / 86_400_000);
        },
      ),
    );
  });
  test('places in the year go there and back', () => {
    for (let place = 0; place < 366; place += 1) expect(placeInYear(dayAtPlace(place))).toBe(place);
  });
});

test('counting days one by one and taking counts from each other are the same, in any weather', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: 0, max: 20 })), {
        minLength: 365,
        maxLength: 365,
      }),
      (weather) => {
        let index = 0;
        const days = inventDays(2001, 2001, () => {
          const [min, spread] = weather[index++] ?? [0, 0];
          return { min, max: min + spread };
        });
        const { cycles, years } = readWeather(days);
        expect(cycles?.direct).toBe(cycles?.byDifference);
        expect(years[0]?.cycles).toBe(cyclesFromCounts(years[0]?.frost ?? 0, years[0]?.ice ?? 0));
      },
    ),
    { numRuns: rounds(15, 50) },
  );
});

describe('years with gaps', () => {
  const limit = valueOf('weather.missing-days');
  const withGap = (gap: number) =>
    readWeather(
      inventDays(2001, 2003, (date) =>
        date.year === 2002 && date.month === 6 && date.day <= gap ? {} : wave(date),
      ),
    );

  test('the limit itself may be missing; one more day and the year is left out', () => {
    expect(withGap(limit).years.map(({ kept }) => kept)).toEqual([true, true, true]);
    const { years } = withGap(limit + 1);
    expect(years.map(({ kept, missing }) => [kept, missing])).toEqual([
      [true, 0],
      [false, limit + 1],
      [true, 0],
    ]);
  });

  test('the reader’s own limit wins', () => {
    const days = inventDays(2001, 2001, (date) =>
      date.month === 6 && date.day <= 20 ? {} : wave(date),
    );
    expect(readWeather(days).cycles).toBeNull();
    expect(readWeather(days, { 'weather.missing-days': 20 }).cycles?.direct).toBeGreaterThan(0);
  });

  test('a file that begins within a month is counted from the next one, in December from January', () => {
    const from = (month: number, day: number) =>
      readWeather(
        inventDays(2001, 2003, wave).filter(
          (date) =>
            (date.year === 2001 &&
              (date.month > month || (date.month === month && date.day >= day))) ||
            (date.year === 2002 && date.month <= month),
        ),
      ).yearStarts;
    expect(from(7, 1)).toBe(7);
    expect(from(7, 2)).toBe(8);
    expect(from(11, 30)).toBe(12);
    expect(() => readWeather([])).toThrow('at least one day');
  });

  test('a file that begins in mid-year is counted from its own first month', () => {
    const days = inventDays(2001, 2002, wave).filter(({ year, month }) =>
      year === 2001 ? month >= 7 : month <= 6,
    );
    const weather = readWeather(days);
    expect(weather.yearStarts).toBe(7);
    expect(weather.years.filter(({ kept }) => kept)).toHaveLength(1);
  });
});

describe('winter rain and the index', () => {
  test('by hand: 131 winter days of 4 mm, 10 of them with 20 mm of snow', () => {
    const weather = readWeather(
      inventDays(2001, 2004, ({ month, day }) => {
        const winter =
          month > 11 || month < 3 || (month === 11 && day >= 10) || (month === 3 && day <= 20);
        const snow = month === 1 && day <= 10 ? 20 : 0;
        return winter ? { min: -2, max: 4, rain: 4, snow } : { min: 8, max: 18, rain: 9, snow: 0 };
      }),
    );
    // 21 + 31 + 31 + 28 + 20 = 131 days, 132 in the leap year of four; snow 10 x 20 mm is 20 mm of water.
    const cycles = (131 * 3 + 132) / 4;
    expect(weather.cycles?.direct).toBeCloseTo(cycles, 9);
    expect(weather.winterRain).toBeCloseTo(cycles * 4 - 20, 9);
    expect(weather.index).toBeCloseTo((cycles * (cycles * 4 - 20)) / 25.4, 9);
    expect(weather.weathering).toBe('severe');
  });

  test('snow in a wrong unit never takes off the rain of days without snow', () => {
    const weather = readWeather(
      inventDays(2001, 2003, ({ month }) =>
        month <= 2
          ? { min: -2, max: 4, rain: 3, snow: month === 1 ? 2000 : 0 }
          : { min: 8, max: 18, rain: 3, snow: 0 },
      ),
    );
    // Between 1 January and 28 February: January is all snow, February 28 days of 3 mm.
    expect(weather.winterRain).toBeCloseTo(84, 9);
  });

  test('a file without precipitation has no index, and is judged by its days', () => {
    const weather = readWeather(inventDays(2001, 2003, wave));
    expect(weather).toMatchObject({
      winterRain: null,
      index: null,
      weathering: null,
      frequency: 'many',
      snowKnown: false,
    });
  });

  test('where it never freezes the class of the index does not say "a few"', () => {
    expect(frequencyOfWeather(0, 'negligible')).toBe('never');
    expect(frequencyOfWeather(3, 'negligible')).toBe('few');
    expect(frequencyOfWeather(3, null)).toBe('few');
    // Few days with much rain are severe by the index of ASTM C62: the class outweighs the days.
    expect(frequencyOfWeather(30, 'severe')).toBe('many');
    expect(frequencyOfWeather(30, 'moderate')).toBe('some');
    expect(frequencyOfWeather(60, 'negligible')).toBe('few');
    expect(frequencyOfWeather(1, 'severe')).toBe('many');
  });
});

test('days too cold to repair: all day, or only by night', () => {
  const { months } = readWeather(
    inventDays(2001, 2001, ({ month, day }) => {
      if (month !== 1) return { min: 12, max: 20 };
      return day <= 10 ? { min: -5, max: 4 } : day <= 20 ? { min: 1, max: 8 } : { min: 5, max: 12 };
    }),
  );
  expect(months[0]).toMatchObject({
    coldAllDay: expect.closeTo(10),
    coldAtNight: expect.closeTo(10),
    coldToSeal: expect.closeTo(20),
  });
  expect(months[6]).toMatchObject({ coldAllDay: 0, coldAtNight: 0, coldToSeal: 0 });
});

test('two questions not sure of give every reading still possible', () => {
  const readings = possibleReadings(['some', 'many'], ['drains'], ['none']);
  expect(readings.map(({ answer, american, european }) => [answer, american, european])).toEqual([
    ['some', 'F1', 'XF1'],
    ['often', 'F1', 'XF1'],
  ]);
});
test.runIf(nightly)('a hundred years of days are read in under a second of the processor', () => {
  const days = inventDays(1920, 2019, (date) => ({ ...wave(date), rain: 1.2, snow: 0 }));
  const file = bytesOf(
    [
      'date,tmin,tmax,prcp,snow',
      ...days.map((d) => [isoDate(d), d.min, d.max, d.rain, d.snow].join(',')),
    ].join('\n'),
  );
  const times = [1, 2, 3].map(() => {
    const before = process.cpuUsage();
    const read = readFile(file);
    expect(readWeather(read.days).years).toHaveLength(100);
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  expect(Math.min(...times)).toBeLessThan(1000);
});
