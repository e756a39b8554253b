import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { planJob } from '$lib/plan/plan';
import { crewDaysOf } from '$lib/safety/from-plan';
import { hazardsOf } from '$lib/safety/mix';
import { inCommon, personCards } from '$lib/safety/person-cards';
import { safetyOf } from '$lib/safety/safety-of';
import { taskViews } from '$lib/safety/task-views';
import { toldTime, triggerMinutes } from '$lib/safety/vibration';
import { hollow, settledJob } from '../helpers/crew-jobs';
import { onTrial } from '../helpers/rounds';

/** The cards of every day of a job, each with the safety of that day. */
const cardsOf = (job: Job) => {
  const plan = planJob(job);
  const { shifts, crew } = crewDaysOf(plan, job);
  return shifts.map((shift) => {
    const result = safetyOf({ region: 'us', workers: shift.workers, crew });
    if (!result.ok) throw new Error('refused');
    return {
      safety: result.safety,
      cards: personCards(result.safety, hazardsOf(job, shift, plan)),
    };
  });
};

describe('a card a person', () => {
  it('has everybody who works that day once, and nobody else', () => {
    fc.assert(
      fc.property(settledJob, (job) => {
        for (const { safety, cards } of cardsOf(job)) {
          const told = cards.flatMap(({ ids }) => ids).sort();
          const there = safety.workers.filter(({ tasks }) => tasks.length).map(({ id }) => id);
          expect(told).toEqual(there.sort());
          for (const { ids, steps } of cards)
            for (const id of ids) {
              const mine = safety.workers.find((worker) => worker.id === id)?.tasks ?? [];
              expect(new Set(mine.map(({ step }) => step))).toEqual(new Set(steps));
            }
        }
      }),
      { numRuns: onTrial(25, 5) },
    );
  });

  // HSE ready reckoner (hand-arm vibration): 10 m/s2 reaches the action value, 100 points, after
  // 30 minutes, and 5 m/s2 after 2 hours.
  it.each([
    [10, 0.5],
    [5, 2],
  ])('a tool measured at %d m/s2 is changed over after %d h at most', (vibration, hours) => {
    const level = { vibration, measured: true };
    const cards = cardsOf(
      hollow({ toolLevels: { jackhammer: level, 'chipping-hammer': level } }),
    ).flatMap((day) => day.cards);
    const hammers = cards
      .flatMap(({ turns }) => turns)
      .filter(({ tool }) => tool === 'jackhammer' || tool === 'chipping-hammer');
    expect(hammers.length).toBeGreaterThan(0);
    for (const turn of hammers) expect(turn.hours).toBe(hours);
  });

  // Common practice, no source: what can kill at once is what somebody stops for first.
  it('stops for the gravest hazard, never for one that has a line of its own', () => {
    for (const { cards } of cardsOf(hollow()))
      for (const { stop } of cards) expect(['silica', 'noise', 'vibration']).not.toContain(stop);
    const sawing = cardsOf(hollow()).flatMap(({ cards }) => cards)[0];
    expect(sawing?.steps).toContain('saw-cut');
    expect(sawing?.stop).toBe('electric');
  });
});

describe('what all cards have in common', () => {
  it('is told of everybody, and of nobody it does not hold for', () => {
    let told = 0;
    fc.assert(
      fc.property(settledJob, (job) => {
        for (const { cards } of cardsOf({ ...job, crew: 3 })) {
          const { steps, stop } = inCommon(cards);
          if (cards.length < 2) expect({ steps, stop }).toEqual({ steps: [], stop: null });
          for (const card of cards) {
            for (const step of steps) expect(card.steps).toContain(step);
            if (stop) expect(card.stop).toBe(stop);
          }
          told += steps.length;
        }
      }),
      { numRuns: onTrial(25, 5) },
    );
    expect(told).toBeGreaterThan(10);
  });
});

describe('the steps of a day', () => {
  it('stand in the order of work, whoever does them', () => {
    const job = hollow({ crew: 3 });
    const plan = planJob(job);
    const placeOf = (step: string) => plan.steps.findIndex(({ id }) => id === step);
    for (const { safety } of cardsOf(job)) {
      const views = taskViews(safety, () => ({ zones: [] }), placeOf);
      const places = views.map(({ task }) => placeOf(task.step));
      expect(places).toEqual(places.toSorted((one, other) => one - other));
      // Common practice, no source: a step has one number, on the plan, the briefing and the chart.
      expect(views.map(({ number }) => number)).toEqual(places.map((place) => place + 1));
    }
  });
});

describe('time before a limit, as it is told', () => {
  it('is rounded down: whole minutes below an hour, tenths of an hour from there', () => {
    expect(toldTime(59.99)).toEqual({ value: 59, unit: 'min' });
    expect(toldTime(60)).toEqual({ value: 1, unit: 'h' });
    expect(toldTime(125.9)).toEqual({ value: 2, unit: 'h' });
    // HSE ready reckoner: 12 m/s2 reaches 100 points between 20 and 21 minutes.
    expect(toldTime(triggerMinutes('action', 12))).toEqual({ value: 20, unit: 'min' });
  });
});
