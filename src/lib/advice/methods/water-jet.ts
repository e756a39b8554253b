import { judge, type MethodRule } from './judge';

/**
 * High-pressure water jetting (hydrodemolition) removes weak concrete at any depth and
 * leaves no bruised skin. It is work for specialists, so never the first advice.
 * Source: ACI RAP-14 for the missing microcracks; the rest common practice, no published source.
 */
export const waterJet: MethodRule = {
  shortfall: (demands) => judge('water-jet', demands),
};
