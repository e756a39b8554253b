import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { newJobId, type JobStore, type StoreEvent } from '$lib/keep/job-store';
import { openStore } from '$lib/keep/store';
import { anyJob } from '../helpers/any-job';
import { rounds } from '../helpers/rounds';

const job = (name: string): Job => ({ name, site: {}, zones: [] });
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
/** Saves a new job and gives its revision. */
async function saved(store: JobStore, id: string, what: Job): Promise<number> {
  const result = await store.put(id, what, 0);
  if (!result.ok) throw new Error(result.why);
  return result.revision;
}
const real = globalThis.indexedDB;

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  globalThis.indexedDB = real;
  for (const store of opened.splice(0)) store.close();
});

describe('jobs on the device', () => {
  it('saves, lists, changes, copies and deletes with undo', async () => {
    const store = await tab('whole-life');
    expect(store.kind).toBe('device');
    const first = await saved(store, 'a', job('Driveway'));
    expect(await store.put('a', job('Driveway, again'), first)).toEqual({
      ok: true,
      revision: first + 1,
    });
    await store.put('b', job('Steps'), 0);
    expect((await store.list()).map(({ name }) => name).sort()).toEqual([
      'Driveway, again',
      'Steps',
    ]);
    const removed = await store.remove('a');
    expect(await store.get('a')).toBeUndefined();
    if (!removed) throw new Error('nothing was removed');
    expect(await store.restore(removed)).toEqual({ ok: true, revision: first + 1 });
    expect(await store.get('a')).toEqual(removed);
    expect(await store.put('a', job('and on'), first + 1)).toMatchObject({ ok: true });
    expect((await store.get('a'))?.createdAt).toBe(removed.createdAt);
  });

  it('gives back exactly what was saved, whatever the job', async () => {
    const store = await tab('exact');
    await fc.assert(
      fc.asyncProperty(anyJob(), async (any) => {
        const id = newJobId();
        await store.put(id, any, 0);
        expect((await store.get(id))?.job).toEqual(any);
      }),
    );
  });

  it('never lets one tab overwrite another unseen', async () => {
    const [one, other] = [await tab('two'), await tab('two')];
    const first = await saved(one, 'a', job('first'));
    const results = await Promise.all([
      one.put('a', job('one'), first),
      other.put('a', job('other'), first),
    ]);
    const [kept] = results.filter(({ ok }) => ok);
    const [refused] = results.filter(({ ok }) => !ok);
    expect(kept).toEqual({ ok: true, revision: first + 1 });
    expect(refused).toMatchObject({ why: 'newer', stored: { revision: first + 1 } });
    expect(refused).toHaveProperty('stored', await one.get('a'));
    expect(await other.put('b', job('new'), 7)).toEqual({ ok: false, why: 'newer' });
    await one.remove('a');
    expect(await other.put('a', job('late'), first + 1)).toEqual({ ok: false, why: 'newer' });
    await saved(one, 'a', job('anew'));
    expect(await other.put('a', job('late'), first + 1)).toMatchObject({
      stored: { job: { name: 'anew' } },
    });
  });

  it('refuses to write what it could not read back', async () => {
    const store = await tab('unreadable');
    expect(await store.put('a', job('turned \u202e round'), 0)).toMatchObject({
      why: 'invalid',
      problem: { path: 'site.name' },
    });
    expect(await store.list()).toEqual([]);
  });

  it('loses nothing said to be saved, whichever way two tabs take turns', async () => {
    let round = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(1), fc.nat(2)), { maxLength: 25 }),
        async (turns) => {
          const name = `turns-${(round += 1)}`;
          const tabs = [await tab(name), await tab(name)] as const;
          const seen = [0, 0];
          const written = new Map<number, string>();
          await Promise.all(
            turns.map(async ([who, kind], turn) => {
              const store = tabs[who as 0 | 1];
              if (kind === 0) seen[who] = (await store.get('a'))?.revision ?? 0;
              const result = await store.put('a', job(`${turn}`), seen[who] ?? 0);
              if (result.ok) {
                written.set(result.revision, `${turn}`);
                seen[who] = result.revision;
              }
            }),
          );
          const last = await tabs[0].get('a');
          const revisions = [...written.keys()].sort((a, b) => a - b);
          expect(last?.revision).toBe(revisions.at(-1));
          expect(last?.job.name).toBe(written.get(last?.revision ?? 0));
          // Every write that was acknowledged followed the one before it, none was skipped.
          expect(revisions).toEqual(revisions.map((_, index) => (revisions[0] ?? 0) + index));
        },
      ),
      { numRuns: rounds(15, 60) },
    );
  });

  it('tells other tabs what changed, and not itself', async () => {
    const [one, other] = [await tab('hearing'), await tab('hearing')];
    const heard: StoreEvent[] = [];
    const own: StoreEvent[] = [];
    const stop = other.onChange((event) => heard.push(event));
    one.onChange((event) => own.push(event));
    const revision = await saved(one, 'a', job('x'));
    await one.remove('a');
    await vi.waitFor(() => expect(heard).toHaveLength(2));
    expect(heard).toEqual([
      { kind: 'put', id: 'a', revision },
      { kind: 'remove', id: 'a' },
    ]);
    stop();
    await one.put('b', job('y'), 0);
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect([heard.length, own.length]).toEqual([2, 0]);
  });
});

