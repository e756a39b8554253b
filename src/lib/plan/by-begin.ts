import type { StepId } from '$shared/methods';
import { edgesAmong, nearest, type PlanStep } from './order';
import { everywhere, type Placed } from './schedule';

/**
 * Steps in the trade's order and, as far as that leaves it open, by when they begin, so that list,
 * chart and days have one numbering. A step waits for another where both come in one zone, or where
 * the rule holds over all zones, and only that is told: in two zones two steps may go on side by side.
 */
export function byBegin<Step extends PlanStep>(
  steps: readonly Step[],
  placed: readonly Placed[],
): readonly Step[] {
  const begins = new Map<StepId, number>();
  for (const { task, from } of placed)
    begins.set(task.step, Math.min(begins.get(task.step) ?? Infinity, from));
  const zonesOf = new Map(steps.map(({ id, zones }) => [id, new Set(zones)]));
  const meet = (one: StepId, other: StepId) =>
    [...(zonesOf.get(one) ?? [])].some((zone) => zonesOf.get(other)?.has(zone));
  const order = edgesAmong(steps.map(({ id }) => id));
  const waited = order.filter(
    ({ before, after, why }) => everywhere.includes(why) || meet(before, after),
  );
  const left = [...steps];
  const found: Step[] = [];
  while (left.length) {
    const waits = ({ id }: Step) =>
      order.some(({ before, after }) => after === id && left.some((each) => each.id === before));
    const begin = ({ id }: Step) => begins.get(id) ?? Infinity;
    const next = left
      .filter((step) => !waits(step))
      .reduce((first, each) => (begin(each) < begin(first) ? each : first));
    left.splice(left.indexOf(next), 1);
    found.push({
      ...next,
      after: nearest(
        waited.filter(({ after }) => after === next.id),
        waited,
      ),
    });
  }
  return found;
}
