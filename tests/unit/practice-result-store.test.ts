import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { minuteOf, readResultCode, resultCode, runOf } from '$lib/keep/practice/result-code';
import { openResultStore, type ResultStore } from '$lib/keep/practice/result-store';
import type { SetResult } from '$lib/practice/given';
import { anyResult, inOrder } from '../helpers/any-result';
import { nasty } from '../helpers/spoil';
import { rounds } from '../helpers/rounds';

const opened: ResultStore[] = [];
const open = async (name: string) => {
  const store = await openResultStore({ name });
  opened.push(store);
  return store;
};
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  for (const store of opened.splice(0)) store.close();
});

const mira: SetResult = {
  set: { cases: ['bakery-dust', 'larch-row-oil'] },
  calls: ['grind', 'pressure-wash'],
  minute: minuteOf(Date.UTC(2026, 2, 2, 9)),
  mark: 4711,
  name: 'Mira',
};
const ilo: SetResult = { ...mira, minute: mira.minute - 5, mark: 3, name: 'Ilo' };
const results = async (store: ResultStore) =>
  (await store.read()).results.map(({ result }) => result);

describe('the run a result is of', () => {
  it('is the same under another name and with other picks; another mark, minute or set is another', () => {
    const run = runOf(mira);
    expect(runOf({ ...mira, name: '' })).toBe(run);
    expect(runOf({ ...mira, calls: mira.calls.map(() => 'crew') })).toBe(run);
    expect(runOf({ ...mira, mark: 4712 })).not.toBe(run);
    expect(runOf({ ...mira, minute: mira.minute + 1 })).not.toBe(run);
    expect(runOf({ ...mira, set: { ...mira.set, generated: { seed: 8, count: 3 } } })).not.toBe(
      run,
    );
  });

  it('stays within what a code can name, whatever the clock says', () => {
    for (const moment of [-1e15, 0, Date.UTC(2020, 0, 1), Date.UTC(2199, 0, 1), 8.64e15])
      expect(readResultCode(resultCode({ ...mira, minute: minuteOf(moment) })).ok).toBe(true);
    const moment = Date.UTC(2026, 10, 26, 22, 5, 59);
    expect(minuteOf(moment) * 60_000).toBe(Date.UTC(2026, 10, 26, 22, 5));
  });
});

describe('results that learners gave back', () => {
  it('are kept once each, also from two tabs at once, in the order the runs ended', async () => {
    const [here, there] = [await open('given-tabs'), await open('given-tabs')];
    expect([here.kind, await here.read()]).toEqual(['device', { results: [], damaged: [] }]);
    expect(await Promise.all([here.bring(mira), there.bring(ilo)])).toEqual([
      { ok: true, what: 'added' },
      { ok: true, what: 'added' },
    ]);
    expect(await results(there)).toEqual([ilo, mira]);
    // Twice, under another name, with a pick changed: told each time, and what was here stays.
    expect(await here.bring(mira)).toEqual({ ok: true, what: 'here' });
    expect(await here.bring({ ...mira, name: 'Somebody' })).toEqual({ ok: true, what: 'here' });
    expect(await here.bring({ ...mira, calls: ['grind', 'grind'] })).toEqual({
      ok: true,
      what: 'other-picks',
    });
    expect(await results(here)).toEqual([ilo, mira]);
  });

  it('lose their name, go, and come back', async () => {
    const store = await open('given-names');
    await store.bring(mira);
    expect(await store.put([{ ...mira, name: '' }])).toEqual({ ok: true });
    expect(await results(store)).toEqual([{ ...mira, name: '' }]);
    // The name is nowhere on the device, and does not come back with the code.
    expect(await store.raw(runOf(mira))).not.toContain(resultCode(mira));
    expect(await store.bring(mira)).toEqual({ ok: true, what: 'here' });
    expect(await results(store)).toEqual([{ ...mira, name: '' }]);
    await store.bring(ilo);
    expect(await store.remove([runOf(mira)])).toEqual({ ok: true });
    expect(await results(store)).toEqual([ilo]);
    expect(await store.put([mira])).toEqual({ ok: true });
    expect(await results(store)).toEqual([ilo, mira]);
    expect(await store.clear()).toEqual({ ok: true });
    expect(await store.read()).toEqual({ results: [], damaged: [] });
  });

  it('are told apart from nonsense: the rest is shown, and nonsense can be looked at and goes', async () => {
    const store = await open('given-damaged');
    await store.bring(mira);
    const database = await openDB('given-damaged', 1);
    const bad: unknown[] = [
      ...nasty,
      { version: 2, code: resultCode(ilo) },
      { version: 1, code: resultCode(ilo), right: 2 },
      { version: 1, code: `${resultCode(ilo)}x` },
      // A whole result under the name of another run.
      { version: 1, code: resultCode(ilo) },
    ];
    for (const [at, raw] of bad.entries()) await database.put('given', raw, `bad-${String(at)}`);
    const { results: read, damaged } = await store.read();
    expect(read.map(({ result }) => result)).toEqual([mira]);
    expect(damaged).toHaveLength(bad.length);
    expect(await store.raw(`bad-${String(bad.length - 3)}`)).toContain('"right": 2');
    expect(await store.remove(damaged.map(({ key }) => key))).toEqual({ ok: true });
    expect((await store.read()).damaged).toEqual([]);
    // Where the record of a run is spoilt, its code mends it.
    await database.put('given', 'soup', runOf(ilo));
    expect(await store.bring(ilo)).toEqual({ ok: true, what: 'added' });
    expect(await results(store)).toEqual([ilo, mira]);
    database.close();
  });

  it('come back as they were, whatever they are', async () => {
    const store = await open('given-any');
    await fc.assert(
      fc.asyncProperty(anyResult, async (result) => {
        await store.clear();
        await store.bring(result);
        expect(await results(store)).toEqual([inOrder(result)]);
      }),
      { numRuns: rounds(15, 40) },
    );
  });

  it('say when a write failed, and why', async () => {
    const store = await open('given-full');
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(await store.bring(mira)).toEqual({ ok: false, why: 'quota' });
    vi.restoreAllMocks();
    expect(await store.bring(mira)).toEqual({ ok: true, what: 'added' });
    store.close();
    expect(await store.bring(ilo)).toEqual({ ok: false, why: 'unavailable' });
    expect(await store.remove([runOf(mira)])).toEqual({ ok: false, why: 'unavailable' });
  });

  it('stay in this tab where there is no storage, which says so', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const store = await open('none');
    expect([store.kind, store.why]).toEqual(['memory', 'no-storage']);
    expect(await store.bring(mira)).toEqual({ ok: true, what: 'added' });
    expect(await store.bring(mira)).toEqual({ ok: true, what: 'here' });
    await store.put([{ ...mira, name: '' }]);
    expect(await results(store)).toEqual([{ ...mira, name: '' }]);
    expect(await store.raw(runOf(mira))).toContain('done2.');
    await store.remove([runOf(mira)]);
    expect(await results(store)).toEqual([]);
  });
});
