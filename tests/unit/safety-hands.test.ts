import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { demoIds, demoJob } from '$lib/keep/demos';
import { planJob } from '$lib/plan/plan';
import { planDocument } from '$words/plan/document';
import { crewDaysOf } from '$lib/safety/from-plan';
import { handsOver } from '$lib/safety/hands';
import { hazardsOf } from '$lib/safety/mix';
import { personCards } from '$lib/safety/person-cards';
import { safetyOf } from '$lib/safety/safety-of';
import { turnInShort, turnsInShort } from '$lib/ui/crew/in-short';
import { settleTask } from '$lib/safety/tasks';
import { vibrationOfTask } from '$lib/safety/vibration';
import { formatter } from '$lib/words/format';
import { handsLines } from '$words/safety';
import { inDays } from '$words/safety/hands';
import { hollow, settledJob } from '../helpers/crew-jobs';
import { onTrial } from '../helpers/rounds';

const say = formatter('metric');
const measured = (vibration: number): Partial<Job> => {
  const level = { vibration, measured: true };
  return { toolLevels: { jackhammer: level, 'chipping-hammer': level } };
};
/** The job, its plan, what is over, and the cards of each day. */
const laid = (job: Job) => {
  const plan = planJob(job);
  const crewPlan = crewDaysOf(plan, job);
  const cards = crewPlan.shifts.flatMap((shift) => {
    const result = safetyOf({ region: 'us', workers: shift.workers, crew: crewPlan.crew });
    if (!result.ok) throw new Error('refused');
    return personCards(result.safety, hazardsOf(job, shift, plan));
  });
  return { plan, cards, crewPlan, over: handsOver(plan, job) };
};
const hammerHours = ({ crewPlan }: ReturnType<typeof laid>) =>
  crewPlan.shifts.flatMap(({ workers }) =>
    workers.map(({ tasks }) =>
      tasks
        .filter(({ tool }) => tool === 'jackhammer' || tool === 'chipping-hammer')
        .reduce((sum, { typical = 0 }) => sum + typical, 0),
    ),
  );

