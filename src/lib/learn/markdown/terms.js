/** @typedef {import('./terms').Term} Term */
/** @typedef {import('./terms').Piece} Piece */

/** @param {string} text */
const escape = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/**
 * Finds terms of the glossary in a text, the longest spelling first; a spelling in capitals counts
 * only in capitals.
 * @param {readonly Term[]} terms
 */
export function termFinder(terms) {
  /** @type {Map<string, { id: string, spelling: string }>} */
  const known = new Map();
  for (const { id, spellings } of terms)
    for (const spelling of spellings) known.set(spelling.toLowerCase(), { id, spelling });
  const longestFirst = [...known.keys()].sort((one, other) => other.length - one.length);
  const any = new RegExp(`(?<![\\w-])(?:${longestFirst.map(escape).join('|')})(?![\\w-])`, 'gi');

  /**
   * The text in pieces: the first use of each term with its id, as far as `take` grants it.
   * @param {string} text
   * @param {(id: string) => boolean} take
   * @returns {readonly Piece[]}
   */
  return (text, take) => {
    const pieces = [];
    let from = 0;
    for (const match of text.matchAll(any)) {
      const [found] = match;
      const term = known.get(found.toLowerCase());
      if (!term) continue;
      const { id, spelling } = term;
      if (spelling === spelling.toUpperCase() && found !== spelling) continue;
      if (!take(id)) continue;
      if (match.index > from) pieces.push({ text: text.slice(from, match.index) });
      pieces.push({ text: found, id });
      from = match.index + found.length;
    }
    if (from < text.length || !pieces.length) pieces.push({ text: text.slice(from) });
    return pieces;
  };
}
