import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { resultCode, runOf } from '$lib/keep/practice/result-code';
import { openResultStore } from '$lib/keep/practice/result-store';
import {
  parseProgress,
  readProgressBlob,
  readProgressText,
} from '$lib/keep/practice/progress-file';
import type { SetResult } from '$lib/practice/given';

const mira: SetResult = {
  set: { cases: ['bakery-dust', 'larch-row-oil'] },
  calls: ['grind', 'pressure-wash'],
  minute: 29_540_700,
  mark: 4711,
  name: 'Mira',
};
const ilo: SetResult = { ...mira, minute: mira.minute - 5, name: 'Ilo' };
const ann: SetResult = { ...mira, minute: mira.minute + 5, name: 'Ann' };
afterEach(() => void vi.unstubAllGlobals());

describe('what is kept of a result and cannot be read', () => {
  it('is told by its place and by what was expected there', async () => {
    const store = await openResultStore({ name: 'damaged-results' });
    const database = await openDB('damaged-results', 1);
    const code = resultCode(mira);
    const records: unknown[] = [
      null,
      'soup',
      [],
      {},
      { version: 2, code },
      { version: 1, code: 7 },
      { version: 1, code, more: 1 },
      { version: 1, code: 'soup' },
      { version: 1, code },
    ];
    for (const [at, raw] of records.entries()) await database.put('given', raw, String(at));
    database.close();
    const { results, damaged } = await store.read();
    const object = { path: '', expected: { id: 'object', fields: ['version', 'code'] } };
    expect(results).toEqual([]);
    expect(damaged.map(({ problem }) => problem)).toMatchObject([
      { ...object, found: { id: 'null' } },
      { ...object, found: { id: 'text', text: 'soup' } },
      { ...object, found: { id: 'list', length: 0 } },
      { path: 'version', expected: { id: 'field', field: 'version' }, found: { id: 'nothing' } },
      { path: 'version', expected: { id: 'version', known: [1] }, found: { text: '2' } },
      { path: 'code', expected: { id: 'result-code' }, found: { id: 'number', text: '7' } },
      { path: 'more', expected: { id: 'known-field', fields: ['version', 'code'] } },
      { path: '', expected: { id: 'result-code' }, found: { id: 'text', text: 'soup' } },
      // Whole, but under the name of another run.
      { path: '', expected: { id: 'possible-result' }, found: { id: 'broken' } },
    ]);
    expect(damaged.map(({ key }) => key)).toEqual(records.map((_, at) => String(at)));
    store.close();
  });
});

describe('results held in the tab alone', () => {
  it('stand in the order the runs ended, keep their name, and go', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const store = await openResultStore();
    for (const one of [mira, ann, ilo])
      expect(await store.bring(one)).toEqual({ ok: true, what: 'added' });
    const names = async () => (await store.read()).results.map(({ result }) => result.name);
    expect(await names()).toEqual(['Ilo', 'Mira', 'Ann']);
    expect(await store.bring({ ...mira, name: 'Somebody' })).toEqual({ ok: true, what: 'here' });
    expect(await names()).toEqual(['Ilo', 'Mira', 'Ann']);
    expect(await store.bring({ ...mira, calls: ['grind', 'grind'] })).toEqual({
      ok: true,
      what: 'other-picks',
    });
    expect(await names()).toEqual(['Ilo', 'Mira', 'Ann']);
    expect(await store.put([{ ...ann, name: '' }])).toEqual({ ok: true });
    expect(await store.remove([runOf(ilo)])).toEqual({ ok: true });
    expect(await names()).toEqual(['Mira', '']);
    expect(await store.raw('nobody')).toBeUndefined();
    expect(await store.clear()).toEqual({ ok: true });
    expect(await names()).toEqual([]);
    store.close();
  });
});

describe('a file of what was practised', () => {
  const file = { format: 'down-to-sound.practice', version: 1, results: [] as unknown[] };
  const result = { case: 'bakery-dust', at: 5, rating: 'good' };
  const problem = (raw: unknown) => {
    const read = parseProgress(raw);
    return read.ok ? null : read.problem;
  };

  it.each([
    [
      null,
      { path: '', expected: { fields: ['format', 'version', 'results'] }, found: { id: 'null' } },
    ],
    [[], { path: '', expected: { id: 'object' }, found: { id: 'list', length: 0 } }],
    [
      { ...file, version: 2 },
      { path: 'version', expected: { id: 'version', known: [1] } },
    ],
    [
      { ...file, format: 'x' },
      { path: 'format', expected: { format: 'down-to-sound.practice' } },
    ],
    [
      { ...file, results: [{ ...result, case: 7 }] },
      { path: 'results[0].case', expected: { id: 'case-id' } },
    ],
    [
      { ...file, results: [{ ...result, case: 'A' }] },
      { path: 'results[0].case', expected: { id: 'case-id' } },
    ],
    [{ ...file, results: [{ ...result, case: 'a b' }] }, { path: 'results[0].case' }],
    [{ ...file, results: [{ ...result, case: 'a' }] }, { path: 'results[0].case' }],
    [
      { ...file, results: [{ ...result, case: `a${'x'.repeat(40)}` }] },
      { path: 'results[0].case' },
    ],
    [
      { ...file, results: [{ ...result, at: -1 }] },
      { path: 'results[0].at', expected: { id: 'moment' } },
    ],
    [
      { ...file, results: [{ ...result, at: 1.5 }] },
      { path: 'results[0].at', expected: { id: 'moment' } },
    ],
    [
      { ...file, results: [{ ...result, rating: 'easy' }] },
      { path: 'results[0].rating', expected: { id: 'one-of' } },
    ],
  ])('is refused by its place: %j', (raw, wrong) => {
    expect(problem(raw)).toMatchObject(wrong);
  });

  it('is read with its results in the order of time, whatever order they stand in', () => {
    const at = (moment: number) => ({ ...result, at: moment });
    const read = parseProgress({ ...file, results: [at(9), at(3), at(5)] });
    expect(read.ok && read.value.map((each) => each.at)).toEqual([3, 5, 9]);
    for (const name of ['ab', `a${'x'.repeat(39)}`])
      expect(problem({ ...file, results: [{ ...result, case: name }] })).toBeNull();
  });

  it('is read with a byte order mark, up to so many characters, and of no more bytes than they take', async () => {
    const text = JSON.stringify(file);
    expect(await readProgressText(`\ufeff${text}`)).toEqual({ ok: true, value: [] });
    expect(await readProgressText(text.padEnd(1_500_000))).toMatchObject({ ok: true });
    const smaller = { path: '', expected: { id: 'smaller', limit: 1_500_000 } };
    expect(await readProgressText(text.padEnd(1_500_001))).toMatchObject({
      problem: { ...smaller, found: { id: 'long-text', length: 1_500_001 } },
    });
    const sized = (size: number) =>
      Object.defineProperty(new Blob([text]), 'size', { value: size });
    expect(await readProgressBlob(sized(4_500_000))).toEqual({ ok: true, value: [] });
    expect(await readProgressBlob(sized(4_500_001))).toMatchObject({
      problem: { ...smaller, found: { id: 'long-text', length: 4_500_001 } },
    });
    expect(await readProgressBlob(new Blob([new Uint8Array([0xff])]))).toEqual({
      ok: false,
      problem: { path: '', expected: { id: 'utf-8' }, found: { id: 'broken' } },
    });
  });
});
