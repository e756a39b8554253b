import { adviseZone } from '$lib/advice/advise';
import type { Job, Zone } from '$lib/answers/job';
import { planJob } from '$lib/plan/plan';

/** What `advise` prints: the advice for every zone of a job, as data. */
export interface AdviceDocument {
  readonly format: 'down-to-sound.advice';
  readonly version: 1;
  readonly zones: readonly unknown[];
  /** All zones together: steps in order, quantities with their working, working days. */
  readonly plan: object;
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

function planEntry(job: Job) {
  const { zones, totals, schedule, ...plan } = planJob(job);
  const { days, ...timing } = schedule;
  return {
    ...plan,
    // Their advice is printed with the zones above.
    zones: zones.map(({ id, method, holds, quantities, patches, steps }) => ({
      id,
      method,
      holds,
      quantities,
      patches,
      steps,
    })),
    quantities: totals,
    days,
    timing,
  };
}

/** The advice for a job. */
export const adviceDocument = (job: Job): AdviceDocument => ({
  format: 'down-to-sound.advice',
  version: 1,
  zones: job.zones.map((zone) => zoneEntry(job, zone)),
  plan: planEntry(job),
});
