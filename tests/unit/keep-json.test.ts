import { describe, expect, it } from 'vitest';
import { placeOfError, placeOfRepeat } from '$lib/keep/json-place';
import { readJson } from '$lib/keep/read-json';

const nested = (open: string, close: string, levels: number) =>
  `${open.repeat(levels)}1${close.repeat(levels)}`;

describe('a text as JSON', () => {
  it('may nest 32 levels deep and no deeper, in lists and objects alike', async () => {
    for (const [open, close] of [
      ['[', ']'],
      ['{"a":', '}'],
    ] as const) {
      expect((await readJson(nested(open, close, 32))).ok).toBe(true);
      expect(await readJson(nested(open, close, 33))).toEqual({
        ok: false,
        problem: { path: '', expected: { id: 'flatter', limit: 32 }, found: { id: 'broken' } },
      });
    }
    // What stands between does not count either way.
    expect((await readJson(`[${'1,"a",'.repeat(50)}${nested('[', ']', 32)}]`)).ok).toBe(false);
    expect((await readJson(`{${'"a":[],'.repeat(9)}"b":${nested('{"c":', '}', 32)}}`)).ok).toBe(
      false,
    );
    // What is closed does not count, nor do brackets in a text.
    expect((await readJson(`[${'[[]],{"a":{}},'.repeat(50)}1]`)).ok).toBe(true);
    expect((await readJson(`["${'[{'.repeat(50)}"]`)).ok).toBe(true);
    expect((await readJson(`["\\"${'[{'.repeat(50)}\\\\"]`)).ok).toBe(true);
  });

  it('has a colon in a text for a sign like any other', async () => {
    const text = '{"a:b":"c:d","e":["f:\\"g:h"]}';
    expect(await readJson(text)).toEqual({ ok: true, value: JSON.parse(text) as unknown });
  });

  it('is refused where there is none, and where no one reads it as such', async () => {
    expect(await readJson(' \n\t')).toEqual({
      ok: false,
      problem: { path: '', expected: { id: 'content' }, found: { id: 'nothing' } },
    });
    expect(await readJson('{"a":1,}')).toEqual({
      ok: false,
      problem: {
        path: '',
        expected: { id: 'json', line: 1, column: 8 },
        found: { id: 'broken' },
      },
    });
  });

  it('is told of without a place where nobody looks for it by eye', async () => {
    expect(await readJson(`[1,${' '.repeat(500_000)}`)).toStrictEqual({
      ok: false,
      problem: { path: '', expected: { id: 'json' }, found: { id: 'broken' } },
    });
  });

  it('is refused with a field said twice, which is shown cut short and harmless', async () => {
    const name = `${'x'.repeat(50)}\\n`;
    expect(await readJson(`[{"${name}":1,"${name}":2}]`)).toEqual({
      ok: false,
      problem: {
        path: `[0]["${'x'.repeat(40)}…"]`,
        expected: { id: 'once', line: 1, column: 60 },
        found: { id: 'field', field: `${'x'.repeat(40)}…` },
      },
    });
  });
});

describe('the place where a text stops being JSON', () => {
  it.each([
    ['{"a": 1,\n  "b": ]\n}', { line: 2, column: 8 }],
    ['{\n\n"a" 1}', { line: 3, column: 5 }],
    ['[1, 2', { line: 1, column: 6 }],
    ['// so\n[1]', { line: 1, column: 1 }],
    ['[1,\n]', { line: 2, column: 1 }],
    ['\n\n', { line: 3, column: 1 }],
    // A line end right before the slip belongs to the line before.
    ['[1\n2]', { line: 2, column: 1 }],
  ])('%j', (text, place) => {
    expect(placeOfError(text)).toEqual(place);
  });

  it('is nowhere in JSON', () => {
    expect(placeOfError('{"a": [1, 2]}')).toBeUndefined();
  });
});

describe('the place where a field stands again', () => {
  it.each([
    ['{"a":1,"a":2}', { keys: ['a'], line: 1, column: 8 }],
    ['[{"a":1},\n {"b":{"c":1,\n  "c":2}}]', { keys: [1, 'b', 'c'], line: 3, column: 3 }],
    // The first of two.
    ['{"a":1,"b":1,"b":2,"a":2}', { keys: ['b'], line: 1, column: 14 }],
    // An inner object does not count with the outer one; behind it the outer one goes on.
    ['{"a":{"b":1},"b":{"a":1},"a":0}', { keys: ['a'], line: 1, column: 26 }],
  ])('%s', (text, place) => {
    expect(placeOfRepeat(text)).toEqual(place);
  });

  it('is nowhere where each stands once', () => {
    expect(placeOfRepeat('{"a":{"a":1},"b":[{"a":1},{"a":2}]}')).toBeUndefined();
  });
});
