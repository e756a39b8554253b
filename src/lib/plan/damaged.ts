import { throughDepth } from '$lib/advice/made-new';
import type { Hold } from '$lib/advice/types';
import type { Job, Zone } from '$lib/answers/job';
import type { SurveyResult } from '$lib/survey/survey';
import { product, type Amount } from './amount';
import { areaOf } from './full-depth';
import type { BesideSpots } from './beside-spots';
import type { Plan } from './plan';

type Zones = Pick<Plan, 'zones' | 'held'>;

const zoneOf = (plan: Zones, id: string) =>
  plan.zones.find((each) => each.id === id) ?? plan.held.find((each) => each.id === id);

/** What lies beside the spots of a zone; sound where there is nothing beside them. */
export const besideOf = (plan: Zones, id: string): BesideSpots =>
  zoneOf(plan, id)?.beside ?? 'sound';

/** Whether a zone counts by its spots, on ground that was not heard all over: more may be hollow, there or next to it. */
export function isUnheard(plan: Zones, id: string): boolean {
  const zone = zoneOf(plan, id);
  return !!zone?.patches?.patches.length && !zone.sounded;
}

/** m2 of the patches drawn or typed in a zone; null where it has none, and all of it counts as damaged. */
function patched(plan: Zones, id: string): number | null {
  const patches = zoneOf(plan, id)?.patches?.patches ?? [];
  return patches.length ? patches.reduce((total, { area }) => total + area, 0) : null;
}

/** m2 of a zone of this area that is broken out or made new, where it is one of which all or some is. */
export const damagedIn = (plan: Zones, id: string, area: number): number =>
  Math.min(area, patched(plan, id) ?? area);

/** The same of several zones: as far as they are measured. */
export const damagedSize = (plan: Zones, job: Job, ids: readonly string[]): number =>
  job.zones
    .filter(({ id }) => ids.includes(id))
    .reduce(
      (total, { id, answers: { area } }) =>
        total + (typeof area === 'number' ? damagedIn(plan, id, area) : 0),
      0,
    );

/** The same of one zone, with how it was come to; missing while it has neither area nor patches. */
export function damagedArea(plan: Zones, job: Job, id: string): Amount {
  const planned = plan.zones.find((zone) => zone.id === id)?.quantities['patch-area'];
  if (planned) return planned;
  const area = patched(plan, id);
  if (area === null) return areaOf(job, [id]);
  return product('m2', [{ what: 'patches', span: [area, area], unit: 'm2' }]);
}

/** A spot drawn deeper than its zone was answered asks for a zone of its own where it alone goes past half. */
export function spotMadeNewFor(
  given: Zone,
  drawn: Zone,
  holds: readonly Hold[],
  survey: SurveyResult | null,
): number | null {
  if (given.answers.depth === drawn.answers.depth) return null;
  const made = holds.some(({ rule }) => throughDepth.includes(rule));
  const patches = survey?.patches.filter(({ zone }) => zone === drawn.id) ?? [];
  const ground = patches.reduce((total, { area }) => total + area, 0);
  // A zone that is no more than its one spot has nothing left to plan.
  const several = patches.flatMap(({ spots }) => spots).length > 1;
  const more = several || (survey?.areas[drawn.id] ?? 0) > ground;
  return made && more ? (survey?.damage[drawn.id]?.deepestMark ?? null) : null;
}
