import { describe, expect, it } from 'vitest';
import type { Plan } from '$lib/plan/plan';
import { earsOver } from '$lib/safety/ears-over';
import { crewPlace, type CrewPlan } from '$lib/safety/from-plan';
import { handsOver } from '$lib/safety/hands';
import { crewDays, wholeJobOf } from '$lib/safety/whole-job';
import type { ShiftTask, WorkerDay } from '$lib/safety/types';
import type { ToolId } from '$shared/tools';
import { hollow } from '../helpers/crew-jobs';

const near = (value: number) => expect.closeTo(value, 9) as number;

const hammer = (hours: number, change: Partial<ShiftTask> = {}): ShiftTask => ({
  ...{ step: 'break-out', setting: 'open', hours: [hours, hours], ownLevel: 60 },
  ...{ ownVibration: 0, ownVibrationFrom: 'measured', ...change },
});
type Days = readonly [number, number];
const crewPlan = (...shifts: readonly (readonly [Days, ...ShiftTask[][]])[]): CrewPlan => ({
  shifts: shifts.map(([days, ...people]) => ({
    ...{ days, steps: ['break-out'] },
    workers: people.map((tasks, at): WorkerDay => ({ id: String(at + 1), tasks })),
  })),
  ...{ crew: 2, place: crewPlace({ site: {} }), unknown: [], specialists: [] },
});
/** A plan laid for any other crew has nothing loud or shaking in it, or all that it had. */
const solved = () => crewPlan();
const bare = (first?: number) =>
  ({ schedule: { left: first === undefined ? undefined : { first } } }) as unknown as Plan;

// HSE ready reckoner: 10 m/s2 is 200 points an hour; 100 are the action value, 400 the limit.
describe('days that do not hold for the hands', () => {
  const shaking = (hours: number, ownVibration = 10, tool: ToolId = 'jackhammer') =>
    hammer(hours, { ownVibration, tool });
  const over = (plan: CrewPlan, first?: number) => handsOver(bare(first), hollow(), plan, solved);
  const minutes = {
    action: { atHigh: near(30), atLow: near(30) },
    limit: { atHigh: near(120), atLow: near(120) },
  };

  it('are held against the gravest value that somebody passes, with turns that would do', () => {
    const quiet = shaking(1, 2, 'needle-scaler');
    expect(over(crewPlan([[1, 2], [shaking(1)], [quiet, shaking(2.5), shaking(0.25)]]))).toEqual({
      ...{ over: 'limit', days: [1, 2], shaking: 2, crew: 2 },
      inHand: [
        { tool: 'jackhammer', hours: 2.75, minutes },
        { tool: 'needle-scaler', hours: 1, minutes: expect.any(Object) as object },
      ],
      // 3.75 h of 2 h each a day at most; 7.5 h on two days, so four days' shares of two people.
      turns: { crew: { people: 2, equal: true }, days: 2 },
    });
    // A day that meets the value exactly holds.
    const exact = over(crewPlan([[1, 1], [shaking(3)]], [[2, 2], [shaking(2)]]));
    expect(exact).toMatchObject({ over: 'limit', days: [1], shaking: 2 });
    const action = over(crewPlan([[1, 1], [shaking(0.75)]], [[2, 2], [shaking(0.25)]]));
    expect(action).toMatchObject({ over: 'action', days: [1], shaking: 2 });
    // Half an hour each: 0.75 h are two people's, 1 h in all two shares, one day of two.
    expect(action?.turns).toEqual({ crew: { people: 2, equal: true }, days: 1 });
  });

  it('are none where everybody meets the value exactly, or only days that are past', () => {
    expect(over(crewPlan([[1, 1], [shaking(0.5)]]))).toBeNull();
    expect(over(crewPlan([[1, 1], []]))).toBeNull();
    const both = crewPlan([[1, 2], [shaking(3)]], [[3, 3], [shaking(0.5)]]);
    expect(over(both, 2)).toMatchObject({ days: [2], shaking: 2 });
    expect(over(both, 3)).toBeNull();
  });

  it('take no turns where not even the shortest fits, and count what does not shake as nothing', () => {
    // 60 m/s2 for 15 min is 1,800 points.
    expect(over(crewPlan([[1, 1], [shaking(1, 60)]]))).toMatchObject({ turns: null });
    const still = over(
      crewPlan(
        [
          [1, 2],
          [shaking(1), hammer(3)],
        ],
        [[3, 3], [hammer(2)]],
      ),
    );
    expect(still).toMatchObject({ shaking: 2, inHand: [{ tool: 'jackhammer', hours: 1 }] });
    expect(still?.inHand).toHaveLength(1);
  });
});

