import type { Drawing } from '$lib/drawing/mark';
import { circlePath, pathOf, type Point } from '$lib/drawing/points';
import { concrete } from '$lib/drawing/motif/concrete';
import { slice } from '$lib/drawing/motif/lens';
import type { UnitSystem } from '$lib/answers/units';
import { damageMarks } from './damage';
import { foundFace, leftFloor } from './face';
import type { Frame } from './frame';
import { roundLength } from './ruler';
import type { SectionState } from './state';

/** What the lens shows, and how. */
export interface Lens {
  readonly centre: Point;
  readonly radius: number;
  /** How many times larger than the section around it. */
  readonly times: number;
  readonly behind: Drawing;
  /** To be cut to the lens's circle. */
  readonly inside: Drawing;
  readonly rim: Drawing;
  /** Length of its scale bar: mm, and where its number goes. */
  readonly bar: { readonly mm: number; readonly at: Point };
}

const magnifications = [2, 5, 10, 20, 50, 100, 200, 500];
/** Damage drawn thinner than this wants a lens, sheet units. */
const tooThin = 15;
const room = 32;

/** A lens over damage too thin to be seen at the section's own scale; null where none is needed. */
export function lensOf(frame: Frame, state: SectionState, units: UnitSystem): Lens | null {
  const [least, most] = state.depth ?? [0, 0];
  const drawn = most * frame.scale;
  if (!most || drawn >= tooThin) return null;
  const times = magnifications.filter((each) => drawn * each <= room).at(-1) ?? 2;
  const scale = frame.scale * times;
  const sideways = frame.element === 'wall';
  const radius = 49;
  const centre: Point = sideways ? [299, 92] : frame.element === 'soffit' ? [292, 88] : [292, 140];
  const from = frame.place(frame.length * (sideways ? 0.42 : 0.6), 0);
  // Inside the lens the face always lies level, so that its scale can be read like the others.
  const inner: Frame = {
    ...frame,
    element: 'slab',
    scale,
    length: radius * 2,
    place: (along, into) => [centre[0] - radius + along, centre[1] - 18 + into],
    path: (points, closed) =>
      pathOf(
        points.map(([along, into]): Point => [centre[0] - radius + along, centre[1] - 18 + into]),
        closed,
      ),
  };
  const face = foundFace(0, radius * 2, state.texture, scale, 31);
  const floor = leftFloor([0, most * scale], [radius * 2, most * scale], state.profile, scale, 33);
  const damage = {
    from: 0,
    to: radius * 2,
    face,
    floor,
    least: least * scale,
    most: most * scale,
    looseness: state.looseness,
  };
  const bar = roundLength(14 / scale, units);
  const left = centre[0] - (bar * scale) / 2;
  const foot = centre[1] + 31;
  const apart = Math.atan2(centre[1] - from[1], centre[0] - from[0]);
  const side: Point = [Math.sin(apart) * radius, -Math.cos(apart) * radius];
  const ray = (sign: number) =>
    pathOf([from, [centre[0] + side[0] * sign, centre[1] + side[1] * sign]]);
  const below = slice(centre, radius - 1, centre[1] - 17, centre[1] + radius);
  const stone = Math.min(15, 5 * scale);
  return {
    centre,
    radius,
    times,
    behind: [['fine', ray(1) + ray(-1) + circlePath(from, 3)]],
    inside: [
      ['air', circlePath(centre, radius)],
      ...concrete(below, 35, { radii: [stone, Math.max(2.5, stone / 4)], tries: 90 }),
      ...damageMarks(inner, damage),
      [least < most ? 'crayon-open' : 'crayon', inner.path(floor)],
      [
        'body',
        pathOf(
          [
            [left - 8, foot - 15],
            [left + bar * scale + 8, foot - 15],
            [left + bar * scale + 8, foot + 5],
            [left - 8, foot + 5],
          ],
          true,
        ),
      ],
    ],
    rim: [
      ['heavy', circlePath(centre, radius)],
      ['ink', `M${left.toFixed(1)} ${foot - 3}v6m0-3h${(bar * scale).toFixed(1)}m0-3v6`],
    ],
    bar: { mm: bar, at: [centre[0], foot - 6] },
  };
}
