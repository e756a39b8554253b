import searchWords from '$content/search-words.json';
import { buildIndex, openIndex } from '$lib/learn/search';
import { searchEntries } from '$lib/learn/search-entries.server';
import { describe, expect, it } from 'vitest';

const search = openIndex(JSON.parse(JSON.stringify(buildIndex(searchEntries))));

/**
 * What people type who do not know the trade's word, and the page that answers it. Common practice,
 * no source: the words of owners in the United States and in Britain.
 */
const asked: Readonly<Record<string, string>> = {
  efflorescence: 'contamination',
  'white powder': 'contamination',
  crazing: 'map-cracking',
  'spider cracks': 'map-cracking',
  'pop-outs': 'freeze-thaw',
  scaling: 'freeze-thaw',
  'winter damage': 'freeze-thaw',
  'muriatic acid': 'why-not-acid',
  'acid etching': 'why-not-acid',
  'driveway crumbling': 'looseness',
  'my driveway is crumbling': 'looseness',
  'dusty floor': 'looseness',
  spalling: 'damage-depth',
  cost: 'price-may-change',
  'how much does it cost': 'price-may-change',
  prices: 'price-may-change',
  permit: 'what-owners-can-do',
  diy: 'what-owners-can-do',
  delamination: 'sounding',
  'sounds hollow': 'sounding',
  jackhammer: 'breaking-out',
  sandblasting: 'abrasive-blasting',
  'power washer': 'pressure-washing',
  hydrodemolition: 'water-jetting',
  milling: 'scarifying',
  'bush hammer': 'bruised-skin',
  'needle gun': 'needle-scaling',
  laitance: 'grinding',
  rebar: 'steel',
  'rust stain': 'steel',
  'concrete cancer': 'steel',
  mold: 'removing-growth',
  moss: 'removing-growth',
  'oil stain': 'degreasing',
  'epoxy garage floor': 'finish-build-coat',
  'tile glue': 'lead-and-asbestos',
  'lead paint': 'lead-and-asbestos',
  'sunken slab': 'settled-slabs',
  'trip hazard': 'settled-slabs',
  'tree roots': 'settled-slabs',
  'seal driveway': 'finish-sealer',
  resurfacing: 'finish-thin-overlay',
  'self leveling': 'finish-self-levelling',
  'paint garage floor': 'finish-thin-film',
  'peeling paint': 'stripping-coatings',
  warranty: 'how-long-repairs-last',
  guarantee: 'how-long-repairs-last',
  'flaking driveway': 'freeze-thaw',
  'driveway peeling': 'freeze-thaw',
  'who do I call': 'when-to-call-an-engineer',
  quote: 'talking-to-a-contractor',
  'rent a grinder': 'what-not-to-hire',
  n95: 'respirators',
  silicosis: 'silica-dust',
  'dust table': 'silica-dust',
  'which mask': 'respirators',
  earplugs: 'noise',
  'white finger': 'vibration',
  balcony: 'structure-and-tendons',
  'post tension': 'structure-and-tendons',
  'road salt': 'salts',
  'damp basement floor': 'moisture',
  'feather edge': 'patch-edges',
  'how thick is my slab': 'slab-thickness',
  'expansion joint': 'joints',
  'when can I drive on it': 'curing-and-opening',
  'storm drain': 'wash-water',
  'tear out': 'full-depth',
  'repair or replace': 'restore-or-replace',
  'bond test': 'pull-off',
  'structural engineer': 'when-to-call-an-engineer',
  'crack keeps coming back': 'moving-cracks',
  'knocking on concrete': 'sounding',
  knocking: 'sounding',
  knock: 'sounding',
  'hollow sound': 'sounding',
  'rusty bar in step': 'steel',
  'salt damage driveway': 'salts',
  'harsher machine': 'bruised-skin',
  'why not a stronger machine': 'bruised-skin',
  'can I do it myself': 'what-owners-can-do',
  'second opinion': 'talking-to-a-contractor',
  'contractor says replace': 'restore-or-replace',
  'is it worth fixing': 'restore-or-replace',
  'steps crumbling': 'looseness',
  'flaking concrete': 'looseness',
  'concrete chipping off': 'damage-depth',
  'patch failed': 'patch-after-a-year',
  'patch falling off': 'patch-after-a-year',
  'big crack': 'cracks',
  'how clean is clean': 'checking-ready',
  'test patch': 'try-a-square-metre',
  'can I park on it': 'curing-and-opening',
  'rust bleeding through': 'steel',
  'cheap fix': 'how-long-repairs-last',
  'hand numb': 'vibration',
  'customer wants new slab': 'explaining-restoring',
  'tap test': 'sounding',
  'rough enough': 'profile',
  'what psi': 'pressure-washing',
  'bubbles in paint': 'moisture',
  'paint bubbling': 'stripping-coatings',
  blisters: 'moisture',
  'paint blisters': 'stripping-coatings',
  'flaking paint': 'stripping-coatings',
  'paint coming off floor': 'stripping-coatings',
  'hot tire pickup': 'stripping-coatings',
  'sweating floor': 'moisture',
  drummy: 'sounding',
  'rotten apron': 'looseness',
  'soft concrete': 'looseness',
  'dust on garage floor': 'looseness',
  'uneven floor': 'levelling',
  'underground pipes': 'electric-shock',
  'call before you dig': 'electric-shock',
  'broken step': 'finish-rebuild',
  'broken corner': 'finish-rebuild',
  'holes in driveway': 'damage-depth',
  'slippery driveway': 'removing-growth',
  algae: 'removing-growth',
  pets: 'making-safe',
  'leaking crack': 'cracks',
  'crack in garage floor': 'cracks',
  'how many bags': 'measuring-area',
  neighbours: 'noise',
  popouts: 'freeze-thaw',
  permits: 'what-owners-can-do',
  'do I need a permit': 'what-owners-can-do',
  'rusty rebar': 'cleaning-bars',
  'find rebar': 'finding-bars',
  'behind the rebar': 'freeing-bars',
  'thin rebar': 'bar-loss',
};

