import type { Looseness } from '$lib/answers/questions';
import { shifted } from '$lib/drawing/lines';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { dotsPath, hatch, polygonsPath, type Point, type Polygon } from '$lib/drawing/points';
import { packStones, strewSand } from '$lib/drawing/stones';
import type { Frame } from './frame';

/** A piece of damage, in along and into, sheet units. */
export interface Damage {
  readonly from: number;
  readonly to: number;
  readonly face: readonly Point[];
  readonly floor: readonly Point[];
  /** Depth that is certain, and the most that is possible. */
  readonly least: number;
  readonly most: number;
  readonly looseness: Looseness | null;
}

const turned = (frame: Frame, field: Polygon): Polygon =>
  field.map(([along, into]) => frame.place(along, into));

const band = (one: readonly Point[], other: readonly Point[]): Polygon => [
  ...one,
  ...[...other].reverse(),
];

/** The layer over a gap: it has let go, and the gap opens towards its middle. */
function hollowGap(frame: Frame, { floor, most }: Damage): Mark[] {
  const open = Math.max(3, Math.min(11, most * 0.3));
  // The gap reaches to where the floor meets the sides.
  const flat = floor.filter(([, into]) => into > most * 0.8);
  const from = flat[0]?.[0] ?? 0;
  const to = flat.at(-1)?.[0] ?? 0;
  const middle = (from + to) / 2;
  const quarter = (to - from) / 4;
  const upper: Point[] = [
    [from, most],
    [middle - quarter, most - open * 0.75],
    [middle, most - open],
    [middle + quarter, most - open * 0.75],
    [to, most],
  ];
  const lower = upper.map(([along, into]): Point => [along, most - (most - into) * 0.1]);
  return [
    ['air', frame.path(band(upper, lower), true)],
    ['ink', frame.path(upper) + frame.path(lower)],
  ];
}

/** Thin plates lifting off the face. */
function flakes(frame: Frame, { from, to, most }: Damage): Mark[] {
  const size = Math.max(22, Math.min(40, (to - from) / 6));
  const thick = Math.max(1.6, Math.min(most * 0.4, 5));
  const plates: Point[][] = [];
  for (let along = from + 8, turn = 0; along + size < to; along += size * 1.25, turn++) {
    const lift = turn % 2 ? 9 : 5;
    plates.push([
      [along, 0],
      [along + size * 0.55, -lift * 0.35],
      [along + size, -lift],
      [along + size + 2, -lift + thick],
      [along + size * 0.55, -lift * 0.35 + thick],
      [along + 2, thick],
    ]);
  }
  return [['form', plates.map((plate) => frame.path(plate, true)).join('')]];
}

/** Stones and chips that move in their place. */
function broken(frame: Frame, field: Polygon, most: number, seed: number): Mark[] {
  if (most < 7) return [];
  const pieces = packStones(turned(frame, field), {
    seed,
    radii: [Math.min(9, most * 0.4), 2.2],
    gap: 0.9,
    tries: 240,
  });
  return [['form', polygonsPath(pieces.map(({ corners }) => corners))]];
}

/** Dust, in the layer and over it. */
function dust(frame: Frame, { from, to, most }: Damage): Mark[] {
  const cloud: Polygon = [
    [from, most],
    [from, -2],
    [(from + to) / 2, -15],
    [to, -2],
    [to, most],
  ];
  return [['grain', dotsPath(strewSand(turned(frame, cloud), [], 7, 90))]];
}

/** The damaged concrete as what it is. */
export function damageMarks(frame: Frame, damage: Damage): Drawing {
  const { face, floor, least, most, looseness } = damage;
  const field = band(face, floor);
  const tight = looseness === 'tight';
  // An old hollow with a firm bottom is empty: a form to fill.
  if (tight) return [['air', frame.path(band(shifted(face, 0, -6), floor), true)]];
  const sure =
    least >= most
      ? floor
      : floor.map(([along, into]): Point => [along, Math.min(least, Math.max(0, into))]);
  const certain = band(face, sure);
  const marks: Mark[] = [['body', frame.path(field, true)]];
  if (least > 0) {
    marks.push(['wash', frame.path(certain, true)], ['hatch', hatch(turned(frame, certain), 5)]);
  }
  if (least < most) {
    const open = band(sure, floor);
    marks.push(['body', frame.path(open, true)], ['hatch', hatch(turned(frame, open), 10)]);
    if (least > 0) marks.push(['dashed', frame.path(sure)]);
  }
  if (looseness === 'powdery') marks.push(...dust(frame, damage));
  if (looseness === 'fractured') marks.push(...broken(frame, field, most, 61));
  if (looseness === 'rotten') marks.push(...broken(frame, field, most, 67), ...dust(frame, damage));
  if (looseness === 'hollow') marks.push(...hollowGap(frame, damage));
  marks.push(['ink', frame.path(face)]);
  if (looseness === 'flaking') marks.push(...flakes(frame, damage));
  return marks;
}
