import { parseJob } from '$lib/keep/job-file';
import { expect, it } from 'vitest';
import { problemSentence } from '$words/keep';

/** What stands in a job file beside what every one has. */
export interface FileParts {
  readonly site?: object;
  readonly zone?: object;
  readonly job?: object;
}

/** What is said of a file with these parts in it. */
function told({ site = {}, zone = {}, job = {} }: FileParts): string {
  const zones = [{ id: 'a', ...zone }];
  const read = parseJob({ format: 'down-to-sound.job', version: 2, site, zones, ...job });
  return read.ok ? 'taken' : problemSentence(read.problem);
}

/** A file by what is in it, and what is said of it. */
export type ToldCase = readonly [what: string, parts: FileParts, said: string | RegExp];

/** Files are taken, or refused with the place and what was expected there. */
export const isToldOf = (cases: readonly ToldCase[]): void =>
  it.each(cases)('%s', (_what, parts, said) => {
    if (typeof said === 'string') expect(told(parts)).toBe(said);
    else expect(told(parts)).toMatch(said);
  });

/** A list of the same thing so many times. */
export const times = (count: number, item: unknown): unknown[] =>
  Array.from({ length: count }, () => item);