describe('when the device fails', () => {
  /** Makes the next writes fail the way a browser does. */
  const failing = (error: Error) =>
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw error;
    });

  it('says that the device is full, keeps what was there, and goes on after', async () => {
    const store = await tab('full');
    const first = await saved(store, 'a', job('before'));
    failing(new DOMException('full', 'QuotaExceededError'));
    expect(await store.put('a', job('lost'), first)).toEqual({ ok: false, why: 'quota' });
    expect((await store.get('a'))?.job.name).toBe('before');
    vi.restoreAllMocks();
    expect(await store.put('a', job('after'), first)).toEqual({ ok: true, revision: first + 1 });
  });

  it('says it when the transaction ends badly after the write was taken', async () => {
    const store = await tab('abort');
    const first = await saved(store, 'a', job('before'));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = put.apply(this, args);
      request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
    expect(await store.put('a', job('lost'), first)).toEqual({ ok: false, why: 'unavailable' });
    vi.restoreAllMocks();
    expect(await store.get('a')).toMatchObject({ revision: first, job: { name: 'before' } });
  });

  it('opens the storage again when the browser closed it', async () => {
    const store = await tab('reopened');
    const first = await saved(store, 'a', job('before'));
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('closing', 'InvalidStateError');
    });
    expect(await store.put('a', job('after'), first)).toEqual({ ok: true, revision: first + 1 });
  });

  it('works on in memory by the same rules, and says why', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const none = await openStore();
    expect([none.kind, none.why]).toEqual(['memory', 'no-storage']);
    const revision = await saved(none, 'a', job('x'));
    expect(await none.put('a', job('y'), 0)).toMatchObject({
      why: 'newer',
      stored: { revision },
    });
    const removed = await none.remove('a');
    expect(removed?.job.name).toBe('x');
    expect(removed && (await none.restore(removed))).toEqual({ ok: true, revision });
    expect(await none.list()).toMatchObject([{ id: 'a', name: 'x', revision }]);

    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('private', 'SecurityError');
      },
    });
    expect((await openStore()).why).toBe('refused');
    const silent = Object.create(IDBOpenDBRequest.prototype, {
      addEventListener: { value: () => undefined },
    }) as IDBOpenDBRequest;
    vi.stubGlobal('indexedDB', { open: () => silent });
    expect((await openStore({ patience: 20 })).why).toBe('slow');
  });

  it('lists a damaged record as damaged, hands it out raw, and lets it be deleted', async () => {
    const store = await tab('damaged');
    await store.put('good', job('good'), 0);
    await tamper('damaged', {
      id: 'bad',
      file: { format: 'down-to-sound.job', version: 1 },
      changedAt: 'x',
    });
    await tamper('damaged', { id: 'worse' });
    const list = await store.list();
    expect(list.map(({ id, damaged }) => [id, damaged?.path])).toEqual(
      expect.arrayContaining([
        ['good', undefined],
        ['bad', 'site'],
        ['worse', ''],
      ]),
    );
    expect(await store.get('bad')).toBeUndefined();
    expect(await store.raw('bad')).toContain('down-to-sound.job');
    expect(await store.put('bad', job('over it'), 5)).toMatchObject({ ok: false, why: 'newer' });
    await store.remove('bad');
    expect((await store.list()).map(({ id }) => id)).not.toContain('bad');
  });
});
