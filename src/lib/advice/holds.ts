import { atLeast, rangeOfBand } from '$lib/answers/depth';
import type { Warning } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import type { Work } from './steps/work';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

/** What the work would do to the concrete, as far as safety is concerned. */
export interface Reach {
  /** Takes structural concrete away: breaking out, freeing bars, chasing cracks. */
  readonly removes: boolean;
  /** Breaks, saws or drills. */
  readonly cuts: boolean;
  /** Goes deeper than the figure `tendon.depth`, or saws or drills. */
  readonly deep: boolean;
}

/** Holds that leave no surface method standing at all: the concrete or its bed is what failed. */
const beyondSurface: ReadonlySet<string> = new Set([
  'fire-or-chemical',
  'settled-or-rocking',
  'full-depth',
  'through',
]);

export const isBeyondSurface = (holds: readonly Hold[]): boolean =>
  holds.some((hold) => beyondSurface.has(hold.rule));

/** Whether a warning sign by itself leaves no surface method: its hold has its name. */
export const warnsBeyondSurface = (warning: Warning): boolean => beyondSurface.has(warning);

/** The verdict the holds come to. */
export const verdictOf = (holds: readonly Hold[]): Verdict =>
  holds.some((hold) => hold.verdict === 'stop')
    ? 'stop'
    : holds.length
      ? 'find-out-first'
      : 'prepare';

const carries = {
  slab: false,
  steps: false,
  'suspended-slab': true,
  wall: true,
  soffit: true,
} as const;

export function reachOf(zone: SettledZone, method: MethodId | null, work: Work): Reach {
  const removes = method === 'break-out' || !!work['free-bar'] || !!work['chase-crack'];
  const cuts = removes || !!work['saw-cut'] || !!work['route-crack'];
  const loose = zone.looseness !== 'tight';
  const deepDamage =
    loose &&
    (zone.depthMm === undefined
      ? atLeast(zone.depth, '6-to-20')
      : zone.depthMm > valueOf('tendon.depth'));
  return { removes, cuts, deep: cuts || deepDamage };
}

/**
 * The zone is past a surface repair: damaged through, or loose to half the thickness.
 * A firm hollow is a form to fill however deep it is, unless it goes right through.
 * Source: UFC 3-270-04 (figure `depth.full-limit`).
 */
export function fullDepthHold(site: SettledSite, zone: SettledZone): Hold | null {
  if (zone.depth === 'through')
    return { rule: 'through', verdict: 'stop', who: 'concrete-contractor' };
  if (zone.looseness === 'tight') return null;
  const figures = ['depth.full-limit'] as const;
  if (site.thickness === 'unknown')
    return zone.depth === 'over-50'
      ? { rule: 'thickness-decides', verdict: 'find-out-first', who: 'crew', figures }
      : null;
  const half = site.thickness * valueOf('depth.full-limit');
  const [lower] = rangeOfBand(zone.depth, site.thickness);
  if ((zone.depthMm ?? lower) >= half)
    return {
      rule: 'full-depth',
      verdict: 'stop',
      who: 'concrete-contractor',
      facts: { half, thickness: site.thickness, looseness: zone.looseness },
      figures,
    };
  // A band that straddles half the thickness is settled by measuring.
  const straddles = zone.depth === 'over-50' && zone.depthMm === undefined;
  return straddles
    ? {
        rule: 'thickness-decides',
        verdict: 'find-out-first',
        who: 'crew',
        facts: { half },
        figures,
      }
    : null;
}

/**
 * Everything that stands before the work, gravest first.
 * Source: common practice, no published source, except where a hold names figures or
 * `shared/sources` (tendons: Post-Tensioning Association GN01, as reported).
 */
export function holdsOf(
  site: SettledSite,
  zone: SettledZone,
  reach: Reach,
  depth: Hold | null,
): Hold[] {
  const holds: Hold[] = [];
  const warned = (warning: Warning) => site.warnings.includes(warning);
  if (warned('fire-or-chemical'))
    holds.push({ rule: 'fire-or-chemical', verdict: 'stop', who: 'engineer' });
  if (warned('settled-or-rocking'))
    holds.push({ rule: 'settled-or-rocking', verdict: 'stop', who: 'engineer' });
  if ((carries[site.element] || warned('holds-something-up')) && reach.removes)
    holds.push({
      rule: 'structure-before-removal',
      verdict: 'stop',
      who: 'engineer',
      facts: { element: site.element, told: warned('holds-something-up') ? 'yes' : 'no' },
    });
  if (warned('tendons-possible') && reach.deep)
    holds.push({
      rule: 'tendons-before-depth',
      verdict: 'stop',
      who: 'engineer',
      figures: ['tendon.depth'],
    });
  if (zone.steel === 'corroded' && zone.barLoss && zone.barLoss !== 'within-limit')
    holds.push({
      rule: 'bar-section-loss',
      verdict: 'stop',
      who: 'engineer',
      figures: [zone.barLoss === 'one-bar' ? 'bar.loss-one' : 'bar.loss-neighbours'],
    });
  if (zone.cracks === 'moving')
    holds.push({ rule: 'moving-crack', verdict: 'stop', who: 'engineer' });
  if (depth) holds.push(depth);
  if (warned('map-cracking'))
    holds.push({ rule: 'map-cracking', verdict: 'find-out-first', who: 'laboratory' });
  if (warned('old-coating-or-adhesive'))
    holds.push({ rule: 'old-coating', verdict: 'find-out-first', who: 'surveyor' });
  if (warned('buried-services') && reach.cuts)
    holds.push({ rule: 'buried-services', verdict: 'find-out-first', who: 'locator' });
  return holds;
}
