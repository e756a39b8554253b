import { hazardIds, hazardsOfStep, type HazardId, type StepId } from '$shared/methods';
import { hasCoating } from './demands';
import { carriesLoad } from './holds';
import type { Hold, SettledSite, SettledZone } from './types';

/** Steps that throw dust or pieces: whatever is in an old coating, or above the head, comes with them. */
const throwsPieces = (hazards: readonly HazardId[]) => hazards.includes('silica');

const always = (): boolean => true;

/**
 * Whether a hazard a step brings is there at this place.
 * Most are there everywhere; these depend on the site. Source: common practice, no published source.
 */
const presentAt: Readonly<Partial<Record<HazardId, (site: SettledSite) => boolean>>> = {
  'carbon-monoxide': (site) => site.setting !== 'open',
  weather: (site) => site.setting !== 'indoors',
  structure: (site) =>
    carriesLoad(site.element) ||
    site.warnings.includes('holds-something-up') ||
    site.warnings.includes('tendons-possible'),
};

/** Where there is an edge to go over, or a ladder to stand on: everything but a slab on the ground. */
const mayFall = (element: SettledSite['element']): boolean => element !== 'slab';

/** The hazards of one step at one place, in the order of `hazardIds`. */
export function hazardsAt(step: StepId, site: SettledSite, zone: SettledZone): readonly HazardId[] {
  const own = hazardsOfStep[step];
  const pieces = throwsPieces(own);
  const coated =
    hasCoating(zone.contamination) || site.warnings.includes('old-coating-or-adhesive');
  return hazardIds.filter((hazard) => {
    if (hazard === 'lead-asbestos') return coated && (pieces || own.includes(hazard));
    if (hazard === 'overhead')
      return pieces && (site.element === 'soffit' || site.element === 'wall');
    if (hazard === 'falls') return mayFall(site.element);
    return own.includes(hazard) && (presentAt[hazard] ?? always)(site);
  });
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
  if (holds.length && hazardsAt('break-out', site, zone).includes('overhead'))
    present.push('overhead');
  if (holds.length && mayFall(site.element)) present.push('falls');
  return present;
}
