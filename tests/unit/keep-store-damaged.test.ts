import 'fake-indexeddb/auto';
import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { JobStore, StoreEvent } from '$lib/keep/job-store';
import { openStore } from '$lib/keep/store';

const job = (name: string): Job => ({ name, site: {}, zones: [] });
const file = { format: 'down-to-sound.job', version: 1, site: { name: 'Kept' }, zones: [] };
const opened: JobStore[] = [];
async function tab(name: string): Promise<JobStore> {
  const store = await openStore({ name });
  opened.push(store);
  return store;
}
/** Reaches past the store into its database. */
async function tamper(name: string, record: object): Promise<void> {
  const database = await openDB(name, 1);
  await database.put('jobs', record);
  database.close();
}
afterEach(() => {
  vi.restoreAllMocks();
  for (const store of opened.splice(0)) store.close();
});

/** Everything structured cloning can put into a field. */
const loop: Record<string, unknown> = { a: 1 };
loop.self = loop;
const nonsense: unknown[] = [
  1e300,
  -1,
  NaN,
  Infinity,
  8.64e15 + 1,
  '2026',
  new Date(NaN),
  null,
  undefined,
  true,
  10n,
  [],
  {},
  loop,
  new Map([[1, loop]]),
  new Set([1]),
  /x/,
  new Uint8Array(3),
  2 ** 60,
];

describe('one record with nonsense in it', () => {
  it.each(['createdAt', 'changedAt', 'revision', 'file', 'more'])(
    'in %s leaves the rest of the list as it is, and can be shown, taken away and deleted',
    async (field) => {
      const name = `nonsense-${field}`;
      const store = await tab(name);
      await store.put('good', job('good'), 0);
      for (const [index, value] of nonsense.entries()) {
        const id = `bad-${index}`;
        await tamper(name, { id, file, createdAt: 5, changedAt: 5, revision: 3, [field]: value });
        const list = await store.list();
        expect(list.map((each) => each.id).sort()).toEqual([id, 'good'].sort());
        for (const { createdAt, changedAt, revision } of list) {
          for (const time of [createdAt, changedAt])
            expect(() => new Intl.DateTimeFormat('en-GB').format(time)).not.toThrow();
          expect(Number.isSafeInteger(revision + 1)).toBe(true);
        }
        const bad = list.find((each) => each.id === id);
        // A job that reads is shown, whatever stands beside it; any other is told by place.
        expect([index, bad?.damaged === undefined]).toEqual([index, field !== 'file']);
        expect(typeof (await store.raw(id))).toBe('string');
        await store.remove(id);
        expect((await store.list()).map((each) => each.id)).toEqual(['good']);
      }
    },
  );

  it('and one deep in its job is told by place', async () => {
    const store = await tab('deep');
    await store.put('good', job('good'), 0);
    for (const [index, value] of nonsense.entries()) {
      const zones = [{ id: 'a', depth: value === undefined ? {} : value }, loop];
      await tamper('deep', { id: 'bad', file: { ...file, zones }, changedAt: 5 });
      const bad = (await store.list()).find(({ id }) => id === 'bad');
      expect([index, bad?.damaged?.path]).toEqual([index, expect.stringMatching(/^zones\[/)]);
      expect(await store.raw('bad')).toContain('"zones"');
    }
  });

  it('under a key that is no text is listed, taken away and deleted like any other', async () => {
    const store = await tab('keys');
    await store.put('1', job('text'), 0);
    for (const key of [1, new Date(5), [1, 'a']]) await tamper('keys', { id: key, file });
    const ids = (await store.list()).map(({ id }) => id);
    expect(new Set(ids).size).toBe(4);
    for (const id of ids.filter((each) => each !== '1')) {
      expect(await store.raw(id)).toContain('down-to-sound.job');
      await store.remove(id);
    }
    expect(await store.list()).toMatchObject([{ id: '1', name: 'text' }]);
  });

  it('that the browser cannot read back is told, and the rest is shown', async () => {
    const store = await tab('unread');
    for (const id of ['a', 'b', 'c']) await store.put(id, job(id), 0);
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
      throw new DOMException('large value', 'DataError');
    });
    const get = IDBObjectStore.prototype.get;
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (
      this: IDBObjectStore,
      key,
    ) {
      if (key === 'b') throw new DOMException('large value', 'DataError');
      return get.call(this, key);
    });
    const list = await store.list();
    expect(list.map(({ id, damaged }) => [id, !!damaged]).sort()).toEqual([
      ['a', false],
      ['b', true],
      ['c', false],
    ]);
    await store.remove('b');
    expect((await store.list()).map(({ id }) => id).sort()).toEqual(['a', 'c']);
  });

  it('still shows a job whose name cannot be seen, kept before such names were refused', async () => {
    const store = await tab('unseen');
    const file = { format: 'down-to-sound.job', version: 1, site: { name: '\u200b' } };
    const zones = [{ id: 'a', name: '\u3164', depth: 5 }];
    await tamper('unseen', { id: 'a', file: { ...file, zones }, changedAt: 5, revision: 1 });
    expect(await store.list()).toMatchObject([{ id: 'a', name: '', zones: 1 }]);
    expect((await store.list())[0]).not.toHaveProperty('damaged');
    expect((await store.get('a'))?.job.zones[0]).toMatchObject({ name: '', answers: { depth: 5 } });
  });
});

describe('the storage taken away under the page', () => {
  it('is told, work that was seen counts as gone, and the store goes on', async () => {
    const store = await tab('away');
    const heard: StoreEvent[] = [];
    store.onChange((event) => heard.push(event));
    const put = await store.put('a', job('in hand'), 0);
    if (!put.ok) throw new Error(put.why);
    await deleteDB('away');
    await vi.waitFor(() => expect(heard).toHaveLength(2));
    expect(heard).toEqual([
      { kind: 'remove', id: '' },
      { kind: 'remove', id: 'a' },
    ]);
    expect(await store.list()).toEqual([]);
    expect(await store.put('a', job('on'), put.revision)).toEqual({ ok: false, why: 'newer' });
    expect(await store.put('b', job('anew'), 0)).toMatchObject({ ok: true });
    expect(await store.list()).toMatchObject([{ id: 'b' }]);
  });

  it('opens again later when it does not at once', async () => {
    const store = await tab('later');
    await store.put('a', job('kept'), 0);
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('closing', 'InvalidStateError');
    });
    vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => {
      throw new DOMException('not now', 'UnknownError');
    });
    await expect(store.list()).rejects.toThrow('not now');
    expect(await store.list()).toMatchObject([{ id: 'a', name: 'kept' }]);
  });
});

describe('all jobs deleted', () => {
  it('also what cannot be read; other tabs hear of each, and cannot write over it unseen', async () => {
    const [one, other] = [await tab('all'), await tab('all')];
    const heard: StoreEvent[] = [];
    other.onChange((event) => heard.push(event));
    const put = await one.put('a', job('a'), 0);
    await one.put('b', job('b'), 0);
    await tamper('all', { id: 7, file: 'nonsense' });
    expect(await one.clear()).toBe(3);
    expect(await one.list()).toEqual([]);
    await vi.waitFor(() => expect(heard.filter(({ kind }) => kind === 'remove')).toHaveLength(3));
    expect(await other.put('a', job('late'), put.ok ? put.revision : 0)).toEqual({
      ok: false,
      why: 'newer',
    });
    expect(await one.clear()).toBe(0);
  });
});
