import type { Verdict } from '$lib/advice/types';
import type { Drawing } from './mark';

/**
 * A mark for each verdict, on a sheet of 48 by 48. They differ by outline and by weight, so that
 * they can be told apart without colour: a slab with the crayon's "down to here" under a tick,
 * an open lens with its question, a full bar across.
 */
export const verdictMarks: Readonly<Record<Verdict, Drawing>> = {
  prepare: [
    ['heavy', 'M11 19 20.5 28.5 38 7'],
    ['crayon', 'M5 39l8-1 9 1.5 10-1 11 .5'],
  ],
  'find-out-first': [
    ['form', 'M5 20a15 15 0 1 0 30 0a15 15 0 1 0-30 0z'],
    ['heavy', 'M5 20a15 15 0 1 0 30 0a15 15 0 1 0-30 0zM31 31 43 43'],
    ['heavy', 'M15.5 16C16 9.5 25 9.5 25 16C25 19.5 20 19.5 20 24'],
    ['solid', 'M18.2 28.5a1.8 1.8 0 1 0 3.6 0a1.8 1.8 0 1 0-3.6 0z'],
  ],
  stop: [
    ['solid', 'M4 4H44V44H4z'],
    ['form', 'M9 19H39V29H9z'],
  ],
};
