import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { openPatiently } from './patience';
import {
  asRecord,
  nextRecord,
  readRecord,
  recordOf,
  summaryOf,
  unreadable,
  type JobRecord,
} from './record';
import type { JobStore, PutResult, StoredJob, StoreEvent, Unavailable } from './job-store';

interface Schema extends DBSchema {
  jobs: { key: string; value: JobRecord };
}
type Database = IDBPDatabase<Schema>;

const schemaVersion = 1;

/** What a failed write means to the reader. */
const failure = (error: unknown): PutResult => ({
  ok: false,
  why: error instanceof Error && error.name === 'QuotaExceededError' ? 'quota' : 'unavailable',
});

function openDatabase(name: string, blocked: () => void): Promise<Database> {
  return openDB<Schema>(name, schemaVersion, {
    upgrade(database) {
      database.createObjectStore('jobs', { keyPath: 'id' });
    },
    blocked,
    // A later version of the site in another tab asks for the storage: let go of it.
    blocking: (_current, _next, event) => (event.target as IDBDatabase).close(),
  });
}

/** The jobs on this device, or why they cannot be had. Never throws. */
export async function openDeviceStore(
  name: string,
  patience: number,
): Promise<JobStore | Unavailable> {
  const opened = await openPatiently((blocked) => openDatabase(name, blocked), patience);
  return typeof opened === 'string' ? opened : deviceStore(name, opened);
}

function deviceStore(name: string, first: Database): JobStore {
  let database: Promise<Database> = Promise.resolve(first);
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  const tell = (event: StoreEvent) => channel?.postMessage(event);

  /** One step on the database; when the connection was lost it is opened again, once. */
  async function using<T>(step: (database: Database) => Promise<T>): Promise<T> {
    try {
      return await step(await database);
    } catch (error) {
      if (!(error instanceof Error) || error.name !== 'InvalidStateError') throw error;
      database = openDatabase(name, () => undefined);
      return step(await database);
    }
  }

  const read = (record: JobRecord): StoredJob | undefined => {
    const result = readRecord(record);
    return result.ok ? result.value : undefined;
  };

  /**
   * Looks at what is there and writes in one transaction, so no other tab can come between.
   * `next` gives the record to write, or nothing when the write must not be.
   */
  async function write(
    id: string,
    next: (there: JobRecord | undefined) => JobRecord | undefined,
  ): Promise<PutResult> {
    try {
      return await using(async (open) => {
        const transaction = open.transaction('jobs', 'readwrite', { durability: 'strict' });
        // Awaited below; until then a failure must not count as unhandled.
        transaction.done.catch(() => undefined);
        const raw = await transaction.store.get(id);
        const there = raw === undefined ? undefined : asRecord(id, raw);
        const record = next(there);
        if (!record) {
          await transaction.done;
          const stored = there && read(there);
          return { ok: false, why: 'newer', ...(stored && { stored }) };
        }
        await Promise.all([transaction.store.put(record), transaction.done]);
        tell({ kind: 'put', id, revision: record.revision });
        return { ok: true, revision: record.revision };
      });
    } catch (error) {
      return failure(error);
    }
  }

  return {
    kind: 'device',
    async list() {
      const all = await using((open) => open.getAll('jobs'));
      return all
        .map((raw) => summaryOf(asRecord(String(raw.id), raw)))
        .sort((one, other) => other.changedAt - one.changedAt);
    },
    async get(id) {
      const raw = await using((open) => open.get('jobs', id));
      return raw && read(asRecord(id, raw));
    },
    async put(id, job, revision) {
      const problem = unreadable(job);
      if (problem) return { ok: false, why: 'invalid', problem };
      return write(id, (there) =>
        (there?.revision ?? 0) === revision ? nextRecord(id, job, Date.now(), there) : undefined,
      );
    },
    async remove(id) {
      const there = await using(async (open) => {
        const transaction = open.transaction('jobs', 'readwrite', { durability: 'strict' });
        transaction.done.catch(() => undefined);
        const raw = await transaction.store.get(id);
        await Promise.all([transaction.store.delete(id), transaction.done]);
        return raw;
      });
      tell({ kind: 'remove', id });
      return there && read(asRecord(id, there));
    },
    restore: (stored) => write(stored.id, (there) => (there ? undefined : recordOf(stored))),
    async raw(id) {
      const raw = await using((open) => open.get('jobs', id));
      return raw && JSON.stringify(raw.file ?? raw, null, 2);
    },
    onChange(listener) {
      const heard = ({ data }: MessageEvent<StoreEvent>) => listener(data);
      channel?.addEventListener('message', heard);
      return () => channel?.removeEventListener('message', heard);
    },
    close() {
      channel?.close();
      void database.then((open) => open.close());
    },
  };
}
