import {
  asRecord,
  nextRecord,
  readRecord,
  recordOf,
  summaryOf,
  unreadable,
  type JobRecord,
} from './record';
import type { JobStore, Unavailable } from './job-store';

/** Jobs held in this tab only; they are gone when it is closed. The same rules as on the device. */
export function memoryStore(why: Unavailable): JobStore {
  const records = new Map<string, JobRecord>();
  const read = (record: JobRecord | undefined) => {
    const result = record && readRecord(record);
    return result?.ok ? result.value : undefined;
  };
  return {
    kind: 'memory',
    why,
    list: async () =>
      [...records.values()].map(summaryOf).sort((one, other) => other.changedAt - one.changedAt),
    get: async (id) => read(records.get(id)),
    async put(id, job, revision) {
      const problem = unreadable(job);
      if (problem) return { ok: false, why: 'invalid', problem };
      const before = records.get(id);
      if ((before?.revision ?? 0) !== revision) {
        const stored = read(before);
        return { ok: false, why: 'newer', ...(stored && { stored }) };
      }
      const record = nextRecord(id, job, Date.now(), before);
      records.set(id, record);
      return { ok: true, revision: record.revision };
    },
    async remove(id) {
      const before = records.get(id);
      records.delete(id);
      return read(before);
    },
    async clear() {
      const { size } = records;
      records.clear();
      return size;
    },
    async restore(stored) {
      const there = read(records.get(stored.id));
      if (there) return { ok: false, why: 'newer', stored: there };
      records.set(stored.id, asRecord(stored.id, recordOf(stored)));
      return { ok: true, revision: stored.revision };
    },
    raw: async (id) => {
      const record = records.get(id);
      return record && JSON.stringify(record.file, null, 2);
    },
    onChange: () => () => undefined,
    close: () => undefined,
  };
}
