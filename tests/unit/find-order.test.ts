import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';

const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 150,
  warnings: { yes: [], maybe: [] },
};
const zone: ZoneAnswers = {
  depth: 5,
  looseness: ['flaking'],
  contamination: { yes: [], maybe: ['thin-coating', 'thick-coating', 'salt-bloom'] },
  texture: ['smooth', 'sandy', 'pitted'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['overlay'],
  area: 12,
};
const tests = (moreSite: SiteAnswers, moreZone: ZoneAnswers) =>
  adviseZone({ ...site, ...moreSite }, { ...zone, ...moreZone }, { margins: false }).findOut.map(
    ({ test }) => test,
  );

// Common practice, no source: nobody looks which tool it takes before it is known that work may go on.
describe('a test that may lead to a stop comes before tests that only change the method', () => {
  it('the bar before dirt and texture, and whether one shows before how much of it is left', () => {
    const [first, ...later] = tests(
      {},
      {
        steel: ['none-seen', 'exposed', 'corroded'],
        barLoss: ['within-limit', 'one-bar', 'neighbours'],
      },
    );
    expect(first).toBe('look-at-steel');
    expect(later).toEqual(expect.arrayContaining(['look-close', 'measure-bar']));
  });
  it('how much of a rusty bar is left', () => {
    const [first] = tests(
      { salts: ['none', 'de-icing'] },
      { steel: ['corroded'], barLoss: ['within-limit', 'one-bar', 'neighbours'] },
    );
    expect(first).toBe('measure-bar');
  });
  it('signs that it has moved before dirt and texture', () => {
    const [first] = tests({ warnings: { yes: [], maybe: ['settled-or-rocking'] } }, {});
    expect(first).toBe('look-round');
  });
  it('where nothing may stop it, what settles most in a minute', () => {
    expect(tests({}, {})[0]).toBe('look-close');
  });
});
