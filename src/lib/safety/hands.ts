import type { Job } from '$lib/answers/job';
import type { OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { crewDaysOf, type CrewPlan, type CrewShift } from './from-plan';
import { crewThatHolds, daysWith, type DaysWith, type OtherCrew } from './other-crew';
import { shareOut } from './share-out';
import { settleTask, usualHours } from './tasks';
import type { SettledTask, WorkerDay } from './types';
import {
  pointsOfDay,
  usualPoints,
  vibrationLimit,
  vibrationOfTask,
  type MinutesBefore,
  type VibrationLimitId,
} from './vibration';
import type { Plan } from '$lib/plan/plan';

/** One tool in one person's hands on the worst day of a plan. */
interface InHand {
  readonly tool: ToolId;
  /** Trigger hours the plan has for that person, as the tool usually runs. */
  readonly hours: number;
  /** Trigger minutes before each value with this tool alone. */
  readonly minutes: Readonly<Record<VibrationLimitId, MinutesBefore>>;
}

/** What keeps everybody within a value: another crew, or more days with the one there is. */
interface Turns {
  /** The crew that clears the plan of it; null where none of a like size does. */
  readonly crew: OtherCrew | null;
  /** Fewest days on which the crew there is can do all of the job that shakes. */
  readonly days: number;
}

/** Days that do not hold, because they shake somebody longer than a value allows. */
export interface HandsOver {
  /** The gravest value that somebody passes. */
  readonly over: VibrationLimitId;
  /** Days of the plan on which somebody passes it. */
  readonly days: readonly number[];
  /** Days of the plan on which anything shakes. */
  readonly shaking: number;
  readonly crew: number;
  /** What the worst-off person has in hand that takes part in it. */
  readonly inHand: readonly InHand[];
  /** Within the value; null where not even the shortest turn fits. */
  readonly turns: Turns | null;
}

/** Part of a value used up at usual values; 1 is all of it. */
const partOf = (tasks: readonly SettledTask[], limit: VibrationLimitId, own?: OwnFigures): number =>
  tasks.reduce((sum, task) => sum + usualPoints(task, own), 0) /
  pointsOfDay(vibrationLimit(limit, own), own);

/** A day's work as one row of tasks. */
const workOf = (workers: readonly WorkerDay[]): SettledTask[] =>
  workers.flatMap(({ tasks }) => tasks.map(settleTask));

/** The days of shifts from one on, each with what its people do. */
const daysFrom = (first: number, shifts: readonly CrewShift[]) =>
  shifts.flatMap(({ days: [begin, end], workers }) =>
    Array.from({ length: end - begin + 1 }, (_, at) => ({ day: begin + at, workers })).filter(
      ({ day }) => day >= first,
    ),
  );

/** Each person's work on each day, and the part of the action value that it takes. */
const partsOn = (days: ReturnType<typeof daysFrom>, own?: OwnFigures) =>
  days.flatMap(({ day, workers }) =>
    workers.map(({ tasks }) => {
      const mine = tasks.map(settleTask);
      return { day, workers, mine, part: partOf(mine, 'action', own) };
    }),
  );

function inHandOf(tasks: readonly SettledTask[], own?: OwnFigures): InHand[] {
  const found = new Map<ToolId, InHand>();
  for (const task of tasks) {
    const { minutes } = vibrationOfTask(task, own);
    if (!minutes || usualPoints(task, own) <= 0) continue;
    const hours = (found.get(task.tool)?.hours ?? 0) + usualHours(task);
    found.set(task.tool, { tool: task.tool, hours, minutes });
  }
  return [...found.values()].sort((one, other) => other.hours - one.hours);
}

/**
 * Whether the days of a plan hold for the hands that do them, by the same sharing-out as the crew's
 * day. The plan lays hours of work; a tool that shakes may be in one person's hands for less.
 * Null where usual values keep everybody under the action value on every day.
 * Source: Directive 2002/44/EC, action value 2.5 and limit value 5 m/s2 over 8 h.
 * @param plan from `planJob(job)`
 * @param anew its days for another crew
 */
export function handsOver(
  plan: Plan,
  job: Job,
  { shifts, crew }: CrewPlan = crewDaysOf(plan, job),
  anew: DaysWith = daysWith(plan, job),
): HandsOver | null {
  const own = job.own;
  const first = plan.schedule.left?.first ?? 0;
  const days = daysFrom(first, shifts);
  const each = partsOn(days, own);
  const worst = each.reduce((worse, one) => (one.part > worse.part ? one : worse), {
    day: 0,
    workers: [] as readonly WorkerDay[],
    mine: [] as SettledTask[],
    part: 0,
  });
  const over = (['limit', 'action'] as const).find((id) => partOf(worst.mine, id, own) > 1 + 1e-9);
  if (!over) return null;
  const aim = over === 'limit' ? 'vibration-limit' : 'vibration-action';
  const oneDay = shareOut(workOf(worst.workers), [aim], crew, own);
  const whole = shareOut(
    days.flatMap(({ workers }) => workOf(workers)),
    [aim],
    crew,
    own,
  );
  const past = ({ mine }: { readonly mine: SettledTask[] }) => partOf(mine, over, own) > 1 + 1e-9;
  return {
    over,
    days: [...new Set(each.flatMap((one) => (past(one) ? [one.day] : [])))],
    shaking: new Set(each.flatMap(({ day, part }) => (part > 0 ? [day] : []))).size,
    crew,
    inHand: inHandOf(worst.mine, own),
    turns:
      oneDay.can === 'share' && whole.can === 'share'
        ? {
            crew: crewThatHolds(
              crew,
              oneDay.people,
              anew,
              (other) => !partsOn(daysFrom(first, other.shifts), own).some(past),
            ),
            days: whole.days,
          }
        : null,
  };
}
