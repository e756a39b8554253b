import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Job } from '$lib/answers/job';
import { planJob, type AdviceOf, type Plan } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { safetyOf } from '$lib/safety/safety-of';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf, type SurveyResult } from '$lib/survey/survey';
import { heldUp, type HeldUp } from './held-up';

/** What `advise` prints: the advice for every zone of a job, as data. */
export interface AdviceDocument {
  readonly format: 'down-to-sound.advice';
  readonly version: 1;
  readonly zones: readonly unknown[];
  /** Which zones the plan leaves out, and what for. */
  readonly heldUp: HeldUp;
  /** All zones together: steps in order, quantities with their working, working days. */
  readonly plan: object;
  /** Dust, noise and vibration of each person on each day of the plan, and how to share it out. */
  readonly safety: object;
  /** What the drawing comes to; absent where the job has none. */
  readonly survey?: SurveyResult;
}

/** The advice for one zone, without the full examples behind each outcome. */
function adviceEntry(id: string, { outcomes, findOut, ...advice }: ZoneAdvice) {
  return {
    id,
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
    zones: zones.map(({ id, method, holds, possibleHolds, quantities, patches, steps }) => ({
      id,
      method,
      holds,
      possibleHolds,
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

/**
 * The advice for a job.
 * @param adviceOf the advice for the answers of each of its zones, as drawn, where it is had already
 */
export function adviceDocument(given: Job, adviceOf: AdviceOf = adviseZone): AdviceDocument {
  const survey = surveyOf(given);
  const job = drawnJob(given, survey);
  const plan = planJob(job, job.own, adviceOf);
  return {
    format: 'down-to-sound.advice',
    version: 1,
    zones: job.zones.map(({ id, answers }) => adviceEntry(id, adviceOf(job.site, answers))),
    heldUp: heldUp(plan),
    plan: planEntry(plan),
    safety: safetyEntry(plan, job),
    ...(survey && { survey }),
  };
}
