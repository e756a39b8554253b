import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Unavailable } from './job-store';

/**
 * Opens something in the browser's storage, or says why it cannot be had.
 * Never throws, and never waits longer than `patience` milliseconds.
 * @param open gets what to call when another tab stands in the way
 */
export async function openPatiently<T>(
  open: (blocked: () => void) => Promise<T>,
  patience: number,
): Promise<T | Unavailable> {
  try {
    // Where storage is forbidden even asking for it can throw.
    if (typeof indexedDB === 'undefined' || indexedDB === null) return 'no-storage';
    return await new Promise((resolve, reject) => {
      const timer = setTimeout(() => resolve('slow'), patience);
      open(() => resolve('blocked'))
        .then(resolve, reject)
        .finally(() => clearTimeout(timer));
    });
  } catch {
    return 'refused';
  }
}

/** What a failed write means to the reader. */
export const whyNot = (error: unknown): 'quota' | 'unavailable' =>
  (error as Error).name === 'QuotaExceededError' ? 'quota' : 'unavailable';

/** How a store of its own is opened; for tests also how long it waits, ms. */
export interface OpenOptions {
  readonly name?: string;
  readonly patience?: number;
}

/**
 * Opens a database of one version, or says why it cannot be had. Never throws.
 * @param name what it is called on the device where the options do not say
 * @param upgrade makes its stores when it is new
 */
export function openOwn<Schema extends DBSchema>(
  name: string,
  upgrade: (database: IDBPDatabase<Schema>) => void,
  options: OpenOptions,
): Promise<IDBPDatabase<Schema> | Unavailable> {
  const open = (blocked: () => void) =>
    openDB<Schema>(options.name ?? name, 1, {
      upgrade,
      blocked,
      // A later version of the site in another tab asks for the storage, or it is deleted: let go.
      blocking: (_current, _next, event) => (event.target as IDBDatabase).close(),
    });
  return openPatiently(open, options.patience ?? 4000);
}
