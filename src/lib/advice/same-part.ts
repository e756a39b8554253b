import { carriesLoad, hasAirBelow } from '$lib/answers/elements';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { PartInDoubt } from '$lib/answers/trial-record';
import { calledAtOnce } from './keep-clear';
import { missingQuestions, neverInTheWay } from './relevance';
import type { RuleId } from './rules';
import type { ZoneAdvice } from './zone-advice';

/** Of a wall, each place carries by itself, but for what its bars have lost. */
const failsAllOver: readonly RuleId[] = ['bar-section-loss'];

/**
 * Whether what was found in one zone keeps people off the whole part, so that nothing is worked in
 * its other zones either; null where it does not. What is only possible counts once every question
 * was put. Source: common practice, no published source.
 */
export function keepsOffPart(
  site: SiteAnswers,
  zone: ZoneAnswers,
  { holds, possibleHolds }: Pick<ZoneAdvice, 'holds' | 'possibleHolds'>,
): PartInDoubt | null {
  const { element } = site;
  if (!element?.some(hasAirBelow))
    return element?.some(carriesLoad) && holds.some(({ rule }) => failsAllOver.includes(rule))
      ? 'surely'
      : null;
  if (calledAtOnce(site, { holds, possibleHolds: [] })) return 'surely';
  const asked = missingQuestions(site, zone).every((id) => neverInTheWay.has(id));
  return asked && calledAtOnce(site, { holds, possibleHolds }) ? 'perhaps' : null;
}
