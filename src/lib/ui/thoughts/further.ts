import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { marginsOf } from '$lib/advice/margins';
import { pairMarginsOf, type PairMargin } from '$lib/advice/pairs';
import { whyNotAsked } from '$lib/advice/relevance';
import { resultsOf } from '$lib/advice/results';
import type { Margin, ResultOf } from '$lib/advice/zone-advice';

/** What stands further down the page and takes longer to work out than the advice itself. */
export interface Further {
  readonly margins: readonly Margin[];
  readonly pairs: readonly PairMargin[];
  /** For the next best tests: what each result would mean. */
  readonly results: Readonly<Partial<Record<QuestionId, readonly ResultOf[]>>>;
}

/**
 * Works out what would change settled advice, or what the next tests would settle.
 * @param next the questions of the tests to do next; null where the advice is settled
 */
export function furtherOf(
  site: SiteAnswers,
  zone: ZoneAnswers,
  next: readonly QuestionId[] | null,
): Further {
  const asked = ({ question }: { question: QuestionId }) =>
    whyNotAsked(question, site, zone) === null;
  if (!next)
    return {
      margins: marginsOf(site, zone).filter(asked),
      pairs: pairMarginsOf(site, zone).filter(({ changes }) => changes.every(asked)),
      results: {},
    };
  return {
    margins: [],
    pairs: [],
    results: Object.fromEntries(next.map((id) => [id, resultsOf(id, site, zone)])),
  };
}
