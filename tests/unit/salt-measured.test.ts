import { describe, expect, it } from 'vitest';
import type { Reading } from '$lib/answers/readiness-record';
import type { Zone } from '$lib/answers/job';
import { planJob } from '$lib/plan/plan';
import { adviseTried } from '$lib/trial/chain';
import type { OwnFigures } from '$shared/figures';
import { adviceDocument } from '../../src/cli/advice-document';
import { adviseAll } from '../../src/cli/advice-pool';
import { tradeJob } from '../helpers/trade-jobs';

/** A salted drive with a rust stain, to be sealed (invented). */
const stained = { looseness: ['powdery'], steel: ['rust-stain'], finish: ['overlay'] };
const jobWith = (readings: readonly Reading[] | null, site: object = {}, own?: OwnFigures) => {
  const job = tradeJob([stained], { salts: ['de-icing'], ...site }, { ...(own && { own }) });
  const readiness = readings && { seed: 7, results: { chloride: { readings } } };
  return {
    ...job,
    zones: job.zones.map((zone): Zone => ({ ...zone, ...(readiness && { readiness }) })),
  };
};
type Given = ReturnType<typeof jobWith>;
const holdsOf = ({ site, zones: [zone], own }: Given) =>
  adviseTried(site, zone as Zone, undefined, own).advice.holds.map(({ rule }) => rule);

// Common practice, no source; the limits are the Concrete Society's: little salt at the bar means
// that salt does not rust it. One good sample proves nothing, and an engineer may set the limit.
describe('salt that a laboratory measured at the steel', () => {
  const low = [0.1, 0.2, 0.39];
  it.each<[string, Given, readonly string[]]>([
    ['not measured', jobWith(null), ['rust-with-salts']],
    ['low at three places', jobWith(low), []],
    ['low at two places only', jobWith([0.1, 0.2, '']), ['rust-with-salts']],
    ['medium at one place', jobWith([...low, 0.4]), ['rust-with-salts']],
    ['high', jobWith([1.2, 1.4, 0.1]), ['rust-with-salts']],
    ['a number that could not be read', jobWith([...low, 'o.1']), ['rust-with-salts']],
    ['less than none', jobWith([...low, -0.1]), ['rust-with-salts']],
    [
      'medium, with the limit an engineer set',
      jobWith([0.5, 0.5, 0.5], {}, { 'chloride.old-low': 0.6 }),
      [],
    ],
    [
      'low for bars, not for tendons',
      jobWith(low, { warnings: { yes: ['tendons-possible'], maybe: [] } }),
      ['rust-with-salts'],
    ],
    [
      'low, and tendons not ruled out',
      jobWith(low, { warnings: { yes: [], maybe: ['tendons-possible'] } }),
      ['rust-with-salts'],
    ],
    [
      'as good as none, with tendons',
      jobWith([0.05, 0.06, 0.01], { warnings: { yes: ['tendons-possible'], maybe: [] } }),
      [],
    ],
  ])('%s', (_, job, holds) => {
    expect(holdsOf(job).filter((rule) => rule === 'rust-with-salts')).toEqual(holds);
    const held = planJob(job, job.own).zones[0]?.holds.some(
      ({ rule }) => rule === 'rust-with-salts',
    );
    expect(held).toBe(holds.length > 0);
  });

  it('a stain under a film is still looked into, salt or not', () => {
    const job = jobWith(low);
    const [zone] = job.zones as [Zone];
    const sealed: Zone = { ...zone, answers: { ...zone.answers, finish: ['sealer'] } };
    expect(holdsOf({ ...job, zones: [sealed] })).toEqual(['nothing-over-rust']);
  });

  it('is told alike where the advice was worked out before', async () => {
    const job = jobWith(low);
    expect(adviceDocument(job, await adviseAll(job))).toEqual(adviceDocument(job));
  });

  it('another limit is another plan', () => {
    const job = jobWith([0.5, 0.5, 0.5]);
    const held = (own: OwnFigures) => planJob(job, own).zones[0]?.holds.length;
    expect([held({}), held({ 'chloride.old-low': 0.6 }), held({})]).toEqual([1, 0, 1]);
  });
});
