import type { Rectangle } from '$lib/answers/job';
import type { FreezeThaw } from '$lib/answers/questions';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import type { Span } from './amount';

/** A damaged spot as a rectangle on the surface, mm. */
export type Spot = Rectangle;

/** A rectangle to saw and break out, and the spots it takes in. */
export interface Patch extends Spot {
  readonly spots: readonly number[];
}

export interface PatchLayout {
  readonly patches: readonly Patch[];
  /** Indices of spots too small to break out. */
  readonly skipped: readonly number[];
}

/** How far past the damage a patch goes, mm. Source: figures `patch.past-damage*`. */
export function pastDamage(frost: FreezeThaw, own?: OwnFigures): Span {
  return frost === 'often'
    ? rangeOf('patch.past-damage-frost', own)
    : rangeOf('patch.past-damage', own);
}

/**
 * Lays square-cornered patches over damaged spots: each spot is taken past its damage, brought
 * to the least size, and merged with what lies closer than the merging distance, until nothing does.
 * Rectangles have no re-entrant corners, so none appear. Joints are the reader's to keep clear of.
 * Source: FHWA, Partial-depth repairs, 4.2 (figures `patch.*`).
 */
export function layPatches(
  spots: readonly Spot[],
  frost: FreezeThaw,
  own?: OwnFigures,
): PatchLayout {
  const past = pastDamage(frost, own)[1];
  const tooSmall = ({ length, width }: Spot) =>
    Math.max(length, width) < valueOf('patch.skip-length', own) &&
    Math.min(length, width) < valueOf('patch.skip-width', own);
  const skipped = spots.flatMap((spot, index) => (tooSmall(spot) ? [index] : []));
  let patches = spots.flatMap((spot, index): Patch[] =>
    skipped.includes(index) ? [] : [atLeastSize(grown(spot, past, [index]), own)],
  );
  for (let merged = true; merged;) {
    merged = false;
    for (const [index, one] of patches.entries()) {
      const other = patches.findIndex(
        (each, at) => at > index && gap(one, each) < valueOf('patch.merge', own),
      );
      if (other === -1) continue;
      const both = around(one, patches[other] as Patch);
      patches = [...patches.filter((_each, at) => at !== index && at !== other), both];
      merged = true;
      break;
    }
  }
  return { patches, skipped };
}

const grown = ({ x, y, length, width }: Spot, by: number, spots: readonly number[]): Patch => ({
  x: x - by,
  y: y - by,
  length: length + 2 * by,
  width: width + 2 * by,
  spots,
});

/** Brings a patch to the least length and width, about its middle. */
function atLeastSize(patch: Patch, own?: OwnFigures): Patch {
  const [long, short] = [valueOf('patch.min-length', own), valueOf('patch.min-width', own)];
  const lengthwise = patch.length >= patch.width;
  const length = Math.max(patch.length, lengthwise ? long : short);
  const width = Math.max(patch.width, lengthwise ? short : long);
  return {
    ...patch,
    x: patch.x - (length - patch.length) / 2,
    y: patch.y - (width - patch.width) / 2,
    length,
    width,
  };
}

/** The clear distance between two rectangles, mm; 0 where they touch or overlap. */
export function gap(one: Spot, other: Spot): number {
  const across = Math.max(one.x - (other.x + other.length), other.x - (one.x + one.length), 0);
  const along = Math.max(one.y - (other.y + other.width), other.y - (one.y + one.width), 0);
  return Math.hypot(across, along);
}

function around(one: Patch, other: Patch): Patch {
  const x = Math.min(one.x, other.x);
  const y = Math.min(one.y, other.y);
  return {
    x,
    y,
    length: Math.max(one.x + one.length, other.x + other.length) - x,
    width: Math.max(one.y + one.width, other.y + other.width) - y,
    spots: [...one.spots, ...other.spots].sort((a, b) => a - b),
  };
}

/**
 * The ground a break-out takes when only its area is known: a square of that area, taken past
 * the damage on every side and brought to the least size.
 * @param area m2
 * @returns area in m2 and perimeter in m, each least to most
 */
export function squarePatch(
  area: number,
  frost: FreezeThaw,
  own?: OwnFigures,
): { area: Span; perimeter: Span } {
  const side = Math.sqrt(area);
  const sides = pastDamage(frost, own).map((past) =>
    Math.max(
      side + (2 * past) / 1000,
      Math.sqrt((valueOf('patch.min-length', own) * valueOf('patch.min-width', own)) / 1e6),
    ),
  ) as [number, number];
  return {
    area: [sides[0] ** 2, sides[1] ** 2],
    perimeter: [4 * sides[0], 4 * sides[1]],
  };
}
