import { describe, expect, it } from 'vitest';
import { keepClear } from '$lib/advice/keep-clear';
import type { Job, Zone } from '$lib/answers/job';
import type { SiteAnswers } from '$lib/answers/answers';
import { planJob } from '$lib/plan/plan';
import { waitingZones } from '$lib/plan/waiting';
import { adviseTried } from '$lib/trial/chain';
import { zoneInJob } from '$lib/trial/in-job';
import { zonesOfPart } from '$lib/trial/same-part';
import { holdSentence } from '$words/rules/holds';
import { formatter } from '../helpers/plain-formatter';

/**
 * Common practice, no published source: what hangs is one part. Where one zone of it may be failing,
 * people stay off all of it, and its other zones are not worked before the engineer has spoken.
 */
const zone = (id: string, answers: Zone['answers']): Zone => ({
  id,
  name: id,
  answers: {
    contamination: { yes: [], maybe: [] },
    texture: ['smooth'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['overlay'],
    area: 4,
    ...answers,
  },
});
const rotten = zone('rotten', { depth: 40, looseness: ['hollow'] });
const dusty = zone('dusty', { depth: ['under-3'], looseness: ['powdery'] });
const firm = zone('firm', { depth: ['film'], looseness: ['tight'] });
const jobOn = (element: NonNullable<SiteAnswers['element']>, ...zones: readonly Zone[]): Job => ({
  name: 'Made up',
  site: {
    element,
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['rare'],
    thickness: 200,
    warnings: { yes: [], maybe: [] },
  },
  zones,
});
const waits = (job: Job) => [...waitingZones(planJob(job))];

describe('the other zones of what hangs', () => {
  it.each<[string, NonNullable<SiteAnswers['element']>, readonly string[]]>([
    ['a balcony', ['suspended-slab'], ['dusty', 'firm']],
    ['a stair with air below', ['suspended-steps'], ['dusty', 'firm']],
    ['a ceiling', ['soffit'], ['dusty', 'firm']],
    ['a wall stands by itself, place by place', ['wall'], []],
    ['a slab on the ground', ['slab'], []],
  ])('%s', (_, element, expected) => {
    expect(waits(jobOn(element, rotten, dusty, firm))).toEqual(expected);
  });

  it('keeps people from under it by their own advice, and says which engineer has to speak', () => {
    const job = jobOn(['suspended-slab'], rotten, dusty);
    const asked = zoneInJob(job, dusty);
    const { advice } = adviseTried(job.site, asked);
    expect(advice.verdict).toBe('find-out-first');
    expect(advice.holds.map(({ rule, who }) => `${rule}: ${who}`)).toEqual([
      'same-part-in-doubt: engineer',
    ]);
    expect(keepClear(job.site, advice)).toBe('keep-from-under');
    expect(advice.findOut.map(({ test }) => test)).toContain('ask-engineer');
    const [hold] = advice.holds;
    expect(hold && holdSentence(hold, formatter('metric'))).toMatch(
      /^Another zone of this suspended slab may be failing.*licensed structural engineer/,
    );
  });

  it('are held by a crack that moves, and on a wall by a bar that has lost too much', () => {
    const moving = zone('moving', { depth: ['film'], looseness: ['tight'], cracks: ['moving'] });
    expect(waits(jobOn(['suspended-slab'], moving, dusty))).toEqual(['dusty']);
    expect(waits(jobOn(['wall'], moving, dusty))).toEqual([]);
    const lost = zone('lost', {
      ...rotten.answers,
      steel: ['corroded'],
      barLoss: ['neighbours'],
    });
    expect(waits(jobOn(['wall'], lost, dusty))).toEqual(['dusty']);
    expect(waits(jobOn(['slab'], lost, dusty))).toEqual([]);
    const within = { ...lost, answers: { ...lost.answers, barLoss: ['within-limit'] } } as Zone;
    expect(waits(jobOn(['wall'], within, dusty))).toEqual([]);
  });

  it('say that the other zone is settled first where it is only perhaps in doubt', () => {
    const perhaps = zone('put', { depth: ['3-to-6', '20-to-50'], looseness: ['flaking'] });
    const told = (...others: readonly Zone[]) => {
      const job = jobOn(['suspended-slab'], dusty, ...others);
      const [hold] = adviseTried(job.site, zoneInJob(job, dusty)).advice.holds;
      return hold ? holdSentence(hold, formatter('metric')) : '';
    };
    expect(told(perhaps)).toMatch(/Nobody has settled that yet: go by the advice for that zone/);
    expect(told(rotten)).not.toMatch(/settled/);
    expect(told(perhaps, rotten)).not.toMatch(/settled/);
  });

  it('is no reason by itself: two sound zones are worked, and the one in doubt is held by its own', () => {
    expect(waits(jobOn(['suspended-slab'], dusty, firm))).toEqual([]);
    const [first] = zonesOfPart(jobOn(['suspended-slab'], rotten, dusty));
    expect(first).toBe(rotten);
  });

  it('two in doubt hold one another, each also by its own', () => {
    const other = { ...rotten, id: 'other' };
    const { held } = planJob(jobOn(['suspended-slab'], rotten, other));
    expect(held.map(({ holds }) => holds.map(({ rule }) => rule))).toEqual([
      ['structure-before-removal', 'same-part-in-doubt'],
      ['structure-before-removal', 'same-part-in-doubt'],
    ]);
  });

  it('what is only possible counts once every question was put to that zone', () => {
    const perhaps: Zone['answers'] = { depth: ['3-to-6', '20-to-50'], looseness: ['flaking'] };
    const put = zone('put', perhaps);
    expect(waits(jobOn(['suspended-slab'], put, dusty))).toEqual(['dusty']);
    const { finish, ...without } = put.answers;
    expect(finish).toBeDefined();
    const notYet: Zone = { ...put, answers: without };
    expect(waits(jobOn(['suspended-slab'], notYet, dusty))).toEqual([]);
  });

  it('follows an edit of the other zone at once', () => {
    const job = jobOn(['suspended-slab'], rotten, dusty);
    expect(waits(job)).toEqual(['dusty']);
    const mended: Zone = { ...rotten, answers: { ...rotten.answers, depth: 4 } };
    expect(waits({ ...job, zones: [mended, dusty] })).toEqual([]);
    expect(waits(job)).toEqual(['dusty']);
  });
});
