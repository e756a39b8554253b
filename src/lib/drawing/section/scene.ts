import type { UnitSystem } from '$lib/answers/units';
import type { Drawing } from '$lib/drawing/mark';
import type { Point } from '$lib/drawing/points';
import type { Stone } from '$lib/drawing/stones';
import { bodyMarks, edgeMarks, nosing } from './body';
import { crackAt, crackMarks } from './crack';
import { damageMarks, type Damage } from './damage';
import { foundFace, leftFloor } from './face';
import { frameOf, reach, zoneOf, isStepped, type Frame } from './frame';
import { lensOf, type Lens } from './lens';
import { rulerPath, ticks, type Tick } from './ruler';
import type { SectionState } from './state';
import { barMarks, barsOf, roundBar, type Bars } from './steel';
import { topMarks } from './top';
import { valueOf } from '$shared/figures';

/** A cross-section in layers, back to front; each is redrawn only when what it shows changes. */
export interface Scene {
  readonly frame: Frame;
  readonly layers: readonly Layer[];
  readonly ruler: string;
  readonly ticks: readonly Tick[];
  readonly lens: Lens | null;
  /** Where the clear space behind the open bar is measured, on the sheet. */
  readonly behind: { readonly from: Point; readonly to: Point } | null;
  /** How far down a patch is sure, and how far it may go, where something is broken out. */
  readonly limits: readonly Limit[];
}

/** A level line across the section at a share of the thickness, and where its name stands. */
interface Limit {
  readonly share: number;
  readonly path: string;
  readonly at: Point;
}

/** What the hole is judged against; nothing where nothing is broken out, or the thickness is not known. */
const limitsOf = (frame: Frame, { hole, thicknessKnown }: SectionState): readonly Limit[] =>
  hole && thicknessKnown
    ? [valueOf('depth.partial-limit'), valueOf('depth.full-limit')].map((share, row) => ({
        share,
        path: frame.path([
          [-6, reach * share],
          [isStepped(frame) ? nosing(frame) + 5 : frame.length + 6, reach * share],
        ]),
        at: isStepped(frame)
          ? frame.place(nosing(frame) + 30, reach * share + 4.5 + row * 11)
          : frame.element === 'wall'
            ? frame.place(frame.length - 12 - row * 17, reach * share)
            : frame.place(frame.length - 24, reach * share + (frame.element === 'soffit' ? 4 : 13)),
      }))
    : [];

interface Layer {
  readonly id: 'body' | 'damage' | 'edges' | 'crack' | 'bars' | 'top' | 'crayon';
  readonly marks: Drawing;
}

/** Stones that would be cut by the floor of the damage, a bar or the crack, or lie in what is loose. */
function clearStones(
  frame: Frame,
  stones: readonly Stone[],
  damage: Damage | null,
  bars: Bars | null,
  crack: boolean,
  behind: number,
): readonly Stone[] {
  const [x0, y0] = frame.place(0, 0);
  const sideways = frame.element === 'wall';
  const hanging = frame.element === 'soffit';
  return stones.filter(({ centre: [x, y], radius }) => {
    const along = sideways ? y - y0 : x - x0;
    const into = sideways ? x - x0 : hanging ? y0 - y : y - y0;
    const inDamage =
      damage !== null &&
      along + radius > damage.from &&
      along - radius < damage.to &&
      into - radius < damage.most + 3;
    const nearBar = bars
      ? [...bars.hidden, ...(bars.open ? [bars.open] : [])].some(
          (bar) =>
            Math.hypot(along - bar[0], into - bar[1]) <
            radius + bars.radius + 2 + (bar === bars.open ? behind + 2 : 0),
        )
      : false;
    const nearCrack = crack && Math.abs(along - crackAt(frame)) < radius + 9;
    return !inDamage && !nearBar && !nearCrack;
  });
}

/**
 * Draws what is known.
 * @param stones of the whole concrete, from `bodyStones`
 */
export function sceneOf(state: SectionState, units: UnitSystem, stones: readonly Stone[]): Scene {
  const frame = frameOf(state.element, state.thickness);
  const { scale, length } = frame;
  const [from, to] = zoneOf(frame);
  const [least, most] = (state.depth ?? [0, 0]).map((mm) => Math.min(reach, mm * scale)) as [
    number,
    number,
  ];
  // Thinner than the pen would vanish; the lens has it to scale.
  const shown = state.depth && most > 0 ? Math.max(2, most) : 0;
  const slope = Math.min(16, shown * 0.5);
  // What is broken out goes on into sound concrete.
  const bottom = Math.min(reach, shown + (state.hole?.beyond ?? 0) * scale);
  const bars = barsOf(frame, state.steel, shown, state);
  const behind = (state.behindBar ?? 0) * scale;
  const flat = leftFloor([from + slope, bottom], [to - slope, bottom], state.profile, scale, 4);
  const deeper = bars?.open && bars.open[1] + bars.radius + behind > bottom;
  const round = bars?.open && behind && deeper ? roundBar(bars, bars.open, behind, bottom) : null;
  const floor: readonly Point[] = [
    [from, 0],
    ...(round
      ? [
          ...flat.filter(([along]) => along < (round[0]?.[0] ?? 0) - 2),
          ...round,
          ...flat.filter(([along]) => along > (round.at(-1)?.[0] ?? 0) + 2),
        ]
      : flat),
    [to, 0],
  ];
  const damage: Damage | null = state.depth && {
    from,
    to,
    face: foundFace(from, to, state.looseness === 'tight' ? null : state.texture, scale, 9),
    floor:
      bottom > shown
        ? [
            [from, 0],
            [from + slope, shown],
            [to - slope, shown],
            [to, 0],
          ]
        : floor,
    least,
    most: shown,
    looseness: state.looseness,
  };
  const end = isStepped(frame) ? nosing(frame) : length + 6;
  const shoulders = damage
    ? [foundFace(-6, from, state.texture, scale, 11), foundFace(to, end, state.texture, scale, 13)]
    : [foundFace(-6, end, state.texture, scale, 11)];
  const cracked = state.cracks !== null && state.cracks !== 'none';
  const clear = clearStones(frame, stones, damage, bars, cracked, behind);
  const hollow = state.looseness === 'tight' && shown > 4;
  const certain = least >= most;
  const marks = ticks(state.thickness, scale, units);
  return {
    frame,
    layers: [
      { id: 'body', marks: bodyMarks(frame, clear) },
      { id: 'edges', marks: edgeMarks(frame, state.thicknessKnown) },
      { id: 'damage', marks: damage ? damageMarks(frame, damage) : [] },
      { id: 'crack', marks: crackMarks(frame, state.cracks, hollow ? shown : 0) },
      { id: 'bars', marks: bars ? barMarks(frame, bars, state.steel) : [] },
      {
        id: 'top',
        marks: [
          ['heavy', shoulders.map((face) => frame.path(face)).join('')],
          ...topMarks(frame, state.coatings, hollow ? from : Infinity, hollow ? shown : 0),
        ],
      },
      {
        id: 'crayon',
        marks: damage ? [[certain ? 'crayon' : 'crayon-open', frame.path(floor)]] : [],
      },
    ],
    ruler: rulerPath(frame, marks),
    ticks: marks,
    limits: limitsOf(frame, state),
    lens: lensOf(frame, state, units),
    behind:
      bars?.open && behind
        ? {
            from: frame.place(bars.open[0], bars.open[1] + bars.radius),
            to: frame.place(bars.open[0], bars.open[1] + bars.radius + behind),
          }
        : null,
  };
}
