import type { Reason } from '$lib/advice/types';
import type { WhyId } from '$lib/trial/outcome';
import { methodNames } from '$words/names';
import type { RuleSentence } from '$lib/words/types';
import { named, namedAll } from './facts';

/** What a method did on a test square that no setting of it mends. */
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
export const showed = (reason: Reason): string =>
  namedAll(reason, 'why', faults as Record<string, string>).join('; ');

type RejectionRule =
  'failed-on-patch' | 'harder-than-failed' | 'weaker-than-failed' | 'deeper-than-wanted';

/** Why not that one, by a test square. Each follows the name of the method and a colon. */
export const trialRejections: Readonly<Record<RejectionRule, RuleSentence>> = {
  'failed-on-patch': (reason) => `failed on your test square: ${showed(reason)}.`,
  'harder-than-failed': (reason) =>
    `would be harder on the concrete than ${named(reason, 'failed', methodNames)}, which failed on your test square: ${showed(reason)}.`,
  'weaker-than-failed': (reason) =>
    `would take off less than ${named(reason, 'failed', methodNames)}, which failed on your test square: ${showed(reason)}.`,
  'deeper-than-wanted': (reason) =>
    `would go too deep. On your test square only this was wrong: ${showed(reason)}.`,
};
