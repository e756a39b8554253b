import { inOrder } from '$lib/words/by-language';
import { lettersOf } from '$lib/learn/letters';
import { explainerOf, glossary, listed } from '$lib/learn/library.server';

export const csr = false;

/** Letters that stand for a term are looked up as often as the term itself. */
const shortForms = (forms: readonly string[] = []) =>
  forms.filter((form) => form.length > 1 && form === form.toUpperCase() && /^\p{L}+$/u.test(form));

const terms = Object.entries(glossary)
  .flatMap(([id, { term, forms, says, see }]) => [
    { id, term, says, see: see ? listed(explainerOf(see)) : null, another: null },
    ...shortForms(forms).map((form) => ({
      ...{ id: `${id}-${form.toLowerCase()}`, term: form, says: '', see: null },
      another: { id, term },
    })),
  ])
  .sort((a, b) => inOrder(a.term, b.term));

/** The terms in alphabetical order, and the letters they begin with. */
export const load = () => ({ terms, letters: lettersOf(terms, ({ term }) => term) });
