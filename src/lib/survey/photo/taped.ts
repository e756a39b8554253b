import type { Place } from '$lib/answers/survey';
import { distance, turn } from '$lib/survey/geometry';
import { solve } from './solve';

/**
 * Four chalk marks laid out from what was taped between them. Four sides alone fix nothing: a frame
 * of four laths still folds. One diagonal fixes it; the second is the check, which finds a side read
 * wrong by a hand's breadth, and so six distances are asked for.
 */

/** The pairs of marks between which is taped, in the order in which it is asked. */
export const pairs = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [0, 2],
  [1, 3],
] as const;

export interface Layout {
  /** mm, the first mark at the corner of the axes, the third along x. */
  readonly marks: readonly [Place, Place, Place, Place];
  /** The most that a taped distance differs from the layout, mm. */
  readonly misfit: number;
}

/** Where a mark lies that is `one` from the start of a line and `other` from its end. */
function beside(line: number, one: number, other: number, side: 1 | -1): Place | null {
  const x = (one ** 2 + line ** 2 - other ** 2) / (2 * line);
  const square = one ** 2 - x ** 2;
  return square > 0 ? [x, side * Math.sqrt(square)] : null;
}

/**
 * The layout that comes nearest to all six distances, mm (least squares).
 * @returns null where no four marks in a convex ring lie so
 */
export function layoutOf(taped: readonly number[]): Layout | null {
  const [ab = 0, bc = 0, cd = 0, da = 0, ac = 0] = taped;
  const b = beside(ac, ab, bc, 1);
  const d = beside(ac, da, cd, -1);
  if (!b || !d) return null;
  let free: readonly number[] = [ac, ...b, ...d];
  for (let round = 0; round < 8; round += 1) {
    const step = stepFrom(free, taped);
    if (!step) return null;
    free = free.map((value, index) => value + (step[index] as number));
    if (Math.hypot(...step) < 1e-6) break;
  }
  const marks = placed(free);
  if (!isConvex(marks)) return null;
  return { marks, misfit: Math.max(...residuals(free, taped).map(Math.abs)) };
}

const placed = ([cx = 0, bx = 0, by = 0, dx = 0, dy = 0]: readonly number[]): Layout['marks'] => [
  [0, 0],
  [bx, by],
  [cx, 0],
  [dx, dy],
];

function residuals(free: readonly number[], taped: readonly number[]): readonly number[] {
  const marks = placed(free);
  return pairs.map(
    ([one, other], index) => (taped[index] as number) - distance(marks[one], marks[other]),
  );
}

/** One step of Gauss and Newton: how each free number has to change. */
function stepFrom(free: readonly number[], taped: readonly number[]): readonly number[] | null {
  const now = residuals(free, taped);
  const nudge = 1e-3;
  const slopes = free.map((_, index) => {
    const nudged = residuals(free.with(index, (free[index] as number) + nudge), taped);
    return now.map((value, at) => (value - (nudged[at] as number)) / nudge);
  });
  const dot = (one: readonly number[], other: readonly number[]) =>
    one.reduce((sum, value, at) => sum + value * (other[at] as number), 0);
  return solve(
    slopes.map((slope) => [...slopes.map((other) => dot(slope, other)), dot(slope, now)]),
  );
}

/** Whether four places in their order make a ring that bulges nowhere inward and does not cross itself. */
export function isConvex(marks: readonly Place[]): boolean {
  const turns = marks.map((mark, index) =>
    turn(mark, marks[(index + 1) % 4] as Place, marks[(index + 2) % 4] as Place),
  );
  return turns.every((each) => each > 0) || turns.every((each) => each < 0);
}
