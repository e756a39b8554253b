import { searchIdle } from '$words/ui/search-idle';
import MiniSearch, { type AsPlainObject, type Options } from 'minisearch';

/** One page or term that can be found. `id` is its address under `/learn/`. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  /** Words people bring that the page may not use itself. */
  readonly also: string;
  readonly text: string;
}

/** What a search gives back. */
export type Hit = Pick<Entry, 'id' | 'title' | 'summary'>;

/** A word as it is looked for: small, without accents, since phones leave them out. */
const folded = (word: string) => word.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');

/** Words that stand in every page and tell nothing. */
const idle = new Set(searchIdle.always.map(folded));
/** What nearly every page is about: counts only where nothing else is asked. */
const everywhere = new Set(searchIdle.everywhere.map(folded));

const options: Options<Entry> = {
  fields: ['title', 'summary', 'also', 'text'],
  storeFields: ['title', 'summary'],
  processTerm: (term) => {
    const word = folded(term);
    return idle.has(word) ? null : word;
  },
  searchOptions: { boost: { title: 4, also: 4, summary: 2 }, prefix: true },
};

/** The index as plain data, to be written at build. */
export function buildIndex(entries: readonly Entry[]): AsPlainObject {
  const index = new MiniSearch(options);
  index.addAll(entries);
  return index.toJSON();
}

const asked = (words: string) => {
  const all = folded(words).match(/[\p{L}\p{N}]+/gu) ?? [];
  const telling = all.filter((word) => !idle.has(word));
  const rare = telling.filter((word) => !everywhere.has(word));
  return rare.length ? rare : telling;
};

/**
 * Turns a written index into a search: words in, best hits first. A page with more of the words
 * comes first; where every page has them all, the rarer word weighs more. A word no page has may be
 * a slip of the finger: then words close to it count.
 */
export function openIndex(written: AsPlainObject): (words: string) => Hit[] {
  const index = MiniSearch.loadJS(written, options);
  const known = (word: string) => index.search(word).length > 0;
  return (words) => {
    const found = index.search(asked(words).join(' '), {
      combineWith: 'OR',
      fuzzy: (word) => (known(word) ? false : 0.2),
    });
    const most = Math.max(...found.map(({ queryTerms }) => queryTerms.length));
    return found
      .filter(({ queryTerms }) => queryTerms.length * 2 > most)
      .sort((one, other) => other.queryTerms.length - one.queryTerms.length)
      .map(({ id, title, summary }) => ({
        id: String(id),
        title: String(title),
        summary: String(summary),
      }));
  };
}
