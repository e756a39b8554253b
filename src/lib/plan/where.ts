import type { StepId } from '$shared/methods';
import type { Schedule } from './days';

/** What is done on one zone on one day. */
export interface ZoneOnDay {
  readonly zone: string;
  readonly steps: readonly StepId[];
}

/**
 * Which parts of the surface are worked on, on each day on which somebody works, days in order.
 * Once-a-job steps stand on no part, and what dries or cures by itself is no work.
 */
export function zonesByDay({ placed }: Pick<Schedule, 'placed'>): Map<number, ZoneOnDay[]> {
  const days = new Map<number, Map<string, StepId[]>>();
  for (const { task, people, stretches } of placed) {
    if (task.zone === null || people.length === 0) continue;
    for (const { day } of stretches) {
      const zones = days.get(day) ?? new Map<string, StepId[]>();
      days.set(day, zones);
      const steps = zones.get(task.zone) ?? [];
      zones.set(task.zone, steps);
      if (!steps.includes(task.step)) steps.push(task.step);
    }
  }
  return new Map(
    [...days]
      .sort(([one], [other]) => one - other)
      .map(([day, zones]) => [day, [...zones].map(([zone, steps]) => ({ zone, steps }))]),
  );
}

/** Days in a row on which the same parts are worked on. */
export interface PartsRun {
  readonly from: number;
  readonly to: number;
  readonly zones: readonly string[];
}

/** @param order ids of the zones, as the job has them */
export function partsRuns(
  schedule: Pick<Schedule, 'placed'>,
  order: readonly string[],
): PartsRun[] {
  const runs: PartsRun[] = [];
  for (const [day, there] of zonesByDay(schedule)) {
    const zones = order.filter((id) => there.some(({ zone }) => zone === id));
    const last = runs.at(-1);
    if (last && last.to === day - 1 && String(last.zones) === String(zones))
      runs[runs.length - 1] = { ...last, to: day };
    else runs.push({ from: day, to: day, zones });
  }
  return runs;
}
