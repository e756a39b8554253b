import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { load as loadGlossary } from '../../src/routes/learn/glossary/+page.server';
import Glossary from '../../src/routes/learn/glossary/+page.svelte';
import { load as loadSources } from '../../src/routes/learn/sources/+page.server';
import Sources from '../../src/routes/learn/sources/+page.svelte';
import { figures } from '$shared/figures';

const read = (page: unknown, data: unknown) =>
  new JSDOM(render(page as never, { props: { data } as never }).body).window.document;
const glossary = read(Glossary, loadGlossary());
const sources = read(Sources, loadSources());
const jumpsOf = (page: Document) => [...page.querySelectorAll<HTMLAnchorElement>('.jumps a')];

// A matter of this site, no source.
describe.each([
  ['glossary', glossary],
  ['sources', sources],
])('the %s', (_, page) => {
  it('has a way into each of its letters, and each leads somewhere', () => {
    const names = jumpsOf(page).map(({ textContent }) => textContent);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(expect.arrayContaining(['A', 'C', 'S']));
    for (const jump of jumpsOf(page))
      expect(
        page.getElementById(jump.getAttribute('href')?.slice(1) ?? ''),
        jump.href,
      ).toBeTruthy();
  });
});

describe('the glossary', () => {
  it('is found by the letters that stand for a term', () => {
    const entry = [...glossary.querySelectorAll('dt')].find((term) => term.textContent === 'SSD');
    const link = entry?.nextElementSibling?.querySelector('a');
    expect(link?.getAttribute('href')).toBe('#ssd');
    expect(link?.textContent).toBe('See saturated surface-dry.');
    const first = jumpsOf(glossary).find(({ textContent }) => textContent === 'S');
    const target = glossary.getElementById(first?.getAttribute('href')?.slice(1) ?? '');
    expect(target?.querySelector('dt')?.textContent.charAt(0).toLowerCase()).toBe('s');
    expect(target?.previousElementSibling?.querySelector('dt')?.textContent).toMatch(/^[Rr]/);
  });
});

describe('the page of sources', () => {
  it('names each figure in words, and none by its id', () => {
    const text = sources.querySelector('.learn')?.textContent ?? '';
    const shown = Object.keys(figures).filter((id) => id.includes('.') && text.includes(id));
    expect(shown).toEqual([]);
    expect(text).toContain('Roughness grinding leaves: ');
  });
});
