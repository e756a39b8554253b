import type { FigureId } from '$shared/figures';
import { methods, type MethodId } from '$shared/methods';
import { isBonded, showsBar, type Demands } from './demands';
import { clearBehindBar, makesHole } from './hole';
import { profileLeft } from './methods/judge';
import { moistureOf, profileFigureOf } from './sheet';
import { chasesCrack } from './steps/cracks';
import type { SettledSite, SettledZone, Target } from './types';

/** A sealer follows the texture it finds, where what is done only cleans. */
export const followsTexture = (
  { finish }: Pick<SettledZone, 'finish'>,
  method: MethodId | null,
): boolean => finish === 'sealer' && method !== null && methods[method].profile === 'as-found';

/** Holes and chased cracks are filled before any finish, and the fill is bonded. */
const opensHole = (
  site: SettledSite,
  zone: SettledZone,
  demands: Demands,
  chosen: MethodId,
): boolean => demands.bar || chasesCrack(site, zone) || makesHole(chosen, zone);

/**
 * What the surface must be when preparation ends.
 * @param chosen the method, whatever may still hold it up
 * @param method the same; null where no surface method applies
 */
export function targetOf(
  site: SettledSite,
  zone: SettledZone,
  demands: Demands,
  chosen: MethodId,
  method: MethodId | null = chosen,
): Target {
  const figure = zone.makerProfile === undefined ? profileFigureOf(zone.finish) : null;
  const figures: FigureId[] = ['open.limit'];
  if (figure) figures.push(figure);
  const freesBar = showsBar(zone);
  if (freesBar) figures.push('bar.clear', 'bar.clear-over-aggregate');
  return {
    profile: demands.profile,
    ...(zone.makerProfile !== undefined && demands.profile && { fromSheet: true as const }),
    ...(followsTexture(zone, method) && { followsTexture: true as const }),
    leaves: method && profileLeft(method, demands),
    bruisedSkin:
      !isBonded(zone) && !opensHole(site, zone, demands, chosen)
        ? 'may-stay'
        : site.freezeThaw === 'often'
          ? 'must-go'
          : 'should-go',
    moisture: moistureOf(zone),
    ...(freesBar && { behindBar: clearBehindBar(0) }),
    figures,
  };
}
