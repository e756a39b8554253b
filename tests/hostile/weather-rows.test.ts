import { describe, expect, test } from 'vitest';
import { readWeather } from '$lib/climate/weather';
import { inventDays, isoDate, readFile, wave } from '../helpers/weather';

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

describe('a row that cannot be used is named and left out; the rest counts', () => {
  const at = 40;
  const cases: [string, string, object][] = [
    ['the minimum above the maximum', '2001-02-10,9,2', { id: 'min-above-max', text: '9 / 2' }],
    [
      'a word for a number',
      '2001-02-10,cold,2',
      { id: 'bad-number', text: 'cold', column: 'tmin (C)' },
    ],
    [
      'a unit in the cell',
      '2001-02-10,1,40F',
      { id: 'bad-number', text: '40F', column: 'tmax (C)' },
    ],
    [
      'a temperature beyond any record',
      '2001-02-10,1,75',
      { id: 'beyond-record', text: '75', column: 'tmax (C)' },
    ],
    ['a day wider than any record', '2001-02-10,-40,30', { id: 'wide-day', text: '-40 / 30' }],
    ['a day that never was', '2001-02-30,1,2', { id: 'bad-date', text: '2001-02-30' }],
    ['a formula', '=1+1,1,2', { id: 'bad-date', text: '=1+1' }],
    [
      'a script',
      '<script>alert(1)</script>,1,2',
      { id: 'bad-date', text: '<script>alert(1)</script>' },
    ],
  ];
  test.each(cases)('%s', (_name, row, problem) => {
    const read = readFile(file((copy) => (copy[at] = row)));
    expect(read.problems).toEqual([{ ...problem, row: rowOf(at) }]);
    expect(readWeather(read.days).years[0]).toMatchObject({ kept: true, missing: 1 });
  });

  test('a date given twice: the same values count once, different values for neither', () => {
    expect(readFile(file((copy) => copy.splice(at, 0, copy[at] ?? ''))).days).toHaveLength(
      rows.length,
    );
    const read = readFile(
      file((copy) => copy.splice(at, 0, (copy[at] ?? '').replace(/[^,]*$/, '19'))),
    );
    expect(read.problems).toEqual([{ id: 'same-day-twice', row: rowOf(at + 1), other: rowOf(at) }]);
    expect(read.days).toHaveLength(rows.length - 1);
  });

  test('a cell of a million letters is shortened', () => {
    const [problem] = readFile(
      file((copy) => (copy[at] = `${'x'.repeat(1_000_000)},1,2`)),
    ).problems;
    expect(problem?.text?.length).toBeLessThanOrEqual(40);
  });
});

describe('what looks odd is said, and computed', () => {
  test('a year in another unit', () => {
    const three = inventDays(2001, 2003, (date) => {
      const { min, max } = wave(date);
      return date.year === 2002 ? { min: min * 1.8 + 32, max: max * 1.8 + 32 } : { min, max };
    });
    const read = readFile(
      [
        'date,tmin (C),tmax (C)',
        ...three.map((d) => [isoDate(d), d.min, Math.min(60, d.max ?? 0)].join(',')),
      ].join('\n'),
    );
    expect(read.problems).toContainEqual({ id: 'year-jump', text: '2002', row: rowOf(365) });
  });

  test('snow lying taken for snow fallen', () => {
    const lying = inventDays(2001, 2001, (date) => ({
      ...wave(date),
      rain: 1,
      snow: date.month <= 2 ? 400 : 0,
    }));
    const read = readFile(
      [
        'date,tmin,tmax,prcp (mm),snow (mm)',
        ...lying.map((d) => [isoDate(d), d.min, d.max, d.rain, d.snow].join(',')),
      ].join('\n'),
    );
    expect(read.problems).toEqual([{ id: 'snow-lying' }]);
  });

  test('rows out of order are put in order', () => {
    const read = readFile(file((copy) => copy.reverse()));
    expect(read.problems).toEqual([{ id: 'out-of-order' }]);
    expect(read.days.map(({ at }) => at)).toEqual(days.map(({ at }) => at));
  });
});

describe('encodings', () => {
  const text = file();
  const wide = (little: boolean, mark: boolean) => {
    const bytes = new Uint8Array(text.length * 2 + (mark ? 2 : 0));
    const view = new DataView(bytes.buffer);
    if (mark) view.setUint16(0, 0xfeff, little);
    for (let index = 0; index < text.length; index += 1)
      view.setUint16((mark ? 2 : 0) + index * 2, text.charCodeAt(index), little);
    return bytes;
  };
  test.each([
    [true, true],
    [false, true],
    [true, false],
    [false, false],
  ])('UTF-16, little end first %s, mark %s', (little, mark) => {
    expect(readFile(wide(little, mark)).days).toHaveLength(rows.length);
  });

  test('the old Western encoding, by its degree sign', () => {
    const bytes = Uint8Array.from(text.replace('tmin (C)', 'tmin (°C)'), (letter) =>
      letter.charCodeAt(0),
    );
    const read = readFile(bytes);
    expect(read.layout?.units.temperature).toBe('C');
    expect(read.days).toHaveLength(rows.length);
  });

  test('old line ends', () => {
    expect(readFile(text.replaceAll('\n', '\r')).days).toHaveLength(rows.length);
    expect(readFile(text.replaceAll('\n', '\r\n')).days).toHaveLength(rows.length);
    expect(readFile(text.replace('\n', '\r\n')).days).toHaveLength(rows.length);
  });
});
