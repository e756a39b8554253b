import type { Drawing, Mark } from '$lib/drawing/mark';
import {
  dotsPath,
  pathOf,
  polygonsPath,
  rectangle,
  type Point,
  type Polygon,
} from '$lib/drawing/points';
import { packStones, strewSand, type Stone } from '$lib/drawing/stones';
import { valueOf } from '$shared/figures';
import { reach, sheet, isStepped, type Frame } from './frame';

/** How far a step drops, sheet units, and where along the face. */
export const drop = 70;
export const nosing = (frame: Frame): number => frame.length * 0.62;

/** The outline of the concrete, in along and into. */
const outline = (frame: Frame): Polygon =>
  isStepped(frame)
    ? [
        [0, 0],
        [nosing(frame), 0],
        [nosing(frame), drop],
        [frame.length, drop],
        [frame.length, reach],
        [0, reach],
      ]
    : [
        [0, 0],
        [frame.length, 0],
        [frame.length, reach],
        [0, reach],
      ];

/** Stones to scale, the same whatever else is answered, on the sheet. */
export function bodyStones(frame: Frame): readonly Stone[] {
  const field = outline(frame).map(([along, into]) => frame.place(along, into));
  const radius = (mm: number) => (mm * frame.scale) / 2;
  const largest = Math.max(3, Math.min(19, radius(valueOf('draw.largest-stone'))));
  const smallest = Math.max(1.6, Math.min(largest, radius(valueOf('draw.smallest-stone'))));
  return packStones(field, { seed: 7, radii: [largest, smallest], gap: 1.4, tries: 360 });
}

/** Concrete with those stones that lie clear of everything else. */
export function bodyMarks(frame: Frame, stones: readonly Stone[]): Drawing {
  const field = outline(frame).map(([along, into]) => frame.place(along, into));
  return [
    ['air', pathOf(rectangle(0, 0, sheet.width, sheet.height), true)],
    ['body', pathOf(field, true)],
    ['sand', dotsPath(strewSand(field, stones, 8, 150))],
    ['stone', polygonsPath(stones.map(({ corners }) => corners))],
  ];
}

/** A cut through concrete that goes on: a line with a break in it. */
const cut = (frame: Frame, along: number): string =>
  frame.path([
    [along, -7],
    [along, reach * 0.42],
    [along - 4, reach * 0.45],
    [along + 4, reach * 0.5],
    [along, reach * 0.53],
    [along, reach + 7],
  ]);

/** The far side and the ends of the concrete; dashed where the thickness is not known. */
export function edgeMarks(frame: Frame, thicknessKnown: boolean): Drawing {
  const far: readonly Point[] = [
    [-6, reach],
    [frame.length + 6, reach],
  ];
  const marks: Mark[] = [[thicknessKnown ? 'ink' : 'dashed', frame.path(far)]];
  if (!isStepped(frame)) marks.push(['fine', cut(frame, 0) + cut(frame, frame.length)]);
  else
    marks.push(
      ['fine', cut(frame, 0)],
      [
        'ink',
        frame.path([
          [nosing(frame), 0],
          [nosing(frame), drop],
          [frame.length + 6, drop],
        ]),
      ],
    );
  if (frame.element === 'slab' || frame.element === 'steps') {
    const strokes: string[] = [];
    for (let along = 4; along < frame.length + 4; along += 11)
      strokes.push(
        frame.path([
          [along, reach + 1],
          [along - 6, reach + 9],
        ]) +
          frame.path([
            [along + 4, reach + 1],
            [along - 2, reach + 9],
          ]),
      );
    marks.push(['fine', strokes.join('')]);
  }
  if (frame.element === 'suspended-slab') {
    // What carries it, and the open space under it.
    const post = (from: number, to: number) =>
      frame.path([
        [from, reach],
        [from, reach + 30],
        [from + 9, reach + 34],
        [from + 13, reach + 26],
        [to, reach + 30],
        [to, reach],
      ]);
    marks.push(['body', post(10, 44) + post(frame.length - 44, frame.length - 10)]);
    marks.push(['ink', post(10, 44) + post(frame.length - 44, frame.length - 10)]);
  }
  return marks;
}
