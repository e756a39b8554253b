import { authored } from './authored';
import { isMethod, type Call } from './case';
import { levelOf, levels, stepLevel, type Level } from './level';
import { findCase } from './next';
import { casesOf, type PracticeSet } from './set';
import type { MixUp } from './given';

/** Cases to practise on next, and for what. */
export type PractiseNext =
  /** Two calls to tell apart. */
  | { readonly apart: readonly [Call, Call]; readonly set: PracticeSet }
  /** Nothing was mixed up: cases of this level. */
  | { readonly level: Level; readonly set: PracticeSet };

/** Things to practise that are named, and cases for each: enough for one sitting. */
const mostNamed = 3;
const mostOfEach = 3;

/**
 * What to practise after a set: for each of the most frequent mix-ups the authored cases in which
 * the one or the other is right; where nothing was mixed up, a level above the hardest of the set.
 * Cases that were not in the set come first.
 */
export function practiseNext(set: PracticeSet, mixUps: readonly MixUp[]): readonly PractiseNext[] {
  const done = casesOf(set);
  const newFirst = (ids: readonly string[]) => [
    ...ids.filter((id) => !done.includes(id)),
    ...ids.filter((id) => done.includes(id)),
  ];
  if (!mixUps.length) {
    const reached = done.flatMap((id) => {
      const one = findCase(id);
      return one ? [levelOf(one)] : [];
    });
    const level = stepLevel(reached.length ? (Math.max(...reached) as Level) : levels[0], 1);
    const cases = newFirst(authored.filter((one) => levelOf(one) === level).map(({ id }) => id));
    return [{ level, set: { cases: cases.slice(0, 2 * mostOfEach) } }];
  }
  const named = new Map<string, PractiseNext>();
  for (const { pick, answer } of mixUps) {
    // Mixed up either way round, it is the same two to tell apart.
    const pair = [pick, answer].sort().join(' ');
    if (named.size === mostNamed || named.has(pair)) continue;
    const cases = [answer, pick].flatMap((call) => newFirst(rightFor(call)).slice(0, mostOfEach));
    if (cases.length) named.set(pair, { apart: gentlerFirst(pick, answer), set: { cases } });
  }
  return [...named.values()];
}

const rightFor = (call: Call): string[] =>
  authored.filter(({ intended }) => intended.call === call).map(({ id }) => id);

/** Methods before those who come first; else as they were met. */
const gentlerFirst = (one: Call, other: Call): readonly [Call, Call] =>
  isMethod(other) && !isMethod(one) ? [other, one] : [one, other];
