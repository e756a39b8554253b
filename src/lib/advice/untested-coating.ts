import type { SiteAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import type { TestId } from './types';

/** Tests that scrape, brush or drill. Tapping and a drop of water throw nothing into the air. */
const dusty: ReadonlySet<TestId> = new Set<TestId>([
  'scrape',
  'brush',
  'measure-depth',
  'look-close',
  'look-at-steel',
  'measure-bar',
  'chloride-test',
]);

/** Questions that are answered by scraping or brushing. */
const scrapedFor: readonly QuestionId[] = ['looseness', 'barLoss'];

/** An old coating or glue is there, or may be, that nobody has tested for lead and asbestos. */
const isUntested = ({ warnings }: SiteAnswers): boolean =>
  [...(warnings?.yes ?? []), ...(warnings?.maybe ?? [])].includes('old-coating-or-adhesive');

/**
 * Whether a test waits for the laboratory's report on an old coating: its dust is what the report
 * is about. Source: common practice, no published source.
 */
export const waitsForSample = (site: SiteAnswers, test: TestId): boolean =>
  isUntested(site) && dusty.has(test);

/** The same of how a question is usually answered. */
export const isScrapedUntested = (site: SiteAnswers, question: QuestionId): boolean =>
  isUntested(site) && scrapedFor.includes(question);
