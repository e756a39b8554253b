import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deleteEverything, inventory, type Places } from '$lib/keep/everything';
import { openProgressStore } from '$lib/keep/practice/progress-store';
import { openResultStore } from '$lib/keep/practice/result-store';
import { openPhotoStore, type PhotoStore } from '$lib/keep/photos/photo-store';
import { openStore } from '$lib/keep/store';
import { watchCleared } from '$lib/keep/updates';

/** A browser's storage of texts by name. */
const storage = (content: Record<string, string>): Storage =>
  Object.defineProperties(content, {
    removeItem: { value: (key: string) => Reflect.deleteProperty(content, key) },
  }) as unknown as Storage;
/** A browser's caches: the addresses in each. */
const cachesOf = (content: Record<string, string[]>) => ({
  keys: async () => Object.keys(content),
  open: async (name: string) => ({ keys: async () => content[name] ?? [] }),
  delete: async (name: string) => Reflect.deleteProperty(content, name),
});

const local = storage({
  'down-to-sound.preferences': '{}',
  'down-to-sound.frost': '{}',
  other: '1',
});
const tab = storage({ 'down-to-sound.draft': '[]' });
const held: Record<string, string[]> = {
  'down-to-sound 1': ['/', '/a'],
  'down-to-sound/sub 1': ['/'],
};
const unregister = vi.fn();

let round = 0;
async function places(): Promise<Places> {
  round += 1;
  const store = await openStore({ name: `everything-${round}` });
  const progress = await openProgressStore({ name: `everything-${round}.practice` });
  const given = await openResultStore({ name: `everything-${round}.given` });
  const result = {
    set: { cases: ['bakery-dust'] },
    calls: ['grind'],
    minute: 3e7,
    mark: 1,
  } as const;
  await given.bring({ ...result, name: 'Mira' });
  const photos = (await openPhotoStore({ name: `everything-${round}.photos` })) as PhotoStore;
  await photos.add([
    { photo: { id: 'p', job: 'a', zone: 'a' } as never, picture: new Blob(['x']) },
  ]);
  await store.put('a', { name: 'a', site: {}, zones: [] }, 0);
  await progress.add({ case: 'ab', at: 5, rating: 'good' } as never);
  return {
    name: 'down-to-sound',
    jobs: async () => store,
    photos: async () => photos,
    progress: async () => progress,
    given: async () => given,
    settings: (key) => key.startsWith('down-to-sound.'),
    caches: 'down-to-sound ',
  };
}
beforeEach(() => {
  vi.stubGlobal('localStorage', local);
  vi.stubGlobal('sessionStorage', tab);
  vi.stubGlobal('caches', cachesOf(held));
  vi.stubGlobal('navigator', { serviceWorker: { getRegistration: async () => ({ unregister }) } });
});
afterEach(() => vi.unstubAllGlobals());

describe('everything on the device', () => {
  it('is counted, says what could not go, and goes: jobs, photos, practice, what learners gave back, settings, the copy of the site', async () => {
    const all = await places();
    const one = { jobs: 1, photos: 1, results: 1, given: 1 };
    expect(await inventory(all)).toEqual({ ...one, settings: 3, files: 2 });

    const failing = async () => {
      throw new Error('the device does not answer');
    };
    const broken = {
      ...all,
      jobs: failing,
      progress: failing,
      given: failing,
      photos: async () => 'refused' as const,
    };
    expect(await inventory(broken)).toMatchObject({
      jobs: undefined,
      photos: undefined,
      results: undefined,
      given: undefined,
      files: 2,
    });

    const heard = vi.fn();
    const stop = watchCleared('down-to-sound', heard);
    expect(await deleteEverything(broken)).toEqual(['jobs', 'photos', 'results', 'given']);
    expect(await inventory(all)).toEqual({ ...one, settings: 0, files: 0 });
    expect(await deleteEverything(all)).toEqual([]);
    expect(await inventory(all)).toEqual({
      jobs: 0,
      photos: 0,
      results: 0,
      given: 0,
      settings: 0,
      files: 0,
    });
    // Where the browser keeps nothing for sites, there are no photos that could stay.
    const nowhere = { ...all, photos: async () => 'no-storage' as const };
    expect([(await inventory(nowhere)).photos, await deleteEverything(nowhere)]).toEqual([0, []]);
    await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(3));
    stop();
    // This tab knows that it did so itself; a tab with a page of its own hears that it was another.
    expect(heard.mock.calls).toEqual([[true], [true], [true]]);
    vi.resetModules();
    const other = await import('$lib/keep/updates');
    const elsewhere = vi.fn();
    const stopOther = other.watchCleared('down-to-sound', elsewhere);
    await deleteEverything(nowhere);
    await vi.waitFor(() => expect(elsewhere).toHaveBeenCalledExactlyOnceWith(false));
    stopOther();
    // Another site's own, and this site's at another path, stay.
    expect([Object.keys(local), Object.keys(held)]).toEqual([['other'], ['down-to-sound/sub 1']]);
    expect(unregister).toHaveBeenCalled();
  });

  it('counts what cannot be read as well, where it can be deleted', async () => {
    const all = await places();
    const damaged = { results: [], damaged: [{ key: 'x' }] };
    const given = { ...(await all.given()), read: async () => damaged } as never;
    const soup = { ok: false, problem: {} };
    const progress = { ...(await all.progress()), read: async () => soup } as never;
    expect(
      await inventory({ ...all, given: async () => given, progress: async () => progress }),
    ).toMatchObject({ given: 1, results: undefined });
  });

  it('says that practice and results stay where the device refuses to delete them', async () => {
    const all = await places();
    const progress = { forget: async () => null } as never;
    const given = { clear: async () => ({ ok: false, why: 'unavailable' }) } as never;
    expect(
      await deleteEverything({ ...all, progress: async () => progress, given: async () => given }),
    ).toEqual(['results', 'given']);
  });

  it('takes away the worker of this site alone', async () => {
    const all = await places();
    const worker = { unregister: vi.fn(), scope: 'https://host.test/below/' };
    const workers = { getRegistration: async (): Promise<unknown> => worker };
    vi.stubGlobal('navigator', { serviceWorker: workers });
    await deleteEverything({ ...all, scope: '/' });
    expect(worker.unregister).not.toHaveBeenCalled();
    await deleteEverything({ ...all, scope: '/below/' });
    expect(worker.unregister).toHaveBeenCalledOnce();
    workers.getRegistration = async () => undefined;
    expect(await deleteEverything({ ...all, scope: '/' })).toEqual([]);
  });

  it('is deleted as well where the browser has no worker and no copy of the site', async () => {
    const all = await places();
    vi.stubGlobal('caches', undefined);
    for (const navigator of [{}, undefined]) {
      vi.stubGlobal('navigator', navigator);
      expect(await deleteEverything(all)).toEqual([]);
    }
    expect((await inventory(all)).files).toBe(0);
  });

  it('is told to the other tabs also where something stays', async () => {
    const heard = vi.fn();
    const stop = watchCleared('down-to-sound', heard);
    const failing = async () => {
      throw new Error('the device does not answer');
    };
    await deleteEverything({ ...(await places()), jobs: failing });
    await vi.waitFor(() => expect(heard).toHaveBeenCalledOnce());
    stop();
  });
});
