import { congruential32 } from 'pure-rand/generator/congruential32';

/** Draws numbers from 0 up to 1; the same seed gives the same drawing on every machine. */
export type Random = () => number;

/** A stream of numbers of its own for each seed. */
export function randomFrom(seed: number): Random {
  const generator = congruential32(seed);
  return () => (generator.next() >>> 0) / 2 ** 32;
}
