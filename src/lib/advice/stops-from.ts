import { bandOf } from '$lib/answers/depth';
import { valueOf } from '$shared/figures';

/**
 * The damage from which the finished hole reaches half a known thickness: where it is broken out, and
 * as it is; mm, the nearer first. Source: figures `depth.full-limit` and `patch.into-sound`.
 */
export function halfEdges(thickness: number | 'unknown'): readonly number[] {
  if (thickness === 'unknown') return [];
  const half = thickness * valueOf('depth.full-limit');
  return [half - valueOf('patch.into-sound'), half].filter((at) => at > 0);
}

/**
 * From which depth on within a band the work surely stops, mm; undefined where it does nowhere in it.
 * @param stopsAt whether it surely stops with damage so deep
 */
export const stopsFrom = (
  band: string,
  thickness: number | 'unknown',
  stopsAt: (depth: number) => boolean,
): number | undefined =>
  halfEdges(thickness).find((at) => bandOf(at, thickness) === band && stopsAt(at));
