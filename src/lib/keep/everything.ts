import type { JobStore, Unavailable } from './job-store';
import type { ProgressStore } from './practice/progress-store';
import type { PhotoStore } from './photos/photo-store';
import type { ResultStore } from './practice/result-store';
import { tellCleared } from './updates';

/** What this site keeps on a device: the page on privacy tells of each, and each can be deleted. */
export const parts = ['jobs', 'photos', 'results', 'given', 'settings', 'files'] as const;
export type Part = (typeof parts)[number];

/** How many of each there are; undefined where the browser does not say. */
export type Inventory = Readonly<Record<Part, number | undefined>>;

/** Where it is kept. */
export interface Places {
  /** The site's name on this device, with which its other names begin. */
  readonly name: string;
  readonly jobs: () => Promise<JobStore>;
  readonly photos: () => Promise<PhotoStore | Unavailable>;
  readonly progress: () => Promise<ProgressStore>;
  readonly given: () => Promise<ResultStore>;
  /** Whether this is the name of a setting or a note, in the browser's storage for the site and for the tab. */
  readonly settings: (key: string) => boolean;
  /** What the names of the caches begin with that hold the site. */
  readonly caches: string;
  /** Path of the pages its worker answers for; left out, any worker here is taken for its own. */
  readonly scope?: string;
}

/** Every setting and note with the storage it is in. */
const settingsIn = ({ settings }: Places) =>
  [globalThis.localStorage, globalThis.sessionStorage].flatMap((storage) =>
    Object.keys(storage)
      .filter(settings)
      .map((key) => ({ storage, key })),
  );
const cacheNames = async ({ caches: prefix }: Places): Promise<string[]> =>
  typeof caches === 'undefined'
    ? []
    : (await caches.keys()).filter((name) => name.startsWith(prefix));

/** The photos; null where the browser keeps nothing for sites, so that there are none. */
async function photosIn({ photos }: Places): Promise<PhotoStore | null> {
  const store = await photos();
  if (store === 'no-storage') return null;
  if (typeof store === 'string') throw new Error(store);
  return store;
}

const count: Readonly<Record<Part, (places: Places) => number | Promise<number | undefined>>> = {
  jobs: async ({ jobs }) => (await (await jobs()).list()).length,
  photos: async (places) => (await photosIn(places))?.count() ?? 0,
  async results({ progress }) {
    const read = await (await progress()).read();
    return read.ok ? read.value.length : undefined;
  },
  async given({ given }) {
    const { results, damaged } = await (await given()).read();
    return results.length + damaged.length;
  },
  settings: (places) => settingsIn(places).length,
  async files(places) {
    const names = await cacheNames(places);
    const files = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return files.flat().length;
  },
};

/** What there is to delete. Never throws. */
export async function inventory(places: Places): Promise<Inventory> {
  const counted = await Promise.all(
    parts.map(async (part) => {
      try {
        return [part, await count[part](places)];
      } catch {
        return [part, undefined];
      }
    }),
  );
  return Object.fromEntries(counted) as Inventory;
}

const clear: Readonly<Record<Part, (places: Places) => unknown>> = {
  jobs: async ({ jobs }) => (await jobs()).clear(),
  photos: async (places) => (await photosIn(places))?.clear(),
  async results({ progress }) {
    if ((await (await progress()).forget()) === null) throw new Error('practice stays');
  },
  async given({ given }) {
    if (!(await (await given()).clear()).ok) throw new Error('results of learners stay');
  },
  settings(places) {
    for (const { storage, key } of settingsIn(places)) storage.removeItem(key);
  },
  async files(places) {
    const { scope } = places;
    // First the worker, which would fetch what it misses.
    const workers = typeof navigator === 'undefined' ? undefined : navigator.serviceWorker;
    const worker = await workers?.getRegistration();
    // Where none is ours, the browser names that of a site above us on this host.
    if (worker && (!scope || new URL(worker.scope).pathname === scope)) await worker.unregister();
    await Promise.all((await cacheNames(places)).map((name) => caches.delete(name)));
  },
};

/**
 * Deletes everything this site keeps on this device, and tells other tabs. Never throws.
 * @returns what could not be deleted
 */
export async function deleteEverything(places: Places): Promise<readonly Part[]> {
  const left = await Promise.all(
    parts.map(async (part) => {
      try {
        await clear[part](places);
        return [];
      } catch {
        return [part];
      }
    }),
  );
  tellCleared(places.name);
  return left.flat();
}
