import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { standingOf } from '$lib/advice/standing';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { parseJob } from '$lib/keep/job-file';
import { sixFile, sixNames } from '../helpers/six-jobs';

const left = (site: SiteAnswers, zone: ZoneAnswers) =>
  standingOf(site, zone)
    .filter(({ state }) => state === 'standing')
    .map(({ method }) => method);

// What a reader sees beside the questions is what the advice then comes to: two counts of one thing
// would make one of them a lie. A matter of this site, no source.
describe('the methods left', () => {
  const cases = sixNames.flatMap((name) => [false, true].map((open) => ({ name, open })));

  it.each(cases)('$name, open $open: beside the questions as in the advice', ({ name, open }) => {
    const read = parseJob(JSON.parse(JSON.stringify(sixFile(name, open))));
    if (!read.ok) throw new Error('not a job');
    const { site, zones } = read.value;
    for (const { answers } of zones)
      expect(new Set(left(site, answers))).toEqual(
        new Set(adviseZone(site, answers, { margins: false }).methods),
      );
  });

  it('are none where the work is stopped, and none of them is said to be what stops it', () => {
    const read = parseJob(sixFile('hollow balcony'));
    if (!read.ok) throw new Error('not a job');
    const { site, zones } = read.value;
    const list = standingOf(site, zones[0]?.answers ?? {});
    expect(list.map(({ state }) => state)).not.toContain('standing');
    expect(list.filter(({ why }) => why?.rule === 'held')).toHaveLength(1);
  });
});
