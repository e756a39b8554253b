import { gzipSync } from 'node:zlib';
import { buildIndex } from '$lib/learn/search';
import { searchEntries } from '$lib/learn/search-entries.server';

export const prerender = true;
export const trailingSlash = 'never';

/** The search index over all explainers and the glossary, built once; compressed, as it lies on devices. */
export const GET = () => {
  const index = JSON.stringify(buildIndex(searchEntries));
  // No ending a host would know and unpack on its own account.
  return new Response(new Uint8Array(gzipSync(index, { level: 9 })), {
    headers: { 'content-type': 'application/octet-stream' },
  });
};
