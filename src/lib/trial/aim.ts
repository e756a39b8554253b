import type { Advice } from '$lib/advice/types';
import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import { rangeOfBand } from '$lib/answers/depth';
import { rangeOf, valueOf } from '$shared/figures';
import { settingLadders, type Ladder, type LadderId } from '$shared/ladders';
import { methods, type MethodId } from '$shared/methods';

/** What a patch of a zone is held against. */
export interface Aim {
  readonly method: MethodId;
  readonly ladder: LadderId;
  /** mm that has to come off at the most, by the answers; Infinity where they do not say. */
  readonly damage: number;
  /** mm of mean depth from which sound concrete is being taken off for nothing. */
  readonly enough: number;
  /** mm at any place past which the method is the wrong one. */
  readonly reach: number;
  /** CSP lowest and highest that will do; null where nobody asks. */
  readonly profile: readonly [number, number] | null;
  /** Whether bars were to be met: the answers have them showing. */
  readonly bars: boolean;
}

export const ladderOf = ({ ladder }: Pick<Aim, 'ladder'>): Ladder => settingLadders[ladder];

/** Methods with settings to try; water jetting is a specialist's, who makes a trial of their own. */
export const isTried = (method: MethodId): boolean => method !== 'water-jet';

/** The damaged depth by the answers, mm at the most. */
function damageOf(site: SiteAnswers, { depth, looseness, contamination }: ZoneAnswers): number {
  // The straightedge lies on the old surface, so a build coat counts in what comes off.
  const coat = [contamination?.yes, contamination?.maybe].flat();
  const coated = coat.includes('thick-coating') || coat.includes('rubbery-coating');
  const least = coated ? valueOf('depth.thin') : 0;
  if (isSurely(looseness, 'tight')) return least;
  if (typeof depth === 'number') return Math.max(least, depth);
  if (!depth) return Infinity;
  return Math.max(least, ...depth.map((band) => rangeOfBand(band, site.thickness ?? 'unknown')[1]));
}

/** The method whose settings a ladder holds. */
export const methodOf = (ladder: LadderId): MethodId =>
  ladder === 'break-out-light' ? 'break-out' : ladder;

/**
 * What a patch is held against.
 * - Enough: the damage and `trial.over`; a break-out goes into sound concrete (`patch.into-sound`)
 *   and is never shallower than `patch.min-depth`.
 * - Reach: what the method is for (`depth.*`); a break-out as far as partial depth goes
 *   (`depth.partial-limit` of the thickness), or the damage, whichever is deeper.
 * @param damage mm that has to come off at the most
 */
export function aimFor(
  ladder: LadderId,
  damage: number,
  profile: Aim['profile'],
  thickness: number | 'unknown' = 'unknown',
  bars = false,
): Aim {
  const method = methodOf(ladder);
  const over = valueOf('trial.over');
  const intoSound = damage + valueOf('patch.into-sound');
  if (method !== 'break-out')
    return {
      method,
      ladder,
      damage,
      enough: damage + over,
      reach: reachOf(method),
      profile,
      bars: false,
    };
  return {
    method,
    ladder,
    damage,
    enough: Math.max(intoSound, valueOf('patch.min-depth')) + over,
    reach: partialLimit(thickness, intoSound),
    profile,
    bars,
  };
}

/**
 * What a patch of a zone is held against.
 * @param advice the settled advice of the zone
 * @returns null where there is no method to try
 */
export function aimOf(site: SiteAnswers, answers: ZoneAnswers, advice: Advice): Aim | null {
  const method = advice.underneath;
  if (!method || !isTried(method)) return null;
  const spot = typeof answers.area === 'number' && answers.area < valueOf('place.spot');
  const light =
    spot || advice.steps.some(({ why }) => why.some(({ rule }) => rule === 'light-hammer-here'));
  const filled = advice.steps.some(({ id }) => id === 'fill-level');
  return aimFor(
    method === 'break-out' && light ? 'break-out-light' : (method as LadderId),
    damageOf(site, answers),
    profileAsked(advice, filled),
    site.thickness,
    answers.steel !== undefined && !isSurely(answers.steel, 'none-seen'),
  );
}

/** A levelling fill makes smooth again: under it nothing is too rough. */
function profileAsked({ target }: Advice, filled: boolean): Aim['profile'] {
  const { profile } = target;
  const roughest = rangeOf('csp.scale')[1];
  return profile && filled ? [profile[0], roughest] : profile;
}

/** mm at which the method is past what it is for. */
function reachOf(method: MethodId): number {
  if (methods[method].class === 0) return valueOf('depth.film');
  return valueOf(method === 'grind' ? 'depth.thin' : 'depth.shallow');
}

const partialLimit = (thickness: number | 'unknown', least: number): number =>
  thickness === 'unknown' ? Infinity : Math.max(least, thickness * valueOf('depth.partial-limit'));
