import {
  between,
  distance,
  distanceToRing,
  inside,
  meetings,
  piecesOf,
  sidesOf,
  type Place,
  type Ring,
} from './geometry';

/** A joint that goes this little past a line was meant to end on it, mm: a slip of the tape. */
export const slip = 20;

/**
 * Joints as they part the surface: a free end inside it is taken on straight to the next edge or
 * joint, as the crack would go. An end that went a little too far stays where it is.
 */
export function takenOn(slab: Ring, joints: readonly (readonly Place[])[]): Place[][] {
  return joints.map((joint, index) => {
    const others = [
      ...sidesOf(slab),
      ...joints.flatMap((other, at) => (at === index ? [] : piecesOf(other))),
    ];
    const [first, second] = joint as [Place, Place];
    const [last, before] = [joint.at(-1) as Place, joint.at(-2) as Place];
    const start = endOf(first, second, slab, others);
    const end = endOf(last, before, slab, others);
    return [...(start ? [start] : []), ...joint, ...(end ? [end] : [])];
  });
}

/** Whether a joint has an end that stops short inside the surface. */
export function stopsShort(
  slab: Ring,
  joints: readonly (readonly Place[])[],
  index: number,
): boolean {
  const joint = joints[index] as readonly Place[];
  const taken = takenOn(slab, joints)[index] as Place[];
  const added =
    distance(taken[0] as Place, joint[0] as Place) +
    distance(taken.at(-1) as Place, joint.at(-1) as Place);
  return added > 2 * slip;
}

function endOf(
  end: Place,
  before: Place,
  slab: Ring,
  others: readonly (readonly [Place, Place])[],
): Place | null {
  if (!inside(end, slab, 0) || distanceToRing(end, slab) === 0) return null;
  const long = distance(before, end);
  if (long === 0) return null;
  const at = (by: number): Place => between(before, end, 1 + by / long);
  const back = [at(-Math.min(slip, long)), end] as const;
  if (others.some((other) => meetings(back, other).length)) return null;
  const far = at(reachOf(slab));
  const way = [end, far] as const;
  const share = Math.min(...others.flatMap((other) => meetings(way, other)));
  return Number.isFinite(share) ? between(end, far, share) : null;
}

const reachOf = (slab: Ring): number =>
  2 * slab.reduce((sum, place, index) => sum + distance(place, slab.at(index - 1) as Place), 0);
