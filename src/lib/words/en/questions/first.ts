import type { Say } from '$lib/words/types';
import { damageQuestionWords } from './damage';
import { sheetQuestionWords } from './sheet';
import { siteQuestionWords } from './site';

/** Of the words of all questions those that settled advice says at first. */
export const firstQuestionWords = (say: Say) => ({
  ...siteQuestionWords(say),
  ...damageQuestionWords(say),
  ...sheetQuestionWords(say),
});
