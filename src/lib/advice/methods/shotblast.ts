import { judge, judgePlace, judgeRemoval, type MethodRule } from './judge';

/**
 * Shotblasting throws steel shot at a dry floor and picks it up again: it reaches into pits
 * and grooves, to 6 mm (1/4 in) in several passes, and bruises little. Shot bounces off a
 * thick or rubbery coating.
 * Source: common practice, no published source; profile from figure `csp.shotblast`.
 */
export const shotblast: MethodRule = {
  shortfall: (demands) =>
    judgePlace('shotblast', demands) ??
    judgeRemoval('shotblast', demands) ??
    (demands.heavyCoating ? { demand: 'contaminant', rule: 'shot-bounces' } : null) ??
    judge('shotblast', demands),
};
