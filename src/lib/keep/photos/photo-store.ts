import type { DBSchema, IDBPDatabase } from 'idb';
import { bounds } from '$lib/keep/bounds';
import type { Unavailable } from '$lib/keep/job-store';
import { openOwn, whyNot, type OpenOptions } from '$lib/keep/patience';
import { inOrder, type Photo, type WholePhoto } from '$lib/answers/photo';

/** What became of a write. `full`: the zone has as many photos as it takes. `gone`: it is not there. */
export type PhotoPut =
  | { readonly ok: true }
  | { readonly ok: false; readonly why: 'quota' | 'unavailable' | 'full' | 'gone' };

/** The photos on this device. Reads and deletions reject when the device fails; other writes say it. */
export interface PhotoStore {
  /** Those of a job, or of one zone of it, in their order. */
  of(job: string, zone?: string): Promise<readonly Photo[]>;
  picture(id: string): Promise<Blob | undefined>;
  /** Adds photos, all or none of them. */
  add(photos: readonly WholePhoto[]): Promise<PhotoPut>;
  /** Writes over photos that are there; their pictures stay. */
  change(photos: readonly Photo[]): Promise<PhotoPut>;
  /** Deletes and gives back what is deleted, for `add`. */
  remove(ids: readonly string[]): Promise<readonly WholePhoto[]>;
  /** Ids of the jobs that have photos. */
  jobs(): Promise<readonly string[]>;
  count(): Promise<number>;
  clear(): Promise<void>;
  /** Calls back when another tab has changed something. Returns the way to stop. */
  onChange(listener: () => void): () => void;
  close(): void;
}

interface Schema extends DBSchema {
  photos: { key: string; value: Photo; indexes: { job: string } };
  pictures: { key: string; value: Blob };
}
type Database = IDBPDatabase<Schema>;
const both = ['photos', 'pictures'] as const;

/** What the photos are called on the device, at the root of a host. */
export const photosName = 'down-to-sound.photos';

/** Opens the photos on this device, or says why they cannot be had. Never throws. */
export async function openPhotoStore(options: OpenOptions = {}): Promise<PhotoStore | Unavailable> {
  const upgrade = (database: Database) => {
    database.createObjectStore('photos', { keyPath: 'id' }).createIndex('job', 'job');
    database.createObjectStore('pictures');
  };
  const opened = await openOwn<Schema>(photosName, upgrade, options);
  return typeof opened === 'string' ? opened : photoStore(options.name ?? photosName, opened);
}

function photoStore(name: string, database: Database): PhotoStore {
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  const tell = () => channel?.postMessage('changed');

  function begin() {
    const transaction = database.transaction(both, 'readwrite', { durability: 'strict' });
    // Awaited at the end; until then a failure must not count as unhandled.
    transaction.done.catch(() => undefined);
    return {
      transaction,
      photos: transaction.objectStore('photos'),
      pictures: transaction.objectStore('pictures'),
    };
  }
  type Begun = ReturnType<typeof begin>;

  /** One transaction, whole or not at all. */
  async function write(step: (begun: Begun) => Promise<PhotoPut>): Promise<PhotoPut> {
    let begun: Begun | undefined;
    try {
      begun = begin();
      const result = await step(begun);
      if (result.ok) {
        await begun.transaction.done;
        tell();
      } else begun.transaction.abort();
      return result;
    } catch (error) {
      // What was put before it must not stay without its picture.
      try {
        begun?.transaction.abort();
      } catch {
        // It has ended by itself.
      }
      return { ok: false, why: whyNot(error) };
    }
  }

  return {
    async of(job, zone) {
      const found = await database.getAllFromIndex('photos', 'job', job);
      return inOrder(found.filter((photo) => zone === undefined || photo.zone === zone));
    },
    picture: (id) => database.get('pictures', id),
    add: (added) =>
      write(async ({ photos, pictures }) => {
        for (const { photo, picture } of added) {
          const there = await photos.index('job').getAll(photo.job);
          const others = there.filter(({ id, zone }) => zone === photo.zone && id !== photo.id);
          if (others.length >= bounds.photosInZone) return { ok: false, why: 'full' };
          await pictures.put(picture, photo.id);
          await photos.put(photo);
        }
        return { ok: true };
      }),
    change: (changed) =>
      write(async ({ photos }) => {
        for (const photo of changed) {
          if ((await photos.getKey(photo.id)) === undefined) return { ok: false, why: 'gone' };
          await photos.put(photo);
        }
        return { ok: true };
      }),
    async remove(ids) {
      const { transaction, photos, pictures } = begin();
      const removed: WholePhoto[] = [];
      for (const id of ids) {
        const [photo, picture] = await Promise.all([photos.get(id), pictures.get(id)]);
        if (photo && picture) removed.push({ photo, picture });
        await Promise.all([photos.delete(id), pictures.delete(id)]);
      }
      await transaction.done;
      tell();
      return removed;
    },
    async jobs() {
      return [...new Set((await database.getAll('photos')).map(({ job }) => job))];
    },
    count: () => database.count('photos'),
    async clear() {
      const { transaction, photos, pictures } = begin();
      await Promise.all([photos.clear(), pictures.clear(), transaction.done]);
      tell();
    },
    onChange(listener) {
      channel?.addEventListener('message', listener);
      return () => channel?.removeEventListener('message', listener);
    },
    close() {
      channel?.close();
      database.close();
    },
  };
}
