import type { Ended } from '$lib/advice/zone-advice';
import { methodWords } from '$lib/words/en/methods';
import { verdictWords } from '$lib/words/en/verdicts';
import type { Say } from '$lib/words/types';

/** What something comes to, in a few words: the verdict where it is not to go on, and the method. */
export const endingText = ({ verdict, method }: Ended, say: Say): string =>
  [
    verdict === 'prepare' ? '' : verdictWords.verdicts[verdict].name,
    method ? methodWords(say)[method].name : '',
  ]
    .filter(Boolean)
    .join('; ');
