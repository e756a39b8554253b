import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { methods, type MethodId } from '$shared/methods';
import { decisionOf } from './decision';
import { changesOf, isNearer, type Change } from './margins';
import { oftenMisjudged } from './often-misjudged';
import type { Verdict } from './types';

/** One of the two changes; a depth with the edge in mm where it flips. */
type Told = Pick<Change, 'question' | 'from' | 'to' | 'atMm'>;

/** Two answers that, changed together, make the advice gentler or stop it, while neither does alone. */
export interface PairMargin {
  readonly changes: readonly [Told, Told];
  readonly verdict: Verdict;
  readonly method: MethodId | null;
  readonly effect: 'gentler' | 'stops';
}
interface Pair extends Omit<PairMargin, 'changes'> {
  readonly changes: readonly [Change, Change];
}

/** How harsh an decision is, for "gentler": the class of the method, nothing left counts as harshest. */
const harshness = (method: MethodId | null): number => (method ? methods[method].class : 4);

/**
 * The smallest two-answer changes that make settled advice gentler, or stop it, where no part of the
 * pair alone does as much. Empty while the advice is not settled. Likeliest misjudgements first.
 */
export function pairMarginsOf(site: SiteAnswers, zone: ZoneAnswers): PairMargin[] {
  const answers = { ...site, ...zone };
  const now = decisionOf(answers);
  if (!now) return [];
  const effectOf = (decision: { verdict: Verdict; method: MethodId | null } | null) =>
    decision === null || decision.verdict === 'find-out-first'
      ? null
      : decision.verdict === 'stop'
        ? now.verdict === 'stop'
          ? null
          : 'stops'
        : harshness(decision.method) < harshness(now.method) || now.verdict === 'stop'
          ? 'gentler'
          : null;
  const changes = oftenMisjudged
    .flatMap((question) => changesOf(question, answers))
    .map((change) => ({ change, alone: decisionOf(change.apply(answers)) }));
  const pairs: Pair[] = [];
  changes.forEach((one, index) => {
    // A change that stops the work or makes it gentler by itself is a single margin already.
    if (effectOf(one.alone)) return;
    for (const other of changes.slice(index + 1)) {
      if (other.change.question === one.change.question || effectOf(other.alone)) continue;
      const decision = decisionOf(other.change.apply(one.change.apply(answers)));
      const effect = effectOf(decision);
      if (decision && effect)
        pairs.push({
          changes: [one.change, other.change],
          verdict: decision.verdict,
          method: decision.method,
          effect,
        });
    }
  });
  return pairs
    .filter((pair) => !pairs.some((other) => isNearerPair(other, pair)))
    .sort(byLikelihood)
    .map(({ changes: [one, other], ...pair }) => ({ ...pair, changes: [told(one), told(other)] }));
}

const told = ({ question, from, to, atMm }: Change): Told => ({
  question,
  from,
  to,
  ...(atMm !== undefined && { atMm }),
});

/** A pair is as likely as both its answers are to be misjudged. */
const rank = ({ changes }: Pair): number =>
  changes.reduce((sum, { question }) => sum + oftenMisjudged.indexOf(question), 0);
const byLikelihood = (one: Pair, other: Pair): number => rank(one) - rank(other);

/** Whether a pair is another with a depth nearer to the answer in the same direction: it says it all. */
function isNearerPair(one: Pair, other: Pair): boolean {
  if (one.verdict !== other.verdict || one.method !== other.method) return false;
  const [[first, second], [third, fourth]] = [one.changes, other.changes];
  return (
    (second === fourth && isNearer(first, third)) || (first === third && isNearer(second, fourth))
  );
}
