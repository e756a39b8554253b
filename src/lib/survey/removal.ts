import type { SpotMark, Survey } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Patch } from './patches';

/** What patches take off, as far as the drawing knows. */
export interface Removal {
  /** m3 of the patches whose depth is known. */
  readonly volume: number;
  /** Of the whole slab's volume; null where its thickness or a depth is not known. */
  readonly share: number | null;
  /** Patches with a spot of unknown depth: places in the list. */
  readonly withoutDepth: readonly number[];
}

/** Each patch down to the deepest of its spots and on into sound concrete (figure `patch.into-sound`). */
export function removalOf(
  patches: readonly Patch[],
  survey: Survey,
  area: number,
  thickness: number | 'unknown' | undefined,
  own?: OwnFigures,
): Removal {
  const deepest = patches.map(({ spots }) => {
    const depths = spots.map((index) => (survey.marks?.[index] as SpotMark).depth);
    return depths.includes(undefined) ? null : Math.max(...(depths as number[]));
  });
  const into = valueOf('patch.into-sound', own);
  const volume = patches.reduce((sum, patch, at) => {
    const depth = deepest[at];
    return depth === null || depth === undefined ? sum : sum + (patch.area * (depth + into)) / 1000;
  }, 0);
  const withoutDepth = deepest.flatMap((depth, at) => (depth === null ? [at] : []));
  return {
    volume,
    share:
      typeof thickness === 'number' && withoutDepth.length === 0
        ? volume / ((area * thickness) / 1000)
        : null,
    withoutDepth,
  };
}
