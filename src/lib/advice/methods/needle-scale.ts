import { judge, type MethodRule } from './judge';

/**
 * Needle scaling chips thin loose concrete and coatings off edges and small areas.
 * Source: common practice, no published source; profile from figure `csp.needle-scale`.
 */
export const needleScale: MethodRule = {
  shortfall: (demands) => judge('needle-scale', demands),
};
