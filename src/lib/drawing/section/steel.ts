import type { Steel } from '$lib/answers/questions';
import type { Drawing, Mark } from '$lib/drawing/mark';
import { circlePath, dotsPath, rectangle, type Point } from '$lib/drawing/points';
import { strewSand } from '$lib/drawing/stones';
import { barEnd } from '$lib/drawing/motif/bar';
import { valueOf } from '$shared/figures';
import type { SectionState } from './state';
import { reach, isStepped, type Frame } from './frame';

/** Bars cut across, in along and into, sheet units. */
export interface Bars {
  readonly radius: number;
  readonly hidden: readonly Point[];
  /** The one that lies open, where one does. */
  readonly open: Point | null;
}

const carriesSteel = ['suspended-steps', 'suspended-slab', 'wall', 'soffit'] as const;

/**
 * Where bars are drawn: where the reader saw steel or its rust, and in what hangs or stands while
 * nobody has said; none where the reader saw none.
 * @param depth of the damage, sheet units: an exposed bar lies at its floor
 */
export function barsOf(
  frame: Frame,
  steel: Steel | null,
  depth: number,
  { barCover, barDiameter }: Pick<SectionState, 'barCover' | 'barDiameter'>,
): Bars | null {
  if (steel === 'none-seen') return null;
  const seen = steel !== null;
  const likely = carriesSteel.some((element) => element === frame.element);
  if (!seen && !likely) return null;
  const radius = Math.max(3.2, ((barDiameter ?? valueOf('draw.bar')) * frame.scale) / 2);
  const open = steel === 'exposed' || steel === 'corroded';
  const cover = Math.min(valueOf('draw.cover') * frame.scale, reach * 0.6);
  const typed = barCover !== null && seen ? barCover * frame.scale + radius : null;
  const lower = frame.element === 'suspended-slab' && !seen;
  const into = lower
    ? reach - cover
    : typed !== null
      ? Math.min(typed, reach - radius * 2)
      : open
        ? Math.min(Math.max(depth, radius * 2), reach - radius * 2)
        : cover;
  // The one that lies open is in the middle of the zone, its neighbours beside the zone.
  const apart = open ? 0.42 : 0.28;
  const middle = isStepped(frame) ? 0.33 : 0.5;
  const share = isStepped(frame) ? apart * 0.64 : apart;
  const along = [middle - share, middle, middle + share];
  const places = along.map((at): Point => [at * frame.length, into]);
  const inZone = places[1] ?? null;
  return {
    radius,
    hidden: open ? places.filter((place) => place !== inZone) : places,
    open: open ? inZone : null,
  };
}

/** Bars with what rust has done to them. */
export function barMarks(frame: Frame, bars: Bars, steel: Steel | null): Drawing {
  const at = ([along, into]: Point) => frame.place(along, into);
  const marks: Mark[] = [];
  if (steel === 'rust-stain') {
    const [along, into] = bars.hidden[1] ?? [0, 0];
    const r = bars.radius;
    // Rust swells, and finds its way out along a crack.
    marks.push(
      ['tone', circlePath(at([along, into]), r * 1.9)],
      [
        'ink',
        frame.path([
          [along, into - r * 1.9],
          [along + 3, into * 0.5],
          [along - 2, 0],
        ]),
      ],
      [
        'tone',
        frame.path(
          [
            [along - 22, 0],
            [along - 10, -3],
            [along + 14, -3],
            [along + 26, 0],
            [along + 10, 4],
            [along - 12, 4],
          ],
          true,
        ),
      ],
    );
  }
  for (const place of bars.hidden) marks.push(...barEnd(at(place), bars.radius));
  if (bars.open) {
    const [x, y] = at(bars.open);
    const r = bars.radius;
    marks.push(...barEnd([x, y], r));
    if (steel === 'corroded') {
      const scales = strewSand(
        rectangle(x - r * 2, y - r * 2, x + r * 2, y + r * 2),
        [{ centre: [x, y], radius: r * 0.6, corners: [] }],
        23,
        44,
      );
      marks.push(['grain', dotsPath(scales)]);
    }
  }
  return marks;
}

/**
 * The crayon's way round an open bar: behind it, by the clear space asked for.
 * @param behind sheet units of clear space
 * @param floor depth of the hole beside the bar, sheet units
 * @returns points from the damage's floor on the left, round the bar, to its right
 */
export function roundBar(
  { radius }: Bars,
  [along, into]: Point,
  behind: number,
  floor: number,
): readonly Point[] {
  const side = radius + behind;
  return [
    [along - side - 4, floor],
    [along - side * 0.75, into + side * 0.7],
    [along - side * 0.3, into + side],
    [along + side * 0.3, into + side],
    [along + side * 0.75, into + side * 0.7],
    [along + side + 4, floor],
  ];
}
