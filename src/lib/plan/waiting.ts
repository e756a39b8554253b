import { goesAheadUnder } from '$lib/advice/begin';
import type { StepId } from '$shared/methods';
import type { Plan } from './plan';
import type { Task } from './tasks';

/**
 * Zones that are planned for but must wait: something has to be cleared, measured or looked at
 * before anybody works there.
 */
export const waitingZones = ({ zones }: Pick<Plan, 'zones'>): ReadonlySet<string> =>
  new Set(zones.flatMap(({ id, holds }) => (holds.length ? [id] : [])));

/** Steps that a patch is sawn and broken out by. */
const atPatches: readonly StepId[] = ['saw-cut', 'break-out'];

/** Zones whose patches may be sawn and broken out as it stands: the plan has it, and nothing stands before it. */
export function sawnNow(plan: Pick<Plan, 'zones'>): readonly string[] {
  const waiting = waitingZones(plan);
  return plan.zones
    .filter(({ id, steps }) => !waiting.has(id) && steps.some((step) => atPatches.includes(step)))
    .map(({ id }) => id);
}

/** Tells of a step in a zone whether nobody may begin it there: what only looks or makes safe goes ahead. */
export function waitsAt(plan: Pick<Plan, 'zones'>): (step: StepId, zone: string) => boolean {
  const waiting = new Map(plan.zones.map(({ id, holds }) => [id, holds]));
  return (step, zone) => {
    const holds = waiting.get(zone) ?? [];
    return holds.length > 0 && !goesAheadUnder(step, holds);
  };
}

/**
 * Tells of each task whether nobody may begin it: all its zones wait, and it is none of what keeps
 * people safe or only looks. What is done once for the job goes ahead where any zone does.
 */
export function mustWait(
  plan: Pick<Plan, 'zones'>,
): (task: Pick<Task, 'step' | 'zones'>) => boolean {
  const waits = waitsAt(plan);
  return ({ step, zones }) => zones.length > 0 && zones.every((zone) => waits(step, zone));
}

/** The same, but for what was begun all the same: hours that were worked count, whoever may. */
export function notCountedYet(plan: Pick<Plan, 'zones' | 'soFar'>): (task: Task) => boolean {
  const waits = mustWait(plan);
  return (task) => waits(task) && (plan.soFar?.told.get(task)?.spent.state ?? 'open') === 'open';
}
