import { throughDepth } from '$lib/advice/made-new';
import { isSurely } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import type { Hold } from '$lib/advice/types';
import { besideOf, damagedIn, goneIn } from './damaged';
import type { Plan } from './plan';
import { wholePercents } from './whole-percents';

/** What state a part of the area is in, best first. */
export const conditionIds = [
  'sound',
  'surface',
  'break-out',
  'replace',
  'engineer',
  'not-sounded',
  'not-known',
  'not-entered',
] as const;
export type ConditionId = (typeof conditionIds)[number];

export interface Conditions {
  /** m2 by condition, of the zones whose area is known. */
  readonly area: Readonly<Record<ConditionId, number>>;
  /** Part of the whole surface, 0 to 1, by condition; null while nobody has said how large that is. */
  readonly share: Readonly<Record<ConditionId, number>> | null;
  /** The same as they are told, in whole percents that add up to 100. */
  readonly told: Readonly<Record<ConditionId, number>> | null;
  /** m2 of the zones */
  readonly known: number;
  /** m2 of the whole surface; null while nobody has said. */
  readonly whole: number | null;
  /** Zones without an area: they are in no share. */
  readonly unmeasured: readonly string[];
  readonly of: Readonly<Record<string, ConditionId>>;
}

/**
 * Puts every zone of a planned job in its condition and adds up the areas. Where the spots to break
 * out or to make new are known, the rest of their zone is what lies beside them.
 * @param job with what its drawing measures, as `drawnJob` gives it
 */
export function conditionsOf(job: Job, plan: Plan): Conditions {
  const area = Object.fromEntries(conditionIds.map((id) => [id, 0])) as Record<ConditionId, number>;
  const of: Record<string, ConditionId> = {};
  const unmeasured: string[] = [];
  for (const zone of job.zones) {
    const condition = conditionOf(zone, plan);
    of[zone.id] = condition;
    const size = zone.answers.area;
    if (size === undefined || size === 'unknown') unmeasured.push(zone.id);
    else {
      const bad = brokenOut.has(condition) ? damagedIn(plan, zone.id, size) : size;
      const gone = condition === 'replace' ? goneIn(plan, zone.id, size) : bad;
      area[condition] += gone;
      area['break-out'] += bad - gone;
      area[besideOf(plan, zone.id)] += size - bad;
    }
  }
  const known = conditionIds.reduce((total, id) => total + area[id], 0);
  // Zones that come to more than the whole are believed: each was measured.
  const whole = job.totalArea === undefined ? null : Math.max(job.totalArea, known);
  if (whole !== null) area['not-entered'] = whole - known;
  const parts = whole === null ? null : conditionIds.map((id) => area[id] / whole);
  const share = parts && byCondition(parts);
  const told = parts && byCondition(wholePercents(parts));
  return { area, share, told, known, whole, unmeasured, of };
}

const byCondition = (values: readonly number[]) =>
  Object.fromEntries(conditionIds.map((id, place) => [id, values[place] ?? 0])) as Record<
    ConditionId,
    number
  >;

/** What takes in no more than the spots of a zone, where they are known. */
const brokenOut: ReadonlySet<ConditionId> = new Set<ConditionId>(['break-out', 'replace']);

function conditionOf(zone: Zone, plan: Plan): ConditionId {
  const planned = plan.zones.find(({ id }) => id === zone.id);
  if (planned) {
    const { method, steps } = planned;
    if (method === 'break-out' || (method === 'water-jet' && steps.includes('saw-cut')))
      return 'break-out';
    return isSurely(zone.answers.looseness, 'tight') ? 'sound' : 'surface';
  }
  const held = plan.held.find(({ id }) => id === zone.id);
  if (!held || held.verdict !== 'stop') return 'not-known';
  const forEngineer = (holds: readonly Hold[]) =>
    holds.some(
      ({ rule, verdict, who }) =>
        verdict === 'stop' && (who === 'engineer' || !throughDepth.includes(rule)),
    );
  if (forEngineer(held.holds)) return 'engineer';
  const gone = held.holds.some(({ rule }) => throughDepth.includes(rule));
  return !gone && forEngineer(held.possibleHolds) ? 'engineer' : 'replace';
}
