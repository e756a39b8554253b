import type { trialRules } from '$lib/advice/rules';
import { capital } from '$lib/words/by-language';
import { methodNames } from '$words/names';
import type { WhyId } from '$lib/trial/outcome';
import type { RuleSentence } from '$lib/words/types';
import { namedAll } from './facts';
import { showed, trialRejections } from './trial-rejections';

/** What stops a patch. */
const stops: Readonly<Partial<Record<WhyId, string>>> = {
  'bar-unexpected': 'a bar where none was known',
  'hollow-below': 'a hollow sound below',
  'no-sound-base': 'no sound concrete at the depth it was said to be',
  'past-partial-depth': 'too deep for a repair in part',
};
/** What test squares have settled: why another method, why not these, and what stops. */
export const trialSentences: Readonly<Record<(typeof trialRules)[number], RuleSentence>> = {
  'after-failed-patch': (reason, say) =>
    `${capital(say.list(namedAll(reason, 'failed', methodNames)))} failed on your test square: ${showed(reason)}.`,
  ...trialRejections,
  'no-method-left': () =>
    'Every method that would do here has failed on your test squares. Stop. Show the squares to a licensed structural engineer: the concrete itself may be too weak to repair.',
  'stopped-on-patch': (reason) =>
    `Your test square stopped: ${namedAll(reason, 'why', stops as Record<string, string>).join('; ')}. Find that out, with a licensed structural engineer where it carries load, and change the answer before anybody goes on.`,
};
