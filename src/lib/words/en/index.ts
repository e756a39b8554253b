import type { Words } from '$lib/words/types';
import { hazardWords } from './hazards';
import { marginSentence } from './margins';
import { methodWords } from './methods';
import { numberMessages } from './numbers';
import { questionWords } from './questions';
import { ruleSentences } from './rules';
import { stepWords } from './steps';
import { testWords } from './tests';
import { verdictWords } from './verdicts';

/** All of English. Pages that need one part import its file instead, to stay small. */
export const allWords: Words = {
  questions: questionWords,
  rules: ruleSentences,
  margins: marginSentence,
  methods: methodWords,
  steps: stepWords,
  hazards: hazardWords,
  tests: testWords,
  verdicts: verdictWords,
  numbers: numberMessages,
};
