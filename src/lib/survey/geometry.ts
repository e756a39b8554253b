import type { Place } from '$lib/answers/survey';

export type { Place };

/** Corners in order, the first not said again at the end. Worked with anticlockwise. */
export type Ring = readonly Place[];

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Two places nearer than this are one, mm. A limit of arithmetic, not of the trade. */
export const near = 1e-3;

/** Lines nearer than this run along each other once ground has been clipped, which rounds, mm. */
export const rough = 0.05;

export const distance = ([ax, ay]: Place, [bx, by]: Place): number => Math.hypot(bx - ax, by - ay);

export const same = (one: Place, other: Place): boolean => distance(one, other) < near;

/** Twice the area of the triangle; positive where c lies left of the way from a to b. */
export const turn = ([ax, ay]: Place, [bx, by]: Place, [cx, cy]: Place): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** The sides of a ring, the closing one included. */
export const sidesOf = (ring: Ring): [Place, Place][] =>
  ring.map((from, index) => [from, ring[(index + 1) % ring.length] as Place]);

/** The pieces of a line. */
export const piecesOf = (line: readonly Place[]): [Place, Place][] =>
  line.slice(1).map((to, index) => [line[index] as Place, to]);

/** mm2, positive where the ring runs anticlockwise. */
export function signedArea(ring: Ring): number {
  const [origin] = ring;
  if (!origin) return 0;
  return sidesOf(ring).reduce((sum, [from, to]) => sum + turn(origin, from, to), 0) / 2;
}

export const lengthOf = (line: readonly Place[]): number =>
  piecesOf(line).reduce((sum, [from, to]) => sum + distance(from, to), 0);

/** A ring as it is worked with: nothing said twice in a row, no corner on a straight side, anticlockwise. */
export function tidy(corners: readonly Place[]): Ring {
  let ring = corners.filter((place, index) => {
    const before = corners[(index + corners.length - 1) % corners.length] as Place;
    return corners.length < 2 || !same(place, before);
  });
  ring = ring.filter((place, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] as Place;
    const after = ring[(index + 1) % ring.length] as Place;
    return Math.abs(turn(before, place, after)) > near * 0.1 * distance(before, after);
  });
  return signedArea(ring) < 0 ? [...ring].reverse() : ring;
}

export function boxOf(places: readonly Place[]): Box {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const place of places) {
    const x = place[0];
    const y = place[1];
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
  }
  return { x0, y0, x1, y1 };
}

export const ringOf = ({ x0, y0, x1, y1 }: Box): Ring => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/** The clear distance between two boxes, mm; 0 where they touch or overlap. */
export const gap = (one: Box, other: Box): number =>
  Math.hypot(
    Math.max(one.x0 - other.x1, other.x0 - one.x1, 0),
    Math.max(one.y0 - other.y1, other.y0 - one.y1, 0),
  );

export const around = (one: Box, other: Box): Box => ({
  x0: Math.min(one.x0, other.x0),
  y0: Math.min(one.y0, other.y0),
  x1: Math.max(one.x1, other.x1),
  y1: Math.max(one.y1, other.y1),
});

export const within = (one: Box, other: Box): boolean =>
  one.x0 >= other.x0 && one.y0 >= other.y0 && one.x1 <= other.x1 && one.y1 <= other.y1;

/** Whether a tidy ring is a rectangle along the axes. */
export const isBox = (ring: Ring): boolean =>
  ring.length === 4 && sidesOf(ring).every(([[ax, ay], [bx, by]]) => ax === bx || ay === by);

/** How far a place lies from a straight piece, mm. */
export function distanceTo(place: Place, [from, to]: readonly [Place, Place]): number {
  const along = distance(from, to);
  if (along === 0) return distance(place, from);
  const share =
    ((place[0] - from[0]) * (to[0] - from[0]) + (place[1] - from[1]) * (to[1] - from[1])) /
    along ** 2;
  return distance(place, between(from, to, Math.min(1, Math.max(0, share))));
}

export const between = (from: Place, to: Place, share: number): Place => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
];

/** How far a place lies from the outline of a ring, mm. */
export const distanceToRing = (place: Place, ring: Ring): number =>
  Math.min(...sidesOf(ring).map((side) => distanceTo(place, side)));

/** Whether a place lies in a ring; on the outline counts where it is within `edge` mm of it. */
export function inside([x, y]: Place, ring: Ring, edge = near): boolean {
  let odd = false;
  for (const [[ax, ay], [bx, by]] of sidesOf(ring))
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) odd = !odd;
  return odd || (edge > 0 && distanceToRing([x, y], ring) < edge);
}

/**
 * Where two straight pieces meet, as shares of the first; two shares where they run along each
 * other, none where they do not meet. Ends that touch within `near` count.
 */
export function meetings(
  [a, b]: readonly [Place, Place],
  [c, d]: readonly [Place, Place],
): readonly number[] {
  const long = distance(a, b);
  const other = distance(c, d);
  if (long === 0 || other === 0) return [];
  const share = (place: Place) =>
    ((place[0] - a[0]) * (b[0] - a[0]) + (place[1] - a[1]) * (b[1] - a[1])) / long ** 2;
  const touching = [c, d]
    .filter((end) => distanceTo(end, [a, b]) < near)
    .map((end) => Math.min(1, Math.max(0, share(end))));
  const cross = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
  if (Math.abs(cross) <= 1e-12 * long * other) {
    const ends = [a, b].flatMap((end, index) => (distanceTo(end, [c, d]) < near ? [index] : []));
    return [...new Set([...touching, ...ends])];
  }
  const at = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / cross;
  const on = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / cross;
  const slack = near / long;
  if (at >= -slack && at <= 1 + slack && on >= -near / other && on <= 1 + near / other)
    return [Math.min(1, Math.max(0, at))];
  return touching;
}
