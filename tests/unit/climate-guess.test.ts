import { describe, expect, test } from 'vitest';
import { dayNumber } from '$lib/climate/calendar';
import { guessRain, guessSnow, guessTemperature } from '$lib/climate/file/guess';
import { findLayout, fitLayout, headerScore } from '$lib/climate/file/layout';
import { findOddities } from '$lib/climate/file/oddities';
import { isFatal, shorten, type Layout, type Table } from '$lib/climate/file/types';
import { inventDays } from '../helpers/weather';

const table = (text: string): Table => text.split('\n').map((row) => row.split(','));
const layoutOf = (text: string): Layout => {
  const found = findLayout(table(text));
  if ('problem' in found) return expect.fail(found.problem.id);
  return found.layout;
};
const names = 'date,tmin (C),tmax (C),prcp (mm),snow (mm)';

describe('the row of column names', () => {
  test.each([
    ['the first row', names, 0],
    ['below notes', `Marrow Quay\n\n${names}`, 2],
    ['with a mark and a sign of notes before it', `\ufeff# ${names}`, 0],
    ['the one that tells most', 'date,tmin\ndate,tmin,tmax', 1],
    ['the first of two alike', 'date,tmin\ndate,tmax', 0],
    ['the one before the first date, where it tells nothing', 'notes\na,b\n2001-01-01,2', 1],
    ['not before a date that stands alone in its row', '2001-01-01\na,b\n2001-01-01,2', 1],
    ['one that names the date alone, above a note', 'date,b\nnote,c\n2001-01-01,2', 1],
    ['after 199 rows of notes', `${'x\n'.repeat(199)}${names}`, 199],
  ])('%s', (_what, text, header) => {
    expect(layoutOf(`${text}\n2001-01-02,1`).header).toBe(header);
  });

  test.each([
    ['a date in the first row has no names above it', '2001-01-01,1,2\n2001-01-02,1,2'],
    ['after 200 rows of notes nobody looks', `${'x\n'.repeat(200)}${names}\n2001-01-01,1,2`],
  ])('%s', (_what, text) => {
    expect(findLayout(table(text))).toEqual({ problem: { id: 'no-columns', row: 1 } });
  });

  test('a file of blanks is empty; names without a row below are told by their row', () => {
    expect(findLayout(table(' , \n,'))).toEqual({ problem: { id: 'empty' } });
    // A column left empty makes no file empty, and its rows count.
    expect(layoutOf(',date,tmin,tmax\n,2001-07-01,,250').units.temperature).toBe('tenths-C');
    expect(findLayout(table(`notes\n${names}\n , `))).toEqual({
      problem: { id: 'headers-only', row: 2 },
    });
  });

  test('without any date below it is the one that names the date', () => {
    expect(layoutOf('notes\ndate,b\nnote,2').header).toBe(1);
    expect(layoutOf('date,b\nnote,2').header).toBe(0);
    expect(layoutOf('a,b\n 2001-01-01 ,2').header).toBe(0);
  });

  test('is judged by the date and what stands beside it', () => {
    expect(headerScore(['tmin', 'tmax'])).toBe(0);
    expect(headerScore(['date'])).toBe(1);
    expect(headerScore(names.split(','))).toBe(5);
    expect(headerScore([' #date', 'tmin'])).toBe(2);
  });
});

describe('a layout', () => {
  test('has the names without blanks, and one station by its name', () => {
    const one = layoutOf('site , date ,tmin\n Marrow Quay,2001-01-01,1\n,2001-01-02,1');
    expect(one.columns).toEqual(['site', 'date', 'tmin']);
    // Marks before the first name are those of the file; elsewhere they are of the name.
    expect(layoutOf('\ufeff## date #,#tmin\n2001-01-01,1').columns).toEqual(['date #', '#tmin']);
    expect(one.stations).toEqual(['Marrow Quay']);
    expect(one.station).toBe('Marrow Quay');
  });
  test('names every station in the order of the file, and chooses none of two', () => {
    const two = layoutOf('site,date,tmin\nB,2001-01-01,1\nA,2001-01-01,1\nB,2001-01-02,1');
    expect(two.stations).toEqual(['B', 'A']);
    expect(two.station).toBeNull();
    const none = layoutOf('date,tmin\n2001-01-01,1');
    expect([none.stations, none.station]).toEqual([[], null]);
  });
  test('takes units from the names, and tells which it guessed', () => {
    const sure = layoutOf(`${names}\n2001-01-01,1,2,3,4`);
    expect([sure.units, sure.unsure]).toEqual([{ temperature: 'C', rain: 'mm', snow: 'mm' }, []]);
    const byMin = layoutOf('date,tmin (F),tmax\n2001-01-01,1,2');
    expect([byMin.units.temperature, byMin.unsure]).toEqual(['F', []]);
    const guessed = layoutOf('date,tmin,prcp,snow\n2001-01-01,1,2,3');
    expect(guessed.unsure).toEqual(['temperature', 'rain', 'snow']);
    expect(layoutOf('date,prcp\n2001-01-01,1').unsure).toEqual(['rain']);
  });
  test('guesses by dated rows alone: a row of notes under the names does not count', () => {
    const text = 'date,tmin,tmax\nelement,901,902\n2001-07-01,10,25';
    expect(layoutOf(text).units.temperature).toBe('C');
    expect(layoutOf('date,tmin,tmax\n2001-07-01,100,250').units.temperature).toBe('tenths-C');
  });
  test('three columns of a date need no order; rows that disagree have none', () => {
    expect(layoutOf('year,month,day,tmin\n2001,1,2,3').order).toBe('ymd');
    expect(layoutOf('date,tmin\n 13/1/2001 ,1\n1/13/2001,1').order).toBeNull();
    expect(layoutOf('date,tmin\n 13/1/2001 ,1\n1/1/2001,1').order).toBe('dmy');
    expect(fitLayout(table('a,b\n13/1/2001,1'), 0, { date: 0 }).order).toBe('dmy');
  });
});

