import { boundsOf, depthInside, type Point, type Polygon } from './points';
import { randomFrom, type Random } from './random';

/** A piece of aggregate: everything of it lies within `radius` of `centre`. */
export interface Stone {
  readonly centre: Point;
  readonly radius: number;
  readonly corners: Polygon;
}

/** How to fill a piece of concrete. Lengths in the drawing's units. */
export interface Packing {
  readonly seed: number;
  /** Largest and smallest stone, as the radius round it. */
  readonly radii: readonly [largest: number, smallest: number];
  /** Least clear mortar between two stones, and between a stone and the outline. */
  readonly gap?: number;
  /** How often a place is tried; more makes the concrete denser. */
  readonly tries?: number;
}

/** A stone as a broken pebble: five to eight corners, a little longer one way than the other. */
function corners(centre: Point, radius: number, next: Random): Polygon {
  const count = 5 + Math.floor(next() * 4);
  const turn = next() * Math.PI;
  const flat = 0.62 + next() * 0.35;
  return Array.from({ length: count }, (_, index): Point => {
    const angle = ((index + next() * 0.6) / count) * 2 * Math.PI;
    const reach = radius * (0.86 + next() * 0.14);
    const along = Math.cos(angle) * reach;
    const across = Math.sin(angle) * reach * flat;
    return [
      centre[0] + along * Math.cos(turn) - across * Math.sin(turn),
      centre[1] + along * Math.sin(turn) + across * Math.cos(turn),
    ];
  });
}

/** Whether two points lie nearer than that. Most are told apart by one side, which is quicker. */
function isNearer(one: Point, other: Point, reach: number): boolean {
  const [dx, dy] = [one[0] - other[0], one[1] - other[1]];
  return Math.abs(dx) < reach && Math.abs(dy) < reach && Math.hypot(dx, dy) < reach;
}

/**
 * Stones inside a polygon, large before small so that the small ones fill between, as a
 * well-graded aggregate does. Each keeps to a circle of its own, and the circles keep clear
 * of each other and of the outline: so no two stones overlap and none crosses it.
 */
export function packStones(field: Polygon, packing: Packing): readonly Stone[] {
  const { seed, radii, gap = 1, tries = 160 } = packing;
  const next = randomFrom(seed);
  const [left, top, right, bottom] = boundsOf(field);
  const depth = depthInside(field);
  const placed: Stone[] = [];
  for (let turn = 0; turn < tries; turn++) {
    // Sizes fall quickly from the largest to many small ones.
    const radius = radii[1] + (radii[0] - radii[1]) * (1 - turn / tries) ** 2;
    const centre: Point = [left + next() * (right - left), top + next() * (bottom - top)];
    const clear = radius + gap;
    const fits =
      depth(centre) >= clear &&
      placed.every((other) => !isNearer(centre, other.centre, clear + other.radius));
    if (fits) placed.push({ centre, radius, corners: corners(centre, radius, next) });
  }
  return placed;
}

/** Grains of sand between the stones of a polygon. */
export function strewSand(
  field: Polygon,
  stones: readonly Stone[],
  seed: number,
  count: number,
): readonly Point[] {
  const next = randomFrom(seed);
  const depth = depthInside(field);
  const [left, top, right, bottom] = boundsOf(field);
  return Array.from({ length: count }, (): Point => [
    left + next() * (right - left),
    top + next() * (bottom - top),
  ]).filter(
    (grain) =>
      depth(grain) > 1 &&
      stones.every(({ centre, radius }) => !isNearer(grain, centre, radius + 0.5)),
  );
}
