import {
  judgeContaminants,
  judgePlace,
  judgeProfile,
  judgeRemoval,
  judgeTexture,
  type MethodRule,
} from './judge';

/**
 * Scarifying cuts to 6 mm (1/4 in) on floors, rolling over low spots between its teeth.
 * A thick or rubbery coating bridges those low spots, so the coating still comes off;
 * what lies in the pits is then left to shotblasting.
 * Source: common practice, no published source; profile from figure `csp.scarify`.
 */
export const scarify: MethodRule = {
  shortfall: (demands) =>
    judgePlace('scarify', demands) ??
    judgeRemoval('scarify', demands) ??
    judgeContaminants('scarify', demands) ??
    (demands.heavyCoating ? null : judgeTexture('scarify', demands)) ??
    // After a coating the floor is shotblasted all the same, and shot leaves what is wanted.
    judgeProfile(demands.heavyCoating ? 'shotblast' : 'scarify', demands),
};
