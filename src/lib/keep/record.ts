import type { Job } from '$lib/answers/job';
import { parseJob, writeJob, type Checked, type Problem } from './job-file';
import { canBeSeen } from './problem';
import type { JobSummary, StoredJob } from './job-store';

/** A job as the device has it: the job file beside what the store needs. */
export interface JobRecord {
  readonly id: string;
  readonly file: unknown;
  readonly createdAt: number;
  readonly changedAt: number;
  readonly revision: number;
}

const number = (value: unknown, otherwise: number): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : otherwise;

/** Makes a record whole whatever is in it: times and revision fall back to 0. */
export function asRecord(id: string, raw: unknown): JobRecord {
  const fields = (typeof raw === 'object' && raw !== null ? raw : {}) as Partial<JobRecord>;
  return {
    id,
    file: fields.file,
    createdAt: number(fields.createdAt, 0),
    changedAt: number(fields.changedAt, 0),
    revision: number(fields.revision, 0),
  };
}

export const recordOf = (stored: StoredJob): JobRecord => ({
  id: stored.id,
  file: writeJob(stored.job),
  createdAt: stored.createdAt,
  changedAt: stored.changedAt,
  revision: stored.revision,
});

/** The same value with texts that cannot be seen left empty: older copies of the site kept such names. */
function withoutUnseen(value: unknown): unknown {
  if (typeof value === 'string') return canBeSeen(value) ? value : '';
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(withoutUnseen);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, withoutUnseen(each)]));
}

function readFile(file: unknown): Checked<Job> {
  const read = parseJob(file);
  return read.ok || read.problem.expected.id !== 'seen' ? read : parseJob(withoutUnseen(file));
}

/** A record through the one parser. */
export function readRecord(record: JobRecord): Checked<StoredJob> {
  const read = readFile(record.file);
  if (!read.ok) return read;
  const { id, createdAt, changedAt, revision } = record;
  return { ok: true, value: { id, job: read.value, createdAt, changedAt, revision } };
}

/** A record's line in the list. */
export function summaryOf(record: JobRecord): JobSummary {
  const read = readFile(record.file);
  const { id, createdAt, changedAt, revision } = record;
  const line = { id, createdAt, changedAt, revision };
  return read.ok
    ? { ...line, name: read.value.name, zones: read.value.zones.length }
    : { ...line, name: '', zones: 0, damaged: read.problem };
}

/** What would keep a job from being read back; such a job is not written. */
export function unreadable(job: Job): Problem | undefined {
  const read = parseJob(writeJob(job));
  return read.ok ? undefined : read.problem;
}

/**
 * Where the revisions of a new job begin. Drawn by lot, so that a job deleted and written anew
 * under the same id is not taken for the old one by a tab that still holds that.
 */
const firstRevision = (): number => 1 + Math.floor(Math.random() * 2 ** 31);

/** The next record of a job, after the one that is there. */
export const nextRecord = (
  id: string,
  job: Job,
  now: number,
  before: JobRecord | undefined,
): JobRecord => ({
  id,
  file: writeJob(job),
  createdAt: before?.createdAt ?? now,
  changedAt: now,
  revision: before ? before.revision + 1 : firstRevision(),
});
