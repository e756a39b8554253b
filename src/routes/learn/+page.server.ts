import { explainers, listed } from '$lib/learn/library.server';
import { groups } from '$lib/learn/kinds';
import { libraryWords } from '$words/ui/library';

export const csr = false;

/** The library, group by group in the order of `groups`. */
export const load = () => ({
  shelves: groups
    .map((group) => ({
      group,
      title: libraryWords.groupTitles[group],
      explainers: explainers.filter(({ front }) => front.group === group).map(listed),
    }))
    .filter((shelf) => shelf.explainers.length > 0),
});
