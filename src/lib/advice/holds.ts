import { carriesLoad, hasAirBelow } from '$lib/answers/elements';
import { rangeOfBand } from '$lib/answers/depth';
import type { Warning } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { isFilm, isFirmHollow, isStiff, showsBar } from './demands';
import { makesHole } from './hole';
import { moistureOf } from './sheet';
import { chasesCrack, routesCrack } from './steps/cracks';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

/** What the work would do to the concrete, as far as safety is concerned. */
export interface Reach {
  /** Takes structural concrete away: breaking out, freeing bars. A few millimetres do not. */
  readonly removes: boolean;
  /** Takes the loose edges of a crack off with a hammer. */
  readonly chases: boolean;
  /** Breaks, saws or drills. */
  readonly cuts: boolean;
  /** Goes deeper than the figure `tendon.depth`, or saws or drills. */
  readonly deep: boolean;
  /** Every method that would do has failed on a test patch. */
  readonly spent: boolean;
}

/** Holds that leave no surface method standing at all: the concrete or its bed is what failed. */
const beyondSurface: ReadonlySet<string> = new Set([
  'fire-or-chemical',
  'settled-or-rocking',
  'full-depth',
  'through',
  'no-method-left',
]);

export const isBeyondSurface = (holds: readonly Hold[]): boolean =>
  holds.some((hold) => hold.verdict === 'stop' && beyondSurface.has(hold.rule));

/** Whether a warning sign by itself leaves no surface method: its hold has its name. */
export const warnsBeyondSurface = (warning: Warning): boolean => beyondSurface.has(warning);

/** The verdict the holds come to. */
export const verdictOf = (holds: readonly Hold[]): Verdict =>
  holds.some((hold) => hold.verdict === 'stop')
    ? 'stop'
    : holds.length
      ? 'find-out-first'
      : 'prepare';

/** Whether it carries by what it is, or something was seen standing on it. */
export const bearsLoad = ({ element, warnings }: SettledSite): boolean =>
  carriesLoad(element) || warnings.includes('holds-something-up');

/** Whether what is loose goes where tendons may lie. A band that reaches past the limit counts as past it. */
export const isDeep = (zone: Pick<SettledZone, 'looseness' | 'depth' | 'depthMm'>): boolean =>
  zone.looseness !== 'tight' &&
  (zone.depthMm ?? rangeOfBand(zone.depth, 'unknown')[1]) > valueOf('tendon.depth');

export function reachOf(
  site: Pick<SettledSite, 'freezeThaw'>,
  zone: SettledZone,
  method: MethodId,
  spent = false,
): Reach {
  const removes = method === 'break-out' || method === 'water-jet' || showsBar(zone);
  const chases = chasesCrack(site, zone);
  const cuts =
    removes || makesHole(method, zone) || isFirmHollow(zone) || chases || routesCrack(site, zone);
  return { removes, chases, cuts, deep: cuts || isDeep(zone), spent };
}

/**
 * Rust that shows where nothing is open yet. Salt or a crack lets it go on under any finish, and a
 * film over it only hides it: what lies beneath is found out first. Where the concrete carries load a
 * stain is a bar at work, whatever goes over it.
 * Source: common practice, no published source; chlorides: ACI 364.6T.
 */
function rustHolds(site: SettledSite, zone: SettledZone): Hold[] {
  const stain = zone.steel === 'rust-stain';
  const inCrack = zone.steel === 'corroded' && zone.cracks !== 'none';
  const bears = bearsLoad(site);
  const who = bears ? 'engineer' : 'crew';
  const held = (rule: Hold['rule'], facts: Hold['facts']): Hold[] => [
    { rule, verdict: 'find-out-first', who, facts: { who, ...facts } },
  ];
  if (site.salts !== 'none' && (stain || inCrack))
    return held('rust-with-salts', { salts: site.salts });
  if (!stain) return [];
  if (zone.cracks !== 'none') return held('rust-at-crack', {});
  return bears || isFilm(zone) || zone.finish === 'sealer' ? held('nothing-over-rust', {}) : [];
}

