import { createEmptyCard, fsrs, Rating as FsrsRating, type Card, type Grade } from 'ts-fsrs';
import type { Rating } from './grade';
import { stepLevel, type Level } from './level';

/** One case tried, once. */
export interface Result {
  readonly case: string;
  /** Milliseconds since 1970, by the device's clock. */
  readonly at: number;
  readonly rating: Rating;
}

/** All that is kept of a learner: what was tried and how it went, oldest first. The rest follows. */
export type Progress = readonly Result[];

/** Results kept; beyond that the oldest go. Keeps reading and replaying quick. */
export const mostResults = 5_000;

/** The latest moment a result may carry: the scheduler counts years ahead of it. */
export const latestMoment = Date.UTC(2100, 0, 1);

/**
 * When a case comes back, by FSRS with its published weights: a forgetting curve for each case,
 * asked again when the chance of knowing it has fallen to nine in ten.
 * Source: the FSRS algorithm, through `ts-fsrs`. Without fuzz, so that the same results give the same days.
 */
const scheduler = fsrs({ enable_fuzz: false, enable_short_term: true });

const ratingOf: Readonly<Record<Rating, Grade>> = {
  again: FsrsRating.Again,
  hard: FsrsRating.Hard,
  good: FsrsRating.Good,
};

/** One case as a learner knows it. */
export interface Known {
  readonly case: string;
  /** When it comes back, ms since 1970. */
  readonly due: number;
  readonly tried: number;
  readonly last: Rating;
}

/** What follows from a learner's results. */
export interface Standing {
  /** Every case tried, by its id. */
  readonly known: ReadonlyMap<string, Known>;
  /** How hard new cases are. */
  readonly level: Level;
  /** The case or square tried last, if any. */
  readonly last: string | null;
}

/**
 * Squares read on a test patch are kept by ids that begin so. They are known and come back like
 * cases, but move no level: the levels are those of cases, and reading a square is another thing.
 */
export const squarePrefix = 'square-';
export const isSquare = (id: string): boolean => id.startsWith(squarePrefix);

/** Right in a row that take a learner a level up; wrong in a row that take one down. */
export const rightToRise = 3;
export const wrongToFall = 2;

/** Folds results into a standing. A clock that went back counts as one that stood still. */
export function standingOf(progress: Progress): Standing {
  const cards = new Map<string, { card: Card; known: Known }>();
  let level: Level = 1;
  let row = 0;
  let clock = 0;
  for (const { case: id, at, rating } of progress) {
    clock = Math.max(clock, at);
    const now = new Date(clock);
    const before = cards.get(id);
    const { card } = scheduler.next(before?.card ?? createEmptyCard(now), now, ratingOf[rating]);
    const tried = (before?.known.tried ?? 0) + 1;
    cards.set(id, { card, known: { case: id, due: card.due.getTime(), tried, last: rating } });
    if (isSquare(id)) continue;
    // Right and wrong in a row, as a count above or below nought; in between leaves it.
    if (rating === 'good') row = Math.max(0, row) + 1;
    if (rating === 'again') row = Math.min(0, row) - 1;
    if (row === rightToRise || row === -wrongToFall) {
      level = stepLevel(level, row > 0 ? 1 : -1);
      row = 0;
    }
  }
  return {
    known: new Map([...cards].map(([id, { known }]) => [id, known])),
    level,
    last: progress.at(-1)?.case ?? null,
  };
}

/** Results with one more, within the bound. */
export const withResult = (progress: Progress, result: Result): Progress =>
  [...progress, result].slice(-mostResults);

const key = ({ case: id, at, rating }: Result) => `${at} ${id} ${rating}`;

/** Two sets of results as one: each result once, oldest first, within the bound. */
export function merged(one: Progress, other: Progress): Progress {
  const all = new Map([...one, ...other].map((result) => [key(result), result]));
  return [...all.values()].sort((a, b) => a.at - b.at).slice(-mostResults);
}
