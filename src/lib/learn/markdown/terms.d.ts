/** A term of the glossary as its links need it. */
export interface Term {
  readonly id: string;
  readonly spellings: readonly string[];
  /** Beginnings of words of which one must stand in the same sentence: they tell the trade's sense. */
  readonly near?: readonly string[];
  /** Beginnings of words that tell another sense: with one of them in the sentence it is no term. */
  readonly unless?: readonly string[];
}

/** A stretch of text; with the id of a term where it is one that was taken. */
export interface Piece {
  readonly text: string;
  readonly id?: string;
}

/**
 * Finds terms of the glossary in a text, the longest spelling first; a spelling in capitals counts
 * only in capitals. What is returned cuts a text at every term that `take` grants.
 */
export function termFinder(
  terms: readonly Term[],
): (text: string, take: (id: string) => boolean) => readonly Piece[];
