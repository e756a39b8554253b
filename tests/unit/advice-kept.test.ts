import { describe, expect, it } from 'vitest';
import { traitAfterPatch, traitOfContamination } from '$lib/advice/dirt-traits';
import { Kept } from '$lib/advice/kept';

describe('dirt between which the advice can tell', () => {
  it('any heavy coating is one, until a patch has told needles from scrapers', () => {
    expect(traitOfContamination(['thick-coating'])).toBe(traitOfContamination(['rubbery-coating']));
    expect(traitAfterPatch(['thick-coating'])).not.toBe(traitAfterPatch(['rubbery-coating']));
    expect(traitAfterPatch(['thick-coating', 'thin-coating'])).toBe(
      traitAfterPatch(['thick-coating']),
    );
  });
  it.each([traitOfContamination, traitAfterPatch])('each thing alone is another: %o', (trait) => {
    const alone = (['oil', 'thin-coating', 'thick-coating', 'salt-bloom', 'growth'] as const).map(
      (each) => trait([each]),
    );
    expect(new Set([...alone, trait([])]).size).toBe(6);
  });
});

describe('what is kept by number', () => {
  it.each([
    ['a table', 100],
    ['a map', 2 ** 21],
  ])('is made once for each key, in %s', (_, room) => {
    const kept = new Kept<string>(room);
    expect(kept.numberOf(7, () => 'seven')).toBe(0);
    expect(kept.numberOf(0, () => 'none')).toBe(1);
    expect(kept.numberOf(7, () => 'again')).toBe(0);
    expect(kept.of(0, () => 'again')).toBe('none');
    expect(kept.of(99, () => 'last')).toBe('last');
    expect(kept.all).toEqual(['seven', 'none', 'last']);
  });
});
