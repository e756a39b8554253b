import { adviseZone } from '$lib/advice/advise';
import type { Job, Zone } from '$lib/answers/job';
import { planJob, type Plan } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { safetyOf } from '$lib/safety/safety-of';

/** What `advise` prints: the advice for every zone of a job, as data. */
export interface AdviceDocument {
  readonly format: 'down-to-sound.advice';
  readonly version: 1;
  readonly zones: readonly unknown[];
  /** All zones together: steps in order, quantities with their working, working days. */
  readonly plan: object;
  /** Dust, noise and vibration of each person on each day of the plan, and how to share it out. */
  readonly safety: object;
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

function planEntry({ zones, totals, schedule, ...plan }: Plan) {
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

/** Days on which the crew does the same stand once, with the first and the last of them. */
function safetyEntry(plan: Plan, job: Job) {
  const { shifts, crew, ...rest } = crewDaysOf(plan, job);
  // Without a word from the reader the table's own country.
  const region = job.crewDay?.region ?? 'us';
  return {
    region,
    crew,
    ...rest,
    shifts: shifts.map(({ days, steps, workers }) => {
      const result = safetyOf({ region, workers, crew }, job.own);
      return { days, steps, ...(result.ok ? result.safety : { problems: result.problems }) };
    }),
  };
}

/** The advice for a job. */
export function adviceDocument(job: Job): AdviceDocument {
  const plan = planJob(job);
  return {
    format: 'down-to-sound.advice',
    version: 1,
    zones: job.zones.map((zone) => zoneEntry(job, zone)),
    plan: planEntry(plan),
    safety: safetyEntry(plan, job),
  };
}
