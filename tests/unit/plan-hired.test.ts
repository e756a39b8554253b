import { expect, it } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import { hiredTools } from '$lib/plan/machines';
import { planJob } from '$lib/plan/plan';
import { formatter } from '$lib/words/format';
import { substituteSentence } from '$words/plan/costs';
import { hireLines, hireRows } from '$words/plan/days';
import { tradeJob } from '../helpers/trade-jobs';

// Common practice, no source: a plan that runs a machine the crew has not says that it is hired.
const job = demoJob('boat-shed');
const plan = planJob(job);
const say = formatter('metric');

it('a machine the crew lacks stands in the hire list as hired, and only that', () => {
  expect([...hiredTools(plan, job)].sort()).toEqual([
    'blast-nozzle',
    'needle-scaler',
    'shotblaster',
  ]);
  const names = hireRows(plan, job, say).map(({ name }) => name);
  const hired = names.filter((name) => name.includes('(hired)'));
  expect(hired).toHaveLength(3);
  expect(hired).toContain('shotblaster (hired)');
});

it('what is said of it agrees with the chart, which runs it', () => {
  const [lack] = plan.substitutes;
  if (!lack) throw new Error('nothing is lacking');
  expect(plan.schedule.hire.map(({ tool }) => tool)).toContain('shotblaster');
  const told = substituteSentence(lack, 'Worn walkway', say);
  expect(told).toContain('you have no machine for it. The plan runs a hired one.');
  expect(told).not.toContain('Or hire one');
});

// What a machine costs a day stands nowhere on this site: a reader must not take the list for priced.
it('the price of hire is left to be filled in, where there is a machine', () => {
  const lines = hireLines(plan, job, say);
  expect(lines.at(-1)).toBe('Price of hire: Ask a hire shop, and write it in');
  expect(lines.join(' ')).not.toMatch(/[$€£]/);
  const none = { ...plan, schedule: { ...plan.schedule, hire: [] } };
  expect(hireLines(none, job, say)).toEqual([]);
});

// Common practice, no source: what a step before or after the main one runs is hired just the same.
it('a machine of any step that the crew lacks is hired: grit for the patches, shot for the floor', () => {
  const patches = { depth: 30, looseness: ['hollow'], area: 12 };
  const floor = { depth: 4, looseness: ['fractured'], finish: ['thin-overlay'], area: 40 };
  const names = (machines?: readonly string[]) => {
    const both = tradeJob([patches, floor], {}, machines && { machines });
    return hireRows(planJob(both), both, say).map(({ name }) => name);
  };
  const hired = names(['break-out', 'scarify']).filter((name) => name.endsWith('(hired)'));
  expect(hired).toEqual(
    expect.arrayContaining([
      expect.stringContaining('blast'),
      expect.stringContaining('shotblaster'),
      expect.stringContaining('washer'),
    ]),
  );
  expect(hired.join()).not.toMatch(/hammer|scarifier|saw|vacuum/);
  expect(names().filter((name) => name.endsWith('(hired)'))).toEqual([]);
  expect(names([]).join()).toMatch(/chipping hammer[^,]* \(hired\)/);
});
