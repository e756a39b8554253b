import { hazardIds, hazardsOfStep, type HazardId, type StepId } from '$shared/methods';
import { hasCoating } from './demands';
import { bearsLoad } from './holds';
import type { Hold, SettledSite, SettledZone } from './types';

/** Steps that throw dust or pieces: whatever is in an old coating, or above the head, comes with them. */
const throwsPieces = (hazards: readonly HazardId[]) => hazards.includes('silica');

/** They take up what lies there: concrete dust only where a step before them has thrown it. */
const takesUp: ReadonlySet<StepId> = new Set<StepId>(['vacuum', 'last-clean']);

/** Whether any of some steps throws the dust of concrete. */
export const throwDust = (steps: readonly StepId[]): boolean =>
  steps.some((step) => !takesUp.has(step) && hazardsOfStep[step].includes('silica'));

/**
 * The hazards of a step among the others of its work. Source: common practice, no published source.
 * @param dusty whether any of these throws dust
 */
export const ofTakingUp = (
  step: StepId,
  hazards: readonly HazardId[],
  dusty: boolean,
): readonly HazardId[] =>
  dusty || !takesUp.has(step) ? hazards : hazards.filter((hazard) => hazard !== 'silica');

/** Whether taking concrete off, or cutting into it, may bring something down. */
export const mayFallDown = (site: SettledSite): boolean =>
  bearsLoad(site) || site.warnings.includes('tendons-possible');

const always = (): boolean => true;

/**
 * Whether a hazard a step brings is there at this place.
 * Most are there everywhere; these depend on the site. Source: common practice, no published source.
 */
const presentAt: Readonly<Partial<Record<HazardId, (site: SettledSite) => boolean>>> = {
  'carbon-monoxide': (site) => site.setting !== 'open',
  weather: (site) => site.setting !== 'indoors',
  structure: mayFallDown,
};

/** Where there is an edge to go over, or a ladder to stand on: everything but a slab on the ground. */
const mayFall = (element: SettledSite['element']): boolean => element !== 'slab';

/**
 * @param hollow whether what comes off has let go: what lies under it may have, too, so that a step
 * which only takes off a skin may come to what carries. Source: common practice, no published source.
 */
function findHazards(
  step: StepId,
  site: SettledSite,
  coated: boolean,
  hollow: boolean,
): readonly HazardId[] {
  const own = hazardsOfStep[step];
  const pieces = throwsPieces(own);
  return hazardIds.filter((hazard) => {
    if (hazard === 'structure' && hollow && pieces && !takesUp.has(step)) return mayFallDown(site);
    if (hazard === 'lead-asbestos') return coated && (pieces || own.includes(hazard));
    if (hazard === 'overhead')
      return pieces && (site.element === 'soffit' || site.element === 'wall');
    if (hazard === 'falls') return mayFall(site.element);
    return own.includes(hazard) && (presentAt[hazard] ?? always)(site);
  });
}

const bits = Object.fromEntries(hazardIds.map((id, place) => [id, 1 << place])) as Readonly<
  Record<HazardId, number>
>;
if (hazardIds.length > 31) throw new Error('More hazards than a set of bits holds.');

/** Hazards as a set of bits. */
export function asSet(hazards: readonly HazardId[]): number {
  let set = 0;
  for (const hazard of hazards) set |= bits[hazard];
  return set;
}
const lists = new Map<number, readonly HazardId[]>();
/** The hazards of a set, in the order of `hazardIds`. */
export function hazardsIn(set: number): readonly HazardId[] {
  let list = lists.get(set);
  if (!list) lists.set(set, (list = hazardIds.filter((hazard) => set & bits[hazard])));
  return list;
}

/** There are few sorts of place, and each is asked of many times over. */
const places = new Map<string, Map<StepId, readonly HazardId[]>>();

/** The hazards of each step at one place, in the order of `hazardIds`. */
export function hazardsHere(
  site: SettledSite,
  zone: Pick<SettledZone, 'contamination' | 'looseness'>,
): (step: StepId) => readonly HazardId[] {
  const { element, setting, warnings } = site;
  const coated = hasCoating(zone.contamination) || warnings.includes('old-coating-or-adhesive');
  const hollow = zone.looseness === 'hollow';
  const key = `${element} ${setting} ${coated} ${hollow} ${mayFallDown(site)}`;
  let place = places.get(key);
  if (!place) places.set(key, (place = new Map()));
  const found = place;
  return (step) => {
    let hazards = found.get(step);
    if (!hazards) found.set(step, (hazards = findHazards(step, site, coated, hollow)));
    return hazards;
  };
}

/** The hazards that what stands before the work brings by itself. */
export function hazardsOfHolds(
  holds: readonly Hold[],
  site: SettledSite,
  zone: SettledZone,
): HazardId[] {
  const present: HazardId[] = [];
  for (const hold of holds) {
    if (hold.who === 'engineer') present.push('structure');
    if (hold.rule === 'old-coating') present.push('lead-asbestos');
    if (hold.rule === 'buried-services') present.push('electric');
  }
  if (holds.length && hazardsHere(site, zone)('break-out').includes('overhead'))
    present.push('overhead');
  if (holds.length && mayFall(site.element)) present.push('falls');
  return present;
}
