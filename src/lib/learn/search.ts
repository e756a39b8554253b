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

/** Words that stand in every page and tell nothing. */
const idle = new Set(
  'a an and are as at be but by can do does for from has have how i if in into is it its keeps me my not of on or our should that the them then there they this to was what when where which why will with you your'.split(
    ' ',
  ),
);

const options: Options<Entry> = {
  fields: ['title', 'summary', 'also', 'text'],
  storeFields: ['title', 'summary'],
  processTerm: (term) => {
    const word = term.toLowerCase();
    return idle.has(word) ? null : word;
  },
  searchOptions: { boost: { title: 4, also: 4, summary: 2 }, prefix: true, fuzzy: 0.2 },
};

/** The index as plain data, to be written at build. */
export function buildIndex(entries: readonly Entry[]): AsPlainObject {
  const index = new MiniSearch(options);
  index.addAll(entries);
  return index.toJSON();
}

/**
 * Turns a written index into a search: words in, best hits first. Forgives a typing slip in longer
 * words. Where no page has all the words, those that have most of them are given.
 */
export function openIndex(written: AsPlainObject): (words: string) => Hit[] {
  const index = MiniSearch.loadJS(written, options);
  return (words) => {
    const all = index.search(words, { combineWith: 'AND' });
    const found = all.length ? all : index.search(words, { combineWith: 'OR' });
    return found.map(({ id, title, summary }) => ({
      id: String(id),
      title: String(title),
      summary: String(summary),
    }));
  };
}
