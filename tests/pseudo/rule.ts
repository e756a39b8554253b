/**
 * The pseudo-language: English that nobody mistakes for it. Every vowel gets an accent and stands
 * twice, which makes a text about a third longer, as translations into most languages are. It goes
 * letter by letter, so that the beginning of a word stays the beginning of it.
 */

/** A locale with a decimal comma; its own words, of months and of units, come from the platform. */
export const pseudoLocale = 'de-DE';

const accented: Readonly<Record<string, string>> = {
  a: 'á',
  e: 'é',
  i: 'í',
  o: 'ó',
  u: 'ú',
  y: 'ý',
};

const inLetters = (word: string): string =>
  word.replace(/[aeiouy]/gi, (letter) => {
    const low = accented[letter.toLowerCase()] ?? letter;
    return `${letter === letter.toLowerCase() ? low : low.toUpperCase()}${low}`;
  });

/** What no language translates: names in braces, addresses, codes in capitals (CSP, HEPA). */
const kept = /\{[^}]*\}|https?:\S+|\b[A-Z][A-Z0-9₂]+\b/g;

/** A text in the pseudo-language. */
export function pseudo(text: string): string {
  let from = 0;
  let said = '';
  for (const match of text.matchAll(kept)) {
    said += inLetters(text.slice(from, match.index)) + match[0];
    from = match.index + match[0].length;
  }
  return said + inLetters(text.slice(from));
}
