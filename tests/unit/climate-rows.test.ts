import { describe, expect, test } from 'vitest';
import { findLayout } from '$lib/climate/file/layout';
import { readDays } from '$lib/climate/file/read';
import { isBlank, isOfStation, rowDate, rowReader } from '$lib/climate/file/rows';
import type { Layout, Table } from '$lib/climate/file/types';
import { inventDays, isoDate, wave } from '../helpers/weather';

const table = (text: string): Table => text.split('\n').map((row) => row.split(','));
const layoutOf = (text: string): Layout => {
  const found = findLayout(table(text));
  if ('problem' in found) return expect.fail(found.problem.id);
  return found.layout;
};
const read = (text: string, change: Partial<Layout> = {}) =>
  readDays(table(text), { ...layoutOf(text), ...change });
const names = 'date,tmin (C),tmax (C),prcp (mm),snow (mm)';

describe('a row', () => {
  const roles = { year: 0, month: 1, day: 2 };
  test.each([
    [['2001', '2', '3'], { year: 2001, month: 2, day: 3 }],
    [['2001.0', ' 2. ', '3.00'], { year: 2001, month: 2, day: 3 }],
    [['2001.5', '2', '3'], null],
    [['2001', '2', '3.5'], null],
    [['2e3', '2', '3'], null],
    [['0x7d1', '2', '3'], null],
    [['2001', '2', '30'], null],
    [['2001', '2', ''], null],
    [['2001', '2'], null],
    [['x2001', '2', '3'], null],
    [['2001', '2x', '3'], null],
  ])('%j has its date in three cells', (row, date) => {
    expect(rowDate(row, roles, 'ymd')).toEqual(date);
  });

  const reader = rowReader(layoutOf(`${names}\n2001-01-01,1,2,3,4`));
  const row = (cells: string) => reader(`2001-01-01,${cells}`.split(','), 7);
  test.each([
    // The edges of the record still count.
    ['-90,-90,0,0', [-90, -90, 0, 0]],
    ['0,60,1900,3000', [0, 60, 1900, 3000]],
    ['M,60,M,', [null, 60, null, null]],
    ['M,-5', [null, -5, null, null]],
    ['5,M', [5, null, null, null]],
    ['5,5', [5, 5, null, null]],
    ['-90,60', [null, null, null, null], { id: 'wide-day', text: '-90 / 60' }],
    ['60.1,60', [null, 60, null, null], { id: 'beyond-record', column: 'tmin (C)', text: '60.1' }],
    ['0,-90.1', [0, null, null, null], { id: 'beyond-record', column: 'tmax (C)', text: '-90.1' }],
    ['0,1,1901,0', [0, 1, null, 0], { id: 'beyond-record', column: 'prcp (mm)', text: '1901' }],
    ['0,1,-2,0', [0, 1, null, 0], { id: 'beyond-record', column: 'prcp (mm)', text: '-2' }],
    ['0,1,0,3001', [0, 1, 0, null], { id: 'beyond-record', column: 'snow (mm)', text: '3001' }],
    ['0, cold ', [0, null, null, null], { id: 'bad-number', column: 'tmax (C)', text: 'cold' }],
    ['2, 1', [null, null, null, null], { id: 'min-above-max', text: '2 / 1' }],
    ['-20,40', [-20, 40, null, null]],
    ['-20,40.1', [null, null, null, null], { id: 'wide-day', text: '-20 / 40.1' }],
  ])('%s', (cells, values, problem?: object) => {
    const { day, problems } = row(cells);
    expect([day?.min, day?.max, day?.rain, day?.snow]).toEqual(values);
    expect(problems).toEqual(problem ? [{ row: 7, ...problem }] : []);
  });
  test('has as many things wrong as it has', () => {
    expect(row('p,y,z,4').problems.map(({ column }) => column)).toEqual(
      names.split(',').slice(1, 4),
    );
  });
  test('without a date is short or wrong', () => {
    expect(reader(['', '1'], 7)).toEqual({
      day: null,
      problems: [{ id: 'bad-date', row: 7, text: '' }],
    });
    const apart = rowReader({ ...layoutOf('a,year,month,day,tmin\nx,2001,1,2,3') });
    expect(apart(['x', ' 20x ', '1', '2'], 3).problems).toEqual([
      { id: 'bad-date', row: 3, text: '20x' },
    ]);
    expect(apart(['x'], 3).problems).toEqual([{ id: 'short-row', row: 3, text: '' }]);
  });
  test('is of the station chosen, or of nobody’s', () => {
    const layout = layoutOf('site,date,tmin\nA,2001-01-01,1\nB,2001-01-01,1');
    const of = (name: string, station: string | null) =>
      isOfStation([name, ''], { ...layout, station });
    expect([of(' A ', 'A'), of('B', 'A'), of(' ', 'A'), of('B', null)]).toEqual([
      true,
      false,
      true,
      true,
    ]);
    expect(isOfStation(['B'], { ...layout, roles: {}, station: 'A' })).toBe(true);
    expect([isBlank(['', ' ']), isBlank(['', 'x']), isBlank([])]).toEqual([true, false, true]);
  });
});

