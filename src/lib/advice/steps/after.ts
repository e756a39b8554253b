import { hasCoating, isBonded } from '$lib/advice/demands';
import { judgeProfile, profileLeft } from '$lib/advice/methods/judge';
import { moistureOf } from '$lib/advice/sheet';
import { valueOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { followsTexture } from '$lib/advice/target';
import { callCovering } from './cover';
import { call, washOf, type Situation, type Work } from './work';

/**
 * What follows the main method: sound again, take off the bruised skin, get the dust off,
 * prove it, and hand it over damp or dry.
 * Source: common practice, no published source, except where a reason names figures.
 */
export function callAfter(work: Work, situation: Situation): void {
  const { zone, demands, method } = situation;
  // A hollow skin is sounded after it has come off: its method says so.
  if (work['break-out'] || work['water-jet'] || work['chase-crack'] || work['free-bar'])
    call(work, 're-sound', { rule: 'sound-again' });

  if (work.scarify && demands.heavyCoating) {
    if (demands.belowPlane) call(work, 'blast-clean', { rule: 'pits-under-coating' });
    if (judgeProfile('scarify', demands))
      call(work, 'blast-clean', { rule: 'profile-under-coating' });
  }
  callBruisedSkin(work, situation);

  const dry = moistureOf(zone) === 'dry';
  const washOnly = method === 'pressure-wash';
  // A crack that is routed is sucked out there and then, and sealed on the same day.
  const dusty = !washOnly || !!(work['chase-crack'] || work['free-bar']);
  if (dusty) {
    call(work, 'vacuum', { rule: 'dust-off' });
    // Where it is washed under pressure anyway, that is the wash: nobody washes twice.
    if (work['pressure-wash']) call(work, 'pressure-wash', { rule: 'wash-everything' });
    else if (dry && !work['final-wash']) call(work, 'vacuum', { rule: 'vacuum-twice-no-wash' });
    else call(work, 'final-wash', { rule: 'wash-everything' }, { rule: 'slurry-caught' });
    if (hasCoating(zone.contamination)) call(work, 'vacuum', { rule: 'coating-debris-apart' });
  }
  if (zone.contamination.includes('salt-bloom')) {
    const bywater: StepId | null = work['pressure-wash']
      ? 'pressure-wash'
      : dry
        ? null
        : 'final-wash';
    call(work, bywater ?? 'vacuum', { rule: bywater ? 'salt-bloom-off' : 'salt-bloom-brushed' });
  }
  call(work, 'check-ready', { rule: 'prove-it' });
  const filled = tooRough(situation);
  if (filled) {
    const hole = method === 'break-out';
    call(
      work,
      'fill-level',
      hole ? { rule: 'hole-filled-first' } : { rule: 'too-rough-fill-first', facts: filled },
      { rule: 'damp-before-fill' },
    );
    call(work, 'fill-cure', { rule: 'fill-cures-first' });
  }
  callCovering(work, situation);
}

/** Steps that strike the concrete, and leave its skin bruised. */
export const hammers = ['break-out', 'free-bar', 'chase-crack', 'needle-scale', 'scarify'] as const;
/** Of these, those that leave a hole or a groove: it is filled, and the fill is bonded. */
const opens: ReadonlySet<StepId> = new Set<StepId>(['break-out', 'free-bar', 'chase-crack']);

/**
 * Impact tools leave a bruised skin about 3 mm thick, and what is bonded to it lets go with it. Every
 * hammered face counts, whichever step struck it; under a sealer those that are filled first. Where it freezes often the skin may not stay;
 * where frost is rare and the area small, thorough washing will do, if what goes on may be wet.
 */
function callBruisedSkin(work: Work, situation: Situation): void {
  const { site, zone } = situation;
  const struck = hammers.filter((step) => work[step] && (isBonded(zone) || opens.has(step)));
  const border =
    isBonded(zone) && !!work['edge-work']?.some(({ rule }) => rule === 'border-by-bush-hammer');
  if (!struck.length && !border) return;
  const small = zone.area !== 'unknown' && zone.area <= valueOf('blast.small-area');
  const washes = moistureOf(zone) !== 'dry';
  if (site.freezeThaw === 'rare' && small && washes) {
    call(work, washOf(work), {
      rule: 'bruised-skin-wash-will-do',
      figures: ['depth.bruise', 'blast.small-area'],
    });
    return;
  }
  call(work, 'blast-clean', {
    rule: site.freezeThaw === 'often' ? 'bruised-skin-must-go' : 'bruised-skin-should-go',
    figures: ['depth.bruise'],
  });
  // A shotblaster seals on a flat dry floor: not in a hole, a chased crack, round a bar, or on a spot.
  // Only a floor is ever scarified, so what else was struck is where it cannot go.
  if (struck.includes('scarify')) call(work, 'blast-clean', { rule: 'skin-by-shotblaster' });
  if (border || struck.some((step) => step !== 'scarify'))
    call(work, 'blast-clean', {
      rule: washes || tooRough(situation) ? 'skin-by-grit-or-water' : 'skin-by-grit',
    });
}

/**
 * Whether what is left is too rough for the finish. A sealer follows the texture it finds.
 * @returns the CSP left at its smoothest and the roughest that will do, or null
 */
export function tooRough({
  zone,
  demands,
  method,
}: Pick<Situation, 'zone' | 'demands' | 'method'>): { leaves: number; needs: number } | null {
  if (!demands.profile) return null;
  if (followsTexture(zone, method)) return null;
  const [leaves] = profileLeft(method, demands.texture);
  const [, needs] = demands.profile;
  return leaves > needs ? { leaves, needs } : null;
}
