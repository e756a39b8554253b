import { boxOf, distance, inside, near, ringOf, signedArea } from './geometry';
import type { Box, Place, Ring } from './geometry';
import { facesOf } from './faces';
import { takenOn } from './joints';

/** A part of the surface between joints and edges. */
export interface Bay {
  /** "1", "2", … from the reader's corner along x, then across. */
  readonly id: string;
  readonly ring: Ring;
  readonly box: Box;
  /** m2 */
  readonly area: number;
}

/** The bays that joints cut a surface into. Joints that end short are taken on to what stops them. */
export function baysOf(slab: Ring, joints: readonly (readonly Place[])[]): Bay[] {
  const lines = [...joints].sort((one, other) => (String(one) < String(other) ? -1 : 1));
  const rings = lines.length ? facesOf(slab, takenOn(slab, lines)) : [slab];
  return rings
    .filter((ring) => signedArea(ring) > 1 && inside(somewhereIn(ring), slab, 0))
    .map((ring) => ({ ring, box: boxOf(ring), area: signedArea(ring) / 1e6 }))
    .sort(
      ({ box: a }, { box: b }) =>
        apart(a.y0, b.y0) || apart(a.x0, b.x0) || apart(a.y1, b.y1) || apart(a.x1, b.x1),
    )
    .map((bay, index) => ({ id: String(index + 1), ...bay }));
}

const apart = (one: number, other: number): number =>
  Math.abs(one - other) < near ? 0 : one - other;

/** A place inside a tidy ring: just beside the middle of its longest side. */
export function somewhereIn(ring: Ring): Place {
  const ends = ring.map((from, index): [Place, Place] => [
    from,
    ring[(index + 1) % ring.length] as Place,
  ]);
  const [from, to] = ends.reduce((best, side) =>
    distance(...side) > distance(...best) ? side : best,
  );
  const long = distance(from, to);
  return [
    (from[0] + to[0]) / 2 - ((to[1] - from[1]) / long) * near,
    (from[1] + to[1]) / 2 + ((to[0] - from[0]) / long) * near,
  ];
}

/** A surface without an outline: one bay that nothing ends. */
export const openGround: Bay = {
  id: '',
  ring: ringOf({ x0: -Infinity, y0: -Infinity, x1: Infinity, y1: Infinity }),
  box: { x0: -Infinity, y0: -Infinity, x1: Infinity, y1: Infinity },
  area: Infinity,
};
