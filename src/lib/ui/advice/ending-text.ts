import type { Decision, Margin } from '$lib/advice/zone-advice';
import { methodWords } from '$words/methods';
import { stepWords } from '$words/steps';
import { resultWords } from '$words/ui/reader';
import { verdictWords } from '$words/verdicts';
import type { Say } from '$lib/words/types';

/** What something comes to, in a few words: the verdict where it is not to go on, and the method. */
export function endingText(
  { verdict, method, first: cleaning }: Decision & Pick<Margin, 'first'>,
  say: Say,
): string {
  const name = method ? methodWords(say)[method].name : '';
  const first = verdictWords.verdicts[verdict].name;
  if (verdict === 'prepare')
    return cleaning ? resultWords.afterwards(stepWords(say)[cleaning].name, name) : name;
  return name ? resultWords.afterwards(first, name) : first;
}