describe('units by the numbers', () => {
  const of = (...rows: (string | number)[][]): Table => rows.map((row) => row.map(String));
  // No air has been hotter than 60 C, or 140 F (60 C): the record is 56.7 C (WMO archive, from memory).
  test.each([
    [60, 'C'],
    [60.1, 'F'],
    [140, 'F'],
    [140.1, 'tenths-C'],
  ])('a hottest day of %f is in %s', (hottest, unit) => {
    expect(guessTemperature(of([1, hottest], [9, ''], ['x', -3]), { min: 0, max: 1 })).toBe(unit);
    expect(guessTemperature(of([hottest]), { min: 0 })).toBe(unit);
  });
  test('rain goes with the temperature; 20 in in a day is beyond the usual', () => {
    expect(guessRain(of([5]), { rain: 0 }, 'tenths-C')).toBe('tenths-mm');
    expect(guessRain(of([5]), { rain: 0 }, 'C')).toBe('mm');
    expect(guessRain(of([19.9]), { rain: 0 }, 'F')).toBe('in');
    expect(guessRain(of([20]), { rain: 0 }, 'F')).toBe('mm');
  });
  test('snow goes with the rain, or by its depth against the water of the same days', () => {
    const roles = { rain: 0, snow: 1 };
    const snow = (rows: Table, temperature: 'C' | 'F' | 'tenths-C', rain: 'mm' | 'in') =>
      guessSnow(rows, roles, { temperature, rain });
    expect(snow(of([1, 1]), 'F', 'in')).toBe('in');
    expect(snow(of([1, 1]), 'tenths-C', 'mm')).toBe('mm');
    expect(snow(of([1, 10]), 'C', 'mm')).toBe('mm');
    expect(snow(of([10, 10]), 'C', 'mm')).toBe('cm');
    // Days without snow, and days whose rain nobody measured, say nothing of how deep it lies.
    expect(snow(of([1, 10], [500, 0]), 'C', 'mm')).toBe('mm');
    expect(snow(of([10, 10], ['M', 900]), 'C', 'mm')).toBe('cm');
    expect(snow(of([10, 10], ['x', 900]), 'C', 'mm')).toBe('cm');
    expect(snow(of([1, 10], [900, 'M'], [900, 'x']), 'C', 'mm')).toBe('mm');
    // Without any water there is nothing to go by: cm, as most services have it.
    expect(snow(of([0, 10]), 'C', 'mm')).toBe('cm');
    expect(guessSnow(of([9]), {}, { temperature: 'C', rain: 'mm' })).toBe('cm');
  });
});

describe('what looks odd', () => {
  const row = (at: number) => at;
  const years = (...means: number[]) =>
    means.flatMap((mean, index) =>
      inventDays(2001 + index, 2001 + index, () => ({ min: mean - 5, max: mean })),
    );
  test('a year whose days are 10 C from the middle year is usual; more is not', () => {
    expect(findOddities(years(15, 15, 25), row)).toEqual([]);
    expect(findOddities(years(15, 25.1, 15), row)).toEqual([
      { id: 'year-jump', text: '2002', row: dayNumber({ year: 2002, month: 1, day: 1 }) },
    ]);
    expect(findOddities(years(15, 4.9, 15), () => undefined)).toEqual([
      { id: 'year-jump', text: '2002' },
    ]);
    // Of two the earlier half is the middle; of one there is no other to differ from.
    expect(findOddities(years(30, 15), row)).toHaveLength(1);
    expect(findOddities(years(99), row)).toEqual([]);
  });
  test('half a year of days makes a year to judge by; gaps do not count as days', () => {
    const short = (days: number) => [
      ...years(15, 15),
      ...inventDays(2003, 2003, () => ({ max: 40 })).slice(0, days),
      ...inventDays(2003, 2003, () => ({})).slice(days),
    ];
    expect(findOddities(short(183), row)).toHaveLength(1);
    expect(findOddities(short(182), row)).toEqual([]);
  });
  // Fresh snow holds a tenth of its depth as water (ASTM C62, figure `snow.water`): a cover that lies
  // is counted again every day, and comes to more than twice all the rain and snow there was.
  test.each([
    [20, 1, false],
    [20.1, 1, true],
    [0, 0, false],
    [5, 0, true],
  ])('snow of %f mm with %f mm of water lies: %s', (snow, rain, lying) => {
    const days = [
      ...inventDays(2001, 2001, () => ({ snow, rain })),
      ...inventDays(2002, 2002, () => ({ snow: 900, rain: null })),
      ...inventDays(2003, 2003, () => ({ snow: 0, rain: 90 })),
    ];
    expect(findOddities(days, row)).toEqual(lying ? [{ id: 'snow-lying' }] : []);
  });
});

test('a text is shown to 40 letters, and only what stops the reading is fatal', () => {
  expect(shorten('x'.repeat(40))).toBe('x'.repeat(40));
  expect(shorten('x'.repeat(41))).toBe(`${'x'.repeat(39)}…`);
  expect([
    isFatal({ id: 'empty' }),
    isFatal({ id: 'bad-date' }),
    isFatal({ id: 'year-jump' }),
  ]).toEqual([true, false, false]);
});
