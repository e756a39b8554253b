import 'fake-indexeddb/auto';
import { deleteDB, openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { JobStore, StoreEvent } from '$lib/keep/job-store';
import { openPhotoStore, photosName, type PhotoStore } from '$lib/keep/photos/photo-store';
import { openProgressStore, progressName } from '$lib/keep/practice/progress-store';
import { openResultStore, resultsName } from '$lib/keep/practice/result-store';
import { jobsName, openStore } from '$lib/keep/store';

const job = (name: string): Job => ({ name, site: {}, zones: [] });
const result = { set: { cases: ['bakery-dust'] }, calls: ['grind'], minute: 3e7, mark: 1 } as const;
const photo = { photo: { id: 'p', job: 'a', zone: 'a' } as never, picture: new Blob(['x']) };
const opened: { close(): void }[] = [];
const kept = <S extends { close(): void }>(store: S): S => {
  opened.push(store);
  return store;
};
const tab = async (name: string): Promise<JobStore> => kept(await openStore({ name }));
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.useRealTimers();
  for (const store of opened.splice(0)) store.close();
});

describe('what is kept on the device', () => {
  it('stands under the names it always had: under others nothing would be found again', async () => {
    const stores = [
      await openStore(),
      (await openPhotoStore()) as PhotoStore,
      await openProgressStore(),
      await openResultStore(),
    ];
    const there = (await indexedDB.databases()).map(({ name }) => name);
    for (const store of stores) store.close();
    const names = [
      'down-to-sound',
      'down-to-sound.photos',
      'down-to-sound.practice',
      'down-to-sound.given',
    ];
    expect(there).toEqual(expect.arrayContaining(names));
    expect([jobsName, photosName, progressName, resultsName]).toEqual(names);
    for (const name of names) await deleteDB(name);
  });

  it('is written through to the device before it counts as saved', async () => {
    const jobs = await tab('through');
    const photos = kept((await openPhotoStore({ name: 'through.photos' })) as PhotoStore);
    const progress = kept(await openProgressStore({ name: 'through.practice' }));
    const given = kept(await openResultStore({ name: 'through.given' }));
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const put = await jobs.put('a', job('Ramp'), 0);
    await jobs.remove('a');
    await jobs.restore({ ...put, id: 'a', job: job('Ramp'), createdAt: 1, changedAt: 1 } as never);
    await jobs.clear();
    await photos.add([photo]);
    await photos.remove(['p']);
    await photos.clear();
    await progress.add({ case: 'bakery-dust', at: 5, rating: 'good' });
    await progress.forget();
    await given.bring({ ...result, name: 'Mira' });
    await given.clear();
    const writes = begun.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.map(([, , options]) => options?.durability)).toEqual(
      Array.from({ length: 11 }, () => 'strict'),
    );
  });

  it('is let go of when the page closes it', async () => {
    const [bases, channels] = [IDBDatabase.prototype, BroadcastChannel.prototype].map((each) =>
      vi.spyOn(each, 'close'),
    );
    for (const store of [
      await openStore({ name: 'closed' }),
      (await openPhotoStore({ name: 'closed.photos' })) as PhotoStore,
      await openProgressStore({ name: 'closed.practice' }),
      await openResultStore({ name: 'closed.given' }),
    ])
      store.close();
    await vi.waitFor(() => expect(bases).toHaveBeenCalledTimes(4));
    expect(channels).toHaveBeenCalledTimes(2);
  });

  it('is had as well where tabs cannot hear each other', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const jobs = await openStore({ name: 'alone' });
    const photos = (await openPhotoStore({ name: 'alone.photos' })) as PhotoStore;
    const stops = [jobs.onChange(() => undefined), photos.onChange(() => undefined)];
    expect(await jobs.put('a', job('Ramp'), 0)).toMatchObject({ ok: true });
    expect(await jobs.remove('a')).toMatchObject({ job: job('Ramp') });
    expect(await photos.add([photo])).toEqual({ ok: true });
    for (const stop of stops) stop();
    jobs.close();
    photos.close();
  });
});

describe('jobs on the device', () => {
  it('are listed with the last changed first', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    const store = await tab('order');
    const changed: [string, number][] = [
      ['a', 20],
      ['b', 30],
      ['c', 10],
    ];
    for (const [id, at] of changed) {
      vi.setSystemTime(at);
      await store.put(id, job(id), 0);
    }
    expect((await store.list()).map(({ id }) => id)).toEqual(['b', 'a', 'c']);
  });

  it('are taken away as the file they are, or as whatever stands there', async () => {
    const store = await tab('raw');
    await store.put('a', job('Ramp'), 0);
    const database = await openDB('raw', 1);
    await database.put('jobs', { id: 'b', soup: 1 });
    await database.put('jobs', { id: 7, soup: 2 });
    database.close();
    expect(JSON.parse((await store.raw('a')) ?? '')).toMatchObject({
      format: 'down-to-sound.job',
      site: { name: 'Ramp' },
    });
    expect(JSON.parse((await store.raw('b')) ?? '')).toEqual({ id: 'b', soup: 1 });
    expect(await store.raw('c')).toBeUndefined();
    // A key that is no text has one of its own, by which it is found again.
    const ids = (await store.list()).map(({ id }) => id);
    expect(ids.sort()).toEqual(['a', 'b', 'number 7']);
    expect(JSON.parse((await store.raw('number 7')) ?? '')).toEqual({ id: 7, soup: 2 });
  });

  it('that could not be read back are told as not saved', async () => {
    const store = await tab('invalid');
    const put = await store.put('a', job('turned \u202e round'), 0);
    expect([put.ok, 'why' in put && put.why]).toEqual([false, 'invalid']);
  });

  it('make way for a later version of the site, which takes nothing away', async () => {
    const store = await tab('later-version');
    const heard: StoreEvent[] = [];
    store.onChange((event) => heard.push(event));
    await store.put('a', job('Ramp'), 0);
    const later = await openDB('later-version', 2);
    expect(await later.get('jobs', 'a')).toMatchObject({ id: 'a' });
    later.close();
    await expect(store.list()).rejects.toThrow();
    expect(await store.put('b', job('Kerb'), 0)).toEqual({ ok: false, why: 'unavailable' });
    expect(heard).toEqual([]);
  });

  it('are asked for once where the device fails for another reason than a lost connection', async () => {
    const store = await tab('asked-once');
    const open = vi.spyOn(indexedDB, 'open');
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(() => {
      throw new DOMException('broken', 'UnknownError');
    });
    await expect(store.get('a')).rejects.toThrow('broken');
    expect(open).not.toHaveBeenCalled();
  });

  it('are had again when the storage, once lost, opens at a later try', async () => {
    const store = await tab('second-try');
    await store.put('a', job('Ramp'), 0);
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('closing', 'InvalidStateError');
    });
    const refused = Object.create(IDBOpenDBRequest.prototype, {
      error: { value: new DOMException('not now', 'UnknownError') },
      addEventListener: {
        value: (kind: string, hears: () => void) => kind === 'error' && queueMicrotask(hears),
      },
      removeEventListener: { value: () => undefined },
    }) as IDBOpenDBRequest;
    vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => refused);
    await expect(store.list()).rejects.toThrow('not now');
    expect(await store.list()).toMatchObject([{ id: 'a', name: 'Ramp' }]);
  });
});
