import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { countRejections, standOf } from '$lib/advice/rejected';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { methodIds } from '$shared/methods';
import { ruleSentences } from '$words/rules';
import { formatter } from '$lib/words/format';
import { mossyPatio } from '../helpers/sealed-slabs';

const say = formatter('metric');
const { site, zone } = mossyPatio;
const against = (moreSite: SiteAnswers, moreZone: ZoneAnswers) =>
  adviseZone({ ...site, ...moreSite }, { ...zone, ...moreZone }, { margins: false }).rejections;

// Common practice, no source.
describe('why not another way', () => {
  it('whatever is harder than washing is too much for sound concrete that only needs washing', () => {
    const rejections = against({}, {});
    expect(countRejections(rejections)).toEqual({ could: 0, harsher: 7, out: 0 });
    for (const each of rejections) {
      const sentence = ruleSentences[each.rule](each, say);
      expect(sentence).toMatch(/^would be too much here/);
      expect(sentence).not.toContain('would do');
    }
  });

  it('what is sufficient elsewhere stays possible, what is only rougher is too much', () => {
    const scaling = against(
      {},
      {
        depth: 5,
        looseness: ['fractured'],
        finish: ['overlay'],
        contamination: { yes: [], maybe: [] },
      },
    );
    const stands = Object.fromEntries(scaling.map((each) => [each.method, standOf(each)]));
    expect(stands).toMatchObject({
      'break-out': 'harsher',
      'abrasive-blast': 'could',
      'pressure-wash': 'out',
      grind: 'out',
    });
  });

  // A freed bar is breaking out: trade page, rules of choice.
  it.each<[string, ZoneAnswers]>([
    ['broken steps', { looseness: ['fractured'] }],
    [
      'steps with nobody having tapped them',
      { looseness: ['tight', 'fractured', 'hollow', 'rotten'] },
    ],
    ['steps whose hole has a firm bottom', { looseness: ['tight'], texture: ['smooth'] }],
  ])('%s with a rusty bar: no grinder, blaster or needle scaler frees it', (_, more) => {
    const rejections = against(
      { element: ['steps'] },
      {
        depth: ['20-to-50'],
        steel: ['corroded'],
        barLoss: ['within-limit'],
        finish: ['sealer'],
        area: 2,
        texture: ['sandy'],
        ...more,
      },
    );
    for (const method of methodIds.filter((id) => /grind|needle|blast|scarify/.test(id))) {
      const said = rejections.find((each) => each.method === method);
      expect(said && standOf(said), method).toBe('out');
    }
  });
});