// HSE ready reckoner (hand-arm vibration): 10 m/s2 reaches the action value, 100 points, after
// 30 minutes and the limit value, 400 points, after 2 hours; 5 m/s2 after 2 and after 8 hours.
describe('whether the days of a plan hold for the hands', () => {
  const job = hollow({ crew: 2, ...measured(10) });
  const { plan, over, cards, ...rest } = laid(job);
  const most = Math.max(...hammerHours({ plan, over, cards, ...rest }));
  const all = hammerHours({ plan, over, cards, ...rest }).reduce((sum, hours) => sum + hours, 0);

  it('they do not where one person has a hammer for longer than its limit', () => {
    // The case has to be one: more than 2 hours of it for one of two.
    expect(most).toBeGreaterThan(2);
    expect(over).toMatchObject({ over: 'limit', crew: 2, days: [1] });
    expect(over?.inHand[0]?.hours).toBeCloseTo(most, 6);
    // Nobody more than 2 hours a day, in turns of a quarter of an hour.
    const quarters = Math.ceil(all / 0.25 - 1e-9);
    const shares = Math.ceil(quarters / 8);
    expect(over?.turns?.days).toBe(Math.ceil(shares / 2));
    expect(over?.turns?.crew?.people ?? Infinity).toBeGreaterThanOrEqual(shares);
  });

  it('plan, printed plan and card say so, with the minutes a person has', () => {
    if (!over) throw new Error('nothing over');
    const { title, lines } = handsLines(say, over);
    expect(title).toBe('Day 1 does not hold for the hands.');
    expect(lines.join(' ')).toMatch(/30\sminutes, the limit value after 2\shours/);
    expect(lines.join(' ')).toMatch(/To stay within the limit value: \d+\speople in place of 2/);
    const told = JSON.stringify(
      planDocument(job, plan, say, { date: '', nameOf: (zone) => zone }).sections,
    );
    expect(told).toContain(title);
    const hammers = cards.filter(({ turns }) => turns.some((turn) => turn.over));
    expect(hammers.length).toBeGreaterThan(0);
    for (const { turns } of hammers)
      expect(turnsInShort(say, turns)).toMatch(
        /hours planned: action value after 30\sminutes, limit value after 2\shours\. Take turns/,
      );
  });

  // Plain sums, common practice, no source: who is there, who would do, days planned and days it takes.
  it('counts those who are there in one short sentence, with the right plural', () => {
    if (!over) throw new Error('nothing over');
    const last = (change: object) => handsLines(say, { ...over, ...change }).lines.at(-1);
    expect(last({ crew: 3, turns: { crew: { people: 3, equal: true }, days: 1 } })).toBe(
      'To stay within the limit value: all of you in equal turns, or a gentler tool.',
    );
    const nine = { crew: { people: 9, equal: false }, days: 5 };
    expect(last({ crew: 2, shaking: 1, turns: nine })).toMatch(
      /^To stay within the limit value: 9\speople in place of 2, or 5\sdays in place of 1, or a gentler tool\.$/,
    );
    // The reckoner above: two hours of 10 m/s2.
    expect(last({ crew: 2, shaking: 1, turns: { crew: null, days: 5 } })).toMatch(
      /^To stay within the limit value: 5\sdays in place of 1, at most 2\shours a person a day; even 4\speople are too few\. Or a gentler tool, or another method\.$/,
    );
    expect(last({ turns: null })).toMatch(/not even 15\sminutes fits/);
  });

  // By the same formula (ISO 5349-1): 15 m/s2 reaches the action value after 13.3 minutes.
  it('card and briefing tell one time where it is too short for turns, planned for longer or not', () => {
    const { cards: harsh, crewPlan } = laid(hollow({ crew: 2, ...measured(15) }));
    const hammer = harsh.flatMap(({ turns }) => turns).find(({ over: passed }) => passed);
    if (!hammer) throw new Error('no hammer');
    expect(turnsInShort(say, [hammer])).toMatch(/action value after 13\sminutes/);
    expect(turnsInShort(say, [{ ...hammer, over: null }])).toMatch(
      /: 13\sminutes a person in all\./,
    );
    const task = crewPlan.shifts
      .flatMap(({ workers }) => workers.flatMap(({ tasks }) => tasks))
      .find(({ tool }) => tool === hammer.tool);
    if (!task) throw new Error('no task');
    const vibration = vibrationOfTask(settleTask(task));
    expect(turnInShort(say, vibration)).toMatch(/^13\sminutes in all$/);
  });

  it('a gentle hammer holds, and nothing is said', () => {
    // 2 m/s2 stays under the action value for 12.5 hours.
    const gentle = laid(hollow({ crew: 2, ...measured(2) }));
    expect(gentle.over).toBeNull();
    expect(gentle.cards.flatMap(({ turns }) => turns).every((turn) => !turn.over)).toBe(true);
  });

  it('past the action value alone, that is the value it is held against', () => {
    const { over: action } = laid(hollow({ crew: 2, ...measured(most > 4 ? 4 : 5) }));
    if (!action) throw new Error('nothing over');
    expect(action.over).toBe('action');
    // Directive 2002/44/EC: past the action value exposure is brought down; only the limit value ends
    // the day.
    const { title } = handsLines(say, { ...action, days: [1] });
    expect(title).toBe('Day 1 passes the action value for the hands, not the limit value.');
  });

  // Common practice, no source: nobody says of a day with other work that it is too much.
  it.each([
    [[2], 'Day 2'],
    [[1, 2, 3], 'Days 1 to 3'],
    [[1, 3], 'Days 1 and 3'],
    [[1, 2, 4, 6, 7], 'Days 1 to 2, 4 and 6 to 7'],
  ])('%j are told as %s', (days, told) => {
    expect(inDays(say, days).replaceAll('\u00A0', ' ')).toBe(told);
  });

  // Whoever enters the number asked for has done what was asked: plain sense, no source.
  let asks = 0;
  const keptBy = (any: Job): void => {
    const { over: asked } = laid(any);
    const other = asked?.turns?.crew;
    if (!asked || !other) return;
    asks++;
    const turns = other.equal ? ('equal' as const) : (any.crewDay?.turns ?? 'one-operator');
    const next = laid({ ...any, crew: other.people, crewDay: { ...any.crewDay, turns } }).over;
    // Past the action value the day still holds; what is left then is told as that.
    expect(next === null || (asked.over === 'limit' && next.over === 'action')).toBe(true);
  };
  const examples: readonly Job[] = [
    ...demoIds.map((id) => demoJob(id)),
    ...[2, 6, 20, 60].map((area) => hollow({}, {}, { area })),
  ];
  it.each(examples.map((each, place) => [place, each] as const))(
    'the people asked for clear the warning, or it says what else does: example %i',
    (_, example) => {
      for (let crew = 1; crew <= 12; crew++) {
        keptBy({ ...example, crew });
        const { over: asked } = laid({ ...example, crew });
        if (asked && !asked.turns?.crew)
          expect(handsLines(say, asked).lines.at(-1)).toMatch(
            /a person a day; even \d+\speople are too few|No number of people solves that/,
          );
      }
    },
  );
  it('and in any settled job', () => {
    expect(asks).toBeGreaterThan(0);
    fc.assert(fc.property(settledJob, keptBy), { numRuns: onTrial(25, 5) });
  });

  it('the plan is silent exactly where no card is over its action value', () => {
    fc.assert(
      fc.property(settledJob, (any) => {
        const { over: found, cards: told } = laid(any);
        const planned = told.some(({ turns }) => turns.some((turn) => turn.over));
        // Two tools together may pass it where neither does alone; never the other way round.
        if (planned) expect(found).not.toBeNull();
        if (!found) expect(planned).toBe(false);
      }),
      { numRuns: onTrial(25, 5) },
    );
  });
});
