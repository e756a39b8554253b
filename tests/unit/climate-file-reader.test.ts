import { describe, expect, test } from 'vitest';
import { FileReading, type FromFileReader, type ToFileReader } from '$lib/ui/weather/file-reader';
import { problemSentence } from '$words/climate-file';
import { readingReason, weatherSentence } from '$words/climate';
import { readFreezeThaw } from '$lib/climate/answer';
import { readWeather } from '$lib/climate/weather';
import { fatalProblems, oddities, rowProblems } from '$lib/climate/file/types';
import { formatter } from '$lib/words/format';
import { bytesOf, inventDays, isoDate, wave } from '../helpers/weather';

const days = inventDays(2001, 2003, (date) => ({ ...wave(date), rain: 2 }));
const lines = days.map((d) => [isoDate(d), d.min, d.max, d.rain].join(','));
const file = (text: string): ToFileReader => ({
  kind: 'open',
  bytes: bytesOf(text).buffer as ArrayBuffer,
});

/** A reader, and the last answer of each kind it gave. */
function sit() {
  const said: FromFileReader[] = [];
  const reader = new FileReading((answer) => said.push(answer));
  const last = <K extends FromFileReader['kind']>(kind: K) =>
    said.findLast((answer) => answer.kind === kind) as
      Extract<FromFileReader, { kind: K }> | undefined;
  return { reader, said, last };
}

describe('the reader that holds a file', () => {
  test('opens, shows a layout with telling days, counts, and counts again with the reader’s own figure', () => {
    const { reader, said, last } = sit();
    reader.take(
      file(
        ['date,tmin,tmax,prcp', ...lines.filter((line) => !line.startsWith('2002-06'))].join('\n'),
      ),
    );
    expect(said[0]?.kind).toBe('progress');
    const sample = last('layout')?.read.sample ?? [];
    expect(sample[0]).toMatchObject({ year: 2001, month: 1, day: 1 });
    const coldest = Math.min(...days.map(({ min }) => min ?? 0));
    expect(sample.some(({ min }) => min === coldest)).toBe(true);
    reader.take({ kind: 'count', own: {} });
    expect(last('weather')?.weather.years.map(({ kept }) => kept)).toEqual([true, false, true]);
    reader.take({ kind: 'count', own: { 'weather.missing-days': 30 } });
    expect(last('weather')?.weather.years.map(({ kept }) => kept)).toEqual([true, true, true]);
  });

  test('takes the reader’s word for a unit and a column, and no longer calls them guesses', () => {
    const { reader, last } = sit();
    reader.take(file(['date,tmin,tmax,prcp', ...lines].join('\n')));
    const before = last('layout');
    expect(before?.layout.unsure).toEqual(['temperature', 'rain']);
    reader.take({
      kind: 'fit',
      roles: before?.layout.roles ?? {},
      chosen: { temperature: 'C', rain: 'tenths-mm' },
    });
    const after = last('layout');
    expect(after?.layout.unsure).toEqual([]);
    expect(after?.layout.units).toMatchObject({ temperature: 'C', rain: 'tenths-mm' });
    expect(after?.read.sample[0]?.rain).toBeCloseTo(0.2, 9);
  });

  test('a count before there is anything to count says nothing', () => {
    const { reader, said } = sit();
    reader.take({ kind: 'count', own: {} });
    reader.take({ kind: 'fit', roles: {}, chosen: {} });
    expect(said).toEqual([]);
  });

  test('thousands of problems are not handed over one by one', () => {
    const { reader, last } = sit();
    reader.take(file(['date,tmin,tmax', ...lines.map(() => 'nonsense,1,2')].join('\n')));
    const read = last('layout')?.read;
    expect(read?.stopped).toBe(true);
    expect(read?.problems.length).toBeLessThanOrEqual(20);
    expect(read?.more).toBeGreaterThan(1000);
  });
});

describe('what the page says', () => {
  const say = formatter('metric');

  test.each([...fatalProblems, ...rowProblems, ...oddities])('problem %s names its row', (id) => {
    const text = problemSentence(
      { id, row: 1234, other: 5678, text: 'here', column: 'tmin', count: 9 },
      say,
    );
    expect(text).toMatch(/[.?]$/);
    const wholeFile = [
      'empty',
      'binary',
      'too-large',
      'snow-lying',
      'out-of-order',
      'odd-encoding',
    ];
    if (!wholeFile.includes(id)) expect(text).toMatch(/^Row 1,234: /);
    expect(text).not.toMatch(/undefined|NaN/);
  });

  test('the reason holds the count, the rain, the index and the answer, in the reader’s units', () => {
    const weather = readWeather(days);
    const reading = readFreezeThaw(weather.frequency ?? 'never', 'stays-wet', 'none');
    const text = readingReason(reading, weather, formatter('us'));
    expect(text).toContain(formatter('us').number(weather.cycles?.direct ?? NaN));
    expect(text).toContain('\u00a0in of rain');
    expect(text).toContain('“Often”');
    expect(
      weatherSentence(readWeather(days.map((day) => ({ ...day, rain: null }))), say),
    ).toContain('no rain');
  });

  test('a reader who overrules the file is not told that the file said so', () => {
    const weather = readWeather(days);
    expect(weather.frequency).toBe('many');
    expect(readingReason(readFreezeThaw('some', 'drains', 'none'), weather, say)).not.toContain(
      'Your file',
    );
  });
});
