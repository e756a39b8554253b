import type { trialRules } from '$lib/advice/rules';
import type { Reason } from '$lib/advice/types';
import { capitalised } from '$lib/words/en/capital';
import { methodNames } from '$lib/words/en/names';
import type { WhyId } from '$lib/trial/outcome';
import type { RuleSentence } from '$lib/words/types';
import { named, namedAll } from './facts';

/** What a method did that no setting of it mends. */
const faults: Readonly<Partial<Record<WhyId, string>>> = {
  'too-smooth': 'too smooth',
  'too-rough': 'too rough',
  'still-dusts': 'still dusty',
  'still-loose': 'loose pieces stayed',
  'stones-pulled-out': 'stones came out whole',
  bruised: 'stones torn, the face bruised',
  'too-deep': 'too deep in one place',
  'over-deep': 'sound concrete taken off',
};
/** What stops a patch. */
const stops: Readonly<Partial<Record<WhyId, string>>> = {
  'bar-unexpected': 'a bar where none was known',
  'hollow-below': 'a hollow sound below',
  'no-sound-base': 'no sound concrete at the depth it was said to be',
  'past-partial-depth': 'too deep for a repair in part',
};
const showed = (reason: Reason): string =>
  namedAll(reason, 'why', faults as Record<string, string>).join('; ');

/** What test patches have settled: why another method, and why not these. */
export const trialSentences: Readonly<Record<(typeof trialRules)[number], RuleSentence>> = {
  'after-failed-patch': (reason, say) =>
    `${capitalised(say.list(namedAll(reason, 'failed', methodNames)))} failed on your test patch: ${showed(reason)}.`,
  'failed-on-patch': (reason) => `failed on your test patch: ${showed(reason)}.`,
  'harder-than-failed': (reason) =>
    `would be harder on the concrete than ${named(reason, 'failed', methodNames)}, which failed on your test patch: ${showed(reason)}.`,
  'weaker-than-failed': (reason) =>
    `would take off less than ${named(reason, 'failed', methodNames)}, which failed on your test patch: ${showed(reason)}.`,
  'deeper-than-wanted': (reason) =>
    `would go too deep. On your test patch only this was wrong: ${showed(reason)}.`,
  'no-method-left': () =>
    'Every method that would do here has failed on your test patches. Stop. Show the patches to a licensed structural engineer: the concrete itself may be too weak to repair.',
  'stopped-on-patch': (reason) =>
    `Your test patch stopped: ${namedAll(reason, 'why', stops as Record<string, string>).join('; ')}. Find that out, and change the answer, before anybody goes on.`,
};
