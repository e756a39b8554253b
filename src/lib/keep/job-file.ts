import * as v from 'valibot';
import type { Job } from '$lib/answers/job';
import { bounds } from './bounds';
import { jobShape } from './job-shape';
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
export const jobText = (job: Job): string => `${JSON.stringify(writeJob(job), null, 2)}\n`;

/** Reads the text of a job file. Never throws; the work is bounded by the length allowed. */
export async function readJobText(text: string): Promise<Checked<Job>> {
  if (text.length > bounds.fileLength) return tooLarge(text.length);
  const json = await readJson(text.replace(/^\uFEFF/, ''));
  return json.ok ? parseJob(json.value) : json;
}

const tooLarge = (length: number) =>
  refuse([], { id: 'smaller', limit: bounds.fileLength }, { id: 'long-text', length });

/** UTF-8 takes at most three bytes for each character counted. */
export const mostBytes = 3 * bounds.fileLength;

/** Reads the bytes of a job file, which are UTF-8. */
export async function readJobBytes(bytes: Uint8Array): Promise<Checked<Job>> {
  if (bytes.length > mostBytes) return tooLarge(bytes.length);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse([], { id: 'utf-8' }, { id: 'broken' });
  }
  return readJobText(text);
}

/** Reads a chosen file. Its size is looked at before its content. */
export async function readJobBlob(file: Blob): Promise<Checked<Job>> {
  if (file.size > mostBytes) return tooLarge(file.size);
  return readJobBytes(new Uint8Array(await file.arrayBuffer()));
}
