import type { SetResult } from '$lib/practice/given';
import { isMethod, type Call } from '$lib/practice/case';
import { findCase } from '$lib/practice/next';
import { timeWords } from '$lib/words/by-language';
import type { Say } from '$lib/words/types';
import { methodWords } from '$words/methods';
import { firstWords, resultsWords as words } from '$words/practice/results';
import { caseTitle } from '$words/practice/told';

/** When a run ended, on the clock of whoever reads it. */
export const endedAt = ({ minute }: SetResult): string => timeWords(minute * 60_000);

/** Whose result it is: the name, and when the run ended. */
export const whoOf = (result: SetResult): string =>
  `${result.name || words.nameless}, ${endedAt(result)}`;

/** A method, or who comes first, in short. */
export const callName = (call: Call, say: Say): string =>
  isMethod(call) ? methodWords(say)[call].name : firstWords[call];

/** What a case is called; its id where this site does not have it any more. */
export function titleOf(id: string): string {
  const one = findCase(id);
  return one ? caseTitle(one) : id;
}
