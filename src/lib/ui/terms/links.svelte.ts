import type { Piece, termFinder } from '$lib/learn/markdown/terms';
import { readerHere } from '$lib/ui/reader-here';

type Cut = ReturnType<typeof termFinder>;

/**
 * Which sentence of a page links which term of the glossary: the first that uses it. The terms are
 * fetched once somebody goes on with the page; until then, and without them, sentences are plain.
 */
class TermLinks {
  #cut = $state.raw<Cut | null>(null);
  #asked = false;
  /** Page and term to the sentence that links it. */
  readonly #taken = new Map<string, object>();

  load(): void {
    if (this.#asked) return;
    this.#asked = true;
    void readerHere()
      .then(() => this.#fetch())
      .catch(() => (this.#asked = false));
  }

  async #fetch(): Promise<void> {
    const [{ terms }, { termFinder }] = await Promise.all([
      import('virtual:terms'),
      import('$lib/learn/markdown/terms'),
    ]);
    this.#cut = termFinder(terms);
  }

  /** The sentence in pieces, those with an id to be linked. */
  pieces(text: string, sentence: object, page: string): readonly Piece[] {
    this.release(sentence);
    if (!this.#cut) return [{ text }];
    return this.#cut(text, (id) => {
      const key = `${page} ${id}`;
      if (this.#taken.has(key)) return false;
      this.#taken.set(key, sentence);
      return true;
    });
  }

  release(sentence: object): void {
    for (const [key, by] of this.#taken) if (by === sentence) this.#taken.delete(key);
  }
}

export const termLinks = new TermLinks();
