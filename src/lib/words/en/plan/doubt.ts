import type { Say } from '$lib/words/types';

/**
 * One line where a hole may pass the depth to which a patch surely holds.
 * @param depth mm
 */
export const doubtLine = (depth: number, say: Say): string =>
  `The hole may go past ${say.length(depth)}, ${say.fraction(say.valueOf('depth.partial-limit'))} of the slab: a patch is doubtful. Compare with a new part.`;