/** Salt bloom is carried by water: a finish that wants it dry comes off until the water is stopped. */
const bloomHolds = (zone: SettledZone): Hold[] =>
  zone.contamination.includes('salt-bloom') && moistureOf(zone) === 'dry'
    ? [{ rule: 'bloom-under-dry-finish', verdict: 'find-out-first', who: 'crew' }]
    : [];

/** What shows on the surface and has to be found out before anything covers it. */
export const surfaceHolds = (site: SettledSite, zone: SettledZone): readonly Hold[] => [
  ...rustHolds(site, zone),
  ...bloomHolds(zone),
];

/**
 * A layer that has let go, of which nobody has measured how deep: from above it looks like nothing.
 * Where it hangs over somebody, layers let go at the bars.
 * Source: common practice, no published source.
 */
export const isHollowUnmeasured = ({
  looseness,
  depthMm,
}: Pick<SettledZone, 'looseness' | 'depthMm'>): boolean =>
  looseness === 'hollow' && depthMm === undefined;

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
  // What is broken out is filled, and the fill is stiff whatever goes over it.
  const stiff = isStiff(zone) || reach.removes ? 'stop' : 'find-out-first';
  if (warned('settled-or-rocking'))
    holds.push({
      rule: 'settled-or-rocking',
      // What carries has let go somewhere, whatever is done to its face.
      verdict: carriesLoad(site.element) ? 'stop' : stiff,
      who: 'engineer',
    });
  const removes = bearsLoad(site) && reach.removes;
  // Over its supports what hangs carries by the steel near its top, which a saw or a router meets
  // as well as a hammer; from below, edges fall.
  if (removes || (hasAirBelow(site.element) && reach.cuts))
    holds.push({
      rule: 'structure-before-removal',
      verdict: removes ? 'stop' : 'find-out-first',
      who: 'engineer',
      facts: { element: site.element, told: warned('holds-something-up') ? 'yes' : 'no' },
    });
  if (hasAirBelow(site.element) && !reach.removes && isHollowUnmeasured(zone))
    holds.push({ rule: 'hollow-unmeasured', verdict: 'find-out-first', who: 'engineer' });
  if (zone.partInDoubt)
    holds.push({
      rule: 'same-part-in-doubt',
      verdict: 'find-out-first',
      who: 'engineer',
      facts: { element: site.element, sure: zone.partInDoubt },
    });
  if (warned('tendons-possible') && reach.deep)
    holds.push({
      rule: 'tendons-before-depth',
      verdict: 'stop',
      who: 'engineer',
      figures: ['tendon.depth'],
    });
  if (showsBar(zone) && zone.barLoss && zone.barLoss !== 'within-limit')
    holds.push({
      rule: 'bar-section-loss',
      verdict: 'stop',
      who: 'engineer',
      figures: [zone.barLoss === 'one-bar' ? 'bar.loss-one' : 'bar.loss-neighbours'],
    });
  if (zone.cracks === 'moving')
    holds.push({
      rule: 'moving-crack',
      // Where it hangs, the crack may be its root giving way, whatever goes over it.
      verdict: hasAirBelow(site.element) ? 'stop' : stiff,
      who: 'engineer',
    });
  if (depth) holds.push(depth);
  if (reach.spent) holds.push({ rule: 'no-method-left', verdict: 'stop', who: 'engineer' });
  if (zone.stopped)
    holds.push({
      rule: 'stopped-on-patch',
      verdict: 'find-out-first',
      who: carriesLoad(site.element) ? 'engineer' : 'crew',
      facts: { why: zone.stopped },
    });
  holds.push(...surfaceHolds(site, zone));
  if (warned('map-cracking'))
    holds.push({ rule: 'map-cracking', verdict: 'find-out-first', who: 'laboratory' });
  if (warned('old-coating-or-adhesive'))
    holds.push({ rule: 'old-coating', verdict: 'find-out-first', who: 'laboratory' });
  if (warned('buried-services') && reach.cuts)
    holds.push({ rule: 'buried-services', verdict: 'find-out-first', who: 'locator' });
  return holds;
}
