import type { Decision } from '$lib/advice/zone-advice';
import { methodWords } from '$words/methods';
import { resultWords } from '$words/ui/reader';
import { verdictWords } from '$words/verdicts';
import type { Say } from '$lib/words/types';

/** What something comes to, in a few words: the verdict where it is not to go on, and the method. */
export function endingText({ verdict, method }: Decision, say: Say): string {
  const name = method ? methodWords(say)[method].name : '';
  const first = verdictWords.verdicts[verdict].name;
  if (verdict === 'prepare') return name;
  return name ? resultWords.afterwards(first, name) : first;
}
