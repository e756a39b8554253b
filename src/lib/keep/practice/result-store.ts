import type { DBSchema, IDBPDatabase } from 'idb';
import * as v from 'valibot';
import type { SetResult } from '$lib/practice/given';
import type { Unavailable } from '$lib/keep/job-store';
import { openOwn, whyNot, type OpenOptions } from '$lib/keep/patience';
import { refuse, type Checked, type Problem } from '$lib/keep/problem';
import { problemOf } from '$lib/keep/refusal';
import { object, says } from '$lib/keep/shapes';
import { readResultCode, resultCode, runOf } from './result-code';

/** A result that is kept, by the run it is of. */
export interface KeptResult {
  readonly key: string;
  readonly result: SetResult;
}
/** A record that cannot be read. */
interface DamagedResult {
  readonly key: string;
  readonly problem: Problem;
}
/** All that is kept, the run that ended first before the others. */
export interface KeptResults {
  readonly results: readonly KeptResult[];
  readonly damaged: readonly DamagedResult[];
}

/** What became of a write. */
type Changed =
  { readonly ok: true } | { readonly ok: false; readonly why: 'quota' | 'unavailable' };
/** What became of a result that was brought. */
export type Brought =
  /** `other-picks`: a result of the same run says otherwise, and stays; one of the two was changed. */
  | { readonly ok: true; readonly what: 'added' | 'here' | 'other-picks' }
  | Extract<Changed, { ok: false }>;

/** Results that learners gave back, on the device of whoever leads them. No write throws. */
export interface ResultStore {
  /** `memory` holds results in this tab only; `why` then says what is the matter. */
  readonly kind: 'device' | 'memory';
  readonly why?: Unavailable;
  /** Rejects when the device fails. */
  read(): Promise<KeptResults>;
  /** Adds a result whose run is not here yet; one that is here is left as it is, with its name. */
  bring(result: SetResult): Promise<Brought>;
  /** Puts results in place of what is kept of their runs. */
  put(results: readonly SetResult[]): Promise<Changed>;
  remove(keys: readonly string[]): Promise<Changed>;
  /** Everything, also what cannot be read. */
  clear(): Promise<Changed>;
  /** What is kept under a name, as text, whatever it is. */
  raw(key: string): Promise<string | undefined>;
  close(): void;
}

/** A kept record is the result's code: its reader is the one that every later version keeps. */
const shape = object({
  version: v.literal(1, says({ id: 'version', known: [1] })),
  code: v.string(says({ id: 'result-code' })),
});
const recordOf = (result: SetResult) => ({ version: 1 as const, code: resultCode(result) });

function parse(raw: unknown): Checked<SetResult> {
  const read = v.safeParse(shape, raw, { abortEarly: true });
  if (!read.success) return { ok: false, problem: problemOf(read.issues[0], raw) };
  return readResultCode(read.output.code);
}

/** What is kept, told apart. A result under another run's name counts as one that cannot be read. */
function sorted(records: readonly (readonly [key: string, raw: unknown])[]): KeptResults {
  const results: KeptResult[] = [];
  const damaged: DamagedResult[] = [];
  for (const [key, raw] of records) {
    const read = parse(raw);
    if (!read.ok) damaged.push({ key, problem: read.problem });
    else if (runOf(read.value) !== key)
      damaged.push({ key, ...refuse([], { id: 'possible-result' }, { id: 'broken' }) });
    else results.push({ key, result: read.value });
  }
  results.sort((one, other) => one.result.minute - other.result.minute);
  return { results, damaged };
}

/** What bringing a result does where `raw` is kept of its run. */
function meeting(raw: unknown, result: SetResult): 'added' | 'here' | 'other-picks' {
  const there = parse(raw);
  // Nothing, and what cannot be read: the same run come anew.
  if (!there.ok) return 'added';
  const nameless = (one: SetResult) => resultCode({ ...one, name: '' });
  return nameless(there.value) === nameless(result) ? 'here' : 'other-picks';
}

interface Schema extends DBSchema {
  given: { key: string; value: unknown };
}

/** What given results are called on the device, at the root of a host. */
export const resultsName = 'down-to-sound.given';

/** Opens what is kept on this device; when that cannot be had, a store in memory that says why. Never throws. */
export async function openResultStore(options: OpenOptions = {}): Promise<ResultStore> {
  const opened = await openOwn<Schema>(
    resultsName,
    (database) => void database.createObjectStore('given'),
    options,
  );
  return typeof opened === 'string' ? memoryResults(opened) : deviceResults(opened);
}

function deviceResults(database: IDBPDatabase<Schema>): ResultStore {
  /** In one transaction, so that no other tab comes between. */
  async function write<T extends object>(
    change: (store: {
      get: (key: string) => Promise<unknown>;
      put: (value: unknown, key: string) => unknown;
      delete: (key: string) => unknown;
      clear: () => unknown;
    }) => Promise<T>,
  ): Promise<({ readonly ok: true } & T) | Extract<Changed, { ok: false }>> {
    try {
      const transaction = database.transaction('given', 'readwrite', { durability: 'strict' });
      // Awaited below; until then a failure must not count as unhandled.
      transaction.done.catch(() => undefined);
      const done = await change(transaction.store);
      await transaction.done;
      return { ok: true, ...done };
    } catch (error) {
      return { ok: false, why: whyNot(error) };
    }
  }
  return {
    kind: 'device',
    async read() {
      const { store } = database.transaction('given');
      const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll()]);
      return sorted(keys.map((key, at) => [key, values[at]]));
    },
    bring: (result) =>
      write(async (store) => {
        const what = meeting(await store.get(runOf(result)), result);
        if (what === 'added') await store.put(recordOf(result), runOf(result));
        return { what };
      }),
    put: (results) =>
      write(async (store) => {
        await Promise.all(results.map((one) => store.put(recordOf(one), runOf(one))));
        return {};
      }),
    remove: (keys) =>
      write(async (store) => {
        await Promise.all(keys.map((key) => store.delete(key)));
        return {};
      }),
    clear: () =>
      write(async (store) => {
        await store.clear();
        return {};
      }),
    async raw(key) {
      // Of nothing there is no text.
      return JSON.stringify(await database.get('given', key), null, 1) as string | undefined;
    },
    close: () => database.close(),
  };
}

/** Results held in this tab only; they are gone when it is closed. */
function memoryResults(why: Unavailable): ResultStore {
  const there = new Map<string, unknown>();
  const done = async (): Promise<Changed> => ({ ok: true });
  const set = (result: SetResult) => there.set(runOf(result), recordOf(result));
  return {
    kind: 'memory',
    why,
    read: async () => sorted([...there]),
    async bring(result) {
      const what = meeting(there.get(runOf(result)), result);
      if (what === 'added') set(result);
      return { ok: true, what };
    },
    put: (results) => (results.forEach(set), done()),
    remove: (keys) => (keys.forEach((key) => there.delete(key)), done()),
    clear: () => (there.clear(), done()),
    raw: async (key) => JSON.stringify(there.get(key), null, 1) as string | undefined,
    close: () => undefined,
  };
}
