import { cleanup, render, waitFor } from '@testing-library/svelte';
import { afterEach, expect, it, vi } from 'vitest';
import glossaryFile from '$content/glossary.json';
import { readGlossary } from '$lib/learn/glossary';
import WithTerms from '$lib/ui/terms/WithTerms.svelte';

vi.setConfig({ testTimeout: 60_000 });
afterEach(cleanup);

const links = () =>
  [...document.querySelectorAll<HTMLAnchorElement>('a[href*="glossary/#"]')].map((link) => [
    link.textContent,
    new URL(link.href).hash,
  ]);

it('the first sentence that uses a term links it to the glossary, and only that one', async () => {
  const first = 'Grind off the laitance, then tap for a hollow layer.';
  const second = 'Laitance is weak. CSP 3 is enough; csp in small letters is no term.';
  render(WithTerms, { text: first });
  const other = render(WithTerms, { text: second });
  await waitFor(() => expect(links().length).toBeGreaterThan(0), { timeout: 20_000 });
  expect(links()).toEqual([
    ['laitance', '#laitance'],
    ['hollow', '#hollow'],
    ['CSP', '#csp'],
  ]);
  // Nothing of the sentences is lost or added.
  expect(document.body.textContent).toBe(first + second);
  const known = Object.keys(readGlossary(glossaryFile)).map((id) => `#${id}`);
  for (const [, hash] of links()) expect(known).toContain(hash);

  // A sentence that changes gives its terms up to the next that is drawn.
  await other.rerender({ text: 'No word of the trade here.' });
  expect(links().map(([text]) => text)).toEqual(['laitance', 'hollow']);
  render(WithTerms, { text: second });
  expect(links().map(([text]) => text)).toEqual(['laitance', 'hollow', 'CSP']);
});
