import glossaryFile from '$content/glossary.json';
import { libraryFaults, type Shelf } from '$lib/learn/check';
import { readExplainer } from '$lib/learn/front';
import { readGlossary } from '$lib/learn/glossary';
import { explained, kinds } from '$lib/learn/kinds';
import { explainers, glossary } from '$lib/learn/library.server';
import { explainerFor } from '$lib/learn/links';
import { depthsOf, plainText } from '$lib/learn/plain-text';
import { figures } from '$shared/figures';
import { sources } from '$shared/sources';
import { describe, expect, it } from 'vitest';

const shelf: Shelf = {
  explainers,
  glossary,
  figureIds: Object.keys(figures),
  sourceIds: Object.keys(sources),
};

/** The library with one page changed: the changed text must come from the original. */
function spoilt(slug: string, was: string | RegExp, is: string): readonly string[] {
  const page = explainers.find((explainer) => explainer.slug === slug);
  if (!page) throw new Error(`no page ${slug}`);
  const text = `---\n${JSON.stringify(page.front)}\n---\n${page.body}`;
  const changed = text.replace(was, is);
  expect(changed).not.toBe(text);
  return libraryFaults({
    ...shelf,
    explainers: [...explainers.filter((other) => other !== page), readExplainer(slug, changed)],
  });
}

describe('the library of explainers', () => {
  it('is sound as it stands', () => {
    expect(libraryFaults(shelf)).toEqual([]);
  });

  it('has an explainer for every id, reached by kind and id', () => {
    for (const kind of kinds)
      for (const id of explained[kind]) {
        const { slug, title } = explainerFor(kind, id);
        expect(explainers.find((page) => page.slug === slug)?.front.title).toBe(title);
      }
  });

  it('explains a step that is a method by the page of the method', () => {
    expect(explainerFor('step', 'grind')).toEqual(explainerFor('method', 'grind'));
  });

  it.each([
    ['a dead link', '](../water-jetting/)', '](../water-jets/)', 'dead link'],
    [
      'a link out of the library',
      '](../water-jetting/)',
      '](https://example.org/)',
      'expected ../',
    ],
    ['an unknown figure', 'id="water.low"', 'id="water.lowest"', 'unknown figure'],
    ['an unknown source', '"icri-310.2r"', '"icri-0"', 'unknown source'],
    ['an unknown related page', '"related":["grinding"', '"related":["gringing"', 'unknown slug'],
    ['an id that does not exist', 'method:pressure-wash', 'method:pressure-washing', 'nothing is'],
    ['an id without an explainer', '"method:pressure-wash"', '', 'no explainer covers'],
    ['an id explained twice', 'method:pressure-wash', 'method:grind', 'already'],
    ['a missing second depth', '## Trade detail', '## More', 'Trade detail'],
  ])('refuses %s', (_, was, is, message) => {
    const faults = spoilt('pressure-washing', was, is);
    expect(faults.join('\n')).toContain(message);
  });

  it('refuses the same address or title twice, and an address that a page has', () => {
    const [first] = explainers;
    if (!first) throw new Error('empty library');
    const twice = libraryFaults({ ...shelf, explainers: [...explainers, first] });
    expect(twice.join('\n')).toContain('the slug is used twice');
    expect(twice.join('\n')).toContain('the title');
    const taken = libraryFaults({
      ...shelf,
      explainers: [...explainers, { ...first, slug: 'search' }],
    });
    expect(taken.join('\n')).toContain('the address is taken');
  });

  it.each([
    ['no head', 'Just text', 'expected a head'],
    ['no title', '---\nsummary: x\n---\n', 'title'],
    ['an unknown reader', '---\nreaders: [cats]\n---\n', 'readers'],
    ['a date that is none', '---\nreviewed: soon\n---\n', 'reviewed'],
  ])('refuses a page with %s, naming the file', (_, text, message) => {
    expect(() => readExplainer('page', text)).toThrow(/page\.md/);
    expect(() => readExplainer('page', text)).toThrow(message);
  });

  it('refuses a glossary in which two terms share a spelling or one leads nowhere', () => {
    const [id, entry] = Object.entries(glossary)[0] ?? [];
    expect(() => readGlossary({ ...glossaryFile, [`${id}-2`]: entry })).toThrow('stands in both');
    const lost = {
      ...glossary,
      lost: { term: 'lost', says: 'Leads nowhere at all.', see: 'nowhere' },
    };
    expect(libraryFaults({ ...shelf, glossary: lost }).join()).toContain('unknown slug "nowhere"');
  });
});

describe('the text of the explainers', () => {
  it.each(explainers.map((page) => [page.slug, page] as const))(
    '%s has a fair length',
    (_, page) => {
      const words = plainText(page.body).split(/\s+/).length;
      expect(words).toBeGreaterThanOrEqual(180);
      expect(words).toBeLessThanOrEqual(700);
    },
  );

  it.each(explainers.map((page) => [page.slug, page] as const))(
    '%s takes trade numbers from the figures',
    (_, { body }) => {
      // A number with a unit typed into the text would have no source and no basis.
      const typed = body
        .replace(/<[A-Z][^>]*>/g, '')
        .match(
          /\b\d+(?:[.,/]\d+)? ?(?:mm|cm|m|in|inch|inches|ft|psi|MPa|kg|lb|dB|dBA|ppm|bar|%)(?!\w)/g,
        );
      expect(typed ?? []).toEqual([]);
    },
  );

  it('stands plain before the trade detail', () => {
    for (const { slug, body } of explainers) {
      const { plain, trade } = depthsOf(body);
      expect(plain.length, slug).toBeGreaterThan(400);
      expect(trade.length, slug).toBeGreaterThan(250);
    }
  });
});
