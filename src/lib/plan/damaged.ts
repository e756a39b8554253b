import { fullDepthHold } from '$lib/advice/hole';
import { throughDepth } from '$lib/advice/made-new';
import type { SiteAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import type { Hold } from '$lib/advice/types';
import type { Job, Zone } from '$lib/answers/job';
import type { SurveyResult } from '$lib/survey/survey';
import { patchVolume } from '$lib/survey/removal';
import type { Patch, PatchLayout } from '$lib/survey/patches';
import type { OwnFigures } from '$shared/figures';
import { product, sum, type Amount } from './amount';
import { areaOf, fullDepth } from './full-depth';
import { depthSpan } from './zone-work';
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

const groundOf = (patches: readonly Patch[]): number =>
  patches.reduce((total, { area }) => total + area, 0);

/** m2 of the patches drawn or typed in a zone; null where it has none, and all of it counts as damaged. */
function patched(plan: Zones, id: string): number | null {
  const patches = zoneOf(plan, id)?.patches?.patches ?? [];
  return patches.length ? groundOf(patches) : null;
}

/** m2 of a zone of this area that is broken out or made new, where it is one of which all or some is. */
export const damagedIn = (plan: Zones, id: string, area: number): number =>
  Math.min(area, patched(plan, id) ?? area);

/** m2 of a zone that is to be made new; of one that was answered that deep, all that is damaged. */
export function goneIn(plan: Zones, id: string, area: number): number {
  const damaged = damagedIn(plan, id, area);
  const gone = plan.held.find((zone) => zone.id === id)?.gone;
  return gone ? Math.min(damaged, groundOf(gone.patches)) : damaged;
}

const sizeIn =
  (of: typeof damagedIn) =>
  (plan: Zones, job: Job, ids: readonly string[]): number =>
    job.zones
      .filter(({ id }) => ids.includes(id))
      .reduce(
        (total, { id, answers: { area } }) =>
          total + (typeof area === 'number' ? of(plan, id, area) : 0),
        0,
      );
/** m2 of several zones that is broken out or made new, and that is made new: as far as they are measured. */
export const damagedSize = sizeIn(damagedIn);
export const goneSize = sizeIn(goneIn);

/** m2 that is broken out or made new in one zone, with how it was come to; missing while it has neither area nor patches. */
export function damagedArea(plan: Zones, job: Job, id: string): Amount {
  const planned = plan.zones.find((zone) => zone.id === id)?.quantities['patch-area'];
  if (planned) return planned;
  const patches = zoneOf(plan, id)?.patches?.patches ?? [];
  return patches.length ? laid(patches) : areaOf(job, [id]);
}

/** m3 that a held zone takes off: what is gone through the full depth, other patches as deep as they go. */
export function goneVolume(plan: Zones, job: Job, id: string): Amount {
  const gone = plan.held.find((zone) => zone.id === id)?.gone;
  return gone
    ? sum('m3', [fullDepth(laid(gone.patches), job), gone.others])
    : fullDepth(damagedArea(plan, job, id), job);
}

/** m2 to be made new in a held zone, with how it was come to. */
export const goneArea = (plan: Zones, job: Job, id: string): Amount => {
  const gone = plan.held.find((zone) => zone.id === id)?.gone;
  return gone ? laid(gone.patches) : damagedArea(plan, job, id);
};

const laid = (patches: readonly Patch[]): Amount =>
  product('m2', [{ what: 'patches', span: [groundOf(patches), groundOf(patches)], unit: 'm2' }]);

/** What of a zone is made new while its other patches can be repaired. */
export interface Gone {
  readonly patches: readonly Patch[];
  /** m3 that the other patches take off. */
  readonly others: Amount;
}

/**
 * The patches of a zone that are made new while its others can be repaired: those drawn so deep that
 * each by itself goes to full depth. Null where the zone was answered that deep, and all of it is.
 */
export function goneOf(
  given: Zone,
  drawn: Zone,
  site: SiteAnswers,
  layout: PatchLayout | null,
  own?: OwnFigures,
): Gone | null {
  if (given.answers.depth === drawn.answers.depth) return null;
  const { thickness = 'unknown' } = site;
  const { looseness = [], steel = ['none-seen'] } = given.answers;
  const isGone = ({ depth }: Patch) =>
    depth !== undefined &&
    looseness.some((loose) =>
      steel.some((bar) => {
        const damage = { depth: bandOf(depth, thickness), depthMm: depth, looseness: loose };
        const hold = fullDepthHold({ element: 'slab', thickness }, { ...damage, steel: bar });
        return hold?.verdict === 'stop';
      }),
    );
  const all = layout?.patches ?? [];
  const patches = all.filter(isGone);
  if (!patches.length) return null;
  const others = all.filter((patch) => !patches.includes(patch));
  const answered = depthSpan({ zone: given, thickness });
  const volumes = others.map((patch): Amount => {
    const depths = patch.depth === undefined ? answered?.map((m) => m * 1000) : [patch.depth];
    const ends = depths?.map((depth) => patchVolume({ ...patch, depth }, own) ?? 0);
    return ends
      ? product('m3', [
          { what: 'removed', span: [Math.min(...ends), Math.max(...ends)], unit: 'm3' },
        ])
      : { missing: ['depth'], unit: 'm3' };
  });
  return { patches, others: sum('m3', volumes) };
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
