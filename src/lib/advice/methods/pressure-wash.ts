import { judge, type MethodRule } from './judge';

/**
 * Washing takes off nothing that holds: it cleans sound concrete, and lifts a powdery film.
 * Oil only floats and spreads, and after a coating has been scraped off its residue stays.
 * Source: common practice, no published source.
 */
export const pressureWash: MethodRule = {
  shortfall: (demands) => {
    if (demands.oil) return { demand: 'contaminant', rule: 'washing-spreads-oil' };
    if (demands.stripped) return { demand: 'contaminant', rule: 'washing-after-stripping' };
    return judge('pressure-wash', demands);
  },
};
