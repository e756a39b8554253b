import { ClipType, FillRule, type Paths64 } from 'clipper2-ts/dist/Core.js';
// The parts by name: the whole library weighs twice as much.
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { boxOf, isBox, ringOf, rough, signedArea, tidy, within, type Ring } from './geometry';

/** Ground in one or more parts: outlines anticlockwise, holes in them clockwise. */
export type Ground = readonly Ring[];

/** Parts smaller than this are left by arithmetic, mm2. */
const crumb = 1;

/** The library works in whole numbers and so never fails on a near miss: this many to the mm. */
const fine = 1024;

const toWhole = (ground: Ground): Paths64 =>
  ground.map((ring) =>
    ring.map(([x, y]) => ({ x: Math.round(x * fine), y: Math.round(y * fine) })),
  );

function clipped(how: ClipType, one: Ground, other: Ground): Ground {
  const engine = new Clipper64();
  engine.addSubject(toWhole(one));
  if (other.length) engine.addClip(toWhole(other));
  const solution: Paths64 = [];
  engine.execute(how, FillRule.NonZero, solution);
  return solution.map((ring) => ring.map(({ x, y }): [number, number] => [x / fine, y / fine]));
}

/** mm2 */
export const groundArea = (ground: Ground): number =>
  ground.reduce((sum, ring) => sum + signedArea(ring), 0);

export const joined = (ground: Ground): Ground =>
  ground.length > 1 ? clipped(ClipType.Union, ground, []) : ground;

export const shared = (one: Ground, other: Ground): Ground =>
  one.length && other.length ? clipped(ClipType.Intersection, one, other) : [];

export const less = (one: Ground, other: Ground): Ground =>
  one.length && other.length ? clipped(ClipType.Difference, one, other) : one;

/** What two rings have in common, as outlines (rings have no holes). */
export function common(one: Ring, other: Ring): Ring[] {
  const [mine, theirs] = [boxOf(one), boxOf(other)];
  if (mine.x0 > theirs.x1 || theirs.x0 > mine.x1 || mine.y0 > theirs.y1 || theirs.y0 > mine.y1)
    return [];
  if (isBox(other) && within(mine, theirs)) return [one];
  if (isBox(one) && isBox(other))
    return solid([
      ringOf({
        x0: Math.max(mine.x0, theirs.x0),
        y0: Math.max(mine.y0, theirs.y0),
        x1: Math.min(mine.x1, theirs.x1),
        y1: Math.min(mine.y1, theirs.y1),
      }),
    ]);
  return solid(shared([one], [other]).map(tidy));
}

const solid = (rings: readonly Ring[]): Ring[] =>
  rings.filter((ring) => ring.length >= 3 && signedArea(ring) > crumb);

/**
 * A ring in pieces without re-entrant corners: each such corner's side is taken on straight to the
 * far side. A patch has none (figure `patch.min-corner`).
 */
export function withoutReentrant(ring: Ring): Ring[] {
  const corner = ring.findIndex((place, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] as Ring[number];
    const after = ring[(index + 1) % ring.length] as Ring[number];
    const bend =
      (place[0] - before[0]) * (after[1] - place[1]) -
      (place[1] - before[1]) * (after[0] - place[0]);
    return bend < -rough * Math.hypot(after[0] - before[0], after[1] - before[1]);
  });
  if (corner === -1) return [ring];
  const at = ring[corner] as Ring[number];
  const before = ring[(corner + ring.length - 1) % ring.length] as Ring[number];
  const long = Math.hypot(at[0] - before[0], at[1] - before[1]);
  const [dx, dy] = [(at[0] - before[0]) / long, (at[1] - before[1]) / long];
  const box = boxOf(ring);
  const reach = box.x1 - box.x0 + (box.y1 - box.y0);
  // Both halves of the ground along the line of that side: as large as they need be.
  const half = (side: 1 | -1): Ring =>
    tidy([
      [at[0] - dx * reach, at[1] - dy * reach],
      [at[0] + dx * reach, at[1] + dy * reach],
      [at[0] + (dx - side * dy) * reach, at[1] + (dy + side * dx) * reach],
      [at[0] - (dx + side * dy) * reach, at[1] - (dy - side * dx) * reach],
    ]);
  return [half(1), half(-1)].flatMap((part) => common(ring, part)).flatMap(withoutReentrant);
}
