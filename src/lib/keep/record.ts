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

/** The latest moment a date can hold, ms since 1970 (ECMAScript, Time Values and Time Range). */
const latest = 8.64e15;
const moment = (value: unknown): number =>
  typeof value === 'number' && value > 0 && value <= latest ? value : 0;
const count = (value: unknown): number =>
  typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 ? value : 0;

/** Makes a record whole whatever is in it: times that cannot be and a revision that is none fall back to 0. */
export function asRecord(id: string, raw: unknown): JobRecord {
  const fields = (typeof raw === 'object' && raw !== null ? raw : {}) as Partial<JobRecord>;
  return {
    id,
    file: fields.file,
    createdAt: moment(fields.createdAt),
    changedAt: moment(fields.changedAt),
    revision: count(fields.revision),
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
  if (!read.ok) return { ...line, name: '', zones: 0, damaged: read.problem };
  const { name, site, zones } = read.value;
  const [element = null, ...others] = site.element ?? [];
  const about = {
    element: others.length ? null : element,
    zones: zones.flatMap((zone) => (zone.name.trim() ? [zone.name.trim()] : [])),
  };
  return { ...line, name, zones: zones.length, about };
}

/** Whatever is in a record as text, for a file to take away: JSON, with what JSON cannot hold in words. */
export function textOf(value: unknown): string {
  const within: unknown[] = [];
  const say = function (this: unknown, _key: string, each: unknown): unknown {
    if (typeof each === 'bigint') return String(each);
    if (each instanceof Map || each instanceof Set) return [...(each as Iterable<unknown>)];
    if (typeof each !== 'object' || each === null) return each;
    // What holds this value is the last on the way down to it; a value on that way holds itself.
    while (within.length && within.at(-1) !== this) within.pop();
    if (within.includes(each)) return '(itself)';
    within.push(each);
    return each;
  };
  try {
    return JSON.stringify(value, say, 2) ?? String(value);
  } catch {
    return String(value);
  }
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
