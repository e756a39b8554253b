import { inOrder } from '$lib/words/by-language';
import { explainerOf, glossary, listed } from '$lib/learn/library.server';

export const csr = false;

/** The terms in alphabetical order. */
export const load = () => ({
  terms: Object.entries(glossary)
    .map(([id, { term, says, see }]) => ({
      id,
      term,
      says,
      see: see ? listed(explainerOf(see)) : null,
    }))
    .sort((a, b) => inOrder(a.term, b.term)),
});
