import type { Region } from '$lib/answers/crew-day';
import type { Job } from '$lib/answers/job';
import type { Plan } from '$lib/plan/plan';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { earsFor, mostWithBoth, peopleWithBoth, takenOffBy } from './ears';
import { crewDaysOf, type CrewPlan, type CrewShift } from './from-plan';
import { heardFrom } from './noise';
import { noiseAim, type NoiseLimitId } from './noise-limits';
import { usualPart, usualPartOf } from './noise-usual';
import { crewThatHolds, daysWith, type DaysWith, type OtherCrew } from './other-crew';
import { settleTask, usualHours } from './tasks';
import type { SettledTask } from './types';

/** Days on which plugs and muffs together do not take off enough for somebody, as tools usually are. */
export interface EarsOver {
  readonly days: readonly number[];
  /** Steps with the loudest tool of whoever is over, each with the hours of it that a person may have; null as for `most`. */
  readonly steps: ReadonlyMap<StepId, number | null>;
  readonly crew: number;
  /** The loudest tool of the worst-off person, and how long the plan has them at it, trigger hours. */
  readonly tool: ToolId;
  readonly hours: number;
  /** Decibels that must come off for that person, and that plugs and muffs together take off. */
  readonly needed: number;
  readonly takenOff: number;
  /** Hours of that tool that a person may have with both worn, the rest of the day shorter alike; null where not even the shortest turn fits. */
  readonly most: number | null;
  /** The crew with which the plan would do; null where none of a like size does. */
  readonly with: OtherCrew | null;
}

/** The tool that takes most of a limit in a day, how much, and for how long. */
function loudest(tasks: readonly SettledTask[], limit: NoiseLimitId, own?: OwnFigures) {
  const tools = new Map<ToolId, { tool: ToolId; part: number; hours: number }>();
  for (const task of tasks) {
    const { part, hours } = tools.get(task.tool) ?? { part: 0, hours: 0 };
    tools.set(task.tool, {
      tool: task.tool,
      part: part + usualPartOf(task, limit, own),
      hours: hours + usualHours(task),
    });
  }
  return [...tools.values()].toSorted((one, other) => other.part - one.part)[0];
}

/** Each person's day from one on, and the part of a limit that it takes with the others' machines. */
const partsOn = (
  shifts: readonly CrewShift[],
  from: number,
  limit: NoiseLimitId,
  own?: OwnFigures,
) =>
  shifts.flatMap(({ days: [first, last], workers }) => {
    if (last < from) return [];
    const all = workers.map(({ tasks }) => tasks.map(settleTask));
    return all.map((tasks) => {
      const beside = heardFrom(
        tasks,
        all.filter((other) => other !== tasks),
        own,
      );
      return { first, last, all, tasks, beside, part: usualPart(tasks, beside, limit, own) };
    });
  });

/**
 * Whether the days of a plan hold for the ears, at usual values and with what is worn counted in.
 * Null where plugs and muffs together are enough for everybody.
 * Source: the rules of noise-limits.ts; what protectors take off as in ears.ts.
 * @param plan from `planJob(job)`
 * @param anew its days for another crew
 */
export function earsOver(
  plan: Plan,
  job: Job,
  region: Region,
  { shifts, crew }: CrewPlan = crewDaysOf(plan, job),
  anew: DaysWith = daysWith(plan, job),
): EarsOver | null {
  const { own } = job;
  const limit = noiseAim[region];
  const left = plan.schedule.left?.first ?? 0;
  const tooLoud = ({ part }: { readonly part: number }) =>
    earsFor(part, limit, own).by === 'neither';
  const over = partsOn(shifts, left, limit, own).filter(tooLoud);
  const worst = over.toSorted((one, other) => other.part - one.part)[0];
  const loud = worst && loudest(worst.tasks, limit, own);
  if (!worst || !loud) return null;
  const most = mostWithBoth(limit, own);
  // All of the day grows shorter alike.
  const mayHave = (part: number, { hours }: { readonly hours: number }) => {
    const fits = (most / part) * hours;
    return fits < valueOf('share.step', own) ? null : fits;
  };
  const steps = new Map<StepId, number | null>();
  for (const { tasks, part } of over) {
    const mine = loudest(tasks, limit, own);
    const hours = mine ? mayHave(part, mine) : null;
    for (const { step, tool } of tasks)
      if (tool === mine?.tool) {
        const before = steps.get(step);
        steps.set(step, before === undefined ? hours : Math.min(before ?? 0, hours ?? 0) || null);
      }
  }
  const whole = usualPart(worst.all.flat(), [], limit, own);
  return {
    days: [
      ...new Set(
        over.flatMap(({ first, last }) =>
          Array.from({ length: last - first + 1 }, (_, at) => first + at).filter(
            (day) => day >= left,
          ),
        ),
      ),
    ],
    steps,
    crew,
    tool: loud.tool,
    hours: loud.hours,
    needed: earsFor(worst.part, limit, own).needed,
    takenOff: takenOffBy(own).both,
    most: mayHave(worst.part, loud),
    with: crewThatHolds(
      crew,
      peopleWithBoth(whole, usualPart([], worst.beside, limit, own), limit, own),
      anew,
      (other) => !partsOn(other.shifts, left, limit, own).some(tooLoud),
    ),
  };
}
