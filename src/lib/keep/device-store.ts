import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { openPatiently, whyNot } from './patience';
import {
  asRecord,
  nextRecord,
  readRecord,
  recordOf,
  summaryOf,
  textOf,
  unreadable,
  type JobRecord,
} from './record';
import type { JobStore, PutResult, StoredJob, StoreEvent, Unavailable } from './job-store';

interface Schema extends DBSchema {
  jobs: { key: string; value: JobRecord };
}
type Database = IDBPDatabase<Schema>;

const schemaVersion = 1;

const closed = () => new DOMException('not open', 'InvalidStateError');

/** A key as text. The site's own keys are texts; what else stands there is told apart from them. */
const idOf = (key: IDBValidKey): string =>
  typeof key === 'string' ? key : `${typeof key} ${String(key)}`;

/** The key whose text this is. */
const keyOf = async (open: Database, id: string): Promise<string> =>
  (await open.getAllKeys('jobs')).find((key) => idOf(key) === id) ?? id;

/** Every record; one that the browser does not give back is there without its content. */
async function everyRecord(open: Database): Promise<{ key: IDBValidKey; raw: unknown }[]> {
  const all = await open.getAll('jobs').catch((error: Error) => {
    if (error.name === 'InvalidStateError') throw error;
    return undefined;
  });
  if (all) return all.map((raw) => ({ key: raw.id, raw }));
  const one = async (key: string) => ({
    key,
    raw: await open.get('jobs', key).catch(() => undefined),
  });
  return Promise.all((await open.getAllKeys('jobs')).map(one));
}

/** @param lost called when the storage is taken away: deleted from outside, or closed by the browser */
function openDatabase(name: string, blocked: () => void, lost: () => void): Promise<Database> {
  return openDB<Schema>(name, schemaVersion, {
    upgrade(database) {
      database.createObjectStore('jobs', { keyPath: 'id' });
    },
    blocked,
    // A later version of the site in another tab asks for the storage, or it is deleted: let go of it.
    blocking: (_current, next, event) => {
      (event.target as IDBDatabase).close();
      if (next === null) lost();
    },
    terminated: lost,
  });
}

/** The jobs on this device, or why they cannot be had. Never throws. */
export async function openDeviceStore(
  name: string,
  patience: number,
): Promise<JobStore | Unavailable> {
  let lost = () => {};
  const open = (blocked: () => void) => openDatabase(name, blocked, () => lost());
  const opened = await openPatiently(open, patience);
  if (typeof opened === 'string') return opened;
  return deviceStore(name, opened, open, (listener) => (lost = listener));
}

function deviceStore(
  name: string,
  first: Database,
  open: (blocked: () => void) => Promise<Database>,
  whenLost: (listener: () => void) => void,
): JobStore {
  let database: Promise<Database> = Promise.resolve(first);
  const listeners = new Set<(event: StoreEvent) => void>();
  /** Jobs this tab has read or written: what it may have in hand. */
  const seen = new Set<string>();
  whenLost(() => {
    for (const id of ['', ...seen])
      for (const listener of listeners) listener({ kind: 'remove', id });
  });
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  const tell = (event: StoreEvent) => channel?.postMessage(event);

  /** One step on the database; when the connection was lost it is opened again, once. */
  async function using<T>(step: (database: Database) => Promise<T>): Promise<T> {
    try {
      return await step(await database);
    } catch (error) {
      if ((error as Error).name !== 'InvalidStateError') throw error;
      database = open(() => undefined);
      // Where it does not open now, the next step tries again.
      database.catch(() => (database = Promise.reject(closed())).catch(() => undefined));
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
      return { ok: false, why: whyNot(error) };
    }
  }

  return {
    kind: 'device',
    async list() {
      const all = await using(everyRecord);
      return all
        .map(({ key, raw }) => summaryOf(asRecord(idOf(key), raw)))
        .sort((one, other) => other.changedAt - one.changedAt);
    },
    async get(id) {
      seen.add(id);
      const raw = await using((open) => open.get('jobs', id));
      return raw && read(asRecord(id, raw));
    },
    async put(id, job, revision) {
      seen.add(id);
      const problem = unreadable(job);
      if (problem) return { ok: false, why: 'invalid', problem };
      return write(id, (there) =>
        (there?.revision ?? 0) === revision ? nextRecord(id, job, Date.now(), there) : undefined,
      );
    },
    async remove(id) {
      const there = await using(async (open) => {
        const key = await keyOf(open, id);
        // What the browser cannot read back can be deleted all the same.
        const raw = await open.get('jobs', key).catch(() => undefined);
        const transaction = open.transaction('jobs', 'readwrite', { durability: 'strict' });
        transaction.done.catch(() => undefined);
        await Promise.all([transaction.store.delete(key), transaction.done]);
        return raw;
      });
      tell({ kind: 'remove', id });
      return there && read(asRecord(id, there));
    },
    async clear() {
      const keys = await using(async (open) => {
        const transaction = open.transaction('jobs', 'readwrite', { durability: 'strict' });
        transaction.done.catch(() => undefined);
        const there = await transaction.store.getAllKeys();
        await Promise.all([transaction.store.clear(), transaction.done]);
        return there;
      });
      for (const key of keys) tell({ kind: 'remove', id: idOf(key) });
      return keys.length;
    },
    restore: (stored) => write(stored.id, (there) => (there ? undefined : recordOf(stored))),
    async raw(id) {
      const raw = await using(async (open) => open.get('jobs', await keyOf(open, id)));
      return raw && textOf(raw.file ?? raw);
    },
    onChange(listener) {
      const heard = ({ data }: MessageEvent<StoreEvent>) => listener(data);
      channel?.addEventListener('message', heard);
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
        channel?.removeEventListener('message', heard);
      };
    },
    close() {
      channel?.close();
      // What could not be opened again is closed.
      database.then((open) => open.close()).catch(() => undefined);
    },
  };
}
