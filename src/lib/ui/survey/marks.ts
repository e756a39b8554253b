import type { Mark, Place } from '$lib/answers/survey';
import {
  boxOf,
  distance,
  distanceTo,
  inside,
  isBox,
  lengthOf,
  piecesOf,
  ringOf,
  sidesOf,
  tidy,
  type Ring,
} from '$lib/survey/geometry';
import { crackNames, surveyWords as words } from '$words/survey';
import type { Say } from '$lib/words/types';

/** An object without one of its fields. */
export const withoutField = <T extends object>(from: T, field: keyof T): T =>
  Object.fromEntries(Object.entries(from).filter(([key]) => key !== field)) as T;

/** The names of all marks, in one go. */
export function markNames(marks: readonly Mark[]): string[] {
  const counts = new Map<Mark['kind'], number>();
  return marks.map(({ kind }) => {
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    return words.names(kind, number);
  });
}

/** "Spot 3": marks are counted by kind, in the order they were made. */
export function markName(marks: readonly Mark[], index: number): string {
  const kind = (marks[index] as Mark).kind;
  const number = marks.slice(0, index + 1).filter((mark) => mark.kind === kind).length;
  return words.names(kind, number);
}

/** The places a mark is made of. */
export const placesOf = (mark: Mark): readonly Place[] =>
  mark.kind === 'tap' ? [mark.at] : 'corners' in mark ? mark.corners : mark.line;

/** The mark with other places. */
export function withPlaces<M extends Mark>(mark: M, places: readonly Place[]): M {
  if (mark.kind === 'tap') return { ...mark, at: places[0] as Place };
  return 'corners' in mark ? { ...mark, corners: places } : { ...mark, line: places };
}

export const moved = <M extends Mark>(mark: M, dx: number, dy: number): M =>
  withPlaces(
    mark,
    placesOf(mark).map(([x, y]): Place => [x + dx, y + dy]),
  );

export const isRectangle = (corners: readonly Place[]): boolean => isBox(tidy(corners));

const at = ([x, y]: Place, say: Say) => words.at(say.length(x), say.length(y));

/** A mark in a few words: how large, where, and what is known of it. */
export function tellMark(mark: Mark, zoneName: (id: string) => string, say: Say): string {
  const parts: string[] = [];
  if (mark.kind === 'tap') return words.told.sound(mark.rings, at(mark.at, say));
  if ('corners' in mark) {
    const { x0, y0, x1, y1 } = boxOf(mark.corners);
    if (isRectangle(mark.corners))
      parts.push(words.told.box(say.length(x1 - x0), say.length(y1 - y0), at([x0, y0], say)));
    else parts.push(words.told.outline(mark.corners.length));
  } else
    parts.push(words.told.long(say.length(lengthOf(mark.line)), at(mark.line[0] as Place, say)));
  if (mark.kind === 'spot')
    parts.push(
      mark.depth === undefined ? words.told.noDepth : words.told.deep(say.length(mark.depth)),
    );
  if (mark.kind === 'crack') parts.push(crackNames[mark.crack ?? 'not-sure']);
  if ('zone' in mark && mark.zone) parts.push(zoneName(mark.zone));
  return parts.join('; ');
}

/** The mark under a place, the last drawn first; null where none lies within `reach` mm. */
export function markAt(marks: readonly Mark[], place: Place, reach: number): number | null {
  const far = (mark: Mark): number => {
    if (mark.kind === 'tap') return distance(mark.at, place);
    if ('corners' in mark)
      return mark.kind === 'spot' && inside(place, tidy(mark.corners))
        ? 0
        : Math.min(...sidesOf(mark.corners).map((side) => distanceTo(place, side)));
    return Math.min(...piecesOf(mark.line).map((piece) => distanceTo(place, piece)));
  };
  let best: number | null = null;
  let least = reach;
  for (const [index, mark] of marks.entries()) {
    const away = far(mark);
    if (away <= least) [best, least] = [index, away];
  }
  if (best !== null) return best;
  // A painted zone is taken by its ground where nothing else lies there.
  const ground = marks.findLastIndex(
    (mark) => mark.kind === 'zone' && inside(place, tidy(mark.corners)),
  );
  return ground === -1 ? null : ground;
}

/** The line nearest to a place; null where none lies within `reach` mm. */
export function lineAt(
  lines: readonly (readonly Place[])[],
  place: Place,
  reach: number,
): number | null {
  const far = lines.map((line) =>
    Math.min(...piecesOf(line).map((piece) => distanceTo(place, piece))),
  );
  const best = far.indexOf(Math.min(...far));
  return best >= 0 && (far[best] as number) <= reach ? best : null;
}

/** The rectangle between two places. */
export const between = (one: Place, other: Place): Ring => ringOf(boxOf([one, other]));
/** A square round a place, mm. */
export const squareRound = ([x, y]: Place, side: number): Ring =>
  ringOf({ x0: x - side / 2, y0: y - side / 2, x1: x + side / 2, y1: y + side / 2 });

/** A tap on a dot; dots lie at fractions of a millimetre. */
export const tapAt = ([x, y]: Place, rings: boolean): Mark => ({
  kind: 'tap',
  at: [Number(x.toFixed(1)), Number(y.toFixed(1))],
  rings,
});
