import type { TriedAnswers, TriedOut } from '$lib/answers/trial-record';
import { methods, type MethodId } from '$shared/methods';
import type { Demands } from './demands';
import { methodRules } from './methods';
import type { Shortfall } from './methods/judge';
import type { Reason } from './types';

/** How much a method bruises what stays, least first. */
const bruising = ['no', 'hardly', 'little', 'yes', 'most'] as const;
const bruises = (method: MethodId): number => bruising.indexOf(methods[method].bruises);

const shows = ({ why }: TriedOut, ...any: readonly string[]): boolean =>
  why.some((each) => any.includes(each));

/**
 * What failed on a test patch and counts here: only where the method would have done by the answers
 * does its failure tell something of what they ask for.
 */
export const failedHere = (demands: Demands): readonly TriedOut[] =>
  !demands.triedOut.length
    ? demands.triedOut
    : demands.triedOut.filter(({ method }) => !methodRules[method].shortfall(demands));

/** Bruises as much as what bruised already; or, where it went too deep, takes off more. */
const isHarder = (method: MethodId, failed: TriedOut): boolean =>
  bruises(method) >= bruises(failed.method) ||
  (shows(failed, 'too-deep', 'over-deep') && methods[method].class > methods[failed.method].class);

/**
 * Why a method is out by what another, or itself, did on a test patch; null where it is not.
 * What took off too much is not followed by anything harder, what took off too little by nothing
 * weaker; and where only dust or a smooth face stayed, nobody breaks out.
 * Source: common practice, no published source.
 */
export function judgeTried(method: MethodId, failed: readonly TriedOut[]): Shortfall | null {
  const itself = failed.find((each) => each.method === method);
  if (itself) return { demand: 'trial', rule: 'failed-on-patch', facts: { why: itself.why } };
  for (const each of failed) {
    const facts = { failed: each.method, why: each.why };
    if (each.because !== 'too-little' && isHarder(method, each))
      return { demand: 'trial', rule: 'harder-than-failed', facts };
    if (each.because === 'too-much') continue;
    if (methods[method].class < methods[each.method].class)
      return { demand: 'trial', rule: 'weaker-than-failed', facts };
    if (method === 'break-out' && !shows(each, 'still-loose', 'stones-pulled-out'))
      return { demand: 'trial', rule: 'deeper-than-wanted', facts };
  }
  return null;
}

/** The reason that stands first where other methods have failed on a patch. */
export const afterFailed = (failed: readonly TriedOut[]): Reason => ({
  rule: 'after-failed-patch',
  facts: {
    failed: failed.map(({ method }) => method),
    why: [...new Set(failed.flatMap(({ why }) => why))],
  },
});

/** What test patches and the rest of its part have settled of a zone: there or not, never open. */
export const patchFacts = ({
  triedOut,
  stopped,
  partInDoubt,
}: TriedAnswers): Pick<TriedAnswers, 'triedOut' | 'stopped' | 'partInDoubt'> => ({
  ...(partInDoubt && { partInDoubt }),
  ...(triedOut?.length && { triedOut }),
  ...(stopped?.length && { stopped }),
});
