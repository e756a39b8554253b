import { adviseZone } from '$lib/advice/advise';
import type { Job, Zone } from '$lib/answers/job';

/** What `advise` prints: the advice for every zone of a job, as data. */
export interface AdviceDocument {
  readonly format: 'down-to-sound.advice';
  readonly version: 1;
  readonly zones: readonly unknown[];
}

/** The advice for one zone, without the full examples behind each outcome. */
function zoneEntry(job: Job, zone: Zone) {
  const { outcomes, findOut, ...advice } = adviseZone(job.site, zone.answers);
  return {
    id: zone.id,
    ...advice,
    // A test that only clears a hold leaves the outcomes as they are: it settles null.
    findOut: findOut.map((each) => ({ settles: null, ...each })),
    outcomes: outcomes.map(({ verdict, method, share }) => ({ verdict, method, share })),
  };
}

/** The advice for a job. */
export const adviceDocument = (job: Job): AdviceDocument => ({
  format: 'down-to-sound.advice',
  version: 1,
  zones: job.zones.map((zone) => zoneEntry(job, zone)),
});
