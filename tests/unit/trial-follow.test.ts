import { describe, expect, it } from 'vitest';
import type { Advice } from '$lib/advice/types';
import type { PatchTried } from '$lib/answers/trial-record';
import { adviceDocument } from '../../src/cli/advice-document';
import { planJob } from '$lib/plan/plan';
import { adviseTried, askedBy } from '$lib/trial/chain';
import type { MethodId } from '$shared/methods';
import { tradeJob } from '../helpers/trade-jobs';

/** A floor that a scarifier would cut: 4 mm of loose concrete under a thin overlay. */
const floor = {
  depth: 4,
  looseness: ['fractured'],
  texture: ['sandy'],
  finish: ['thin-overlay'],
  area: 40,
  borderLength: 0,
};
const square: PatchTried = {
  method: 'scarify',
  notch: 1,
  passes: 1,
  minutes: 5,
  depths: [4, 4, 4, 4, 4],
  profile: 6,
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
};
const torn = (method: MethodId, notch: number): PatchTried => ({
  ...square,
  method,
  notch,
  stones: 'torn',
});
const zoneOf = (answers: object, trial: readonly PatchTried[], site: object = {}) => {
  const job = tradeJob([answers], site);
  const [zone] = job.zones;
  if (!zone) throw new Error('no zone');
  return { site: job.site, zone: { ...zone, trial }, job: { ...job, zones: [{ ...zone, trial }] } };
};
const advised = (answers: object, trial: readonly PatchTried[], site: object = {}) => {
  const at = zoneOf(answers, trial, site);
  return adviseTried(at.site, at.zone);
};
const why = ({ rejections }: Pick<Advice, 'rejections'>, method: MethodId) =>
  rejections.find((each) => each.method === method)?.rule;

