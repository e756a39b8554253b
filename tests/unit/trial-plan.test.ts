import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { PatchTried } from '$lib/answers/trial-record';
import { isKnown, typicalOf } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { withField } from '$lib/ui/trial/patches';
import { tradeJob } from '../helpers/trade-jobs';

const pitted = {
  depth: 4,
  looseness: ['fractured'],
  texture: ['pitted'],
  finish: ['thin-overlay'],
  area: 60,
};
const patch: PatchTried = {
  method: 'shotblast',
  notch: 1,
  passes: 2,
  minutes: 10,
  depths: [4, 4, 4, 4, 4],
  profile: 6,
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
};
const withTrial = (job: Job, trial: readonly PatchTried[]): Job => ({
  ...job,
  zones: job.zones.map((zone, index) => (index === 0 ? { ...zone, trial } : zone)),
});
const job = tradeJob([pitted, pitted]);
const shotOf = (of: Job, zone: string) => {
  const task = planJob(of).tasks.find((each) => each.step === 'shotblast' && each.zone === zone);
  if (!task?.labour || !isKnown(task.labour)) throw new Error('no hours');
  return { task, labour: task.labour };
};
const isFromPatch = (of: Job, zone: string) =>
  shotOf(of, zone).labour.working.some(({ fromPatch }) => fromPatch);

describe('a rate learnt from a test patch', () => {
  it('is the one the plan reckons with, in that zone and no other', () => {
    // Two passes in 10 min are 12 m2/h a pass where the table has 15 for one: the middle comes to
    // 0.745 of the way, on logarithms; and a second pass halves it (figure `rate.shotblast`).
    const before = shotOf(job, 'z0');
    const after = shotOf(withTrial(job, [patch]), 'z0');
    // 4 mm is deeper than one pass takes, 3.2 mm: two.
    expect(typicalOf(before.labour)).toBeCloseTo((2 * 60) / 15, 6);
    expect(60 / typicalOf(after.labour)).toBeCloseTo((15 * (12 / 15) ** 0.745) / 2, 1);
    expect(after.labour.span[1] / after.labour.span[0]).toBeLessThan(2.2);
    expect(shotOf(withTrial(job, [patch]), 'z1')).toEqual(shotOf(job, 'z1'));
    expect([isFromPatch(job, 'z0'), isFromPatch(withTrial(job, [patch]), 'z0')]).toEqual([
      false,
      true,
    ]);
  });

  it('takes more passes where the damage goes deeper than the patch, by the depth of a pass learnt there', () => {
    const banded = tradeJob([{ ...pitted, depth: ['3-to-6'] }]);
    const once = { ...patch, passes: 1, minutes: 5, depths: [3.5, 3.5, 3.5, 3.5, 3.5] };
    const passes = (of: Job) =>
      shotOf(of, 'z0').labour.working.find(({ what }) => what === 'passes');
    const term = passes(withTrial(banded, [once]));
    // By hand: 0.8 to 3.2 mm a pass, 3.5 measured: 1.6 x (3.5 / 1.6)^0.745 = 2.87, and a factor of
    // exp(1.645 x 0.213) = 1.42 to either side. Damage 3.2 to 6.4 mm, 4.8 in the middle.
    expect(term?.typical).toBeCloseTo(4.8 / 2.87, 2);
    expect(term?.span[0]).toBe(1);
    expect(term?.span[1]).toBeCloseTo((6.4 / 2.87) * 1.42, 1);
    // A patch as deep as the damage has shown how many it takes; before, the setting tells: 3.2 mm a pass.
    expect(passes(withTrial(job, [patch]))?.span).toEqual([2, 2]);
    expect(passes(banded)?.span).toEqual([1, 2]);
    // Hours follow: as many passes, each at the rate of one.
    const { labour } = shotOf(withTrial(banded, [once]), 'z0');
    expect(typicalOf(labour)).toBeCloseTo(((4.8 / 2.87) * 60) / (15 * (12 / 15) ** 0.745), 1);
  });

  it('makes two passes twice the work where nobody timed them', () => {
    const untimed = withField(patch, 'minutes', undefined);
    expect(typicalOf(shotOf(withTrial(job, [untimed]), 'z0').labour)).toBeCloseTo(8, 9);
  });

  it('goes on into the days and the exposure, which take the same hours', () => {
    const slow = planJob(withTrial(job, [{ ...patch, minutes: 30 }]));
    expect(slow.schedule.days.length).toBeGreaterThan(planJob(job).schedule.days.length);
    const { task, labour } = shotOf(withTrial(job, [patch]), 'z0');
    expect(task.hours?.running.typical).toBeCloseTo(typicalOf(labour), 9);
  });

  it('waits until the trial has ended in going on', () => {
    expect(isFromPatch(withTrial(job, [{ ...patch, profile: 3 }]), 'z0')).toBe(false);
    expect(isFromPatch(withTrial(job, [{ ...patch, profile: 3 }, patch]), 'z0')).toBe(true);
    expect(isFromPatch(withTrial(job, [{ ...patch, sound: 'dull' }]), 'z0')).toBe(false);
  });

  it('gives way to the reader’s own figure, and to a method that is no longer advised', () => {
    const own = { ...withTrial(job, [patch]), own: { 'rate.shotblast': 20 } };
    expect(typicalOf(shotOf(own, 'z0').labour)).toBeCloseTo(3, 9);
    expect(isFromPatch(own, 'z0')).toBe(false);
    expect(isFromPatch(withTrial(job, [{ ...patch, method: 'scarify' }]), 'z0')).toBe(false);
  });

  it('is hours a cubic metre where concrete is broken out', () => {
    const broken = { ...pitted, depth: 30, finish: ['rebuild'], area: 20 };
    const tried: PatchTried = {
      ...patch,
      method: 'break-out',
      passes: 1,
      minutes: 60,
      profile: 9,
      depths: [40, 40, 40, 40, 40],
    };
    const out = (of: Job) => planJob(of).tasks.find(({ step }) => step === 'break-out')?.labour;
    const labour = out(withTrial(tradeJob([broken]), [tried]));
    expect(labour && isKnown(labour) && labour.working.some(({ fromPatch }) => fromPatch)).toBe(
      true,
    );
    // 1 h for 0.04 m3 is 25 h/m3, where light hammers in patches have 5 to 25, usually 12. By hand:
    // 11.2 x (25 / 11.2)^0.797 = 21.2.
    const table = out(tradeJob([broken]));
    if (!labour || !isKnown(labour) || !table || !isKnown(table)) throw new Error('no hours');
    expect(typicalOf(labour) / typicalOf(table)).toBeCloseTo(21.2 / 12, 2);
  });
});
