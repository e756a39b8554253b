import type { QuestionsWords, Say } from '$lib/words/types';
import { damageQuestionWords } from './questions/damage';
import { insideQuestionWords } from './questions/inside';
import { nextQuestionWords } from './questions/next';
import { siteQuestionWords } from './questions/site';

/** Every question in English. A question or a choice without words does not compile. */
export const questionWords = (say: Say): QuestionsWords => ({
  ...siteQuestionWords(say),
  ...damageQuestionWords(say),
  ...insideQuestionWords(say),
  ...nextQuestionWords(say),
});
