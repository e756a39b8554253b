import { explainers, glossary } from '$lib/learn/library.server';
import { buildIndex } from '$lib/learn/search';
import { plainText } from '$lib/learn/plain-text';
import { json } from '@sveltejs/kit';

export const prerender = true;
export const trailingSlash = 'never';

/** The search index over all explainers and the glossary, built once. */
export const GET = () =>
  json(
    buildIndex([
      ...explainers.map(({ slug, front, body }) => ({
        id: `${slug}/`,
        title: front.title,
        summary: front.summary,
        text: plainText(body),
      })),
      ...Object.entries(glossary).map(([id, { term, forms = [], says }]) => ({
        id: `glossary/#${id}`,
        title: term,
        summary: says,
        text: forms.join(' '),
      })),
    ]),
  );