describe('the search knows the words people bring', () => {
  it('is asked for 120 of them or more', () => {
    expect(Object.keys(asked).length).toBeGreaterThanOrEqual(120);
  });

  it.each(Object.entries(asked))('"%s" finds %s among the first three', (words, slug) => {
    const first = search(words)
      .slice(0, 3)
      .map(({ id }) => id);
    expect(first).toContain(`${slug}/`);
  });

  // Common practice, no source: what somebody with a bar in sight has to know, and what a price hangs on.
  it.each([
    ['rebar', ['steel', 'freeing-bars', 'cleaning-bars', 'finding-bars', 'bar-loss'], 6],
    ['cost', ['price-may-change', 'restore-or-replace', 'three-options'], 4],
  ] as const)('"%s" finds %j first', (words, slugs, most) => {
    const first = search(words)
      .slice(0, most)
      .map(({ id }) => id);
    expect(first).toEqual(expect.arrayContaining(slugs.map((slug) => `${slug}/`)));
  });

  it('finds them with a slip of the finger too', () => {
    for (const [slip, slug] of [
      ['efflorecence', 'contamination'],
      ['muratic acid', 'why-not-acid'],
      ['delaminaton', 'sounding'],
    ] as const)
      expect(
        search(slip)
          .slice(0, 3)
          .map(({ id }) => id),
      ).toContain(`${slug}/`);
  });

  it('gives the nearest where no page has all of the words', () => {
    expect(search('zebra efflorescence')[0]?.id).toBe('contamination/');
  });

  it.each([
    ['knocking on concrete', 10],
    ['how much does it cost', 30],
    ['moss', 20],
  ] as const)('"%s" finds %i pages at most', (words, most) => {
    expect(search(words).length).toBeLessThanOrEqual(most);
  });

  it('counts "concrete" only where nothing else is asked', () => {
    expect(search('concrete').length).toBeGreaterThan(10);
    expect(search('moss on concrete')).toEqual(search('moss'));
  });

  it('puts a page with more of the words before one that makes more of a single word', () => {
    const page = { title: '', summary: '', also: '', text: '' };
    const three = openIndex(
      buildIndex([
        { ...page, id: 'two', title: 'moss bucket', also: 'moss bucket' },
        {
          ...page,
          id: 'three',
          text: 'a moss, a bucket and a scraper stood by the wall of the yard',
        },
      ]),
    );
    expect(three('moss bucket scraper').map(({ id }) => id)).toEqual(['three', 'two']);
  });

  it('names each phrase for one page only', () => {
    const all = Object.values(searchWords).flat();
    expect(all.filter((phrase, at) => all.indexOf(phrase) !== at)).toEqual([]);
  });
});
