import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/** Dice that fall the same way for the same seed. */
export interface Dice {
  /** One of some things, which must not be none. */
  readonly pick: <T>(from: readonly T[]) => T;
  /** Whether something of that likelihood (0 to 1) happens. */
  readonly chance: (likelihood: number) => boolean;
  /** A whole number from `low` to `high`, both included. */
  readonly between: (low: number, high: number) => number;
  /** The same things in another order. */
  readonly shuffle: <T>(all: readonly T[]) => T[];
}

/** @param seed a whole number */
export function diceFrom(seed: number): Dice {
  const generator = mersenne(seed);
  const below = (sides: number) => Math.floor(uniformFloat64(generator) * sides);
  return {
    pick: <T>(from: readonly T[]) => from[below(from.length)] as T,
    chance: (likelihood) => uniformFloat64(generator) < likelihood,
    between: (low, high) => low + below(high - low + 1),
    shuffle<T>(all: readonly T[]) {
      const left = [...all];
      const shuffled: T[] = [];
      while (left.length) shuffled.push(...left.splice(below(left.length), 1));
      return shuffled;
    },
  };
}

/** A seed out of a text, so that what hangs on a case falls the same way each time (FNV-1a). */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const character of text)
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return hash >>> 1;
}
