import { codesIn, readResultCode } from '$lib/keep/practice/result-code';
import type { ResultStore } from '$lib/keep/practice/result-store';
import type { Problem } from '$lib/keep/problem';
import type { SetResult } from '$lib/practice/given';

/** What became of a code that was pasted, or of a line without one. Lines count from 1. */
export type Outcome =
  | {
      readonly what: 'added' | 'here' | 'other-picks' | 'quota' | 'unavailable';
      readonly result: SetResult;
    }
  | { readonly what: 'broken'; readonly line: number; readonly problem: Problem }
  | { readonly what: 'no-code'; readonly line: number };

/** Characters that are pasted at once, at most: over a thousand long links. */
export const mostPasted = 200_000;

/**
 * Brings every result in a text into the store, in the order they stand there.
 * @returns what became of each, and the lines that could not be taken, as they were
 */
export async function bringAll(
  store: ResultStore,
  text: string,
): Promise<{ readonly outcomes: readonly Outcome[]; readonly left: string }> {
  const outcomes: Outcome[] = [];
  const left: string[] = [];
  for (const [at, line] of text.split(/\r\n?|\n/).entries()) {
    if (!line.trim()) continue;
    const codes = codesIn(line);
    const here: Outcome[] = codes.length ? [] : [{ what: 'no-code', line: at + 1 }];
    for (const code of codes) {
      const read = readResultCode(code);
      if (!read.ok) here.push({ what: 'broken', line: at + 1, problem: read.problem });
      else {
        const brought = await store.bring(read.value);
        here.push({ what: brought.ok ? brought.what : brought.why, result: read.value });
      }
    }
    outcomes.push(...here);
    if (here.some(({ what }) => what !== 'added' && what !== 'here' && what !== 'other-picks'))
      left.push(line);
  }
  return { outcomes, left: left.join('\n') };
}
