import type { CallKind } from './call';
import { gradeCall } from './call';
import { adviceOn, type Call } from './case';
import { findCase } from './next';
import { casesOf, type PracticeSet } from './set';
import type { Advice } from '$lib/advice/types';

/** What a learner gives back of one run through a set: what was picked, never whether it was right. */
export interface SetResult {
  readonly set: PracticeSet;
  /** What was picked, case by case, in the order of the set. */
  readonly calls: readonly Call[];
  /** When the run ended: whole minutes since 1970, UTC, by the learner's device. */
  readonly minute: number;
  /** A number drawn at the end of the run: two runs that end in one minute are told apart by it. */
  readonly mark: number;
  /** What the learner wants to be called here; may be empty. */
  readonly name: string;
}

/** A pick beside what the rules come to now; null for a case that this site does not have any more. */
export interface JudgedCall {
  readonly id: string;
  readonly pick: Call;
  readonly grade: { readonly kind: CallKind; readonly answer: Call } | null;
}

// Cases stay what they are as long as the page stands, and one set is judged for every learner.
const advices = new Map<string, Advice | null>();
function adviceFor(id: string): Advice | null {
  let advice = advices.get(id);
  if (advice === undefined) {
    const one = findCase(id);
    advice = one ? adviceOn(one) : null;
    advices.set(id, advice);
  }
  return advice;
}

/** Judges each pick anew by the rules of this site. */
export const judge = ({ set, calls }: Pick<SetResult, 'set' | 'calls'>): readonly JudgedCall[] =>
  casesOf(set).map((id, at) => {
    const pick = calls[at];
    if (!pick) throw new Error(`No pick for case ${String(at)} of a set.`);
    const advice = adviceFor(id);
    return { id, pick, grade: advice && gradeCall(pick, advice) };
  });

/** How many of the picks are the advised call. */
export const rightIn = (judged: readonly JudgedCall[]): number =>
  judged.filter(({ grade }) => grade?.kind === 'right').length;

/**
 * Wrong picks, the gravest first: what can hurt somebody, what makes the repair fail, what costs more
 * than is needed. A judgement of this site's own.
 */
const gravity: readonly Exclude<CallKind, 'right'>[] = [
  'must-wait',
  'not-yet-enough',
  'someone-else',
  'too-gentle',
  'wrong-tool',
  'harsher',
  'would-do',
  'need-not-wait',
];

/** One call taken for another. */
export interface MixUp {
  readonly pick: Call;
  readonly answer: Call;
  /** How often, over all learners and cases. */
  readonly times: number;
  /** How grave it was at its worst. */
  readonly kind: Exclude<CallKind, 'right'>;
}

/** What was taken for what: the most frequent first, then the gravest. */
export function mixUpsIn(results: readonly (readonly JudgedCall[])[]): readonly MixUp[] {
  const all = new Map<string, MixUp>();
  for (const { pick, grade } of results.flat()) {
    if (!grade || grade.kind === 'right') continue;
    const { answer, kind } = grade;
    const before = all.get(`${pick} ${answer}`);
    const worst = before && gravity.indexOf(before.kind) < gravity.indexOf(kind);
    all.set(`${pick} ${answer}`, {
      pick,
      answer,
      times: (before?.times ?? 0) + 1,
      kind: worst ? before.kind : kind,
    });
  }
  return [...all.values()].sort(
    (one, other) =>
      other.times - one.times || gravity.indexOf(one.kind) - gravity.indexOf(other.kind),
  );
}