// NIOSH: twice for each 3 dB from 85 dB(A) over 8 h, so 112 dB(A) for 2 h is 128 times; both protectors
// take off 18 dB, 64 times.
describe('days too loud for plugs and muffs together', () => {
  const loud = (hours: number, ownLevel = 112, change: Partial<ShiftTask> = {}) =>
    hammer(hours, { ownLevel, ...change });
  const over = (plan: CrewPlan, first?: number) =>
    earsOver(bare(first), hollow(), 'us', plan, solved);

  it('tell the tool, the hours a person may have, and how many people would do', () => {
    const sawing = loud(1, 100, { step: 'saw-cut', tool: 'hand-saw' });
    const quiet = hammer(3, { tool: 'hand-tools' });
    const found = over(crewPlan([[1, 2], [sawing, loud(2), quiet], [quiet]], [[3, 3], [loud(1)]]));
    // Their own 60 dB(A) add a thousandth, the other's, 12 less at 4 m, next to nothing.
    const part = 128 + 4 + (3 / 8) * (2 ** (-25 / 3) + 2 ** (-37 / 3));
    expect(found).toEqual({
      ...{ days: [1, 2], crew: 2, tool: 'jackhammer', hours: 2 },
      steps: new Map([['break-out', near((64 / part) * 2)]]),
      ...{ needed: near(3 * Math.log2(part)), takenOff: 18 },
      ...{ most: near((64 / part) * 2), with: { people: 3, equal: false } },
    });
  });

  it('give each step the fewest hours that somebody may have of it, none where no turn fits', () => {
    const [two, four] = [loud(2), loud(4)];
    const chase = loud(2, 115, { step: 'chase-crack', tool: 'chipping-hammer' });
    const found = over(crewPlan([[1, 1], [two]], [[2, 2], [four]], [[3, 3], [chase]]));
    expect(found?.steps).toEqual(
      new Map([
        ['break-out', near(1)],
        ['chase-crack', near(0.5)],
      ]),
    );
    expect(found).toMatchObject({ days: [1, 2, 3], tool: 'jackhammer', hours: 4 });
    expect(found?.with).toEqual({ people: 4, equal: false });
    // 130 dB(A) for 2 h is 8,192 times: with both on a minute, which is no turn.
    const none = over(crewPlan([[1, 1], [loud(2, 130)]], [[2, 2], [loud(2)]]));
    expect(none).toMatchObject({ most: null, with: null });
    expect(none?.steps).toEqual(new Map([['break-out', null]]));
    const after = over(crewPlan([[1, 1], [loud(2)]], [[2, 2], [loud(2, 130)]]));
    expect(after?.steps).toEqual(new Map([['break-out', null]]));
  });

  it('count the others’ machines in, and leave out days that are past', () => {
    expect(over(crewPlan([[1, 1], [loud(1)]]))).toBeNull();
    // Beside one at 120 dB(A), 108 are heard for 8 h: some 200 times, whatever is done there.
    const beside = over(crewPlan([[1, 1], [loud(8, 120)], [loud(1, 60)]]));
    expect(beside?.steps.get('break-out')).toBe(null);
    const both = crewPlan([[1, 2], [loud(2)]], [[3, 3], [loud(1)]]);
    expect(over(both, 2)?.days).toEqual([2]);
    expect(over(both, 3)).toBeNull();
  });
});

describe('all days of a plan at once', () => {
  it('have everybody’s work of every day, up to sixty days', () => {
    const plan = crewPlan([[1, 2], [hammer(1)], []], [[5, 5], [hammer(2)], [hammer(3)]]);
    expect(crewDays(plan)).toBe(3);
    const whole = wholeJobOf(plan, 'us');
    expect(whole?.ok && whole.safety.workers.map(({ id, tasks }) => [id, tasks.length])).toEqual([
      ...[
        ['1.1', 1],
        ['1.2', 0],
        ['2.1', 1],
        ['2.2', 0],
        ['5.1', 1],
        ['5.2', 1],
      ],
    ]);
    expect(wholeJobOf(crewPlan([[1, 60], [hammer(0.25)]]), 'us')).not.toBeNull();
    expect(wholeJobOf(crewPlan([[1, 61], [hammer(0.25)]]), 'us')).toBeNull();
  });
});
