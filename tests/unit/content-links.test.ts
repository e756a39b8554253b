import { buildIndex, openIndex } from '$lib/learn/search';
import { explainers, glossary } from '$lib/learn/library.server';
import { searchEntries } from '$lib/learn/search-entries.server';
import { render } from 'svelte/server';
import type { Component } from 'svelte';
import { describe, expect, it } from 'vitest';

const pages = import.meta.glob<Component>('/content/explainers/*.md', {
  import: 'default',
  eager: true,
});

/** An explainer as the HTML that readers get. */
const htmlOf = (slug: string): string => {
  const page = pages[`/content/explainers/${slug}.md`];
  if (!page) throw new Error(`no page ${slug}`);
  return render(page).body;
};
const termLinks = (html: string) =>
  [...html.matchAll(/<a href="\.\.\/glossary\/#([a-z0-9-]+)">/g)].map((match) => match[1] ?? '');

describe('glossary links', () => {
  it('lead each to a term, at its first use only, and never to what the page itself explains', () => {
    let linked = 0;
    for (const { slug } of explainers) {
      const ids = termLinks(htmlOf(slug));
      linked += ids.length;
      expect(new Set(ids).size, slug).toBe(ids.length);
      for (const id of ids) {
        expect(glossary, slug).toHaveProperty(id);
        expect(glossary[id]?.see, `${slug} links ${id}`).not.toBe(slug);
      }
    }
    expect(linked).toBeGreaterThan(explainers.length);
  });

  it('stand outside headings and other links', () => {
    for (const { slug } of explainers) {
      const html = htmlOf(slug);
      expect(html, slug).not.toMatch(/<h[1-4][^>]*>(?:(?!<\/h).)*glossary\/#/s);
      expect(html, slug).not.toMatch(/<a [^>]*>(?:(?!<\/a>).)*<a /s);
    }
  });
});

describe('pages under a strict policy', () => {
  it('hold no script, no style and no style attribute', () => {
    for (const { slug } of explainers) {
      expect(htmlOf(slug), slug).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/);
    }
  });
});

describe('figures in the text', () => {
  it('say metric first, then US measure, and point to their note', () => {
    // 1/8 in is 3.175 mm by the definition of the inch (1959).
    expect(htmlOf('grinding')).toMatch(
      /3\smm \(1\/8\sin\)<sup><a href="#figure-1" aria-label="Note 1: common practice/,
    );
  });
});

describe('search', () => {
  const search = openIndex(JSON.parse(JSON.stringify(buildIndex(searchEntries))));
  const found = (words: string) => search(words).map(({ id }) => id);

  it.each([
    ['silica', 'silica-dust/'],
    ['acid', 'why-not-acid/'],
    ['moss', 'removing-growth/'],
    ['undercut bar', 'freeing-bars/'],
    ['shotblastin', 'shotblasting/'],
    ['vibratoin', 'vibration/'],
    ['how do I talk to a contractor', 'talking-to-a-contractor/'],
  ])('for "%s" finds %s among the first three', (words, id) => {
    expect(found(words).slice(0, 3)).toContain(id);
  });

  it('finds nothing for a word that stands nowhere', () => {
    expect(found('zebra')).toEqual([]);
  });
});
