/** Whole numbers as one: each counts in its own base, so none takes more room than it needs. */

/** Letters and digits, without those that look alike (0 and O, 1 and I and l). */
const letters = '23456789ABCDEFGHJKLMNPQRSTUVWXYZabcdefghijkmnopqrstuvwxyz';
const base = BigInt(letters.length);

/** A number from 0 to one below its base. */
export type Bead = readonly [value: number, base: number];

/** The beads as letters; the first bead is the first that is taken off again. */
export function lettersOf(beads: readonly Bead[]): string {
  let rest = 0n;
  for (const [value, of] of [...beads].reverse()) rest = rest * BigInt(of) + BigInt(value);
  let text = '';
  for (; rest > 0n; rest /= base) text = `${letters.charAt(Number(rest % base))}${text}`;
  return text;
}

/** Takes beads off again, in the order in which they were put on. */
export interface Beads {
  readonly take: (base: number) => number;
  /** Whether nothing is left on it. */
  readonly empty: () => boolean;
}

/** Reads letters; null where there is one that is none of ours. */
export function beadsOf(text: string): Beads | null {
  let rest = 0n;
  for (const letter of text) {
    const value = letters.indexOf(letter);
    if (value < 0) return null;
    rest = rest * base + BigInt(value);
  }
  return {
    take(of) {
      const value = Number(rest % BigInt(of));
      rest /= BigInt(of);
      return value;
    },
    empty: () => rest === 0n,
  };
}

/**
 * The checksum CRC-32 (ISO/IEC/IEEE 8802-3, as in PNG and zip) of a text in ASCII. What is changed
 * within four letters side by side changes it for sure, anything else but once in 2^32.
 */
export function checkOf(text: string): number {
  let check = 0xffffffff;
  for (let at = 0; at < text.length; at += 1) {
    check ^= text.charCodeAt(at);
    for (let bit = 0; bit < 8; bit += 1) check = (check >>> 1) ^ (check & 1 ? 0xedb88320 : 0);
  }
  return (check ^ 0xffffffff) >>> 0;
}

/** Letters that a checksum takes. */
const checkLetters = 6;

/** A text with its checksum as letters behind it. */
export const withCheck = (text: string): string =>
  text + lettersOf([[checkOf(text), 2 ** 32]]).padStart(checkLetters, letters.charAt(0));

/** The text before its checksum, or null where the two do not go together. */
export function checked(text: string): string | null {
  const before = text.slice(0, -checkLetters);
  return withCheck(before) === text ? before : null;
}
