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

type DeepPatch = Pick<Patch, 'area' | 'depth'>;

/** m3 that a patch takes off: down to its deepest damage and on into sound concrete (figure `patch.into-sound`). */
export const patchVolume = ({ area, depth }: DeepPatch, own?: OwnFigures): number | null =>
  depth === undefined ? null : (area * (depth + valueOf('patch.into-sound', own))) / 1000;

/** What all patches of a surface take off. */
export function removalOf(
  patches: readonly DeepPatch[],
  area: number,
  thickness: number | 'unknown' | undefined,
  own?: OwnFigures,
): Removal {
  const volumes = patches.map((patch) => patchVolume(patch, own));
  const volume = volumes.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  const withoutDepth = volumes.flatMap((each, at) => (each === null ? [at] : []));
  return {
    volume,
    share:
      typeof thickness === 'number' && withoutDepth.length === 0
        ? volume / ((area * thickness) / 1000)
        : null,
    withoutDepth,
  };
}
