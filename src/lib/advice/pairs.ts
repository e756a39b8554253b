import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { methods, type MethodId } from '$shared/methods';
import { changesOf, endingOf, oftenMisjudged, type Change } from './margins';
import type { Verdict } from './types';

/** Two answers that, changed together, make the advice gentler or stop it, while neither does alone. */
export interface PairMargin {
  readonly changes: readonly [
    Pick<Change, 'question' | 'from' | 'to'>,
    Pick<Change, 'question' | 'from' | 'to'>,
  ];
  readonly verdict: Verdict;
  readonly method: MethodId | null;
  readonly effect: 'gentler' | 'stops';
}

/** How harsh an ending is, for "gentler": the class of the method, nothing left counts as harshest. */
const harshness = (method: MethodId | null): number => (method ? methods[method].class : 4);

/**
 * The smallest two-answer changes that make settled advice gentler, or stop it, where no part of the
 * pair alone does as much. Empty while the advice is not settled. Likeliest misjudgements first.
 */
export function pairMarginsOf(site: SiteAnswers, zone: ZoneAnswers): PairMargin[] {
  const answers = { ...site, ...zone };
  const now = endingOf(answers);
  if (!now) return [];
  const effectOf = (ending: { verdict: Verdict; method: MethodId | null } | null) =>
    ending === null || ending.verdict === 'find-out-first'
      ? null
      : ending.verdict === 'stop'
        ? now.verdict === 'stop'
          ? null
          : 'stops'
        : harshness(ending.method) < harshness(now.method) || now.verdict === 'stop'
          ? 'gentler'
          : null;
  const changes = oftenMisjudged
    .flatMap((question) => changesOf(question, answers))
    .map((change) => ({ change, alone: endingOf(change.apply(answers)) }));
  const pairs: PairMargin[] = [];
  changes.forEach((one, index) => {
    // A change that stops the work or makes it gentler by itself is a single margin already.
    if (effectOf(one.alone)) return;
    for (const other of changes.slice(index + 1)) {
      if (other.change.question === one.change.question || effectOf(other.alone)) continue;
      const ending = endingOf(other.change.apply(one.change.apply(answers)));
      const effect = effectOf(ending);
      if (ending && effect)
        pairs.push({
          changes: [told(one.change), told(other.change)],
          verdict: ending.verdict,
          method: ending.method,
          effect,
        });
    }
  });
  return pairs;
}

const told = ({ question, from, to }: Change) => ({ question, from, to });
