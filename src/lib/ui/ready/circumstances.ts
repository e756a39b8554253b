import { adviseZone } from '$lib/advice/advise';
import { isFloor } from '$lib/advice/demands';
import type { Job, Zone } from '$lib/answers/job';
import { choicesOf } from '$lib/answers/questions';
import { needsOf } from '$lib/readiness/open-needs';
import type { ZoneCircumstances } from '$lib/readiness/zone';

/** Whether enough is known of a zone for its checks to mean anything. */
export const hasBegun = (zone: Zone): boolean => Object.keys(zone.answers).length > 0;

/** What a zone of a job is judged by, but for the time, which runs on. */
export function circumstancesOf(job: Job, zone: Zone): Omit<ZoneCircumstances, 'now'> {
  const { site, own } = job;
  const advice = adviseZone(site, zone.answers);
  return {
    needs: needsOf(site, zone.answers, advice, own),
    area: zone.answers.area ?? 'unknown',
    method: advice.method ?? advice.outcomes[0]?.method ?? null,
    floor: (site.element ?? choicesOf('element')).every(isFloor),
    held: advice.verdict === 'stop' || advice.holds.length > 0,
    ...(own && { own }),
  };
}
