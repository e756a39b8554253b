import type { DBSchema, IDBPDatabase } from 'idb';
import { merged, withResult, type Progress, type Result } from '$lib/practice/progress';
import { openOwn, whyNot, type OpenOptions } from '$lib/keep/patience';
import type { Checked } from '$lib/keep/problem';
import type { Unavailable } from '$lib/keep/job-store';
import { parseProgress, writeProgress } from './progress-file';

/** What became of a write. Whatever it is, the results stay in the tab. */
export type Written =
  | { readonly ok: true; readonly progress: Progress }
  /** `damaged`: what is there cannot be read, and is left as it is. */
  | { readonly ok: false; readonly why: 'quota' | 'unavailable' | 'damaged' };

/** What a learner practised, on this device. Writes say in their result how they went; none throws. */
export interface ProgressStore {
  /** `memory` holds results in this tab only; `why` then says what is the matter. */
  readonly kind: 'device' | 'memory';
  readonly why?: Unavailable;
  /** All results; none where nothing is kept. Rejects when the device fails. */
  read(): Promise<Checked<Progress>>;
  /** Adds a result to those there, also to what another tab has added since. */
  add(result: Result): Promise<Written>;
  /** Adds all results that are not there yet. */
  merge(progress: Progress): Promise<Written>;
  /** Forgets all results and gives back what they were, for `merge`. Clears a damaged record too. */
  forget(): Promise<Progress | null>;
  /** What is kept, as text, whatever it is: the way out for a damaged record. */
  raw(): Promise<string | undefined>;
  close(): void;
}

interface Schema extends DBSchema {
  progress: { key: string; value: unknown };
}
const key = 'mine';

/** What practice results are called on the device, at the root of a host. */
export const progressName = 'down-to-sound.practice';

/** Opens what is kept on this device; when that cannot be had, a store in memory that says why. Never throws. */
export async function openProgressStore(options: OpenOptions = {}): Promise<ProgressStore> {
  const opened = await openOwn<Schema>(
    progressName,
    (database) => void database.createObjectStore('progress'),
    options,
  );
  return typeof opened === 'string' ? memoryProgress(opened) : deviceProgress(opened);
}

function deviceProgress(database: IDBPDatabase<Schema>): ProgressStore {
  /** Reads and writes in one transaction, so that no other tab comes between. */
  async function change(next: (there: Progress) => Progress): Promise<Written> {
    try {
      const transaction = database.transaction('progress', 'readwrite', { durability: 'strict' });
      // Awaited below; until then a failure must not count as unhandled.
      transaction.done.catch(() => undefined);
      const raw = await transaction.store.get(key);
      const there: Checked<Progress> =
        raw === undefined ? { ok: true, value: [] } : parseProgress(raw);
      if (!there.ok) {
        await transaction.done;
        return { ok: false, why: 'damaged' };
      }
      const progress = next(there.value);
      await Promise.all([transaction.store.put(writeProgress(progress), key), transaction.done]);
      return { ok: true, progress };
    } catch (error) {
      return { ok: false, why: whyNot(error) };
    }
  }
  return {
    kind: 'device',
    async read() {
      const raw = await database.get('progress', key);
      return raw === undefined ? { ok: true, value: [] } : parseProgress(raw);
    },
    add: (result) => change((there) => withResult(there, result)),
    merge: (progress) => change((there) => merged(there, progress)),
    async forget() {
      try {
        const transaction = database.transaction('progress', 'readwrite', {
          durability: 'strict',
        });
        transaction.done.catch(() => undefined);
        const raw = await transaction.store.get(key);
        await Promise.all([transaction.store.delete(key), transaction.done]);
        const there = parseProgress(raw);
        return there.ok ? there.value : [];
      } catch {
        return null;
      }
    },
    async raw() {
      // Of nothing there is no text.
      return JSON.stringify(await database.get('progress', key), null, 1) as string | undefined;
    },
    close: () => database.close(),
  };
}

/** Results held in this tab only; they are gone when it is closed. */
export function memoryProgress(why: Unavailable): ProgressStore {
  let there: Progress = [];
  const written = (progress: Progress): Written => ({ ok: true, progress: (there = progress) });
  return {
    kind: 'memory',
    why,
    read: async () => ({ ok: true, value: there }),
    add: async (result) => written(withResult(there, result)),
    merge: async (progress) => written(merged(there, progress)),
    async forget() {
      const before = there;
      there = [];
      return before;
    },
    raw: async () => JSON.stringify(writeProgress(there), null, 1),
    close: () => undefined,
  };
}
