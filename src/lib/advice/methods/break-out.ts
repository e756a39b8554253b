import { judge, type MethodRule } from './judge';

/**
 * Breaking out goes down to sound concrete at any depth and takes everything with it.
 * It is the only method for hollow and rotten concrete, and bruises the most.
 * Source: common practice, no published source; profile from figure `csp.break-out`.
 */
export const breakOut: MethodRule = {
  shortfall: (demands) => judge('break-out', demands),
};
