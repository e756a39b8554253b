import { describe, expect, test } from 'vitest';
import { findOrder, parseDate } from '$lib/climate/file/dates';

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
    expect(parseDate('1900-02-29', 'ymd')).toBeNull();
    expect(parseDate('31-apr-2012', 'dmy')).toBeNull();
    expect(parseDate('01-jan-1942', 'dmy')).toEqual({ year: 1942, month: 1, day: 1 });
    expect(parseDate('2012-01-01T00:00', 'ymd')).toEqual({ year: 2012, month: 1, day: 1 });
    expect(parseDate('5/6/12', 'dmy')).toBeNull();
  });
});
