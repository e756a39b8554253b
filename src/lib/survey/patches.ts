import type { SiteAnswers } from '$lib/answers/answers';
import type { Rectangle } from '$lib/answers/job';
import type { FreezeThaw } from '$lib/answers/questions';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import { openGround, type Bay } from './bays';
import { common, withoutReentrant } from './clip';
import {
  around,
  boxOf,
  gap,
  isBox,
  ringOf,
  signedArea,
  tidy,
  type Box,
  type Ring,
} from './geometry';
import { sawnSides } from './saw';

/** Ground to saw and break out, and the damage it takes in. Its rectangle in mm. */
export interface Patch extends Rectangle {
  /** Indices of the outlines it takes in. */
  readonly spots: readonly number[];
  /** What it is called on the drawing of the whole slab, from 1; absent without one. */
  readonly number?: number;
  /** Id of its bay; empty where no outline of the surface is known. */
  readonly bay: string;
  /** Its corners where an edge or a joint cuts the rectangle askew; absent for a whole rectangle. */
  readonly corners?: Ring;
  /** How far down the deepest of its damage goes, mm; absent while that is not known of all of it. */
  readonly depth?: number;
  /** m2 */
  readonly area: number;
  /** What has to be sawn round it, m: not along a joint or a free edge, a side shared with another by halves. */
  readonly saw: number;
}

export interface PatchLayout {
  readonly patches: readonly Patch[];
  /** Indices of outlines too small to break out. */
  readonly skipped: readonly number[];
}

/** What a patch is called wherever it is shown: by the drawing of the whole slab, else by its place among its zone's. */
export const patchNumber = ({ number }: Pick<Patch, 'number'>, place: number): number =>
  number ?? place + 1;

/** Where frost is open, patches are laid for the harder case. */
export function worstFrost(site: SiteAnswers): FreezeThaw {
  const possible = site.freezeThaw ?? ['often'];
  return possible.includes('often') ? 'often' : possible.includes('some') ? 'some' : 'rare';
}

/** How far past the damage a patch goes, mm. Source: figures `patch.past-damage*`. */
export function pastDamage(frost: FreezeThaw, own?: OwnFigures): readonly [number, number] {
  return frost === 'often'
    ? rangeOf('patch.past-damage-frost', own)
    : rangeOf('patch.past-damage', own);
}

export const rectangleRing = ({ x, y, length, width }: Rectangle): Ring =>
  ringOf({ x0: x, y0: y, x1: x + length, y1: y + width });

/** Ground on its way to a patch: the box so far, and what went into it. */
interface Part {
  readonly box: Box;
  readonly spots: readonly number[];
  /** The box of each outline in it, taken past its damage. */
  readonly grown: readonly Box[];
}

/**
 * Lays square-cornered patches over outlined damage. In each bay for itself: what of an outline
 * lies in the bay is boxed, taken past the damage as far as the bay goes, brought to the least
 * size, and merged with what lies closer than the merging distance, until nothing does. A box
 * that an edge or a joint cuts askew keeps that side and is parted at re-entrant corners.
 * Nothing is broken out across a joint for the margin alone: the joint parts the concrete already.
 * The outcome does not hang on the order of the outlines.
 * Source: FHWA, Partial-depth repairs, 4.2 (figures `patch.*`).
 * @param bays the bays of the surface; without them nothing ends a patch
 */
