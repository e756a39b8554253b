import type { Element } from '$lib/answers/questions';
import { placed, type Drawing } from '$lib/drawing/mark';
import { pathOf, type Point } from '$lib/drawing/points';

/** The sheet of a cross-section. Fixed, so that nothing moves when an answer comes in. */
export const sheet = { width: 360, height: 240 } as const;
/** Sheet units from the face to the far side: any thickness is scaled to this. */
export const reach = 150;

/**
 * How a section lies on the sheet. Everything is drawn along the face (`along`) and into the
 * concrete (`into`), then turned: a wall stands, a soffit hangs.
 */
export interface Frame {
  readonly element: Element;
  /** Sheet units along the face. */
  readonly length: number;
  /** Sheet units per mm. */
  readonly scale: number;
  readonly place: (along: number, into: number) => Point;
  readonly path: (points: readonly Point[], closed?: boolean) => string;
  /** A motif drawn upright round its origin, stood on the face at a place. */
  readonly stand: (motif: Drawing, along: number, into?: number, scale?: number) => Drawing;
}

const lies: Readonly<
  Record<'up' | 'sideways' | 'down', { length: number; turn: number; place: Frame['place'] }>
> = {
  up: { length: 304, turn: 0, place: (along, into) => [50 + along, 48 + into] },
  sideways: { length: 206, turn: -90, place: (along, into) => [78 + into, 6 + along] },
  down: { length: 304, turn: 180, place: (along, into) => [50 + along, 178 - into] },
};

/** The frame of an element whose thickness is `thickness` mm. */
export function frameOf(element: Element, thickness: number): Frame {
  const lie = lies[element === 'wall' ? 'sideways' : element === 'soffit' ? 'down' : 'up'];
  return {
    element,
    length: lie.length,
    scale: reach / thickness,
    place: lie.place,
    path: (points, closed) =>
      pathOf(
        points.map(([along, into]) => lie.place(along, into)),
        closed,
      ),
    stand: (motif, along, into = 0, scale = 1) =>
      placed(motif, ...lie.place(along, into), lie.turn, scale),
  };
}

/** Whether its face goes down by steps. */
export const isStepped = ({ element }: Pick<Frame, 'element'>): boolean =>
  element === 'steps' || element === 'suspended-steps';

/** Where the zone lies along the face, as shares of its length. On steps it runs to the nosing. */
export const zoneOf = (frame: Frame): readonly [from: number, to: number] =>
  isStepped(frame)
    ? [frame.length * 0.1, frame.length * 0.56]
    : [frame.length * 0.14, frame.length * 0.86];
