import * as v from 'valibot';
import type { Job } from '$lib/answers/job';
import { bounds } from './bounds';
import { jobShape } from './job-shape';
import type { FilePhoto } from './photos/photo-file';
import type { WholePhoto } from '$lib/answers/photo';
import { refuse, type Checked } from './problem';
import { readJson } from './read-json';
import { problemOf } from './refusal';
import { atPresentVersion, plain } from './versions';
import { writeJob } from './write-job';

export { writeJob, type JobFile } from './write-job';
export type { Checked, Problem } from './problem';

/**
 * The one way into the program for a job from outside: file, link and saved record all pass here.
 * @param raw any JSON value
 * @returns the job, or the first thing wrong with it; never throws
 */
export function parseJob(raw: unknown): Checked<Job> {
  const file = atPresentVersion(raw);
  if (!file.ok) return file;
  const value = plain(file.value);
  const result = v.safeParse(jobShape, value, { abortEarly: true });
  if (result.success) return { ok: true, value: result.output };
  return { ok: false, problem: problemOf(result.issues[0], value) };
}

/** The text of a job file, one field a line, ending in a line end. */
export const jobText = (job: Job): string => textOf(writeJob(job));

const textOf = (file: object): string => `${JSON.stringify(file, null, 2)}\n`;

/** What reads and writes photos; most files have none. */
const photoFile = () => import('./photos/photo-file');

/** The same with photos in it, those that were ticked. They stand last. */
export const jobTextWith = async (job: Job, photos: readonly WholePhoto[]): Promise<string> =>
  photos.length
    ? textOf({ ...writeJob(job), photos: await (await photoFile()).writePhotos(photos) })
    : jobText(job);

/** What a file holds. */
export interface JobAndPhotos {
  readonly job: Job;
  readonly photos: readonly FilePhoto[];
}

/** Characters a file may have with its photos, which stand in it as base64. */
const mostText = bounds.fileLength + Math.ceil(bounds.photosInFile / 3) * 4;

/** What is longer than a job may be has photos, and they begin where a job has ended. */
const photosBegin = (text: string): boolean => {
  const at = text.indexOf('"photos"');
  return at >= 0 && at <= bounds.fileLength;
};

/** Reads the text of a job file. Never throws; the work is bounded by the length allowed. */
async function readText(text: string): Promise<Checked<JobAndPhotos>> {
  const { length } = text;
  if (length > mostText || (length > bounds.fileLength && !photosBegin(text)))
    return tooLarge(length);
  const json = await readJson(text.replace(/^\uFEFF/, ''));
  if (!json.ok) return json;
  const { photos, ...rest } = (json.value ?? {}) as Record<string, unknown>;
  const read = parseJob(photos === undefined ? json.value : rest);
  if (!read.ok) return read;
  const taken =
    photos === undefined
      ? { ok: true as const, value: [] }
      : (await photoFile()).readPhotos(photos, read.value);
  return taken.ok ? { ok: true, value: { job: read.value, photos: taken.value } } : taken;
}

const jobAlone = (read: Checked<JobAndPhotos>): Checked<Job> =>
  read.ok ? { ok: true, value: read.value.job } : read;

export const readJobText = async (text: string): Promise<Checked<Job>> =>
  jobAlone(await readText(text));

const tooLarge = (length: number) =>
  refuse([], { id: 'smaller', limit: bounds.fileLength }, { id: 'long-text', length });

/** UTF-8 takes at most three bytes for each character counted. */
export const mostBytes = 3 * bounds.fileLength + mostText - bounds.fileLength;

/** Reads the bytes of a job file, which are UTF-8. */
export const readJobBytes = async (bytes: Uint8Array): Promise<Checked<Job>> =>
  jobAlone(await readBytes(bytes));

async function readBytes(bytes: Uint8Array): Promise<Checked<JobAndPhotos>> {
  if (bytes.length > mostBytes) return tooLarge(bytes.length);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse([], { id: 'utf-8' }, { id: 'broken' });
  }
  return readText(text);
}

/** Reads a chosen file. Its size is looked at before its content. */
export async function readJobBlob(file: Blob): Promise<Checked<JobAndPhotos>> {
  if (file.size > mostBytes) return tooLarge(file.size);
  return readBytes(new Uint8Array(await file.arrayBuffer()));
}
