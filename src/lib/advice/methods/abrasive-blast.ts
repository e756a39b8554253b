import { judge, type MethodRule } from './judge';

/**
 * Abrasive blasting follows any shape, off the floor above all; it takes 6 mm (1/4 in) in passes
 * and leaves no bruised skin, at the price of open dust and containment.
 * Source: common practice, no published source; profile from figure `csp.abrasive-blast`.
 */
export const abrasiveBlast: MethodRule = {
  shortfall: (demands) => judge('abrasive-blast', demands),
};
