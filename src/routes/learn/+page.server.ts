import { explainers, listed } from '$lib/learn/library.server';
import { groups, type Group } from '$lib/learn/kinds';

export const csr = false;

/** The library, group by group in the order of `groups`. */
export const load = () => ({
  shelves: (Object.keys(groups) as Group[])
    .map((group) => ({
      group,
      title: groups[group],
      explainers: explainers.filter(({ front }) => front.group === group).map(listed),
    }))
    .filter((shelf) => shelf.explainers.length > 0),
});