describe('all rows', () => {
  const rows = (count: number, from = 1) =>
    inventDays(2001, 2001, wave)
      .slice(from - 1, from - 1 + count)
      .map((day) => `${isoDate(day)},${day.min},${day.max}`);
  const head = 'date,tmin (C),tmax (C)';
  const file = (...lines: string[]) => [head, ...lines].join('\n');

  test('up to three rows of notes under the names are no days gone wrong; a fourth is', () => {
    const notes = (count: number) => read(file(...Array(count).fill('unit,C,C'), ...rows(30)));
    expect(notes(3)).toMatchObject({ rows: 30, problems: [] });
    expect(notes(4)).toMatchObject({ rows: 31, problems: [{ id: 'bad-date', row: 5 }] });
  });
  test('a note after the first day is a row gone wrong', () => {
    const [first = '', ...others] = rows(30);
    expect(read(file(first, 'unit,C,C', ...others)).problems).toEqual([
      { id: 'bad-date', row: 3, text: 'unit' },
    ]);
  });
  test('one row in twenty may be wrong, not more; a single one always', () => {
    const wrong = (good: number, bad: number) =>
      read(file(...rows(good), ...Array(bad).fill('x,1,2')));
    expect(wrong(38, 2).days).toHaveLength(38);
    expect(wrong(37, 2)).toMatchObject({
      days: [],
      rows: 39,
      problems: [{ id: 'too-many-bad', count: 2, row: 39 }, { id: 'bad-date' }, { id: 'bad-date' }],
    });
    expect(wrong(3, 1).days).toHaveLength(3);
  });
  test('a date twice: the same values once; others for neither, with both rows', () => {
    const change = (cells: string) => `2001-01-05,${cells}`;
    const all = 'date,tmin (C),tmax (C),prcp (mm),snow (mm)';
    const days = rows(30).map((line) => `${line},1,2`);
    const own = days[4]?.split(',') ?? [];
    const twice = (cells: (string | undefined)[]) =>
      read([all, ...days, change(cells.join(','))].join('\n'));
    expect(twice(own.slice(1)).days).toHaveLength(30);
    for (const place of [1, 2, 3, 4]) {
      const other = own.map((cell, index) => (index === place ? String(Number(cell) + 0.5) : cell));
      const { days: left, problems } = twice(other.slice(1));
      expect(left).toHaveLength(29);
      expect(left.map(({ day }) => day)).not.toContain(5);
      expect(problems).toContainEqual({ id: 'same-day-twice', row: 32, other: 6 });
    }
  });
  test('where more dates than that stand twice it is no daily file', () => {
    const twice = (count: number) =>
      read(file(...rows(38), ...rows(count).map((line) => line.replace(/,[^,]*$/, ',19'))));
    expect(twice(2).days).toHaveLength(36);
    expect(twice(3)).toMatchObject({
      days: [],
      rows: 41,
      problems: [{ id: 'not-daily', row: 40, other: 2 }, { id: 'same-day-twice', row: 40 }, {}, {}],
    });
  });
  test('rows of another station and blank rows are not counted', () => {
    const text = `site,${head}\nA,${rows(1)[0]}\n,,,\nB,${rows(2)[1]}`;
    expect(read(text, { station: 'A' })).toMatchObject({ rows: 1, days: [{ day: 1 }] });
    expect(read(text, { station: 'C' })).toMatchObject({
      days: [],
      rows: 0,
      problems: [{ id: 'headers-only', row: 1 }],
    });
  });
  test('a single row without a date leaves nothing to count', () => {
    expect(read(file('x,1,2', 'x,1,2', 'x,1,2', 'x,1,2'))).toMatchObject({
      days: [],
      rows: 1,
      problems: [
        { id: 'too-many-bad', count: 1 },
        { id: 'bad-date', row: 5 },
      ],
    });
  });
  test('rows out of order are put in order, and said to have been', () => {
    const [one = '', two = '', three = ''] = rows(3);
    const { days, problems } = read(file(one, three, two));
    expect(days.map(({ day }) => day)).toEqual([1, 2, 3]);
    expect(problems).toEqual([{ id: 'out-of-order' }]);
  });

  test.each([
    ['no date', 'a,tmin,tmax\n2001-01-01,1,2', {}, { id: 'no-date-column', row: 1 }],
    ['no minimum', 'date,tmax\n2001-01-01,1', {}, { id: 'no-temperature-column', row: 1 }],
    ['no maximum', 'note\ndate,tmin\n2001-01-01,1', {}, { id: 'no-temperature-column', row: 2 }],
    [
      'two units of temperature',
      'date,tmin (F),tmax (C)\n2001-01-01,1,2',
      {},
      { id: 'mixed-units', row: 1, text: 'tmin (F) / tmax (C)' },
    ],
    [
      'two stations',
      'site,date,tmin,tmax\n,2001-01-01,1,2\nA,2001-01-01,1,2\n B,2001-01-01,1,2',
      {},
      { id: 'two-stations', row: 4, text: 'B', count: 2 },
    ],
    [
      'an order that nothing tells',
      'date,tmin,tmax\n 5/5/2001,1,2',
      {},
      { id: 'order-unknown', row: 2, text: '5/5/2001' },
    ],
    [
      'two orders',
      'date,tmin,tmax\n1/1/2001,1,2\n13/1/2001,1,2\n1/14/2001,1,2',
      {},
      { id: 'order-conflict', row: 3, other: 4 },
    ],
  ])('cannot be read with %s', (_what, text, change, problem) => {
    expect(read(text, change)).toEqual({ days: [], rows: 0, problems: [problem] });
  });
  test('one unit named of two is no mixture', () => {
    expect(read('date,tmin (F),tmax\n2001-01-01,1,2').problems).toEqual([]);
    expect(read('date,tmin,tmax (F)\n2001-01-01,1,2').problems).toEqual([]);
  });
});
