import { zonesOfPart } from '$lib/trial/same-part';
import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Job } from '$lib/answers/job';
import { dayOf } from '$lib/plan/clock';
import type { Covering } from '$lib/plan/days';
import { adviseTried } from '$lib/trial/chain';
import { planJob, type AdviceOf, type Plan } from '$lib/plan/plan';
import type { SoFar } from '$lib/plan/so-far';
import { readForOwner } from '$lib/plan/conclusion';
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
  /** Restore, replace parts, or replace all: the conclusion, shares of the whole, options. */
  readonly owner: object;
  /** Every step on every zone: who does it with what, when, and how long it takes. */
  readonly tasks: readonly object[];
  /** By zone, hours from the start of work on day 1: the end of the last cleaning, the start of covering. */
  readonly covering: Readonly<Record<string, Covering>>;
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

function planEntry({
  zones,
  totals,
  schedule,
  tasks: _,
  drawn: _drawn,
  dayRows: _rows,
  soFar,
  ...plan
}: Plan) {
  const { days } = schedule;
  const elsewhere = ['days', 'placed', 'covering'];
  const timing = Object.fromEntries(
    Object.entries(schedule).filter(([name]) => !elsewhere.includes(name)),
  );
  return {
    ...plan,
    // Their advice is printed with the zones above.
    zones: zones.map(({ advice: _advice, tools, ...zone }) => ({
      ...zone,
      tools: Object.fromEntries(tools),
    })),
    quantities: totals,
    days,
    timing,
    ...(soFar && { soFar: farEntry(soFar) }),
  };
}

/** How far the crew has come; what it told of each task stands with the tasks. */
function farEntry({ told: _, doubted, ...soFar }: SoFar) {
  return { ...soFar, doubted: doubted.map(({ step, zone }) => ({ step, zone })) };
}

/**
 * Every step on every zone, in its place. `hours` are typical values, the ranges stand beside; null
 * where they are not known, or not the crew's. `from`, `to` and `dries` are hours from the start of
 * work on day 1, nights and days off counted: work on day 3 begins at 48. `dries` is when what is left
 * has dried or hardened: where something waits for it, and where it cures by itself.
 */
function taskEntries({ schedule: { placed }, soFar }: Plan) {
  return placed.map(({ task, people, from, to, dries, stretches }) => {
    const { step, zone, zones, tool, hours, without } = task;
    const told = soFar?.told.get(task);
    const dry = placed
      .filter(({ task: { wait, zones: there } }) => wait?.after === step && there[0] === zones[0])
      .map((waiting) => to + (waiting.task.wait?.hours.typical ?? 0));
    return {
      step,
      zone,
      ...(zone === null && { zones }),
      tool: tool.tool,
      ...(tool.class && { class: tool.class }),
      hours: hours && { running: hours.running.typical, atTask: hours.atTask.typical },
      hoursRange: hours && {
        running: [hours.running.low, hours.running.high],
        atTask: [hours.atTask.low, hours.atTask.high],
      },
      ...(without && { without }),
      people: people.map((person) => person + 1),
      day: stretches[0]?.day ?? dayOf(from),
      from,
      to,
      dries: dries ?? dry[0] ?? null,
      ...(soFar && {
        state: told?.spent.state ?? 'open',
        taken: told?.spent.hours ?? 0,
        left: told ? (told.left?.typical ?? null) : (hours?.atTask.typical ?? null),
      }),
    };
  });
}

/** What the owner is told: options line by line, shares of the whole or null while it is not known. */
function ownerEntry(job: Job, plan: Plan) {
  const { conclusion, shares, options, overlaps, leftOut } = readForOwner(job, plan);
  return { conclusion, shares, options, overlaps, leftOut };
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
      const result = safetyOf(
        {
          region,
          workers,
          crew,
          ...(job.crewDay?.dustHours && { dustHours: job.crewDay.dustHours }),
        },
        job.own,
      );
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
  // Planned as it was answered: the plan lays the drawing over it, and knows both.
  const plan = planJob(given, given.own, adviceOf);
  return {
    format: 'down-to-sound.advice',
    version: 1,
    zones: zonesOfPart(job, adviceOf).map((zone) =>
      adviceEntry(zone.id, adviseTried(job.site, zone, adviceOf, job.own).advice),
    ),
    heldUp: heldUp(plan),
    plan: planEntry(plan),
    owner: ownerEntry(given, plan),
    tasks: taskEntries(plan),
    covering: plan.schedule.covering,
    safety: safetyEntry(plan, job),
    ...(survey && { survey }),
  };
}
