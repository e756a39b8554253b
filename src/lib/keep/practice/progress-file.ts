import * as v from 'valibot';
import { ratings } from '$lib/practice/grade';
import { latestMoment, mostResults, type Progress } from '$lib/practice/progress';
import { refuse, type Checked, type Expected } from '$lib/keep/problem';
import { readJson } from '$lib/keep/read-json';
import { problemOf } from '$lib/keep/refusal';
import { list, object, picked, says, within } from '$lib/keep/shapes';

/** The name of the file format of what somebody practised. */
export const progressFormat = 'down-to-sound.practice';
const currentVersion = 1;

/** Characters of a progress file that are read: about three times a full one. */
export const mostCharacters = 1_500_000;

const moment: Expected = { id: 'moment' };
const caseId: Expected = { id: 'case-id' };

const progressShape = object({
  format: v.literal(progressFormat, says({ id: 'format', format: progressFormat })),
  version: v.literal(currentVersion, says({ id: 'version', known: [currentVersion] })),
  results: list(
    object({
      // By its shape only: a case that this copy of the site lacks is kept for one that has it.
      case: v.pipe(v.string(says(caseId)), v.regex(/^[a-z][a-z0-9-]{1,39}$/, says(caseId))),
      at: v.pipe(within([0, latestMoment], moment), v.integer(says(moment))),
      rating: picked(ratings, { id: 'one-of', choices: ratings }),
    }),
    mostResults,
  ),
});

export interface ProgressFile {
  readonly format: typeof progressFormat;
  readonly version: typeof currentVersion;
  readonly results: Progress;
}

/** Results as the file has them. */
export const writeProgress = (progress: Progress): ProgressFile => ({
  format: progressFormat,
  version: currentVersion,
  results: progress,
});

/**
 * The one way in for progress from outside, file and kept record alike.
 * @returns the results, oldest first, or the first thing wrong; never throws
 */
export function parseProgress(raw: unknown): Checked<Progress> {
  const read = v.safeParse(progressShape, raw, { abortEarly: true });
  if (!read.success) return { ok: false, problem: problemOf(read.issues[0], raw) };
  return { ok: true, value: [...read.output.results].sort((one, other) => one.at - other.at) };
}

/** The text of a progress file, ending in a line end. */
export const progressText = (progress: Progress): string =>
  `${JSON.stringify(writeProgress(progress), null, 1)}\n`;

/** Reads the text of a progress file. Never throws; the work is bounded by the length allowed. */
export async function readProgressText(text: string): Promise<Checked<Progress>> {
  const { length } = text;
  if (length > mostCharacters)
    return refuse([], { id: 'smaller', limit: mostCharacters }, { id: 'long-text', length });
  const json = await readJson(text.replace(/^\uFEFF/, ''));
  return json.ok ? parseProgress(json.value) : json;
}

/** Reads a chosen file. Its size is looked at before its content. */
export async function readProgressBlob(file: Blob): Promise<Checked<Progress>> {
  const { size: length } = file;
  if (length > 3 * mostCharacters)
    return refuse([], { id: 'smaller', limit: mostCharacters }, { id: 'long-text', length });
  try {
    const bytes = await file.arrayBuffer();
    return await readProgressText(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return refuse([], { id: 'utf-8' }, { id: 'broken' });
  }
}
