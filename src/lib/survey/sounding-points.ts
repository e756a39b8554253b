import type { Place } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Bay } from './bays';
import {
  between,
  distance,
  distanceToRing,
  inside,
  isBox,
  meetings,
  piecesOf,
  sidesOf,
  type Ring,
} from './geometry';

/** Where to tap, mm. */
export interface SoundingPoints {
  readonly grid: readonly Place[];
  /** Along joints, edges and cracks. */
  readonly lines: readonly Place[];
}

/**
 * Where to tap, bay by bay: an even grid no wider than asked, half a spacing off the bay's edges
 * and so never on a joint, and lines of taps beside every joint, edge and crack.
 * Common practice, no source (figures `sounding.*`).
 */
export function soundingPoints(
  bays: readonly Bay[],
  cracks: readonly (readonly Place[])[],
  spacing: number,
  own?: OwnFigures,
): SoundingPoints {
  const off = valueOf('sounding.off-edge', own);
  const step = valueOf('sounding.edge-step', own);
  const grid = bays.flatMap(({ ring, box: { x0, y0, x1, y1 } }) => {
    const columns = evenly(x1 - x0, spacing);
    const rows = evenly(y1 - y0, spacing);
    return rows
      .flatMap((y) => columns.map((x): Place => [x0 + x, y0 + y]))
      .filter((place) => clear(place, ring, off / 2));
  });
  const lines = bays.flatMap(({ ring }) =>
    [
      ...sidesOf(ring).flatMap((side) => beside(side, off, step, off)),
      ...cracks
        .flatMap(piecesOf)
        .flatMap((piece) => [...beside(piece, off, step, 0), ...beside(piece, -off, step, 0)]),
    ].filter((place) => clear(place, ring, off / 2)),
  );
  return { grid, lines: apart(lines, off / 2) };
}

/** The middles of as few equal lengths as are no longer than `most`. */
function evenly(whole: number, most: number): number[] {
  const count = Math.max(1, Math.ceil(whole / most - 1e-9));
  return Array.from({ length: count }, (_, index) => (whole * (index + 0.5)) / count);
}

const clear = (place: Place, ring: Ring, by: number): boolean =>
  inside(place, ring, 0) && distanceToRing(place, ring) >= by - 1e-6;

/** Places beside a straight piece, `off` to its left, at most `step` apart, `inset` from both ends. */
function beside(
  [from, to]: readonly [Place, Place],
  off: number,
  step: number,
  inset: number,
): Place[] {
  const long = distance(from, to);
  if (long === 0) return [];
  const [nx, ny] = [-(to[1] - from[1]) / long, (to[0] - from[0]) / long];
  const run = Math.max(0, long - 2 * inset);
  const count = Math.ceil(run / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, index): Place => {
    const along = run === 0 ? long / 2 : inset + (run * index) / Math.max(1, count);
    const [x, y] = between(from, to, along / long);
    return [x + nx * off, y + ny * off];
  });
}

/** Leaves out what lies nearer than `least` to one before it. */
function apart(places: readonly Place[], least: number): Place[] {
  const kept: Place[] = [];
  for (const place of places)
    if (!kept.some((each) => distance(each, place) < least)) kept.push(place);
  return kept;
}

/**
 * Lanes to drag a chain along, adjoining: the middle line of each, along the longer side of its bay.
 * @param most widest lane, mm
 */
export function chainLanes(bays: readonly Bay[], most: number): [Place, Place][] {
  return bays.flatMap(({ ring, box: { x0, y0, x1, y1 } }) => {
    const lanes =
      x1 - x0 >= y1 - y0
        ? evenly(y1 - y0, most).map((y): [Place, Place] => [
            [x0, y0 + y],
            [x1, y0 + y],
          ])
        : evenly(x1 - x0, most).map((x): [Place, Place] => [
            [x0 + x, y0],
            [x0 + x, y1],
          ]);
    return isBox(ring) ? lanes : lanes.flatMap((lane) => partsInside(lane, ring));
  });
}

/** What of a line lies in a ring. */
function partsInside(line: [Place, Place], ring: Ring): [Place, Place][] {
  const stops = [0, 1, ...sidesOf(ring).flatMap((side) => meetings(line, side))].sort(
    (a, b) => a - b,
  );
  return stops.slice(1).flatMap((to, index): [Place, Place][] => {
    const from = stops[index] as number;
    return to > from && inside(between(...line, (from + to) / 2), ring, 0)
      ? [[between(...line, from), between(...line, to)]]
      : [];
  });
}
