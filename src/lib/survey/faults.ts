import type { Mark, Place, Survey } from '$lib/answers/survey';
import { figures, rangeOf } from '$shared/figures';
import {
  between,
  boxOf,
  distance,
  distanceToRing,
  inside,
  meetings,
  piecesOf,
  same,
  sidesOf,
  signedArea,
  tidy,
} from './geometry';
import type { Box, Ring } from './geometry';
import { foldsOf, outlineOf } from './outline';
import { stopsShort } from './joints';

/** What cannot be drawn as it was given. */
export type FaultId =
  'not-closed' | 'crosses-itself' | 'no-area' | 'off-slab' | 'wrong-unit' | 'closed-joint';

/** Something wrong with a drawing, at its place in it (`['marks', 3, 'corners']`). */
export interface Fault {
  readonly path: readonly (string | number)[];
  readonly fault: FaultId;
}

/** What can be drawn and may still be a slip; the reader is told. */
export type RemarkId = 'over-edge' | 'cut-by-joint' | 'joint-taken-on' | 'unknown-zone';

export interface Remark {
  readonly path: readonly (string | number)[];
  readonly remark: RemarkId;
}

/** The first thing that keeps a drawing from being worked with, or null. It names the mark at fault. */
export function faultOf(survey: Survey): Fault | null {
  const { slab } = survey;
  if ('corners' in slab) {
    const fault = outlineFault(slab.corners);
    if (fault) return { path: ['slab', 'corners'], fault };
  }
  const ring = outlineOf(slab);
  const box = boxOf(ring);
  if (!fits(longest(box), 'limit.slab-side')) return { path: ['slab'], fault: 'wrong-unit' };
  for (const [index, joint] of (survey.joints ?? []).entries()) {
    const fault = jointFault(joint, ring);
    if (fault) return { path: ['joints', index], fault };
  }
  for (const [index, mark] of (survey.marks ?? []).entries()) {
    const found = markFault(mark, ring, box);
    if (found) return { path: ['marks', index, found.at], fault: found.fault };
  }
  return clumped(survey.marks ?? [], box);
}

/** What is wrong with one mark on a surface, or null. */
export function markFault(
  mark: Mark,
  slab: Ring,
  box: Box = boxOf(slab),
): { readonly at: 'corners' | 'line' | 'at'; readonly fault: FaultId } | null {
  if (mark.kind === 'tap')
    return inside(mark.at, slab, slack) ? null : { at: 'at', fault: 'off-slab' };
  const outlined = 'corners' in mark;
  const at = outlined ? 'corners' : 'line';
  const places = outlined ? mark.corners : mark.line;
  const size = longest(boxOf(places));
  if (outlined && places.length < 3) return { at, fault: 'not-closed' };
  if (!fits(size, 'limit.mark-side') || size > 1000 * longest(box))
    return { at, fault: 'wrong-unit' };
  const fault = outlined ? outlineFault(places) : null;
  if (fault) return { at, fault };
  const ways = outlined ? sidesOf(places) : piecesOf(places);
  return touches(places, ways, slab, outlined) ? null : { at, fault: 'off-slab' };
}

/** A tap or a line on the very edge of the surface still lies on it, mm. */
const slack = 1;

function touches(
  places: readonly Place[],
  ways: readonly (readonly [Place, Place])[],
  slab: Ring,
  outlined: boolean,
): boolean {
  if (!outlined && places.some((place) => inside(place, slab, slack))) return true;
  if (places.some((place) => inside(place, slab, 0) && distanceToRing(place, slab) > slack))
    return true;
  // The surface may lie wholly in the outline, or be crossed by it.
  const sides = sidesOf(slab);
  if (ways.some((way) => sides.some((side) => meetings(way, side).length))) {
    if (!outlined) return true;
    const middle = boxOf(places);
    const slabBox = boxOf(slab);
    return (
      middle.x0 < slabBox.x1 &&
      slabBox.x0 < middle.x1 &&
      middle.y0 < slabBox.y1 &&
      slabBox.y0 < middle.y1
    );
  }
  return outlined && inside(slab[0] as Place, tidy(places), 0);
}

