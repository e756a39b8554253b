import type { rejectionRules } from '$lib/advice/rules';
import type { Advice, Reason } from '$lib/advice/types';
import { callOf, firstCallers, isMethod, type Call } from './case';

/** How a call compares with the advice. */
export const callKinds = [
  'right',
  // A method where a method is right:
  'too-gentle',
  'wrong-tool',
  'harsher',
  'would-do',
  // Something stands before the work:
  'must-wait',
  'someone-else',
  'not-yet-enough',
  // Nothing does:
  'need-not-wait',
] as const;
export type CallKind = (typeof callKinds)[number];

/** What each reason against a method says about whoever picks it all the same; what is held waits. */
const kindOf: Readonly<Record<Exclude<(typeof rejectionRules)[number], 'held'>, CallKind>> = {
  'leaves-loose': 'too-gentle',
  'past-its-reach': 'too-gentle',
  'leaves-contaminant': 'too-gentle',
  'washing-spreads-oil': 'too-gentle',
  'washing-after-stripping': 'too-gentle',
  'rides-over-pits': 'too-gentle',
  'texture-not-sure-enough': 'too-gentle',
  'washing-leaves-closed-skin': 'too-gentle',
  'washing-leaves-weak-skin': 'too-gentle',
  'leaves-cracks-to-clean': 'would-do',
  'too-small-for-machine': 'wrong-tool',
  'too-large-by-hand': 'wrong-tool',
  'no-machine-in-a-hole': 'wrong-tool',
  'for-the-rest': 'too-gentle',
  'leaves-bar-bound': 'too-gentle',
  'too-smooth-after': 'too-gentle',
  'glazes-coating': 'wrong-tool',
  'shot-bounces': 'wrong-tool',
  'needs-a-floor': 'wrong-tool',
  'would-bruise-sound-concrete': 'harsher',
  'harsher-than-needed': 'harsher',
  'would-do-too': 'would-do',
  'not-on-this-ladder': 'would-do',
  'specialist-alternative': 'would-do',
};

/** A call beside the advice. */
export interface CallGrade {
  readonly kind: CallKind;
  readonly pick: Call;
  readonly answer: Call;
  /** What speaks against a method that was picked; empty when it is right. */
  readonly against: readonly Reason[];
  /** What the engine has for the answer: its reasons, or what stands before the work. */
  readonly reasons: readonly Reason[];
}

/** Compares a learner's call with the advice. Nothing but the advised call is ever `right`. */
export function gradeCall(pick: Call, advice: Advice): CallGrade {
  const first = firstCallers(advice);
  // Several holds of the same weight are cleared by several people: each of them may come first.
  const right = first.some((who) => who === pick) && advice.verdict !== 'prepare';
  const answer = right ? pick : callOf(advice);
  const graded = (kind: CallKind, against: readonly Reason[] = []): CallGrade => ({
    kind,
    pick,
    answer,
    against,
    reasons: advice.reasons,
  });
  if (isMethod(pick)) {
    if (pick === advice.method) return graded('right');
    const rejection = advice.rejections.find(({ method }) => method === pick);
    if (!rejection) throw new Error(`Nothing speaks against ${pick}.`);
    if (advice.verdict !== 'prepare') return graded('must-wait', [rejection]);
    return graded(kindOf[rejection.rule as keyof typeof kindOf], [rejection]);
  }
  if (advice.verdict === 'prepare') return graded('need-not-wait');
  if (right) return graded('right');
  return graded(advice.holds.some(({ who }) => who === pick) ? 'not-yet-enough' : 'someone-else');
}
