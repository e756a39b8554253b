import type { OwnFigures } from '$shared/figures';
import type { CrewPlan } from './from-plan';
import { safetyOf, type SafetyResult } from './safety-of';
import type { Region, WorkerDay } from './types';

/** More days than this are not shared out at once: it would take too long. */
const mostDays = 60;

/** Days on which the crew works; none of those on which all must wait. */
export const crewDays = ({ shifts }: CrewPlan): number =>
  shifts.reduce(
    (sum, { days: [first, last], steps }) => sum + (steps.length ? last - first + 1 : 0),
    0,
  );

/** All days of a plan shared out at once; null where there are too many. */
export function wholeJobOf(plan: CrewPlan, region: Region, own?: OwnFigures): SafetyResult | null {
  if (crewDays(plan) > mostDays) return null;
  const workers = plan.shifts.flatMap(({ days: [first, last], workers: crew }) =>
    Array.from({ length: last - first + 1 }, (_, day): WorkerDay[] =>
      crew.map(({ id, tasks }) => ({ id: `${String(first + day)}.${id}`, tasks })),
    ).flat(),
  );
  return safetyOf({ region, workers, crew: plan.crew }, own);
}
