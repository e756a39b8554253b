import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { Margin } from '$lib/advice/zone-advice';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { depthBands } from '$lib/answers/depth';
import { choicesOf } from '$lib/answers/questions';
import { words } from '$lib/words';
import { formatter } from '../helpers/plain-formatter';
import { broken, mute, sentence } from '../helpers/words';

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
  contamination: { yes: ['oil'], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['overlay'],
  area: 4,
};
const say = formatter('metric');
const tell = (margin: Margin) => words.margins(margin, say, words.questions(say));

const margins = [
  ...adviseZone(site, zone).margins,
  ...depthBands.flatMap((depth) =>
    choicesOf('looseness').flatMap(
      (looseness) => adviseZone(site, { ...zone, depth: [depth], looseness: [looseness] }).margins,
    ),
  ),
];

describe('what would change the advice', () => {
  it('is told in whole sentences', () => {
    expect(margins.length).toBeGreaterThan(50);
    for (const margin of margins) {
      expect(tell(margin)).toMatch(sentence);
      expect(tell(margin)).not.toMatch(broken);
      expect(words.margins(margin, mute, words.questions(mute))).not.toMatch(/\d/);
    }
  });

  it('names the depth at which it turns, and the answer that turns it', () => {
    const told = adviseZone(site, zone).margins.map(tell);
    expect(told).toContain('If it were more than 6 mm deep, the method would be breaking out.');
    expect(told).toContain(
      'If the answer to “How loose is it?” were “Rotten” instead of “Flaking”, the method would be breaking out.',
    );
  });

  // UFC 3-270-03 and 3-270-04: 62 mm of damage and 13 mm into sound concrete are half of 150 mm.
  it('names the stop behind a depth that has to be measured first', () => {
    const hollow = { ...zone, depth: ['20-to-50'], looseness: ['hollow'] } as const;
    const told = (of: SiteAnswers) => adviseZone(of, hollow).margins.map(tell);
    const stop = told(site).find((line) => line.includes('from 62 mm it would be to stop'));
    expect(stop).toMatch(/^If it were more than 50 mm deep, something would have to be found out/);
    expect(told({ ...site, thickness: 'unknown' }).join()).not.toContain('to stop; from');
    expect(told({ ...site, thickness: 300 }).join()).toContain('from 137 mm it would be to stop');
  });

  it('tells a choice that is added from one that is taken away', () => {
    const about = { question: 'contamination', verdict: 'prepare', method: 'grind' } as const;
    expect(tell({ ...about, from: 'oil', to: 'no oil' })).toBe(
      'If “Oil or grease” were not true, the method would be grinding.',
    );
    expect(tell({ ...about, from: 'no oil', to: 'oil' })).toBe(
      'If “Oil or grease” were true as well, the method would be grinding.',
    );
  });
});
