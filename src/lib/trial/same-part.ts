import { keepsOffPart } from '$lib/advice/same-part';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { carriesLoad } from '$lib/answers/elements';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import type { PartInDoubt, TriedAnswers } from '$lib/answers/trial-record';
import { adviseTried, withoutMargins, type AdviseTried } from './chain';

/** What each zone came to: an edit of one asks the advice of the others again. */
const known = new Map<string, PartInDoubt | null>();
const mostKnown = 500;

function keepsOff(
  site: SiteAnswers,
  zone: Zone,
  { own }: Job,
  advise: AdviseTried,
): PartInDoubt | null {
  const { answers, trial, readiness } = zone;
  const key = JSON.stringify([site, answers, trial, readiness?.results.chloride, own]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const advice: ZoneAdvice = adviseTried(site, zone, advise, own).advice;
  const keeps = keepsOffPart(site, answers, advice);
  if (known.size >= mostKnown) known.clear();
  known.set(key, keeps);
  return keeps;
}

/**
 * The zones of a job as their advice is asked for. What hangs is one part: where one zone of it keeps
 * people off, none of the others is worked before the engineer has spoken.
 * Source: common practice, no published source.
 * @param job with what its drawing measures
 */
export function zonesOfPart(job: Job, advise: AdviseTried = withoutMargins): readonly Zone[] {
  const { site, zones } = job;
  if (zones.length < 2 || !site.element?.some(carriesLoad)) return zones;
  const doubts = zones.map((zone) => keepsOff(site, zone, job, advise));
  // Counted once, not zone by zone: a job may have thousands.
  const counted = (['surely', 'perhaps'] as const).map((doubt) => ({
    doubt,
    count: doubts.filter((each) => each === doubt).length,
  }));
  return zones.map((zone, place): Zone => {
    const partInDoubt = counted.find(
      ({ doubt, count }) => count > +(doubts[place] === doubt),
    )?.doubt;
    if (!partInDoubt) return zone;
    const answers: TriedAnswers = { ...zone.answers, partInDoubt };
    return { ...zone, answers };
  });
}
