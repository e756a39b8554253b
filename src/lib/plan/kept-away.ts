import { calledAtOnce, clearOf, keepClear, type KeptClear } from '$lib/advice/keep-clear';
import type { Hold } from '$lib/advice/types';
import { hazardIds, type HazardId } from '$shared/methods';
import type { Plan } from './plan';

/** From where people are kept away, and who is called about it at once; null where nobody is named. */
export interface KeptAway {
  readonly clear: KeptClear;
  readonly call: Hold['who'] | null;
}

/** The same of a whole job, with the zones it is said of. */
interface JobKeptAway extends KeptAway {
  readonly zones: readonly string[];
  /** Whether that is every zone of the job. */
  readonly all: boolean;
}

/** Keeping away from one zone, by what its advice holds; null where nobody is kept away. */
export function keptAwayOf(
  site: Parameters<typeof keepClear>[0],
  advice: Parameters<typeof keepClear>[1],
): KeptAway | null {
  const clear = keepClear(site, advice);
  return clear && { clear, call: calledAtOnce(site, advice) };
}

/**
 * Keeping away from what a job is about, planned or not; null where nobody is kept away. A zone with
 * too few answers for any advice says nothing.
 */
export function keptAway({
  drawn,
  zones,
  held,
}: Pick<Plan, 'drawn' | 'zones' | 'held'>): JobKeptAway | null {
  const { site } = drawn;
  const found = [...zones, ...held].flatMap(({ id, holds, possibleHolds }) => {
    const away = keptAwayOf(site, { holds, possibleHolds });
    return away ? [{ id, ...away }] : [];
  });
  if (!found.length) return null;
  const ids = found.map(({ id }) => id);
  return {
    clear: clearOf(site),
    call: found.find(({ call }) => call)?.call ?? null,
    zones: drawn.zones.map(({ id }) => id).filter((id) => ids.includes(id)),
    all: found.length === drawn.zones.length,
  };
}

/**
 * What can hurt somebody on the job: what comes with the planned work, and what people are kept away
 * from, planned or not: it may come down, and where there may be air below, pieces fall.
 * Source: common practice, no published source.
 */
export function hazardsOn(plan: Pick<Plan, 'drawn' | 'zones' | 'held'>): readonly HazardId[] {
  const there = new Set(plan.zones.flatMap(({ advice }) => advice.cautions));
  const away = keptAway(plan);
  if (away) there.add('structure');
  if (away?.clear === 'keep-from-under') there.add('overhead');
  return hazardIds.filter((id) => there.has(id));
}
