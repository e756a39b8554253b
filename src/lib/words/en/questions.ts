import type { QuestionsWords, Say } from '$lib/words/types';
import { barQuestionWords } from './questions/bars';
import { damageQuestionWords } from './questions/damage';
import { insideQuestionWords } from './questions/inside';
import { nextQuestionWords } from './questions/next';
import { sheetQuestionWords } from './questions/sheet';
import { siteQuestionWords } from './questions/site';

/** Every question in English. A question or a choice without words does not compile. */
export const questionWords = (say: Say): QuestionsWords => ({
  ...siteQuestionWords(say),
  ...damageQuestionWords(say),
  ...insideQuestionWords(say),
  ...barQuestionWords(say),
  ...nextQuestionWords(say),
  ...sheetQuestionWords(say),
});
