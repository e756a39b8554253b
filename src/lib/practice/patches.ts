import written from '$content/practice/patches.json';
import type { Aim } from '$lib/trial/aim';
import { aimFor } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { readAll } from '$lib/trial/read';
import type { Outcome, OutcomeKind, WhyId } from '$lib/trial/outcome';
import { isSquare, squarePrefix, type Standing } from './progress';
import type { LadderId } from '$shared/ladders';

/** A square that was tried, to say what comes next. Everything in it is invented. */
export interface PatchCase {
  /** Letters and dashes; stable. */
  readonly id: string;
  readonly title: string;
  readonly ladder: LadderId;
  /** mm */
  readonly damage: number;
  readonly profile: readonly [number, number];
  /** Squares tried, oldest first; the last is the one that is asked about. */
  readonly squares: readonly Found[];
  /** What somebody long in the trade says, and the trade's answer, judged before the engine was asked. */
  readonly senior: string;
  readonly intended: OutcomeKind;
  readonly why: WhyId;
}

export const patchCases: readonly PatchCase[] = written.cases.map((one) => ({
  ...one,
  squares: one.squares.map((square) => ({ ...square, area: 1 })),
})) as unknown as readonly PatchCase[];

/** What a case is held against. */
export const aimOfCase = ({ ladder, damage, profile }: PatchCase): Aim =>
  aimFor(ladder, damage, profile);

/** What every square of a case comes to. */
export const outcomesOf = (one: PatchCase): readonly Outcome[] =>
  readAll(one.squares, aimOfCase(one));

/** Everything wrong with the cases, a line each: where the engine comes to something else. */
export function patchFaults(cases: readonly PatchCase[] = patchCases): string[] {
  return cases.flatMap((one) => {
    const last = outcomesOf(one).at(-1);
    const said = `${one.id}: meant ${one.intended} for ${one.why}`;
    if (last?.kind !== one.intended) return [`${said}, is ${String(last?.kind)}`];
    return last.why.includes(one.why) ? [] : [`${said}, is for ${last.why.join(', ')}`];
  });
}

/** The id a square's result is kept by. */
export const resultOf = ({ id }: PatchCase): string => `${squarePrefix}${id}`;

/** Squares that have come back by now, the longest overdue first. */
export const dueSquares = ({ known }: Standing, now: number): readonly PatchCase[] =>
  [...known.values()]
    .filter(({ case: id, due }) => isSquare(id) && due <= now)
    .sort((one, other) => one.due - other.due)
    .flatMap(({ case: id }) => patchCases.find((one) => resultOf(one) === id) ?? []);

/** The square to read now: what has come back first, then the first that is new, then the next in turn. */
export function nextSquare(standing: Standing, now: number, last?: PatchCase): PatchCase {
  const [due] = dueSquares(standing, now);
  const fresh = patchCases.find((one) => !standing.known.has(resultOf(one)));
  const turn = last ? (patchCases.indexOf(last) + 1) % patchCases.length : 0;
  return due ?? fresh ?? (patchCases[turn] as PatchCase);
}
