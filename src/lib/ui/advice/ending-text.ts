import type { Decision, Margin } from '$lib/advice/zone-advice';
import { methodWords } from '$words/methods';
import { stepWords } from '$words/steps';
import { resultWords } from '$words/ui/reader';
import { verdictWords } from '$words/verdicts';
import type { Say } from '$lib/words/types';

/** What something comes to, in a few words: the verdict where it is not to go on, and the method. */
export function endingText(
  { verdict, method, first: cleaning, stopsFrom }: Decision & Pick<Margin, 'first' | 'stopsFrom'>,
  say: Say,
): string {
  const name = method ? methodWords(say)[method].name : '';
  const first = verdictWords.verdicts[verdict].name;
  if (verdict === 'prepare')
    return cleaning ? resultWords.afterwards(stepWords(say)[cleaning].name, name) : name;
  const ending = name ? resultWords.afterwards(first, name) : first;
  return stopsFrom ? `${ending}; ${resultWords.stopsFrom(say.edge(stopsFrom))}` : ending;
}
