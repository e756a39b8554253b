import { generatedId, lastSeed } from './generate';

/** Cases somebody chose for others: authored ones by id, and a run of generated ones. */
export interface PracticeSet {
  readonly cases: readonly string[];
  readonly generated?: { readonly seed: number; readonly count: number };
}

/** Generated cases in one set, at most. */
export const mostGenerated = 50;

/** The ids of a set's cases, in the order they are tried. */
export const casesOf = ({ cases, generated }: PracticeSet): string[] => [
  ...cases,
  ...(generated
    ? Array.from({ length: generated.count }, (_, index) => generatedId(generated.seed + index))
    : []),
];

/** The last seed a run of that many may start from. */
export const lastStart = (count: number): number => lastSeed - Math.max(0, count - 1);
