import { valueOf } from '$shared/figures';
import { methods } from '$shared/methods';
import { profileLeft } from '$lib/advice/methods/judge';
import { moistureOf } from '$lib/advice/target';
import { call, isBonded, type Situation, type Work } from './work';

/**
 * What follows the main method: sound again, take off the bruised skin, get the dust off,
 * prove it, and hand it over damp or dry.
 * Source: common practice, no published source, except where a reason names figures.
 */
export function callAfter(work: Work, situation: Situation): void {
  const { zone, demands, method } = situation;
  if (work['break-out'] || work['chase-crack'] || work['free-bar'])
    call(work, 're-sound', { rule: 'sound-again' });

  if (method === 'scarify' && demands.heavyCoating && demands.belowPlane)
    call(work, 'blast-clean', { rule: 'pits-under-coating' });
  callBruisedSkin(work, situation);

  const washOnly = method === 'pressure-wash';
  const dusty = !washOnly || !!(work['chase-crack'] || work['route-crack'] || work['free-bar']);
  if (dusty) {
    call(work, 'vacuum', { rule: 'dust-off' });
    call(work, 'final-wash', { rule: 'wash-everything' });
  }
  if (zone.contamination.includes('salt-bloom'))
    call(work, washOnly ? 'pressure-wash' : 'final-wash', { rule: 'salt-bloom-off' });

  call(
    work,
    'check-ready',
    { rule: 'prove-it' },
    { rule: 'cover-within-a-day', figures: ['open.limit'] },
  );
  const moisture = moistureOf(zone.finish);
  call(work, 'wet-or-dry', {
    rule:
      moisture === 'saturated-surface-dry'
        ? 'damp-not-wet'
        : moisture === 'dry'
          ? 'dry-for-coating'
          : 'finish-undecided',
    facts: { finish: zone.finish },
  });
  callFill(work, situation);
}

/**
 * Impact tools leave a bruised skin about 3 mm thick, and a bonded finish lets go with it.
 * Where it freezes often the skin may not stay; where frost is rare and the area small,
 * thorough washing will do.
 */
function callBruisedSkin(work: Work, { site, zone, method }: Situation): void {
  const { bruises } = methods[method];
  if (!isBonded(zone) || (bruises !== 'yes' && bruises !== 'most')) return;
  const small = zone.area !== 'unknown' && zone.area <= valueOf('blast.small-area');
  if (site.freezeThaw === 'often')
    call(work, 'blast-clean', { rule: 'bruised-skin-must-go', figures: ['depth.bruise'] });
  else if (site.freezeThaw === 'rare' && small)
    call(work, 'final-wash', {
      rule: 'bruised-skin-wash-will-do',
      figures: ['depth.bruise', 'blast.small-area'],
    });
  else call(work, 'blast-clean', { rule: 'bruised-skin-should-go', figures: ['depth.bruise'] });
}

/**
 * Whether what is left is too rough for the finish. A sealer follows the texture it finds.
 * @returns the CSP left at its smoothest and the roughest the finish accepts, or null
 */
export function tooRough({
  zone,
  demands,
  method,
}: Omit<Situation, 'site'>): { leaves: number; needs: number } | null {
  if (!demands.profile) return null;
  if (zone.finish === 'sealer' && methods[method].profile === 'as-found') return null;
  const [leaves] = profileLeft(method, demands.texture);
  const [, needs] = demands.profile;
  return leaves > needs ? { leaves, needs } : null;
}

/** A surface too rough for a thin finish is levelled with repair mortar first. */
function callFill(work: Work, situation: Situation): void {
  const facts = tooRough(situation);
  if (facts) call(work, 'fill-level', { rule: 'too-rough-fill-first', facts });
}
