import MiniSearch, { type AsPlainObject, type Options } from 'minisearch';

/** One page or term that can be found. `id` is its address under `/learn/`. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly text: string;
}

/** What a search gives back. */
export type Hit = Pick<Entry, 'id' | 'title' | 'summary'>;

/** Words that stand in every page and tell nothing. */
const idle = new Set(
  'a an and are as at be but by can do does for from has have how if in into is it its not of on or that the them then there they this to what when where which with you your'.split(
    ' ',
  ),
);

const options: Options<Entry> = {
  fields: ['title', 'summary', 'text'],
  storeFields: ['title', 'summary'],
  processTerm: (term) => {
    const word = term.toLowerCase();
    return idle.has(word) ? null : word;
  },
  searchOptions: { boost: { title: 4, summary: 2 }, prefix: true, fuzzy: 0.2, combineWith: 'AND' },
};

/** The index as plain data, to be written at build. */
export function buildIndex(entries: readonly Entry[]): AsPlainObject {
  const index = new MiniSearch(options);
  index.addAll(entries);
  return index.toJSON();
}

/** Turns a written index into a search: words in, best hits first. Forgives a typing slip in longer words. */
export function openIndex(written: AsPlainObject): (words: string) => Hit[] {
  const index = MiniSearch.loadJS(written, options);
  return (words) =>
    index.search(words).map(({ id, title, summary }) => ({
      id: String(id),
      title: String(title),
      summary: String(summary),
    }));
}
