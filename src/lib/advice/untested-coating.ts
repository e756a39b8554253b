import { mayBeThere, warnedOf, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { Contaminant, QuestionId } from '$lib/answers/questions';
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

/** Something on it that may be old enough to hold lead or asbestos. */
const coatings: ReadonlySet<Contaminant> = new Set<Contaminant>([
  'thin-coating',
  'thick-coating',
  'rubbery-coating',
]);

/** A coating is there, or may be, and nobody has said that it may be old: then a hold tells of it. */
export const isOfUnknownAge = (site: SiteAnswers, { contamination }: ZoneAnswers): boolean =>
  !isUntested(site) &&
  !!contamination &&
  mayBeThere(contamination).some((each) => coatings.has(each));

/** A coating is there, and may be old enough: the laboratory comes before anything else. */
export const isCoatedUntested = (site: SiteAnswers, { contamination }: ZoneAnswers): boolean =>
  isUntested(site) && !!contamination?.yes.some((each) => coatings.has(each));

/** Questions that are answered by scraping, brushing or picking, if by anything at the place itself. */
const scrapedFor: readonly QuestionId[] = [
  'depth',
  'looseness',
  'contamination',
  'cracks',
  'steel',
  'barLoss',
  'barDiameter',
];

/** An old coating or glue is there, or may be, that nobody has tested for lead and asbestos. */
const isUntested = (site: SiteAnswers): boolean =>
  warnedOf(site)?.includes('old-coating-or-adhesive') ?? false;

/**
 * Whether a test waits for the laboratory's report on an old coating: its dust is what the report
 * is about. Source: common practice, no published source.
 */
export const waitsForSample = (site: SiteAnswers, test: TestId): boolean =>
  isUntested(site) && dusty.has(test);

/** The same of how a question is usually answered. */
export const isScrapedUntested = (site: SiteAnswers, question: QuestionId): boolean =>
  isUntested(site) && scrapedFor.includes(question);

/** Nobody has said yet whether a coating lies on it. One that is known was asked about with the warnings. */
const mayBeCoated = ({ contamination }: ZoneAnswers): boolean =>
  !contamination ||
  (contamination.maybe.some((each) => coatings.has(each)) &&
    !contamination.yes.some((each) => coatings.has(each)));

/**
 * Whether whoever tests has to look for paint or glue first: no warning names any, but what lies on
 * it is open, and scraping an old coating sets free what it may hold. Source: common practice, no
 * published source.
 */
export const looksForCoating = (site: SiteAnswers, zone: ZoneAnswers, test: TestId): boolean =>
  !isUntested(site) && mayBeCoated(zone) && dusty.has(test);

/** The same of how a question is usually answered. */
export const isScrapedPerhapsCoated = (
  site: SiteAnswers,
  zone: ZoneAnswers,
  question: QuestionId,
): boolean => !isUntested(site) && mayBeCoated(zone) && scrapedFor.includes(question);

/** What may be taken off while something is found out. */
export type TakenOff = 'nothing' | 'no-coating' | 'little';

/**
 * No more than a test needs; nothing, dry or wet, while an old coating waits for its sample; and no
 * coating where one lies on it, or may, of which nobody knows how old it is.
 * Source: common practice, no published source.
 */
export function takenOff(site: SiteAnswers, zone: ZoneAnswers): TakenOff {
  if (isUntested(site)) return 'nothing';
  return mayBeCoated(zone) || isOfUnknownAge(site, zone) ? 'no-coating' : 'little';
}
