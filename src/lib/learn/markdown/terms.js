/** @typedef {import('./terms').Term} Term */
/** @typedef {import('./terms').Piece} Piece */

/** @param {string} text */
const escape = (text) => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** What a word is made of, in any language. */
const letter = '\\p{L}\\p{M}\\p{N}_';

/**
 * Whether one of some beginnings of words stands in a sentence.
 * @param {readonly string[] | undefined} stems
 * @param {string} sentence
 */
const stands = (stems, sentence) =>
  Boolean(stems) &&
  new RegExp(`(?<![${letter}])(?:${stems?.map(escape).join('|')})`, 'iu').test(sentence);

/**
 * The sentence round a place in a text: between full stops, question and exclamation marks.
 * @param {string} text
 * @param {number} start
 * @param {number} end
 */
function sentenceAt(text, start, end) {
  const before = text.slice(0, start).split(/[.!?](?=\s)/);
  const [after = ''] = text.slice(end).split(/[.!?](?=\s|$)/);
  return `${before[before.length - 1] ?? ''}${text.slice(start, end)}${after}`;
}

/**
 * Finds terms of the glossary in a text, the longest spelling first; a spelling in capitals counts
 * only in capitals. A word with more than one sense counts where the words beside it, in the same
 * sentence, tell that it is the trade's; of terms that share a spelling, the first that fits counts.
 * @param {readonly Term[]} terms
 */
export function termFinder(terms) {
  /** @type {Map<string, { term: Term, spelling: string }[]>} */
  const known = new Map();
  for (const term of terms)
    for (const spelling of term.spellings) {
      const key = spelling.toLowerCase();
      known.set(key, [...(known.get(key) ?? []), { term, spelling }]);
    }
  const longestFirst = [...known.keys()].sort((one, other) => other.length - one.length);
  const any = new RegExp(
    `(?<![${letter}-])(?:${longestFirst.map(escape).join('|')})(?![${letter}-])`,
    'giu',
  );

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
      const sentence = sentenceAt(text, match.index, match.index + found.length);
      const term = known
        .get(found.toLowerCase())
        ?.find(
          ({ term: { near, unless: not }, spelling }) =>
            (spelling !== spelling.toUpperCase() || found === spelling) &&
            (!near || stands(near, sentence)) &&
            !stands(not, sentence),
        )?.term;
      if (!term || !take(term.id)) continue;
      if (match.index > from) pieces.push({ text: text.slice(from, match.index) });
      pieces.push({ text: found, id: term.id });
      from = match.index + found.length;
    }
    if (from < text.length || !pieces.length) pieces.push({ text: text.slice(from) });
    return pieces;
  };
}
