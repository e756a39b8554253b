import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { demoJob } from '$lib/keep/demos';
import { isKnown, typicalOf, type Amount } from '$lib/plan/amount';
import { planJob } from '$lib/plan/plan';
import { mustWait, waitingZones } from '$lib/plan/waiting';
import { crewDaysOf } from '$lib/safety/from-plan';
import { rowsOn, thereOn } from '$lib/ui/crew/log-rows';
import { formatter } from '$lib/words/format';
import { rowLines } from '$words/plan/days';
import { planDocument } from '$words/plan/document';
import { logged } from '../helpers/crew-log';

// Common practice, no source: nobody is sent, briefed or timed for a place that still has to be looked at.
const job = demoJob('larch-row');
const plan = planJob(job);
const zoneOf = (name: string) => job.zones.find((zone) => zone.name === name)?.id ?? '';
const [kerb, garage] = [zoneOf('Hollow by the kerb'), zoneOf('By the garage door')];
const typical = (amount: Amount | null | undefined) =>
  amount && isKnown(amount) ? typicalOf(amount) : 0;
/** Hours at a step on the crew's days, all people together. */
const handsOn = (of: Job, step: string) =>
  crewDaysOf(planJob(of), of)
    .shifts.flatMap(({ days: [first, last], workers }) =>
      workers.flatMap(({ tasks }) =>
        tasks.map((task) => (task.step === step ? (task.atTask ?? 0) * (last - first + 1) : 0)),
      ),
    )
    .reduce((sum, hours) => sum + hours, 0);
const laid = (step: string, wait: boolean) =>
  plan.schedule.placed
    .filter(({ task }) => task.step === step && mustWait(plan)(task) === wait)
    .flatMap(({ stretches, people }) =>
      stretches.map(({ from, to }) => (to - from) * people.length),
    )
    .reduce((sum, hours) => sum + hours, 0);

describe('a zone that must wait', () => {
  it('is one of the example: the case is a case', () => {
    expect([...waitingZones(plan)]).toEqual([kerb]);
    expect(laid('break-out', true)).toBeGreaterThan(0.5);
  });

  it('takes nobody’s hours on the crew’s day, as nobody may begin there', () => {
    expect(handsOn(job, 'break-out')).toBeCloseTo(laid('break-out', false), 6);
  });

  it('counts once it was begun all the same: what was worked has shaken hands', () => {
    const from = '2026-05-04T08:00:00+02:00';
    const to = '2026-05-04T09:00:00+02:00';
    const begun = logged(job, [
      [kerb, 'break-out', { spells: { [from]: { to, people: 1 } }, done: to }],
    ]);
    const free = planJob(begun).schedule.placed.filter(
      ({ task }) => task.step === 'break-out' && task.zone === garage,
    );
    const garageHours = free
      .flatMap(({ stretches, people }) =>
        stretches.map((each) => (each.to - each.from) * people.length),
      )
      .reduce((sum, hours) => sum + hours, 0);
    expect(handsOn(begun, 'break-out')).toBeCloseTo(garageHours + 1, 6);
  });

  it('stands apart from where work goes on, tool by tool', () => {
    const where = thereOn(plan, [1, 1], (id) => id);
    expect(where('break-out')).toMatchObject({ zones: [garage], waits: [kerb] });
    // Making safe and sounding take nothing off, and are how it gets cleared: they go ahead there too.
    for (const step of ['make-safe', 'sound-and-mark'] as const)
      expect(where(step)).toMatchObject({ zones: expect.arrayContaining([kerb]), waits: [] });
  });

  it('is no day of work where a day has nothing else', () => {
    const steps = demoJob('community-hall-steps');
    const shifts = crewDaysOf(planJob(steps), steps).shifts;
    expect(shifts.some(({ steps: some }) => !some.length)).toBe(true);
    for (const { steps: some, workers, days } of shifts)
      if (!some.length) {
        expect(workers.every(({ tasks }) => !tasks.length)).toBe(true);
        expect(rowsOn(planJob(steps), days).every(({ held }) => held.length)).toBe(true);
      }
  });

  it('has its hours and its name apart in the order of work and the days', () => {
    const step = plan.steps.find(({ id }) => id === 'break-out');
    expect(typical(step?.waiting)).toBeGreaterThan(0);
    expect(typical(step?.free) + typical(step?.waiting)).toBeCloseTo(typical(step?.hours), 6);
    const say = formatter('metric');
    const told = JSON.stringify(
      planDocument(job, plan, say, {
        date: '',
        nameOf: (id) => job.zones.find((zone) => zone.id === id)?.name ?? '',
      }).sections,
    );
    expect(told).toMatch(/Break out \(By the garage door; once cleared: Hollow by the kerb\)/);
    const steps = demoJob('community-hall-steps');
    const other = planJob(steps);
    const last = other.dayRows.at(-1);
    expect(last && rowLines(last, other, say)[0]).toMatch(
      /Last (cleaning and last )?look \(once cleared\)/,
    );
  });
});
