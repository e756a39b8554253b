import glossaryFile from '$content/glossary.json';
import { readGlossary } from '$lib/learn/glossary';
import { termFinder } from '$lib/learn/markdown/terms';
import { describe, expect, it } from 'vitest';

const glossary = readGlossary(glossaryFile);
const cut = termFinder(
  Object.entries(glossary).map(([id, { term, forms = [], near, unless }]) => ({
    id,
    spellings: [term, ...forms],
    ...(near && { near }),
    ...(unless && { unless }),
  })),
);
const linked = (text: string) => cut(text, () => true).flatMap(({ id }) => id ?? []);

/**
 * Words that mean one thing in the trade and another beside it. The sentences are those in which
 * two readers from the trade met the wrong meaning, and their opposites: common practice, no source.
 */
describe('a word with two senses leads to the glossary by its sense', () => {
  it.each([
    ['hollow', 'It sounds hollow, like a box.'],
    ['hollow', 'A hollow layer is broken out.'],
    ['grit', 'The nozzle throws grit at the wall.'],
    ['core', 'A laboratory drills a core.'],
    ['slurry', 'The saw leaves slurry, and it may not reach a drain.'],
    ['trowelled', 'A trowelled floor is too tight.'],
  ])('%s in “%s”', (id, text) => {
    expect(linked(text)).toContain(id);
  });

  it.each([
    ['hollow', 'The jet follows every bump and hollow.'],
    ['hollow', 'A deep hollow with a firm bottom is a form to fill.'],
    ['hollow', 'Hollows, grooves or bare stones.'],
    ['grit', 'The edges of the crack turn to grit.'],
    ['core', 'On ribbed bars, measure the core between ribs.'],
    ['slurry', 'A slurry or bonding agent is no cure for a bad surface.'],
    ['trowelled', 'A trowelled layer a few millimetres thick.'],
    ['trowelled', 'Spread it with a trowel.'],
  ])('no %s in “%s”', (id, text) => {
    expect(linked(text)).not.toContain(id);
  });

  it('looks at the sentence of the word, not at the one beside it', () => {
    expect(linked('Fill the hollow. Then sound it with a hammer.')).not.toContain('hollow');
    expect(linked('Sweep it. Tap for what is hollow.')).toContain('hollow');
  });

  it('refuses a sense that can never be told', () => {
    expect(() => readGlossary({ one: { term: 'one', says: 'x'.repeat(30), near: [''] } })).toThrow(
      'one.near',
    );
  });
});

describe('terms and cards say the same word', () => {
  // The cards of the interview (words/en/questions): a reader looks the card's word up.
  it.each([
    'thin paint',
    'form and pour',
    'broken on top',
    'salt bloom',
    'overlay',
    'hairline',
    'self-levelling',
  ])('%s', (word) => {
    expect(linked(`It says ${word} here, and a hammer rings.`).length).toBeGreaterThan(0);
  });
});
