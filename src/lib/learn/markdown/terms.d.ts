/** A term of the glossary as its links need it. */
export interface Term {
  readonly id: string;
  readonly spellings: readonly string[];
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
