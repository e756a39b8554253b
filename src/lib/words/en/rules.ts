import type { RulesWords, RuleSentence } from '$lib/words/types';
import { choiceSentences } from './rules/choice';
import { holdSentences } from './rules/holds';
import { rejectionSentences } from './rules/rejections';
import { stepSentences } from './rules/steps';
import { trialSentences } from './rules/trial';

/** A sentence for every rule of the advice, in English. A rule without one does not compile. */
export const ruleSentences: RulesWords = {
  ...choiceSentences,
  ...rejectionSentences,
  ...stepSentences,
  ...holdSentences,
  ...trialSentences,
};

export const ruleSentence: RuleSentence = (reason, say) => ruleSentences[reason.rule](reason, say);
