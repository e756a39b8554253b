import { methodIds, type MethodId } from '$shared/methods';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choose, methodsFor, rejectionsFor } from './choice';
import { demandsOf, type Demands } from './demands';
import { besides, spread, type Completion } from './neighbours';
import { workFor } from './steps/all';
import type { Work } from './steps/work';
import { targetOf } from './target';
import {
  targetParts,
  type Advice,
  type Reason,
  type Rejection,
  type Step,
  type Target,
  type TargetPart,
} from './types';

/** What a completion calls for, whatever may still hold it up. */
export interface Case {
  readonly demands: Demands;
  readonly work: Work;
  /** Worked out when asked for: where much is open, a few cases tell. */
  target(): Target;
}

function caseOf({ site, zone }: Completion): Case {
  const demands = demandsOf(site, zone);
  const { method, rest } = methodsFor(demands);
  return {
    demands,
    work: workFor({ site, zone, demands, method, rest }),
    target: () => targetOf(site, zone, demands, method),
  };
}

/**
 * So many completions are looked at one by one; of more, so many beside the neighbours. Two thousand
 * were too few: now and then a reason was told that one completion in some thousands does not share.
 */
const looked = { all: 6000, some: 200 };

/**
 * Every completion, as long as they are few. Of many: these, all that differ from the first, whose
 * reasons are told, in one answer or in two, since a reason may have two grounds and fall only when
 * both are gone, and some spread over all the rest.
 * `tests/unit/possibilities.test.ts` compares what is told with every completion.
 */
export function casesAround(
  completions: readonly Completion[],
  open: SiteAnswers & ZoneAnswers,
): readonly Case[] {
  const [first] = completions;
  if (!first) return [];
  const { found, whole } = spread(first, open, looked);
  return (whole ? found : [...completions, ...besides(first, open), ...found]).map(caseOf);
}

const same = (one: Reason, other: Reason): boolean =>
  one.rule === other.rule &&
  (one.facts === other.facts || JSON.stringify(one.facts) === JSON.stringify(other.facts));

/** Takes out of a list of reasons those that another list does not have. */
function dropMissing(still: Set<Reason>, there: readonly Reason[]): void {
  for (const reason of still) if (!there.some((each) => same(reason, each))) still.delete(reason);
}

/** The step with those of its reasons that hold whichever way open answers turn out. */
export function stepInCommon(step: Step, around: readonly Case[]): Step {
  const still = new Set(step.why);
  for (const { work } of around) {
    const there = work[step.id];
    if (there) dropMissing(still, there);
    if (!still.size) break;
  }
  return { ...step, why: step.why.filter((reason) => still.has(reason)) };
}

/** What of the target is not the same in every case. */
export const openTargets = (target: Target, around: readonly Case[]): readonly TargetPart[] => {
  const still = new Set<TargetPart>(targetParts);
  for (const other of around) {
    const there = other.target();
    for (const part of still) if (String(there[part]) !== String(target[part])) still.delete(part);
    if (!still.size) break;
  }
  return targetParts.filter((part) => !still.has(part));
};

/** The reasons for a method, those that do not hold in every case told as the likeliest. */
export const reasonsInCommon = (
  reasons: readonly Reason[],
  around: readonly Case[],
): readonly Reason[] => {
  const still = new Set(reasons);
  for (const { demands } of around) {
    dropMissing(still, choose(demands).reasons);
    if (!still.size) break;
  }
  return reasons.map((reason) => (still.has(reason) ? reason : { ...reason, likeliest: true }));
};

/**
 * One rejection for each method that no completion advises: one that holds in every case, or the
 * likeliest, told as such.
 */
export function rejectionsInCommon(
  left: readonly MethodId[],
  likeliestFirst: readonly Advice[],
  demands: readonly Demands[],
): Rejection[] {
  // Each case is thought through when first asked for: one that differs settles a method.
  const known: (readonly Rejection[])[] = [];
  const everywhere = (holds: (list: readonly Rejection[]) => boolean): boolean =>
    demands.every((each, index) => holds((known[index] ??= rejectionsFor(choose(each), each))));
  return methodIds
    .filter((method) => !left.includes(method))
    .flatMap((method) => {
      const of = (lists: readonly (readonly Rejection[])[]) =>
        lists.flatMap((list) => list.filter((each) => each.method === method));
      // What only a stop keeps from it is no worse than the rest: it waits.
      const waits = likeliestFirst.find(
        (each) => each.verdict === 'stop' && each.underneath === method,
      );
      if (waits) return of([waits.rejections]);
      const first = of(likeliestFirst.map(({ rejections }) => rejections));
      const own = first.filter(({ rule }) => rule !== 'held');
      // What holds the work is told with its reasons; a method it holds needs no other.
      const [likeliest] = own.length ? own : first;
      if (!likeliest) return [];
      const sure =
        likeliest.rule === 'held' ||
        (own.every((each) => same(each, likeliest)) &&
          everywhere((list) => of([list]).every((each) => same(each, likeliest))));
      return [sure ? likeliest : { ...likeliest, likeliest: true as const }];
    });
}
