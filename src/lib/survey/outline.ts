import type { Place, SlabOutline } from '$lib/answers/survey';
import { distance, ringOf, tidy, type Ring } from './geometry';

/** The outline of the surface as a ring, mm. */
export function outlineOf(slab: SlabOutline): Ring {
  if ('corners' in slab) return tidy(slab.corners);
  if ('steps' in slab) {
    const { count, tread, riser, width } = slab.steps;
    return ringOf({ x0: 0, y0: 0, x1: count * (tread + riser), y1: width });
  }
  return ringOf({ x0: 0, y0: 0, x1: slab.length, y1: slab.width });
}

/** The folds of a flight laid flat: no patch goes over one, as none goes over a joint. */
export function foldsOf(slab: SlabOutline): [Place, Place][] {
  if (!('steps' in slab)) return [];
  const { count, tread, riser, width } = slab.steps;
  return Array.from({ length: 2 * count - 1 }, (_, index) => {
    const x = Math.ceil((index + 1) / 2) * riser + Math.floor((index + 1) / 2) * tread;
    return [
      [x, 0],
      [x, width],
    ];
  });
}

/** Joints of a bay pattern: straight lines across at most `spacing` mm apart, evenly. */
export function evenJoints(
  { length, width }: { readonly length: number; readonly width: number },
  along: number,
  across: number,
): [Place, Place][] {
  const places = (whole: number, spacing: number) => {
    const bays = Math.ceil(whole / spacing - 1e-9);
    return Array.from({ length: bays - 1 }, (_, index) => (whole * (index + 1)) / bays);
  };
  return [
    ...places(length, along).map((x): [Place, Place] => [
      [x, 0],
      [x, width],
    ]),
    ...places(width, across).map((y): [Place, Place] => [
      [0, y],
      [length, y],
    ]),
  ];
}

/** One taped side: how long, mm, and how far to turn left at its end, degrees (90 at a square corner). */
export interface TapedSide {
  readonly length: number;
  readonly turn: number;
}

/**
 * Corners from sides taped one after the other, starting along x from the first corner.
 * @returns the corners, and how far the last side ends from the first corner, mm: 0 closes
 */
export function cornersFromSides(sides: readonly TapedSide[]): {
  readonly corners: readonly Place[];
  readonly open: number;
} {
  const corners: Place[] = [];
  let at: Place = [0, 0];
  let heading = 0;
  for (const side of sides) {
    corners.push(at);
    const angle = (heading * Math.PI) / 180;
    at = [at[0] + side.length * Math.cos(angle), at[1] + side.length * Math.sin(angle)];
    heading += side.turn;
  }
  return { corners, open: distance(at, [0, 0]) };
}
