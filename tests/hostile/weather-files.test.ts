import { describe, expect, test } from 'vitest';
import { valueOf } from '$shared/figures';
import { bytesOf, inventDays, isoDate, readFile, wave } from '../helpers/weather';

const days = inventDays(2001, 2002, wave);
const line = (day: (typeof days)[number]) => `${isoDate(day)},${day.min},${day.max}`;
const rows = days.map(line);
const file = (change: (rows: string[]) => void = () => {}) => {
  const copy = [...rows];
  change(copy);
  return ['date,tmin (C),tmax (C)', ...copy].join('\n');
};
/** The row as a spreadsheet counts it: one row of names, and from 1. */
const rowOf = (index: number) => index + 2;

describe('nothing can be computed, and the message says where and why', () => {
  test('an empty file, and one of blank lines', () => {
    expect(readFile('').problems).toEqual([{ id: 'empty' }]);
    expect(readFile('\n\n , , \n').problems).toEqual([{ id: 'empty' }]);
  });

  test('column names and no days', () => {
    expect(readFile('date,tmin,tmax\n').problems).toEqual([{ id: 'headers-only', row: 1 }]);
    expect(readFile('date,tmin,tmax\n\n\n').problems).toEqual([{ id: 'headers-only', row: 1 }]);
  });

  test('a picture', () => {
    const bytes = Uint8Array.from({ length: 5000 }, (_, index) => (index * 37) % 256);
    expect(readFile(bytes).problems).toEqual([{ id: 'binary' }]);
    const zip = new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 8, 8, 8, 0, ...bytes]);
    expect(readFile(zip).problems).toEqual([{ id: 'binary' }]);
  });

  test('a page of prose', () => {
    expect(readFile('Dear all,\nit was cold.\nYours').problems[0]).toMatchObject({
      id: 'no-columns',
    });
  });

  test('a file over the size limit is not read', () => {
    const limit = valueOf('weather.file-limit');
    expect(readFile(new Uint8Array(limit * 1e6 + 1)).problems).toEqual([
      { id: 'too-large', count: limit },
    ]);
  });

  test('a million rows stop at the limit, soon', () => {
    const limit = valueOf('weather.days-limit');
    const many = bytesOf('date,tmin,tmax\n' + '2001-01-01,1,2\n'.repeat(1_000_000));
    const before = process.cpuUsage().user;
    expect(readFile(many).problems).toEqual([
      { id: 'too-many-rows', row: limit + 1, count: limit },
    ]);
    expect((process.cpuUsage().user - before) / 1e6).toBeLessThan(5);
  });

  test('a quotation mark that never closes does not hang it', () => {
    const open = bytesOf(
      file().replace('2001-03-01', '"2001-03-01') + '\n' + 'x,1,2\n'.repeat(300_000),
    );
    const before = process.cpuUsage().user;
    const { problems } = readFile(open);
    expect((process.cpuUsage().user - before) / 1e6).toBeLessThan(5);
    expect(problems[0]?.row).toBeDefined();
  });

  test('no column of dates, or of temperatures', () => {
    expect(readFile('place,tmin,tmax\nx,1,2\nx,1,2').problems[0]?.id).toBe('no-columns');
    expect(readFile('date,humidity\n2001-01-01,50\n2001-01-02,51').problems).toEqual([
      { id: 'no-temperature-column', row: 1 },
    ]);
    expect(readFile('date,tmax\n2001-01-01,50').problems).toEqual([
      { id: 'no-temperature-column', row: 1 },
    ]);
  });

  test('two stations: the row where the second begins; either can be chosen', () => {
    const two = [
      'station,date,tmin,tmax',
      ...rows.map((row) => `A,${row}`),
      ...rows.map((row) => `B,${row}`),
    ].join('\n');
    expect(readFile(two).problems).toEqual([
      { id: 'two-stations', row: rowOf(rows.length), text: 'B', count: 2 },
    ]);
    const chosen = readFile(two, (layout) => ({ ...layout, station: 'B' }));
    expect(chosen.problems).toEqual([]);
    expect(chosen.days).toHaveLength(rows.length);
  });

  test('two stations under no name show as dates given twice', () => {
    const twice = file((copy) =>
      copy.push(...days.map((day) => `${isoDate(day)},${(day.min ?? 0) - 1},${day.max}`)),
    );
    expect(readFile(twice).problems[0]).toEqual({
      id: 'not-daily',
      row: rowOf(rows.length),
      other: rowOf(0),
    });
  });

  test('hours instead of days', () => {
    const hours = days
      .slice(0, 30)
      .flatMap((day) =>
        [0, 6, 12, 18].map(
          (hour) => `${isoDate(day)} ${hour}:00,${(day.min ?? 0) + hour / 9},${day.max}`,
        ),
      );
    expect(readFile(['date,tmin,tmax', ...hours].join('\n')).problems[0]).toMatchObject({
      id: 'not-daily',
      row: 3,
      other: 2,
    });
  });

  test('dates that could be read both ways are asked about; dates that are both are refused with both rows', () => {
    expect(readFile('date,tmin,tmax\n5/5/2001,1,2').problems[0]).toMatchObject({
      id: 'order-unknown',
      row: 2,
    });
    expect(
      readFile('date,tmin,tmax\n1/1/2001,1,2\n13/1/2001,1,2\n1/14/2001,1,2').problems[0],
    ).toEqual({ id: 'order-conflict', row: 3, other: 4 });
  });

  test('C in one column and F in the other', () => {
    expect(readFile('date,Min Temp (°C),Max Temp (°F)\n2001-01-01,1,40').problems[0]).toMatchObject(
      { id: 'mixed-units', row: 1 },
    );
  });

  test('the wrong unit in more rows than chance gives: the first of them', () => {
    const mixed = file((copy) =>
      days.forEach((day, index) => {
        if (index >= 300)
          copy[index] =
            `${isoDate(day)},${((day.min ?? 0) * 9) / 5 + 32},${((day.max ?? 0) * 9) / 5 + 32 + 30}`;
      }),
    );
    const { problems } = readFile(mixed);
    expect(problems[0]?.id).toBe('too-many-bad');
    expect(problems[0]?.row).toBe(rowOf(300));
  });
});
