import { carriesLoad } from '$lib/answers/elements';
import { warnedOf, type SiteAnswers } from '$lib/answers/answers';
import type { RuleId } from './rules';
import type { Hold } from './types';
import type { ZoneAdvice } from './zone-advice';

/** What says that a part is replaced through its full depth. */
export const throughDepth: readonly RuleId[] = ['full-depth', 'through'];

/** What is seen in concrete that goes out with the part. */
const goesWithIt: readonly RuleId[] = [
  'moving-crack',
  'rust-with-salts',
  'rust-at-crack',
  'nothing-over-rust',
  'bloom-under-dry-finish',
  'bar-section-loss',
];

/**
 * Whether a contractor replaces the part through its full depth and nothing else stops the work:
 * nothing is to be cleared then, and nothing is prepared. Source: UFC 3-270-04, common practice.
 */
export const isMadeNew = (holds: readonly Hold[]): boolean => {
  const stops = holds.filter(({ verdict }) => verdict === 'stop');
  return (
    stops.length > 0 &&
    stops.every(({ rule, who }) => throughDepth.includes(rule) && who !== 'engineer')
  );
};

/**
 * The advice for a part that is made new, without what only preparing its surface would bring: what
 * may be in the concrete that goes, and the load of what carries none.
 */
export function asMadeNew(advice: ZoneAdvice, site: SiteAnswers): ZoneAdvice {
  const possibleHolds = advice.possibleHolds.filter(({ rule }) => !goesWithIt.includes(rule));
  const engineer = [...advice.holds, ...possibleHolds].some(({ who }) => who === 'engineer');
  const told = warnedOf(site) ?? [];
  const carries =
    engineer ||
    told.includes('tendons-possible') ||
    told.includes('holds-something-up') ||
    !site.element ||
    site.element.some(carriesLoad);
  return {
    ...advice,
    possibleHolds,
    findOut: advice.findOut.filter(({ question }) => question !== 'contamination'),
    cautions: advice.cautions.filter((hazard) => hazard !== 'structure' || carries),
  };
}
