import { setKeyOf } from '$lib/keep/practice/result-code';
import type { KeptResult } from '$lib/keep/practice/result-store';
import { judge, mixUpsIn, rightIn, type JudgedCall, type MixUp } from '$lib/practice/given';
import { practiseNext, type PractiseNext } from '$lib/practice/practise-next';
import type { PracticeSet } from '$lib/practice/set';

/** One learner's result, judged by the rules of this site. */
export interface GivenRow extends KeptResult {
  readonly judged: readonly JudgedCall[];
  readonly right: number;
}
/** Every result of one set, and what they come to together. */
export interface GivenSet {
  readonly key: string;
  readonly set: PracticeSet;
  readonly rows: readonly GivenRow[];
  readonly mixUps: readonly MixUp[];
  readonly next: readonly PractiseNext[];
}

/** Kept results by their set, judged; in the order in which the first of each ended. */
export function setsOf(results: readonly KeptResult[]): readonly GivenSet[] {
  const sets = new Map<string, KeptResult[]>();
  for (const one of results) {
    const key = setKeyOf(one.result);
    sets.set(key, [...(sets.get(key) ?? []), one]);
  }
  return [...sets].map(([key, of]) => {
    const rows = of.map((one) => {
      const judged = judge(one.result);
      return { ...one, judged, right: rightIn(judged) };
    });
    const set = of[0]?.result.set ?? { cases: [] };
    const mixUps = mixUpsIn(rows.map(({ judged }) => judged));
    return { key, set, rows, mixUps, next: practiseNext(set, mixUps) };
  });
}
