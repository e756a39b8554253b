import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { depthMarginOf } from '$lib/advice/margins';
import { doerOf, methodLeftToOthers, ownerMay, whomToCall } from '$lib/advice/owner-may';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { sealedSlab } from '../helpers/sealed-slabs';

const { site, zone } = sealedSlab;
const told = (moreSite: SiteAnswers, moreZone: ZoneAnswers) => {
  const [s, z] = [
    { ...site, ...moreSite },
    { ...zone, ...moreZone },
  ];
  const advice = adviseZone(s, z, { margins: false });
  return {
    doer: doerOf(s, z, advice),
    may: ownerMay(s, z, advice),
    left: methodLeftToOthers(s, z, advice),
    call: whomToCall(s, advice),
    margin: depthMarginOf(s, z),
  };
};
const growth = { contamination: { yes: ['growth'], maybe: [] } } as const;

// Common practice, no source: what a careful owner of a house does, and whom a foreman rings first.
describe('who does it', () => {
  // Water jetting is a specialist's, with their own machine: common practice, no source.
  it('calls the jetting crew where water jetting is planned, and nowhere else', () => {
    const advised = { holds: [], possibleHolds: [] };
    const jet = { ...advised, steps: [], methods: ['water-jet'] as const };
    expect(whomToCall({ warnings: { yes: [], maybe: [] } }, jet)).toEqual(['jetting-crew']);
    const either = { ...jet, methods: ['water-jet', 'break-out'] as const };
    expect(whomToCall({ warnings: { yes: [], maybe: [] } }, either)).toEqual([]);
  });

  it('calls who marks ducts before a machine goes over a floor that has them, not before a wash', () => {
    const advised = { holds: [], possibleHolds: [], steps: [] };
    const called = (method: 'scarify' | 'pressure-wash', yes: 'buried-services'[]) =>
      whomToCall({ warnings: { yes, maybe: [] } }, { ...advised, methods: [method] });
    expect(called('scarify', ['buried-services'])).toEqual(['locator']);
    expect(called('scarify', [])).toEqual([]);
    expect(called('pressure-wash', ['buried-services'])).toEqual([]);
  });

  it.each<[string, SiteAnswers, ZoneAnswers, string | null]>([
    ['a mossy patio is washed by its owner', {}, growth, 'owner'],
    ['a suspended deck is not', { element: ['suspended-steps'] }, growth, 'crew'],
    [
      'scaling is shotblasted by a crew',
      {},
      { depth: 5, looseness: ['flaking'], texture: ['pitted'], finish: ['overlay'] },
      'crew',
    ],
    [
      'a hollow is broken out by a crew',
      {},
      { depth: 30, looseness: ['hollow'], finish: ['overlay'] },
      'crew',
    ],
    [
      'where work is stopped, nobody',
      { warnings: { yes: ['fire-or-chemical'], maybe: [] } },
      {},
      null,
    ],
  ])('%s', (_, moreSite, moreZone, doer) => {
    expect(told(moreSite, moreZone).doer).toBe(doer);
  });

  it.each<[string, ZoneAnswers, string | null]>([
    ['scarifying', { depth: 5, looseness: ['fractured'], finish: ['overlay'] }, 'scarify'],
    [
      'grinding more than a spot',
      { depth: 2, looseness: ['flaking'], finish: ['thin-film'], area: 6 },
      'grind',
    ],
    [
      'a spot to grind',
      { depth: 2, looseness: ['flaking'], finish: ['thin-film'], area: 0.5 },
      null,
    ],
    ['washing', growth, null],
    [
      'shotblasting, which a line names already',
      { depth: ['film'], texture: ['smooth'], finish: ['overlay'], area: 20 },
      null,
    ],
  ])('an owner leaves the advised method to others: %s', (_, moreZone, left) => {
    expect(told({}, moreZone).left).toBe(left);
  });

  it('an owner washes moss off, and seals; never on an old coating, and nobody goes under a balcony', () => {
    expect(told({}, growth).may).toEqual(expect.arrayContaining(['tap', 'growth', 'wash', 'seal']));
    const old = told({ warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } }, growth).may;
    for (const id of ['tap', 'growth', 'wash', 'grind-spot', 'degrease'] as const)
      expect(old).not.toContain(id);
    const balcony = told(
      { element: ['suspended-slab'] },
      { depth: 30, looseness: ['hollow'], finish: ['overlay'] },
    ).may;
    // That nobody goes there stands above everything else already: `keep-clear.test.ts`.
    expect(balcony).not.toContain('keep-from-under');
    expect(balcony).not.toContain('tap');
    expect(told({ element: ['suspended-slab'] }, growth).may[0]).toBe('keep-from-under');
  });

  it('nobody gets under steps or a slab that lie on the ground', () => {
    const rocking = { warnings: { yes: ['fire-or-chemical'], maybe: [] } } as const;
    for (const element of ['slab', 'steps'] as const) {
      const { may } = told({ ...rocking, element: [element] }, {});
      expect(may).toContain('keep-off');
      expect(may).not.toContain('keep-from-under');
    }
  });

  it('cables that may be there are marked before anything is cut or broken, and an engineer comes before that', () => {
    expect(told({}, growth).call).toEqual([]);
    const broken = { depth: 30, looseness: ['hollow'], finish: ['overlay'] } as const;
    const hidden = { warnings: { yes: [], maybe: ['buried-services'] } } as const;
    expect(told(hidden, broken).call).toEqual(['locator']);
    // Said to be none: making safe still calls for the marking, but nobody is called for it here.
    expect(told({}, broken).call).toEqual([]);
    expect(told({ element: ['suspended-slab'] }, broken).call[0]).toBe('engineer');
  });
});

// Past 1/4 in (6.4 mm) it is broken out: common practice, no source.
describe('the next depth that changes it', () => {
  it('is the nearest deeper one', () => {
    const { margin } = told({}, { depth: 5, looseness: ['fractured'], finish: ['overlay'] });
    expect(margin).toMatchObject({ atMm: 6.4, method: 'break-out', verdict: 'prepare' });
  });
  it('is not there while something is open', () => {
    expect(told({}, { looseness: ['tight', 'hollow'], depth: 30 }).margin).toBe(null);
  });
});
