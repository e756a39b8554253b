import { describe, expect, test } from 'vitest';
import { findOrder, looksLikeDate, parseDate } from '$lib/climate/file/dates';

describe('dates', () => {
  test('a number over 12 settles which is the day', () => {
    expect(findOrder(['1/2/2012', '13/2/2012'])).toEqual({ order: 'dmy' });
    expect(findOrder(['1/2/2012', '2/13/2012'])).toEqual({ order: 'mdy' });
  });
  test('without one, the way the rows run does', () => {
    expect(findOrder(['1/2/2012', '2/2/2012', '3/2/2012'])).toEqual({ order: 'dmy' });
    expect(findOrder(['2/1/2012', '2/2/2012', '2/3/2012'])).toEqual({ order: 'mdy' });
  });
  test('where nothing tells the reader is asked; where rows disagree both are named', () => {
    expect(findOrder(['5/5/2012'])).toEqual({ order: null });
    expect(findOrder(['13/2/2012', '1/2/2012', '2/13/2012'])).toEqual({ conflict: [0, 2] });
  });
  test('days that never were are no dates', () => {
    expect(parseDate('2013-02-29', 'ymd')).toBeNull();
    expect(parseDate('2012-02-29', 'ymd')).toEqual({ year: 2012, month: 2, day: 29 });
    // The Gregorian calendar: of the full centuries every fourth has the day.
    expect(parseDate('1900-02-29', 'ymd')).toBeNull();
    expect(parseDate('2000-02-29', 'ymd')).toEqual({ year: 2000, month: 2, day: 29 });
    expect(parseDate('2100-02-29', 'ymd')).toBeNull();
    expect(parseDate('31-apr-2012', 'dmy')).toBeNull();
    expect(parseDate('01-jan-1942', 'dmy')).toEqual({ year: 1942, month: 1, day: 1 });
    for (const [name, month] of [
      ...([
        ['ene', 1],
        ['abril', 4],
        ['Agosto', 8],
        ['septiembre', 9],
        ['dic', 12],
      ] as const),
    ])
      expect(parseDate(`03-${name}-1942`, 'dmy')).toEqual({ year: 1942, month, day: 3 });
    expect(parseDate('2012-01-01T00:00', 'ymd')).toEqual({ year: 2012, month: 1, day: 1 });
    expect(parseDate('5/6/12', 'dmy')).toBeNull();
  });
});

/** The same day, as services and spreadsheets write it. Common practice, no source. */
describe('3 April 2012', () => {
  const day = { year: 2012, month: 4, day: 3 };
  test.each([
    ...['2012-04-03', '2012/4/3', '2012.04.03', '2012-4-3 06:00', '2012-04-03T06:00Z'],
    ...['20120403', '2012040306', '201204030600'],
    ...['3-Apr-2012', '03 april 2012', '3.Apr.2012', '3/APR/2012', '3 Apr. 2012'],
  ])('%s, whatever the order', (text) => {
    for (const order of ['ymd', 'dmy', 'mdy', null] as const)
      expect(parseDate(text, order)).toEqual(day);
    expect(looksLikeDate(text)).toBe(true);
  });
  test.each([
    '3/4/2012',
    '03-04-2012',
    '3.4.2012',
    '03 04 2012',
    '3/4/2012 06:00',
    '3/4/2012T06',
    '3/4/2012, 6 h',
  ])('%s, where the day comes first', (text) => {
    expect(parseDate(text, 'dmy')).toEqual(day);
    expect(parseDate(text, 'mdy')).toEqual({ ...day, month: 3, day: 4 });
    expect(parseDate(text, null)).toBeNull();
    expect(parseDate(text, 'ymd')).toBeNull();
  });
});

test('every month has its name', () => {
  const names = [
    'Jan',
    'Feb',
    'Mar',
    'Apr',
    'May',
    'Jun',
    'Jul',
    'Aug',
    'Sep',
    'Oct',
    'Nov',
    'Dec',
  ];
  expect(names.map((name) => parseDate(`05-${name}-1990`, null)?.month)).toEqual(
    Array.from({ length: 12 }, (_, index) => index + 1),
  );
});

test.each([
  ...[
    '2012-04',
    'x2012-04-03',
    '2012-04-03x',
    '12012-04-03',
    '2012-123-03',
    '2012040',
    '201204031',
  ],
  ...['x20120403', '3/4/2012x', 'x3/4/2012', '113/4/2012', '3/444/2012', '3/4/20122', '3-Foo-2012'],
  ...['3-Ap-2012', 'x3-Apr-2012', '3-Apr-2012x', '3-Apr-12', '2012-13-01', '0/4/2012', 'cold', ''],
])('%j is no date', (text) => {
  expect(parseDate(text, 'dmy')).toBeNull();
  expect(looksLikeDate(text)).toBe(false);
});

test('a date that is one in either order only still looks like a date', () => {
  expect(looksLikeDate('13/4/2012')).toBe(true);
  expect(looksLikeDate('4/13/2012')).toBe(true);
  expect(looksLikeDate('13/13/2012')).toBe(false);
});

describe('which number is the day', () => {
  test.each([
    [['2012-01-02', '20120103', '', 'x'], { order: 'ymd' }],
    [[], { order: 'ymd' }],
    // 12 is a month as well as a day, 13 a day alone.
    [['12/11/2012'], { order: null }],
    [['11/12/2012'], { order: null }],
    [['13/12/2012'], { order: 'dmy' }],
    [['12/13/2012'], { order: 'mdy' }],
    // Over 12 both: no date at all, so it tells nothing.
    [['13/13/2012', '5/5/2012'], { order: null }],
    [['13/1/2012', '14/1/2012', '1/13/2012', '1/14/2012'], { conflict: [0, 2] }],
    [['1/2/2012', '1/13/2012', '13/1/2012'], { conflict: [2, 1] }],
    [['1/13/2012', '13/1/2012', '2/13/2012'], { conflict: [1, 0] }],
    // A run of days broken by a row that is no date, and by the end of a month.
    [['1/2/2012', '', '2/2/2012'], { order: null }],
    [['1/1/2012', '2/1/2012', '1/2/2012', '2/2/2012'], { order: 'dmy' }],
    // The next day of another month, or another day of the month, is no step.
    [['2/6/2012', '3/6/2012', '9/7/2012', '11/8/2012'], { order: 'dmy' }],
    [['2/6/2012', '3/6/2012', '5/9/2012', '5/11/2012', '5/3/2012'], { order: 'dmy' }],
  ])('%j', (texts, found) => expect(findOrder(texts)).toEqual(found));
});
