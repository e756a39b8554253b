import { rangeOf } from '$shared/figures';
import type { Job } from '$lib/answers/job';
import type { Plan } from '$lib/plan/plan';
import { laidWith } from '$lib/plan/with-crew';
import { crewDaysOf, type CrewPlan } from './from-plan';
import { mostFor } from './help';

/** A crew that keeps a day's limit: so many people, in equal turns where the plan's own turns do not. */
export interface OtherCrew {
  readonly people: number;
  readonly equal: boolean;
}

/** The crew's days of a plan as another crew does them. */
export type DaysWith = (crew: OtherCrew) => CrewPlan;

/** The days of a plan laid and dealt anew for another crew. */
export const daysWith =
  (plan: Plan, job: Job): DaysWith =>
  ({ people, equal }) =>
    crewDaysOf(plan, equal ? { ...job, crewDay: { ...job.crewDay, turns: 'equal' } } : job, {
      placed: laidWith(plan, job, people),
      crew: people,
    });

/** More people than this are no longer this crew. */
export const mostCrew = (crew: number): number => Math.min(mostFor(crew), rangeOf('limit.crew')[1]);

/**
 * The fewest people that keep a limit once the plan is laid for them: more people also do more in a
 * day, so what one day's work needs as it lies is not yet it. Null where no crew does of a size that
 * would still be this crew.
 * @param crew people there are
 * @param least fewer than this cannot do
 */
export function crewThatHolds(
  crew: number,
  least: number,
  days: DaysWith,
  holds: (crewPlan: CrewPlan) => boolean,
): OtherCrew | null {
  const most = mostCrew(crew);
  for (let people = Math.max(crew, least); people <= most; people++)
    for (const equal of [false, true]) {
      if (people === crew && !equal) continue;
      const other = { people, equal };
      if (holds(days(other))) return other;
    }
  return null;
}
