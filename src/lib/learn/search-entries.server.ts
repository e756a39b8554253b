import searchWords from '$content/search-words.json';
import { explainers, glossary } from './library.server';
import { plainText } from './plain-text';
import type { Entry } from './search';

const brought: Readonly<Record<string, readonly string[]>> = searchWords;

for (const slug of Object.keys(brought))
  if (!explainers.some((page) => page.slug === slug))
    throw new Error(`search-words.json: expected the slug of an explainer; found "${slug}"`);

/** All that can be found: every explainer with the words people bring for it, and every term. */
export const searchEntries: readonly Entry[] = [
  ...explainers.map(({ slug, front, body }) => ({
    id: `${slug}/`,
    title: front.title,
    summary: front.summary,
    also: (brought[slug] ?? []).join('; '),
    text: plainText(body),
  })),
  ...Object.entries(glossary).map(([id, { term, forms = [], says }]) => ({
    id: `glossary/#${id}`,
    title: term,
    summary: says,
    also: '',
    text: forms.join(' '),
  })),
];