export function layPatches(
  outlines: readonly (readonly (readonly [number, number])[])[],
  frost: FreezeThaw,
  own?: OwnFigures,
  bays: readonly Bay[] = [openGround],
): PatchLayout {
  const past = pastDamage(frost, own)[1];
  const rings = outlines.map(tidy);
  const boxes = rings.map(boxOf);
  const skipped = boxes.flatMap((box, index) => (tooSmall(box, own) ? [index] : []));
  const left = new Set(skipped);
  const patches = bays.flatMap((bay) => {
    const parts = rings.flatMap((ring, index) =>
      left.has(index) || gap(boxes[index] as Box, bay.box) > 0
        ? []
        : common(ring, bay.ring).map((piece): Part => {
            const box = atLeastSize(past, boxOf(piece), bay.box, own);
            return { box, spots: [index], grown: [box] };
          }),
    );
    const shapes = merged(parts, valueOf('patch.merge', own)).flatMap((part) => shaped(part, bay));
    const saw = sawnSides(
      shapes.map(({ ring }) => ring),
      bay.ring,
    );
    return shapes.map(({ ring, spots }, index): Patch => {
      const { x0, y0, x1, y1 } = boxOf(ring);
      const area = signedArea(ring);
      const whole = isBox(ring);
      return {
        x: x0,
        y: y0,
        length: x1 - x0,
        width: y1 - y0,
        spots,
        bay: bay.id,
        ...(!whole && { corners: ring }),
        area: area / 1e6,
        saw: (saw[index] as number) / 1000,
      };
    });
  });
  return { patches, skipped };
}

function tooSmall({ x0, y0, x1, y1 }: Box, own?: OwnFigures): boolean {
  return (
    Math.max(x1 - x0, y1 - y0) < valueOf('patch.skip-length', own) &&
    Math.min(x1 - x0, y1 - y0) < valueOf('patch.skip-width', own)
  );
}

/** A box taken past its damage and brought to the least length and width about its middle, moved and cut to stay in its bay. */
function atLeastSize(past: number, { x0, y0, x1, y1 }: Box, bay: Box, own?: OwnFigures): Box {
  const [long, short] = [valueOf('patch.min-length', own), valueOf('patch.min-width', own)];
  const cut: Box = {
    x0: Math.max(x0 - past, bay.x0),
    y0: Math.max(y0 - past, bay.y0),
    x1: Math.min(x1 + past, bay.x1),
    y1: Math.min(y1 + past, bay.y1),
  };
  const lengthwise = cut.x1 - cut.x0 >= cut.y1 - cut.y0;
  const [left, right] = stretched(cut.x0, cut.x1, lengthwise ? long : short, bay.x0, bay.x1);
  const [low, high] = stretched(cut.y0, cut.y1, lengthwise ? short : long, bay.y0, bay.y1);
  return { x0: left, y0: low, x1: right, y1: high };
}

function stretched(
  from: number,
  to: number,
  least: number,
  start: number,
  end: number,
): [number, number] {
  if (to - from >= least) return [from, to];
  if (end - start <= least) return [start, end];
  const low = Math.min(Math.max((from + to - least) / 2, start), end - least);
  return [low, low + least];
}

/** Merges parts closer than `closest` until none are: each new one takes in all it comes near. */
function merged(parts: readonly Part[], closest: number): Part[] {
  // Arithmetic must not join what stands exactly at the distance.
  const close = closest - 1e-6;
  const done: Part[] = [];
  for (let part of parts) {
    for (;;) {
      const at = done.findIndex((each) => gap(each.box, part.box) < close);
      const met = done[at];
      if (!met) break;
      part = {
        box: around(met.box, part.box),
        spots: [...met.spots, ...part.spots],
        grown: [...met.grown, ...part.grown],
      };
      done.splice(at, 1);
    }
    done.push(part);
  }
  return done
    .map((part) => ({ ...part, spots: [...new Set(part.spots)].sort((a, b) => a - b) }))
    .sort(({ box: a }, { box: b }) => a.y0 - b.y0 || a.x0 - b.x0);
}

/** The outlines a box leaves in its bay; without those that took in no damage. */
function shaped({ box, spots, grown }: Part, bay: Bay): { ring: Ring; spots: readonly number[] }[] {
  if (isBox(bay.ring)) return [{ ring: ringOf(box), spots }];
  return common(ringOf(box), bay.ring)
    .flatMap(withoutReentrant)
    .filter((ring) => grown.some((each) => common(ringOf(each), ring).length))
    .map((ring) => ({ ring, spots }));
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
): { area: readonly [number, number]; perimeter: readonly [number, number] } {
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
