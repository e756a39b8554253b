import { gzipSync } from 'node:zlib';
import { buildIndex } from '$lib/learn/search';
import { explainers, glossary } from '$lib/learn/library.server';
import { plainText } from '$lib/learn/plain-text';

export const prerender = true;
export const trailingSlash = 'never';

/** The search index over all explainers and the glossary, built once; compressed, as it lies on devices. */
export const GET = () => {
  const index = JSON.stringify(
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
  // No ending a host would know and unpack on its own account.
  return new Response(new Uint8Array(gzipSync(index, { level: 9 })), {
    headers: { 'content-type': 'application/octet-stream' },
  });
};
