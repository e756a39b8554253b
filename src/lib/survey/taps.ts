import type { Place, TapMark } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Bay } from './bays';
import { distance, distanceTo, distanceToRing, inside, piecesOf, type Ring } from './geometry';
import { soundingPoints } from './sounding-points';

/** A tap with its index among the marks. */
export interface Tap extends TapMark {
  readonly index: number;
}

/** Taps sought by place, in cells of one size. */
class Near<T extends { readonly at: Place }> {
  readonly #cells = new Map<string, T[]>();
  readonly #size: number;
  constructor(taps: readonly T[], size: number) {
    this.#size = size;
    for (const tap of taps) {
      const cell = this.#cellOf(tap.at).join();
      this.#cells.set(cell, [...(this.#cells.get(cell) ?? []), tap]);
    }
  }
  #cellOf = ([x, y]: Place): [number, number] => [
    Math.floor(x / this.#size),
    Math.floor(y / this.#size),
  ];
  /** Those no further than one cell's size away, itself left out. */
  round(tap: { readonly at: Place }): T[] {
    const [column, row] = this.#cellOf(tap.at);
    return [-1, 0, 1]
      .flatMap((dx) =>
        [-1, 0, 1].flatMap((dy) => this.#cells.get([column + dx, row + dy].join()) ?? []),
      )
      .filter((each) => each !== tap && distance(each.at, tap.at) <= this.#size);
  }
}

/** Taps of the grid alone: without those along joints, edges and cracks, as long as others are left. */
export function gridTaps(
  taps: readonly Tap[],
  bays: readonly Bay[],
  cracks: readonly (readonly Place[])[],
  own?: OwnFigures,
): Tap[] {
  const off = valueOf('sounding.off-edge', own) + 1;
  const lines = cracks.flatMap(piecesOf);
  const free = taps.filter(
    ({ at }) =>
      !bays.some(({ ring }) => distanceToRing(at, ring) <= off) &&
      !lines.some((piece) => distanceTo(at, piece) <= off),
  );
  return free.length >= 4 ? free : [...taps];
}

/**
 * The spacing a grid of taps was made with, mm: the middle one of the distances to the nearest
 * other tap. Null where there are too few to tell.
 */
export function spacingOf(taps: readonly Tap[]): number | null {
  if (taps.length < 4) return null;
  const inOrder = taps.map(({ at }) => at).sort(([one], [other]) => one - other);
  const nearest = inOrder.map((at, index) => nearestOf(at, index, inOrder)).sort((a, b) => a - b);
  return nearest[Math.floor(nearest.length / 2)] as number;
}

/** How far the nearest other place lies; looks along x no further than that. */
function nearestOf(at: Place, index: number, inOrder: readonly Place[]): number {
  let least = Infinity;
  for (const step of [-1, 1])
    for (let next = index + step; ; next += step) {
      const other = inOrder[next];
      if (!other || Math.abs(other[0] - at[0]) >= least) break;
      least = Math.min(least, distance(at, other));
    }
  return least;
}

/** No tap answers for more dots of a grid than these round it. */
const mostRound = 9;

/**
 * Ids of bays that were tapped all over: no dot of the grid that is laid there (figure
 * `sounding.grid-counts`) lies further from a tap, or from the damage drawn, than half the grid's
 * diagonal. A single tap tells of its own place and is no sounding of a surface.
 * Source: common practice, no published source; that no place of a square grid lies further from a
 * tap is geometry.
 */
export function tappedOver(
  taps: readonly Tap[],
  bays: readonly Bay[],
  spots: readonly Ring[],
  own?: OwnFigures,
): string[] {
  const spacing = valueOf('sounding.grid-counts', own);
  const near = new Near(taps, spacing * Math.SQRT1_2 + 1);
  return bays
    .filter((bay) => {
      if (taps.length * mostRound * (spacing / 1000) ** 2 < bay.area) return false;
      const { grid } = soundingPoints([bay], [], spacing, own);
      return grid.every(
        (at) => near.round({ at }).length > 0 || spots.some((ring) => inside(at, ring)),
      );
    })
    .map(({ id }) => id);
}

export interface TapFindings {
  /** Dull taps with no dull one beside them, not tapped again yet: to be tapped again. */
  readonly tapAgain: readonly number[];
  /** Dull taps to be outlined: two or more beside each other, or one that was tapped again. */
  readonly outline: readonly number[];
}

/**
 * What dull taps ask for. One tap in fifty misheard nearly doubles a small hollow area; tapping
 * lone ones again mends most of that.
 * @param spots outlines there are already: a dull tap in one asks for nothing
 */
export function askedByTaps(
  taps: readonly Tap[],
  spots: readonly Ring[],
  spacing: number,
  own?: OwnFigures,
): TapFindings {
  const dull = taps.filter(({ rings }) => !rings);
  // A neighbour on the slant is one and a half spacings away at most.
  const near = new Near(dull, 1.5 * Math.max(spacing, valueOf('sounding.edge-step', own)));
  const open = dull.filter(({ at }) => !spots.some((ring) => inside(at, ring)));
  const lone = open.filter((tap) => !tap.again && near.round(tap).length === 0);
  return {
    tapAgain: lone.map(({ index }) => index),
    outline: open.filter((tap) => !lone.includes(tap)).map(({ index }) => index),
  };
}
