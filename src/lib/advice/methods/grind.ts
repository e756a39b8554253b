import { judge, judgePlace, judgeRemoval, type MethodRule } from './judge';

/**
 * Grinding planes off up to 3 mm (1/8 in) of a flat surface and leaves it nearly smooth.
 * It rides over pits and open cracks, and a thick or rubbery coating glazes under it.
 * Source: common practice, no published source; profile from figure `csp.grind`.
 */
export const grind: MethodRule = {
  shortfall: (demands) =>
    judgePlace('grind', demands) ??
    judgeRemoval('grind', demands) ??
    (demands.heavyCoating ? { demand: 'contaminant', rule: 'glazes-coating' } : null) ??
    judge('grind', demands),
};
