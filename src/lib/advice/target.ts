import type { FigureId } from '$shared/figures';
import { methods, type MethodId } from '$shared/methods';
import { isBonded, showsBar } from './demands';
import { clearBehindBar, makesHole } from './hole';
import { profileLeft } from './methods/judge';
import { moistureOf, profileFigureOf } from './sheet';
import { chasesCrack } from './steps/cracks';
import type { Situation } from './steps/work';
import type { SettledZone, Target, TargetPart } from './types';

/** A sealer follows the texture it finds, where what is done only cleans. */
export const followsTexture = (
  { finish }: Pick<SettledZone, 'finish'>,
  method: MethodId | null,
): boolean => finish === 'sealer' && method !== null && methods[method].profile === 'as-found';

type Wanted = Pick<Situation, 'site' | 'zone' | 'demands' | 'method'>;

/** Holes and chased cracks are filled before any finish, and the fill is bonded. */
const opensHole = ({ site, zone, method }: Wanted): boolean =>
  showsBar(zone) || makesHole(method, zone) || chasesCrack(site, zone);

/** What every part of the target is found by. Each looks at no more than it needs. */
export const targetRules = {
  profile: ({ demands }) => demands.profile,
  leaves: ({ demands, method }) => profileLeft(method, demands),
  bruisedSkin: (wanted) =>
    !isBonded(wanted.zone) && !opensHole(wanted)
      ? 'may-stay'
      : wanted.site.freezeThaw === 'often'
        ? 'must-go'
        : 'should-go',
  moisture: ({ zone }) => moistureOf(zone),
  behindBar: ({ zone }) => (showsBar(zone) ? clearBehindBar(0) : undefined),
} as const satisfies { readonly [Part in TargetPart]: (wanted: Wanted) => Target[Part] };

/**
 * What the surface must be when preparation ends.
 * @param wanted with the method, whatever may still hold it up
 * @param underneath the same method; null where no surface method applies
 */
export function targetOf(wanted: Wanted, underneath: MethodId | null): Target {
  const { zone } = wanted;
  const figure = zone.makerProfile === undefined ? profileFigureOf(zone.finish) : null;
  const figures: FigureId[] = ['open.limit'];
  if (figure) figures.push(figure);
  const profile = targetRules.profile(wanted);
  const behindBar = targetRules.behindBar(wanted);
  if (behindBar !== undefined) figures.push('bar.clear', 'bar.clear-over-aggregate');
  return {
    profile,
    ...(zone.makerProfile !== undefined && profile && { fromSheet: true as const }),
    ...(followsTexture(zone, underneath) && { followsTexture: true as const }),
    leaves: underneath && targetRules.leaves(wanted),
    bruisedSkin: targetRules.bruisedSkin(wanted),
    moisture: targetRules.moisture(wanted),
    ...(behindBar !== undefined && { behindBar }),
    figures,
  };
}
