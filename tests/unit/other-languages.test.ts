import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { jobFileName } from '$lib/keep/file-name';
import { readGlossary } from '$lib/learn/glossary';
import { termFinder } from '$lib/learn/markdown/terms.js';
import { buildIndex, openIndex } from '$lib/learn/search';
import { lowered } from '$lib/words/by-language';
import { ownLanguage } from '$words/language';
import { pseudo } from '../pseudo/rule';
import { formatter } from '../helpers/plain-formatter';

const german = { ...ownLanguage, locale: 'de-DE', to: 'bis' };
const pieces = (text: string, terms: Parameters<typeof termFinder>[0]) =>
  termFinder(terms)(text, () => true)
    .filter(({ id }) => id)
    .map(({ text: found, id }) => `${id}: ${found}`);

describe('what another language needs of the code', () => {
  it('numbers and ranges go by the locale', () => {
    const say = formatter('metric', undefined, german);
    expect(say.length(6.4)).toBe('6,4 mm');
    expect(say.lengths(75, 100)).toBe('75 bis 100 mm');
    expect(say.percent(60)).toBe('60 %');
    expect(say.hours(2)).toBe('2 Stunden');
    expect(say.list(['a', 'b', 'c'])).toBe('a, b und c');
  });

  it('a term is not found inside a word with accents', () => {
    const terms = [
      { id: 'paste', spellings: ['pasta'] },
      { id: 'sound', spellings: ['son'] },
    ];
    expect(pieces('pastaú sonó', terms)).toEqual([]);
    expect(pieces('La pasta. Así son.', terms)).toEqual(['paste: pasta', 'sound: son']);
  });

  // Spanish: one word for a sealer that soaks in and for the sealant of a joint.
  it('two terms may share a spelling where the sentence tells them apart', () => {
    const says = 'What it is, in a sentence of some length.';
    const shared = {
      sealant: { term: 'sellador', near: ['junta'], says },
      sealer: { term: 'sellador', unless: ['junta'], says },
    };
    const terms = Object.entries(readGlossary(shared)).map(([id, { term, near, unless: not }]) => ({
      id,
      spellings: [term],
      ...(near && { near }),
      ...(not && { unless: not }),
    }));
    expect(pieces('El sellador de la junta.', terms)).toEqual(['sealant: sellador']);
    expect(pieces('El sellador penetra.', terms)).toEqual(['sealer: sellador']);
    expect(() => readGlossary({ a: { term: 'x', says }, b: { term: 'x', says } })).toThrow(/near/);
  });

  it('a search finds a word with and without its accents', () => {
    const entry = { id: 'dust/', title: 'Polvo de sílice', summary: '', also: '', text: '' };
    const find = openIndex(buildIndex([entry]));
    expect(find('silice')).toHaveLength(1);
    expect(find('sílice')).toHaveLength(1);
  });

  it('a name with accents makes a plain name of a file', () => {
    expect(jobFileName({ name: 'Entrada Núñez' } as Job)).toBe('entrada-nunez.down-to-sound.json');
  });

  it('a code at the beginning keeps its capitals', () => {
    expect(lowered('CSP 3 or more')).toBe('CSP 3 or more');
    expect(lowered('Éste')).toBe('éste');
  });

  it('the pseudo-language goes letter by letter, and leaves codes and places alone', () => {
    expect(pseudo('Clean to CSP {depth}')).toBe('Clééáán tóó CSP {depth}');
    const text = 'Somebody licensed has to look before work starts here.';
    expect(pseudo(text).length / text.length).toBeGreaterThan(1.25);
  });
});
