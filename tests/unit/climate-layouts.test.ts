import { describe, expect, test } from 'vitest';
import { inventDays, isoDate, readFile, wave } from '../helpers/weather';

/** Invented days, written as public weather services write theirs. */
const days = inventDays(2001, 2003, (date) => ({ ...wave(date), rain: 2.5, snow: 0 }));
const fahrenheit = (celsius: number) => ((celsius * 9) / 5 + 32).toFixed(1);
const slash = ({ day, month, year }: (typeof days)[number]) => `${day}/${month}/${year}`;
const american = ({ day, month, year }: (typeof days)[number]) => `${month}/${day}/${year}`;

describe('one climate, written in many ways', () => {
  const files: [string, string][] = [
    [
      'C and mm, commas',
      [
        'date,tmin,tmax,prcp',
        ...days.map((d) => [isoDate(d), d.min, d.max, d.rain].join(',')),
      ].join('\n'),
    ],
    [
      'F and inches',
      [
        'DATE,TMIN,TMAX,PRCP',
        ...days.map((d) =>
          [
            isoDate(d),
            fahrenheit(d.min ?? 0),
            fahrenheit(d.max ?? 0),
            ((d.rain ?? 0) / 25.4).toFixed(4),
          ].join(','),
        ),
      ].join('\n'),
    ],
    [
      'tenths',
      [
        'DATE,TMIN,TMAX,PRCP',
        ...days.map((d) =>
          [
            isoDate(d),
            Math.round((d.min ?? 0) * 10),
            Math.round((d.max ?? 0) * 10),
            Math.round((d.rain ?? 0) * 10),
          ].join(','),
        ),
      ].join('\n'),
    ],
    [
      'decimal commas, semicolons, day first',
      [
        'Datum;TN (°C);TX (°C);RR (mm)',
        ...days.map((d) =>
          [slash(d), String(d.min).replace('.', ','), String(d.max).replace('.', ','), '2,5'].join(
            ';',
          ),
        ),
      ].join('\r\n'),
    ],
    [
      'tabs, month first, byte order mark',
      '\ufeff' +
        [
          'Date\tMin temp\tMax temp\tPrecipitation',
          ...days.map((d) => [american(d), d.min, d.max, d.rain].join('\t')),
        ].join('\n'),
    ],
    [
      'packed dates after a page of notes',
      [
        'Station: Marrow Quay (invented)',
        'Latitude,51.0,Height,4',
        '',
        '# YYYYMMDD,TN (0.1 °C),TX (0.1 °C),RR (0.1 mm)',
        ...days.map((d) =>
          [
            isoDate(d).replaceAll('-', ''),
            Math.round((d.min ?? 0) * 10),
            Math.round((d.max ?? 0) * 10),
            25,
          ].join(','),
        ),
      ].join('\n'),
    ],
    [
      'quoted, year month day apart',
      [
        '"Year","Month","Day","Min Temp (°C)","Max Temp (°C)","Total Precip (mm)"',
        ...days.map((d) =>
          [d.year, d.month, d.day, d.min, d.max, d.rain].map((cell) => `"${cell}"`).join(','),
        ),
      ].join('\n'),
    ],
  ];
  test.each(files)('%s', (_name, file) => {
    const read = readFile(file);
    expect(read.problems).toEqual([]);
    expect(read.days).toHaveLength(days.length);
    for (const [index, day] of read.days.entries()) {
      expect(day.at).toBe(days[index]?.at);
      expect(day.min).toBeCloseTo(days[index]?.min ?? NaN, 1);
      expect(day.max).toBeCloseTo(days[index]?.max ?? NaN, 1);
      expect(day.rain).toBeCloseTo(2.5, 1);
    }
  });
});

test('32 F is exactly 0 C: the count turns on it', () => {
  const { days: read } = readFile('date,min (F),max (F)\n2001-01-01,32,33\n2001-01-02,31,32');
  expect(read.map(({ min, max }) => [min, (max ?? 0) > 0])).toEqual([
    [0, true],
    [expect.closeTo(-0.5556, 3), false],
  ]);
});

test('traces are nothing, and the codes for missing are missing', () => {
  const { days: read, problems } = readFile(
    [
      'date,tmin (C),tmax (C),prcp (mm),snowfall (mm)',
      '2001-01-01,-9999,4,T,M',
      '2001-01-02,-999.9,NA,-1,0',
      '2001-01-03,-99,,2.5,9999',
    ].join('\n'),
  );
  expect(problems).toEqual([]);
  expect(read.map(({ min, max, rain, snow }) => [min, max, rain, snow])).toEqual([
    [null, 4, 0, null],
    [null, null, 0, 0],
    [null, null, 2.5, null],
  ]);
});

test('in tenths -99 is a frost of 9.9 C, not a missing day', () => {
  const { days: read } = readFile('date,tmin (0.1 C),tmax (0.1 C)\n2001-01-01,-99,4');
  expect(read[0]?.min).toBeCloseTo(-9.9, 9);
});

test.each([
  ['mm', 10],
  ['mm', 5],
  ['cm', 2],
  ['cm', 1],
  ['cm', 0.5],
])('snow without a unit is taken for %s when it is %s times its water', (unit, ratio) => {
  const rows = days.map((d) => [isoDate(d), d.min, d.max, d.rain, 2.5 * ratio].join(','));
  const { layout } = readFile(['date,tmin (C),tmax (C),prcp (mm),snow', ...rows].join('\n'));
  expect(layout?.units.snow).toBe(unit);
});