/** What a foreman would do next; common practice, no published source, except where one is named. */
describe('advice after a method has failed on a test patch', () => {
  const bruised = [torn('scarify', 1), torn('scarify', 0)];

  it('keeps the method while a setting of it is left', () => {
    expect(advised(floor, bruised.slice(0, 1)).advice.method).toBe('scarify');
  });

  it('goes on to what bruises less, and says that the patch is why', () => {
    const { advice, ended } = advised(floor, bruised);
    expect(advice.method).toBe('shotblast');
    expect(advice.reasons[0]).toEqual({
      rule: 'after-failed-patch',
      facts: { failed: ['scarify'], why: ['bruised'] },
    });
    expect(why(advice, 'scarify')).toBe('failed-on-patch');
    expect(why(advice, 'break-out')).toBe('harder-than-failed');
    expect(ended.map(({ trial }) => trial.aim.method)).toEqual(['scarify']);
  });

  it('comes back where the squares are deleted', () => {
    expect(advised(floor, []).advice).toEqual(advised(floor, bruised.slice(0, 1)).advice);
    expect(advised(floor, []).advice.method).toBe('scarify');
  });

  it('is followed by the plan, its days and the command line', () => {
    const { job } = zoneOf(floor, bruised);
    const plan = planJob(job);
    expect(plan.zones[0]?.method).toBe('shotblast');
    expect(plan.tasks.map(({ step }) => step)).not.toContain('scarify');
    expect(plan.areas.map(({ method }) => method)).toEqual(['shotblast']);
    const { zones, tasks } = adviceDocument(job);
    expect(zones[0]).toMatchObject({ method: 'shotblast' });
    expect(JSON.stringify(tasks)).toContain('"step":"shotblast"');
  });

  it('reads the next method’s own squares, and learns its rate from them', () => {
    const shot = { ...square, method: 'shotblast' };
    const { job } = zoneOf(floor, [...bruised, shot]);
    const task = planJob(job).tasks.find(({ step }) => step === 'shotblast');
    expect(task?.labour && 'working' in task.labour && task.labour.working).toContainEqual(
      expect.objectContaining({ what: 'rate', fromPatch: true }),
    );
  });

  it('leaves the floor’s ladder for open blasting before anything that bruises', () => {
    const both = [...bruised, torn('shotblast', 1), torn('shotblast', 0)];
    const { advice } = advised(floor, both);
    expect(advice.method).toBe('abrasive-blast');
    expect(advice.reasons[0]?.facts?.failed).toEqual(['scarify', 'shotblast']);
    expect(advice.reasons.map(({ rule }) => rule)).not.toContain('off-floor-blast');
  });

  it('stops, and asks an engineer, where even blasting without bruises takes too much', () => {
    const deep = { ...square, method: 'abrasive-blast', depths: [9, 9, 9, 9, 9] };
    const { advice } = advised(floor, [
      ...bruised,
      torn('shotblast', 1),
      torn('shotblast', 0),
      deep,
      { ...deep, notch: 0 },
    ]);
    expect(advice.verdict).toBe('stop');
    expect(advice.holds).toEqual([{ rule: 'no-method-left', verdict: 'stop', who: 'engineer' }]);
    expect(advice.outcomes[0]?.example.underneath).toBeNull();
    expect(why(advice, 'abrasive-blast')).toBe('failed-on-patch');
    expect(planJob(zoneOf(floor, [...bruised]).job).held).toEqual([]);
  });

  it('asks a specialist where the lightest hammer still bruises', () => {
    const hole = { ...floor, depth: 30, finish: ['rebuild'], area: 0.8 };
    const light = { ...torn('break-out', 1), depths: [32, 32, 32, 32, 32], profile: 9 };
    const { advice } = advised(hole, [light, { ...light, notch: 0 }]);
    expect([advice.verdict, advice.method]).toEqual(['prepare', 'water-jet']);
    const steps = advice.steps.map(({ id }) => id);
    expect(steps.filter((id) => ['saw-cut', 'water-jet', 're-sound'].includes(id))).toHaveLength(3);
    expect(steps).not.toContain('break-out');
    const tried = [light, { ...light, notch: 0 }];
    const [jet, hammer] = [tried, []].map((each) => planJob(zoneOf(hole, each).job).zones[0]);
    expect(jet?.quantities.removed).toEqual(hammer?.quantities.removed);
    // The jet takes concrete out as a hammer does: where that carries load, an engineer first.
    const wall = advised(hole, [light, { ...light, notch: 0 }], { element: ['wall'] });
    expect(wall.advice.holds.map(({ rule }) => rule)).toContain('structure-before-removal');
  });

  it('goes on to what takes off more where it took too little, never to something weaker', () => {
    const smooth = { ...square, method: 'shotblast', profile: 2, passes: 2 };
    const painted = { ...floor, depth: ['film'], looseness: ['tight'], finish: ['thin-overlay'] };
    expect(advised(painted, []).advice.method).toBe('shotblast');
    const { advice } = advised(painted, [
      { ...smooth, notch: 1, passes: 1, depths: [0, 0, 0, 0, 0] },
      { ...smooth, notch: 2, depths: [0, 0, 0, 0, 0] },
    ]);
    expect(advice.method).toBe('scarify');
    expect(why(advice, 'abrasive-blast')).toBe('weaker-than-failed');
    // Roughness is no reason to break out.
    expect(why(advice, 'break-out')).toBe('deeper-than-wanted');
  });

  it('needs no square at all', () => {
    const { site, zone } = zoneOf(floor, []);
    const { trial, ...bare } = zone;
    expect(trial).toEqual([]);
    expect(adviseTried(site, bare)).toMatchObject({ advice: { method: 'scarify' }, ended: [] });
    expect(askedBy(site, bare).zone).toBe(bare.answers);
    const sound = { ...zone, trial: [square] };
    expect(askedBy(site, sound).zone).toBe(sound.answers);
    expect(askedBy(site, { ...bare, trial: bruised }).zone).toMatchObject({
      triedOut: [{ method: 'scarify', because: 'too-much', why: ['bruised'] }],
    });
  });

  it('takes a method out once, however many of the open answers come to it', () => {
    const open = { ...floor, depth: ['under-3', '3-to-6'], texture: ['sandy', 'smooth'] };
    const { ended, answers } = advised(open, bruised);
    expect(ended.map(({ trial }) => trial.aim.method)).toEqual(['scarify']);
    expect(answers.triedOut).toHaveLength(1);
  });

  it('takes a method out once, where only who comes first is open', () => {
    const cracked = { warnings: { yes: [], maybe: ['map-cracking'] } };
    const { ended, answers } = advised(floor, bruised, cracked);
    expect(ended.map(({ trial }) => trial.aim.method)).toEqual(['scarify']);
    expect(answers.triedOut).toEqual([
      { method: 'scarify', because: 'too-much', why: ['bruised'] },
    ]);
  });

  it('counts no failure against answers that ask for something else', () => {
    const rotten = { ...floor, looseness: ['rotten'], depth: ['20-to-50'], finish: ['rebuild'] };
    const { advice, answers } = advised(rotten, bruised);
    expect(advice.method).toBe('break-out');
    expect(answers.triedOut).toBeUndefined();
  });

  it('holds while answers are open', () => {
    const open = { ...floor, texture: ['sandy', 'smooth'], depth: ['under-3', '3-to-6'] };
    expect(advised(open, []).advice.methods).toContain('scarify');
    const { advice } = advised(open, bruised);
    expect(advice.methods).not.toContain('scarify');
    expect(advice.methods).toContain('shotblast');
  });

  it('holds the work up while what stopped a patch has not been found out', () => {
    const dull: PatchTried = { ...square, sound: 'dull' };
    const { advice, ended } = advised(floor, [dull]);
    expect([advice.verdict, advice.outcomes[0]?.method]).toEqual(['find-out-first', 'scarify']);
    expect(advice.holds[0]).toMatchObject({
      rule: 'stopped-on-patch',
      who: 'crew',
      facts: { why: ['hollow-below'] },
    });
    expect(advice.findOut[0]).toMatchObject({ question: 'looseness', test: 'hammer-tap' });
    expect(
      ended.map(({ trial, answers, advice: by }) => [
        trial.last?.outcome.kind,
        answers.triedOut,
        by.verdict,
      ]),
    ).toEqual([['stop', undefined, 'prepare']]);
    expect(planJob(zoneOf(floor, [dull]).job).zones[0]?.holds).toHaveLength(1);
    // With the answer changed, or a sound square after it, nothing holds.
    const hollow = { ...floor, looseness: ['hollow'], depth: 30, finish: ['rebuild'] };
    expect(advised(hollow, [dull]).advice.holds).toEqual([]);
    expect(advised(floor, [dull, square]).advice.verdict).toBe('prepare');
  });
});
