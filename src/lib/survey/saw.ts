import { boxOf, distance, gap, rough, sidesOf, type Place, type Ring } from './geometry';

/**
 * What is sawn round each of the patches of one bay, mm. Nothing along the bay's own outline, which
 * is a joint or a free edge; a side two patches share is sawn once and counts half for each.
 */
export function sawnSides(patches: readonly Ring[], bay: Ring): number[] {
  const free = sidesOf(bay);
  const boxes = patches.map(boxOf);
  return patches.map((ring, index) => {
    const beside = patches
      .filter((_, at) => at !== index && gap(boxes[at] as never, boxes[index] as never) < rough)
      .flatMap(sidesOf);
    return sidesOf(ring).reduce((sum, side) => {
      const alone = distance(...side) - covered(side, free);
      return sum + Math.max(0, alone - covered(side, beside) / 2);
    }, 0);
  });
}

/** How much of a side runs along any of these lines, mm. */
function covered(
  side: readonly [Place, Place],
  lines: readonly (readonly [Place, Place])[],
): number {
  const [from, to] = side;
  const long = distance(from, to);
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const runs = lines.flatMap(([start, end]) => {
    const [a, b] = [start, end].map(([x, y]) => {
      const [dx, dy] = [x - from[0], y - from[1]];
      return { along: dx * ux + dy * uy, off: Math.abs(dy * ux - dx * uy) };
    }) as [{ along: number; off: number }, { along: number; off: number }];
    if (!(a.off < rough && b.off < rough)) return [];
    const low = Math.max(0, Math.min(a.along, b.along));
    const high = Math.min(long, Math.max(a.along, b.along));
    return high > low ? [[low, high] as const] : [];
  });
  let sum = 0;
  let reached = 0;
  for (const [low, high] of runs.sort(([a], [b]) => a - b)) {
    sum += Math.max(0, high - Math.max(low, reached));
    reached = Math.max(reached, high);
  }
  return sum;
}
