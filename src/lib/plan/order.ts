import toposort from 'toposort';
import { workOrder } from '$lib/advice/steps/work';
import { rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { Span } from './amount';
import { dryingBefore } from './drying';
import { precedence, type OrderRule } from './precedence';

/** A step of one zone, before merging. */
export interface ZoneStep {
  readonly zone: string;
  readonly step: StepId;
  /** Whether the zone's finish wants the surface dry after the final wash. */
  readonly dryFinish: boolean;
}

/** One step of the job, done in all its zones while the machine is there. */
export interface PlanStep {
  readonly id: StepId;
  /** Ids of the zones, in the order of the job. */
  readonly zones: readonly string[];
  /** Steps of this plan that have to be finished first, and why. */
  readonly after: readonly { readonly step: StepId; readonly why: OrderRule }[];
  /** Hours the surface has to dry before this step can begin; absent where it need not. */
  readonly wait?: { readonly hours: Span; readonly figure: FigureId };
}

/**
 * Merges the steps of all zones into one order, each step once, so that each machine is set up once.
 * @throws Error naming the steps when the precedence table runs in a circle; it cannot, as tests prove
 */
export function orderSteps(steps: readonly ZoneStep[], own?: OwnFigures): PlanStep[] {
  const zonesOf = new Map<StepId, string[]>();
  const stepsOf = new Map<string, Set<StepId>>();
  for (const { zone, step } of steps) {
    stepsOf.set(zone, (stepsOf.get(zone) ?? new Set<StepId>()).add(step));
    const zones = zonesOf.get(step);
    if (!zones) zonesOf.set(step, [zone]);
    else if (!zones.includes(zone)) zones.push(zone);
  }
  const present = workOrder.filter((id) => zonesOf.has(id));
  const edges = edgesAmong(present);
  const order = toposort.array(
    present,
    edges.map(({ before, after }): [StepId, StepId] => [before, after]),
  );
  const dryFinishes = new Set(steps.flatMap(({ zone, dryFinish }) => (dryFinish ? zone : [])));
  return order.map((id, place): PlanStep => {
    const wait = waitBefore(id, order.slice(0, place), dryFinishes, stepsOf, own);
    return {
      id,
      zones: zonesOf.get(id) ?? [],
      after: nearest(
        edges.filter(({ after }) => after === id),
        edges,
      ),
      ...(wait && { wait }),
    };
  });
}

interface Edge {
  readonly before: StepId;
  readonly after: StepId;
  readonly why: OrderRule;
}

/** Every precedence that applies among these steps, each pair once. */
export function edgesAmong(present: readonly StepId[]): Edge[] {
  const edges: Edge[] = [];
  for (const { before, after, why } of precedence)
    for (const one of before)
      for (const other of after)
        if (
          one !== other &&
          present.includes(one) &&
          present.includes(other) &&
          !edges.some((edge) => edge.before === one && edge.after === other)
        )
          edges.push({ before: one, after: other, why });
  return edges;
}

/** Leaves out what another step on the list already implies: only the last links are told. */
export function nearest(incoming: readonly Edge[], all: readonly Edge[]): PlanStep['after'] {
  const implied = ({ before }: Edge) =>
    incoming.some((other) =>
      all.some((edge) => edge.before === before && edge.after === other.before),
    );
  return incoming
    .filter((edge) => !implied(edge))
    .map(({ before, why }) => ({ step: before, why }));
}

/** What the first of its zones to need it waits for, before this step can begin there. */
function waitBefore(
  id: StepId,
  earlier: readonly StepId[],
  dryFinishes: ReadonlySet<string>,
  stepsOf: ReadonlyMap<string, ReadonlySet<StepId>>,
  own?: OwnFigures,
): PlanStep['wait'] {
  for (const [zone, steps] of stepsOf) {
    if (!steps.has(id)) continue;
    const before = earlier.filter((each) => steps.has(each));
    const drying = dryingBefore(id, before, dryFinishes.has(zone));
    if (drying) return { hours: rangeOf(drying.figure, own), figure: drying.figure };
  }
  return undefined;
}
