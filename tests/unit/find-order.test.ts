import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import {
  isScrapedPerhapsCoated,
  isScrapedUntested,
  looksForCoating,
  waitsForSample,
} from '$lib/advice/untested-coating';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import { formatter } from '$lib/words/format';
import { questionWords } from '$words/questions';

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

// Common practice, no source: what may hold lead or asbestos is neither scraped nor brushed to find
// out something else; a licensed person's sample comes first.
describe('an old coating that nobody has tested', () => {
  const old = (yes: readonly string[], maybe: readonly string[]) =>
    ({ warnings: { yes, maybe } }) as unknown as SiteAnswers;
  const coated = old([], ['old-coating-or-adhesive']);
  const open: ZoneAnswers = { depth: ['under-3', '6-to-20'], looseness: ['flaking', 'hollow'] };

  it('is sampled before anything is scraped, brushed or drilled', () => {
    const order = tests(coated, open);
    const sample = order.indexOf('lead-asbestos-test');
    const dusty = order.filter((test) => waitsForSample(coated, test));
    expect(dusty).toEqual(expect.arrayContaining(['look-close', 'measure-depth']));
    expect(sample).toBeGreaterThan(-1);
    for (const test of dusty) expect(order.indexOf(test)).toBeGreaterThan(sample);
    expect(order.indexOf('hammer-tap')).toBeLessThan(sample);
  });
  it('is sampled before a bar is cleaned to be measured, where all else is settled', () => {
    const sure = old(['old-coating-or-adhesive'], []);
    const order = tests(
      { ...sure, salts: ['de-icing'] },
      {
        contamination: { yes: ['thin-coating'], maybe: [] },
        texture: ['sandy'],
        steel: ['corroded'],
        cracks: ['open'],
      },
    );
    expect(order[0]).toBe('lead-asbestos-test');
    expect(order.slice(1)).toEqual(expect.arrayContaining(['measure-bar', 'chloride-test']));
  });
  it('said to be none, nothing waits', () => {
    expect(tests({}, open).some((test) => waitsForSample(site, test))).toBe(false);
    expect(isScrapedUntested(site, 'looseness')).toBe(false);
  });
  // Paint from before lead was banned may hide under dirt: nobody scrapes through it unawares.
  it('nobody has looked for is looked for before each test that scrapes, and before no other', () => {
    const maybe = (...ids: readonly string[]) =>
      ({ contamination: { yes: [], maybe: ids } }) as unknown as ZoneAnswers;
    for (const zone of [{}, maybe('thick-coating'), maybe('oil', 'thin-coating')]) {
      for (const test of ['scrape', 'brush', 'measure-depth', 'look-close'] as const)
        expect(looksForCoating(site, zone, test), test).toBe(true);
      expect(looksForCoating(site, zone, 'hammer-tap')).toBe(false);
      expect(looksForCoating(site, zone, 'water-drop')).toBe(false);
      expect(isScrapedPerhapsCoated(site, zone, 'looseness')).toBe(true);
      expect(isScrapedPerhapsCoated(site, zone, 'finish')).toBe(false);
      // Where one is known of, nothing is scraped at all before the report.
      expect(looksForCoating(coated, zone, 'scrape')).toBe(false);
      expect(isScrapedPerhapsCoated(coated, zone, 'looseness')).toBe(false);
    }
    const known = { contamination: { yes: ['thin-coating'], maybe: ['thick-coating'] } };
    for (const zone of [maybe(), maybe('oil'), known as unknown as ZoneAnswers]) {
      expect(looksForCoating(site, zone, 'scrape')).toBe(false);
      expect(isScrapedPerhapsCoated(site, zone, 'looseness')).toBe(false);
    }
  });
  // The page of a question says how it is found out: none tells of a scraper or a brush without this.
  it('is not scraped to answer any question whose own page tells to scrape, brush or pick', () => {
    const asked = Object.entries(questionWords(formatter('metric')));
    const scrapes = /\b(scrape|scraper|brush|pick at)\b/i;
    for (const [question, { find }] of asked)
      expect(
        find.filter((line) => scrapes.test(line)),
        question,
      ).toEqual([]);
    const told = asked.filter(([, { scrape }]) => scrape);
    expect(told.length).toBeGreaterThan(5);
    for (const [question] of told) {
      expect(isScrapedUntested(coated, question as QuestionId), question).toBe(true);
      expect(isScrapedPerhapsCoated(site, {}, question as QuestionId), question).toBe(true);
    }
    for (const question of ['texture', 'finish', 'area', 'barSpacing'] as const)
      expect(isScrapedUntested(coated, question), question).toBe(false);
  });
  it('is not scraped to answer how loose it is', () => {
    expect(isScrapedUntested(coated, 'looseness')).toBe(true);
    expect(isScrapedUntested(coated, 'finish')).toBe(false);
    expect(isScrapedUntested({}, 'looseness')).toBe(false);
  });
});
