import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { limitIds, limitsHere, type LimitId } from '$lib/advice/owner-limits';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { sealedSlab } from '../helpers/sealed-slabs';
import { formatter } from '../helpers/plain-formatter';
import { ownersTest, testWords } from '$words/tests';
import type { TestId } from '$lib/advice/types';

const { site, zone } = sealedSlab;
const limits = (moreSite: SiteAnswers, moreZone: ZoneAnswers): LimitId[] => {
  const [s, z] = [
    { ...site, ...moreSite },
    { ...zone, ...moreZone },
  ];
  return limitsHere(s, z, adviseZone(s, z, { margins: false }));
};

// Common practice, no source: what a careful owner of a house hires somebody for.
describe('what an owner leaves to others', () => {
  it('a drive on the ground that is only dirty: neither steel, nor edges, nor breaking, nor dust', () => {
    const here = limits({}, {});
    for (const id of [
      'edges',
      'overhead',
      'steel',
      'break-out',
      'blasting',
      'old-coating',
    ] as const)
      expect(here).not.toContain(id);
  });
  it.each<[string, SiteAnswers, ZoneAnswers, LimitId]>([
    ['steps with air below', { element: ['suspended-steps'] }, {}, 'edges'],
    ['steps with air below', { element: ['suspended-steps'] }, {}, 'steel'],
    ['a soffit', { element: ['soffit'] }, {}, 'overhead'],
    ['a hollow layer', {}, { depth: ['20-to-50'], looseness: ['hollow'] }, 'break-out'],
    [
      'a bar that shows',
      {},
      { depth: ['20-to-50'], looseness: ['fractured'], steel: ['exposed'] },
      'steel',
    ],
    [
      'scaling for an overlay',
      {},
      { depth: 5, looseness: ['fractured'], texture: ['pitted'], finish: ['overlay'] },
      'blasting',
    ],
    ['old paint', {}, { contamination: { yes: ['thin-coating'], maybe: [] } }, 'old-coating'],
    [
      'cables that may be there',
      { warnings: { yes: [], maybe: ['buried-services'] } },
      {},
      'electricity',
    ],
  ])('%s', (_, moreSite, moreZone, id) => {
    expect(limits(moreSite, moreZone)).toContain(id);
  });
  // Whoever has said that there is none reads no line on it: lists hold what bears on this case.
  it('said to be none: no line on cables, and a coating that only may be there is none of unknown age', () => {
    const growth = { contamination: { yes: ['growth'], maybe: [] } } as const;
    expect(limits({}, growth)).not.toContain('electricity');
    const maybe = { contamination: { yes: [], maybe: ['thin-coating'] } } as const;
    expect(limits({}, maybe)).not.toContain('old-coating');
    // Indoors there are sockets and lights, whatever lies in the concrete.
    expect(limits({ setting: ['indoors'] }, growth)).toContain('electricity');
  });
  it('nothing answered yet: all of it', () => {
    const nothing = limitsHere({}, {}, adviseZone({}, {}, { margins: false }));
    // Nothing that anybody would clean off has been named.
    expect(nothing).toEqual(limitIds.filter((id) => id !== 'cleaners'));
  });
});

// Common practice, no source: while it is not known what it is, its owner looks, taps and measures.
it('no test tells an owner to take something off', () => {
  for (const [id, { how }] of Object.entries(testWords(formatter('metric')))) {
    const told = (ownersTest[id as TestId] ?? how).join(' ');
    expect(told, id).not.toMatch(
      /(^|[.:,] )(in one spot, )?(scrape (?!nothing)|break|drill (?!nothing)|chip|dig)/i,
    );
  }
});
