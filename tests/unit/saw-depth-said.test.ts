import { describe, expect, it } from 'vitest';
import type { Step } from '$lib/advice/types';
import { adviseZone } from '$lib/advice/advise';
import { formatter } from '$lib/words/format';
import { stepHere } from '$words/steps/here';
import { tradeJob } from '../helpers/trade-jobs';

const say = formatter('metric');
const sawn = (answers: object, site: object = {}) => {
  const job = tradeJob([{ depth: 15, looseness: ['hollow'], ...answers }], site);
  const [zone] = job.zones;
  const { steps } = adviseZone(job.site, zone?.answers ?? {}, { margins: false });
  const { how } = stepHere(steps.find(({ id }) => id === 'saw-cut') as Step, say);
  return how.join(' ').replaceAll('\u00A0', ' ');
};

// UFGS 03 93 for 25 to 51 mm; common practice, no source: one step names one depth to set the blade to.
describe('how deep the saw is set, in the step itself', () => {
  it('is the usual depth where nothing makes it shallower', () => {
    expect(sawn({ depth: 60 }, { thickness: 300 })).toMatch(/Saw 25 to 51 mm deep/);
  });
  it.each([
    [
      'the hole',
      {},
      { thickness: 300 },
      /no deeper than the hole will be: \d+ mm at most\. Stop short/,
    ],
    ['the thickness', { depth: 45 }, { thickness: 120 }, /Saw no deeper than 40 mm here, a third/],
    [
      'the steel',
      { steel: ['exposed'], barCover: 30, depth: 45 },
      { thickness: 300 },
      /Saw no deeper than 20 mm here/,
    ],
  ] as const)(
    'is what %s allows, and no second depth stands beside it',
    (_, answers, site, told) => {
      const text = sawn(answers, site);
      expect(text).toMatch(told);
      expect(text).not.toMatch(/25 to 51/);
    },
  );
});
