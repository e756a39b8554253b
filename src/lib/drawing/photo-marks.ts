import type { PhotoMark, Spot } from '$lib/answers/photo';
import { handLine, roughLine } from './lines';
import type { Drawing } from './mark';
import { pathOf, type Point } from './points';

/** Units across a photo; its height follows from its shape. */
export const across = 1000;

/** The text of a label, and which end of it lies at its place. */
export interface Lettering {
  readonly at: Point;
  readonly text: string;
  readonly anchor: 'start' | 'end';
}

/** Height of the letters, and how far they stand off. */
export const letters = 44;

/** Size of an arrow's head, and how wide a mark has to be to be seen. */
const head = 46;
const least = 12;
/** A steady hand on a picture this large: `handLine` is made for drawings of 120 units. */
const hand = { height: 5, step: 130 };

/**
 * Marks on a photo, in crayon.
 * @param ratio height by width of the photo
 */
export function photoDrawing(marks: readonly PhotoMark[], ratio: number): Drawing {
  const at = ([x, y]: Spot): Point => [x * across, y * across * ratio];
  return marks.flatMap((mark, index): Drawing => {
    if (mark.kind === 'label') return [];
    const [from, to] = [at(mark.from), at(mark.to)];
    return [['crayon', mark.kind === 'arrow' ? arrow(from, to, index) : ring(from, to, index)]];
  });
}

export const letteringOf = (marks: readonly PhotoMark[], ratio: number): readonly Lettering[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== 'label') return [];
    const [x, y] = [mark.at[0] * across, mark.at[1] * across * ratio];
    // It has to stay on the photo.
    const low = Math.min(across * ratio - letters / 2, Math.max(letters, y + letters / 3));
    return [{ at: [x, low], text: mark.text, anchor: x > across / 2 ? 'end' : 'start' } as const];
  });

function arrow(from: Point, to: Point, seed: number): string {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const barb = (turn: number): Point => [
    to[0] - head * Math.cos(angle + turn),
    to[1] - head * Math.sin(angle + turn),
  ];
  return (
    pathOf(roughLine(from, to, hand.height, hand.step, seed + 1)) +
    pathOf([...handLine(barb(0.5), to, seed + 2), ...handLine(to, barb(-0.5), seed + 3).slice(1)])
  );
}

/** A ring drawn by hand goes a little past where it began. */
function ring(from: Point, to: Point, seed: number): string {
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const wide = Math.max(least, Math.abs(to[0] - from[0]) / 2);
  const high = Math.max(least, Math.abs(to[1] - from[1]) / 2);
  const turns = 40;
  const over = 4;
  const drift = roughLine([0, 0], [turns + over, 0], 2 * hand.height, 4, seed + 1);
  return pathOf(
    Array.from({ length: turns + over + 1 }, (_, step): Point => {
      const angle = (step * 2 * Math.PI) / turns - 2;
      const off = (drift[Math.min(drift.length - 1, Math.round(step / 4))]?.[1] ?? 0) + step / 4;
      return [x + (wide + off) * Math.cos(angle), y + (high + off) * Math.sin(angle)];
    }),
  );
}