export function outlineFault(corners: readonly Place[]): FaultId | null {
  const last = corners.at(-1);
  const open =
    last && corners.length > 1 && same(last, corners[0] as Place) ? corners.slice(0, -1) : corners;
  if (open.length < 3) return 'not-closed';
  const sides = sidesOf(open);
  for (const [index, side] of sides.entries())
    for (let at = index + 1; at < sides.length; at += 1) {
      const met = meetings(side, sides[at] as [Place, Place]);
      const beside = at === index + 1 || (index === 0 && at === sides.length - 1);
      if (met.length > (beside ? 1 : 0)) return 'crosses-itself';
    }
  return Math.abs(signedArea(open)) < 1 ? 'no-area' : null;
}

function jointFault(joint: readonly Place[], slab: Ring): FaultId | null {
  if (same(joint[0] as Place, joint.at(-1) as Place))
    return joint.length > 2 ? 'closed-joint' : 'wrong-unit';
  if (!fits(longest(boxOf(joint)), 'limit.mark-side')) return 'wrong-unit';
  return touches(joint, piecesOf(joint), slab, false) ? null : 'off-slab';
}

/** All taps in one heap beside the reader's corner were typed in another unit. */
function clumped(marks: readonly Mark[], box: Box): Fault | null {
  const taps = marks.flatMap((mark, index) =>
    mark.kind === 'tap' ? [{ index, at: mark.at }] : [],
  );
  const [first] = taps;
  if (!first || taps.length < 3) return null;
  return longest(boxOf(taps.map(({ at }) => at))) < longest(box) / 200
    ? { path: ['marks', first.index, 'at'], fault: 'wrong-unit' }
    : null;
}

const longest = ({ x0, y0, x1, y1 }: Box): number => Math.max(x1 - x0, y1 - y0);

const fits = (size: number, limit: keyof typeof figures): boolean => {
  const [least, most] = rangeOf(limit);
  return size >= least && size <= most;
};

/** What is drawn and told of, each at its place. */
export function remarksOn(survey: Survey, zones: readonly string[]): Remark[] {
  const slab = outlineOf(survey.slab);
  const joints = [...(survey.joints ?? []), ...foldsOf(survey.slab)];
  const remarks: Remark[] = [];
  for (const index of (survey.joints ?? []).keys())
    if (stopsShort(slab, joints, index))
      remarks.push({ path: ['joints', index], remark: 'joint-taken-on' });
  for (const [index, mark] of (survey.marks ?? []).entries()) {
    const at = 'corners' in mark ? 'corners' : 'line' in mark ? 'line' : 'at';
    const tell = (remark: RemarkId, where: string = at) =>
      remarks.push({ path: ['marks', index, where], remark });
    if ('corners' in mark && mark.corners.some((place) => !inside(place, slab, slack)))
      tell('over-edge');
    if (mark.kind === 'zone' && joints.some((joint) => cuts(joint, tidy(mark.corners))))
      tell('cut-by-joint');
    if ('zone' in mark && mark.zone !== undefined && !zones.includes(mark.zone))
      tell('unknown-zone', 'zone');
  }
  return remarks;
}

/** Whether a line runs through the inside of a ring, not only along it. */
function cuts(line: readonly Place[], ring: Ring): boolean {
  return piecesOf(line).some((piece) => {
    const stops = [0, 1, ...sidesOf(ring).flatMap((side) => meetings(piece, side))].sort(
      (a, b) => a - b,
    );
    return stops.slice(1).some((to, index) => {
      const from = stops[index] as number;
      if ((to - from) * distance(...piece) < slack) return false;
      const place = between(...piece, (from + to) / 2);
      return inside(place, ring, 0) && distanceToRing(place, ring) > slack;
    });
  });
}
