import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { calledAtOnce } from './keep-clear';
import type { Hold } from './types';
import { isCoatedUntested } from './untested-coating';
import type { ZoneAdvice } from './zone-advice';

/** What may stand before the work, by what is told at once. */
export interface ToldOf {
  readonly inSight: readonly Hold[];
  /** One tap away. */
  readonly folded: readonly Hold[];
}

/**
 * What of that which may stand before the work nobody has to open: the laboratory's report on a
 * coating that is there, before anything makes dust; what may stop the work; and what the engineer
 * is called for at once.
 */
export function possibleToldOf(
  site: SiteAnswers,
  zone: ZoneAnswers,
  advice: Pick<ZoneAdvice, 'holds' | 'possibleHolds'>,
): ToldOf {
  const called = calledAtOnce(site, advice);
  const coated = isCoatedUntested(site, zone);
  const isCoating = ({ rule }: Hold) => coated && rule === 'old-coating';
  const isInSight = (hold: Hold) =>
    isCoating(hold) || hold.verdict === 'stop' || hold.who === called;
  return {
    inSight: advice.possibleHolds
      .filter(isInSight)
      .sort((one, other) => +isCoating(other) - +isCoating(one)),
    folded: advice.possibleHolds.filter((hold) => !isInSight(hold)),
  };
}
