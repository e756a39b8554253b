import * as v from 'valibot';
import type { Job } from '$lib/answers/job';
import { bounds } from './bounds';
import { jobShape } from './job-shape';
import { refuse, type Checked } from './problem';
import { problemOf } from './refusal';
import { atPresentVersion } from './versions';
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
  const result = v.safeParse(jobShape, file.value, { abortEarly: true });
  if (result.success) return { ok: true, value: result.output };
  return { ok: false, problem: problemOf(result.issues[0], file.value) };
}

/** The text of a job file, one field a line, ending in a line end. */
export const jobText = (job: Job): string => `${JSON.stringify(writeJob(job), null, 2)}\n`;

/** Reads the text of a job file. Never throws; the work is bounded by the length allowed. */
export async function readJobText(text: string): Promise<Checked<Job>> {
  if (text.length > bounds.fileLength)
    return refuse(
      [],
      { id: 'smaller', limit: bounds.fileLength },
      { id: 'long-text', length: text.length },
    );
  const json = await readJson(text.replace(/^\uFEFF/, ''));
  return json.ok ? parseJob(json.value) : json;
}

/** Reads a chosen file. Its size is looked at before its content. */
export async function readJobBlob(file: Blob): Promise<Checked<Job>> {
  // UTF-8 takes at most three bytes for each UTF-16 unit.
  if (file.size > 3 * bounds.fileLength)
    return refuse(
      [],
      { id: 'smaller', limit: bounds.fileLength },
      { id: 'long-text', length: file.size },
    );
  return readJobText(await file.text());
}

async function readJson(text: string): Promise<Checked<unknown>> {
  if (text.trim() === '') return refuse([], { id: 'content' }, { id: 'nothing' });
  if (nestsDeeper(text, bounds.nesting))
    return refuse([], { id: 'flatter', limit: bounds.nesting }, { id: 'broken' });
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch {
    const { placeOfError } = await import('./json-place');
    return refuse([], { id: 'json', ...placeOfError(text) }, { id: 'broken' });
  }
}

/** Whether brackets outside of strings nest deeper than a limit. Linear in the text. */
function nestsDeeper(text: string, limit: number): boolean {
  let depth = 0;
  for (const [token] of text.matchAll(/"(?:[^"\\]|\\.)*"|[[{\]}]/gs)) {
    if (token === '[' || token === '{') depth += 1;
    else if (token === ']' || token === '}') depth -= 1;
    if (depth > limit) return true;
  }
  return false;
}

/** A name for the file of a job: the job's own, in letters every system takes. */
export function jobFileName(job: Job): string {
  const plain = job.name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .toLowerCase();
  return `${plain || 'job'}.down-to-sound.json`;
}
