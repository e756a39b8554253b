import { describe, expect, it } from 'vitest';
import { deal, shareByDealing } from '$lib/safety/share-deal';
import { restsOf, shareExactly } from '$lib/safety/share-exact';
import { shareOut, type BudgetId } from '$lib/safety/share-out';
import { fewestShares, fits, loadOf, unshareable, worstLoad } from '$lib/safety/share-piles';
import { settleTask } from '$lib/safety/tasks';
import { settledShaking as shaking, task } from '../helpers/shift-tasks';

const near = (value: number) => expect.closeTo(value, 6) as number;
/** NIOSH: twice for each 3 dB from 85 dB(A) over 8 h. */
const loud = (hours: number, ownLevel: number) => task(hours, { ownLevel });

// Plain sums: a share may take at most 1 of every budget.
describe('piles of work', () => {
  const piles = [
    { units: 5, parts: [0.2, 0.1] },
    { units: 2, parts: [0.1, 0.5] },
  ];
  it('fill a share by its fullest budget', () => {
    expect([
      loadOf(piles, [1, 1]),
      loadOf(piles, [4, 0]),
      loadOf(piles, []),
      loadOf([], []),
    ]).toEqual([...[near(0.6), near(0.8), 0, 0]]);
    expect(
      worstLoad(piles, [
        [1, 1],
        [4, 0],
      ]),
    ).toBeCloseTo(0.8, 9);
    expect(worstLoad(piles, [])).toBe(0);
    expect([fits(1), fits(1 + 1e-10), fits(1.001)]).toEqual([true, true, false]);
  });
  it('cannot be shared where one unit does not fit, and need at least so many', () => {
    const [big, none] = [
      { units: 1, parts: [0.5, 1.1] },
      { units: 0, parts: [2, 2] },
    ];
    expect(unshareable([...piles, big, none])).toEqual([2]);
    expect(unshareable([{ units: 1, parts: [1, 1] }])).toEqual([]);
    expect(fewestShares([])).toBe(0);
    expect(fewestShares([none])).toBe(0);
    expect(fewestShares([{ units: 1, parts: [0, 0] }])).toBe(1);
    // 5 x 0.1 + 2 x 0.5 is 1.5 of the second budget.
    expect(fewestShares(piles)).toBe(2);
    expect(fewestShares([{ units: 10, parts: [0.1] }])).toBe(1);
    expect(fewestShares([{ units: 3, parts: [0.1, 0.6] }])).toBe(3);
    expect(fewestShares([{ units: 6, parts: [1 / 3] }])).toBe(2);
  });
  it('are dealt evenly, what is left over heaviest first to whoever has least', () => {
    expect(deal(piles, 2)).toEqual([
      [3, 1],
      [2, 1],
    ]);
    expect(
      deal(
        [
          { units: 1, parts: [0.1] },
          { units: 1, parts: [0.5] },
          { units: 1, parts: [0.3] },
        ],
        2,
      ),
    ).toEqual([
      [0, 1, 0],
      [1, 0, 1],
    ]);
    expect(
      deal(
        [
          { units: 1, parts: [0.3] },
          { units: 1, parts: [0.3] },
        ],
        2,
      ),
    ).toEqual([
      [1, 0],
      [0, 1],
    ]);
    // By the fuller of two budgets: one of each fits beside the other, the third goes elsewhere.
    const apart = [
      { units: 1, parts: [0.5, 0] },
      { units: 1, parts: [0, 0.5] },
      { units: 1, parts: [0.3, 0.3] },
    ];
    expect(deal(apart, 2)).toEqual([
      [1, 1, 0],
      [0, 0, 1],
    ]);
    const odd = [
      { units: 3, parts: [0.4] },
      { units: 2, parts: [0.4] },
    ];
    expect(shareByDealing(odd, (fewest) => fewest).fewest).toBe(3);
    expect(shareByDealing(piles, () => 3)).toEqual({ fewest: 2, shares: deal(piles, 3) });
    expect(shareByDealing([], () => 3)).toEqual({ fewest: 0, shares: [] });
    // Two units of 0.6 want two shares though their sum is little more than one.
    expect(shareByDealing([{ units: 2, parts: [0.6] }], (fewest) => fewest).fewest).toBe(2);
  });
  it('are shared exactly, the worst-off spared most', () => {
    expect(restsOf(piles)).toBe(6 * 3);
    expect(shareExactly([], () => 2)).toEqual({ fewest: 0, shares: [] });
    expect(shareExactly([{ units: 4, parts: [0.25] }], () => 2)).toEqual({
      ...{ fewest: 1, shares: [[2], [2]] },
    });
    const { fewest, shares } = shareExactly(piles, (least) => least);
    expect(fewest).toBe(2);
    expect(worstLoad(piles, shares)).toBeCloseTo(0.8, 9);
  });
});

describe('a day shared out', () => {
  const share = (tasks: ReturnType<typeof task>[], budgets: BudgetId[], crew = 2) =>
    shareOut(tasks, budgets, crew);
  it('names everybody’s hours, the worst-off first', () => {
    expect(share([shaking(1)], ['vibration-limit'], 1)).toEqual({
      ...{ can: 'share', people: 1, days: 1, atLeast: 1, proven: true, unknown: [] },
      allotments: [
        { day: 1, person: 1, hours: [{ tool: 'jackhammer', hours: 1 }], load: near(0.5) },
      ],
      figures: ['share.step', 'share.shift'],
    });
    const three = share([shaking(1.25)], ['vibration-action']);
    expect(three).toMatchObject({ people: 3, days: 2, atLeast: 3 });
    const shared = three.can === 'share' ? three.allotments : [];
    expect(shared.map(({ day, person }) => [day, person])).toEqual([
      [1, 1],
      [1, 2],
      [2, 1],
      [2, 2],
    ]);
    const loads = shared.map(({ load }) => load);
    expect(loads).toEqual(loads.toSorted((one, other) => other - one));
    expect(loads.reduce((sum, load) => sum + load, 0)).toBeCloseTo(2.5, 9);
    // A shift has eight hours, and idle hands none.
    expect(share([shaking(9, 0.1)], ['vibration-action'], 1)).toMatchObject({ people: 2 });
    const idle = share([shaking(0.25)], ['vibration-action']);
    expect(idle.can === 'share' && idle.allotments[1]).toEqual({
      day: 1,
      person: 2,
      hours: [],
      load: 0,
    });
  });
  it('lays equal work on one pile, in whole quarter hours', () => {
    const same = share([shaking(0.3), shaking(0.2)], ['vibration-action'], 1);
    expect(same.can === 'share' && same.allotments[0]?.hours).toEqual([
      { tool: 'jackhammer', hours: 0.5 },
    ]);
    const other = share(
      [shaking(0.3), shaking(0.2, 10, { tool: 'needle-scaler' })],
      ['vibration-limit'],
      1,
    );
    expect(other.can === 'share' && other.allotments[0]?.hours).toEqual([
      { tool: 'jackhammer', hours: 0.5 },
      { tool: 'needle-scaler', hours: 0.25 },
    ]);
  });
  it('goes by every budget given, noise like vibration', () => {
    // 91 dB(A): two hours are all; 8 h want four people.
    expect(share([loud(8, 91)], ['niosh'])).toMatchObject({ people: 4, days: 2 });
    expect(share([loud(8, 91)], ['osha-limit'])).toMatchObject({ people: 2 });
    expect(share([shaking(1, 10, { ownLevel: 97 })], ['vibration-action', 'niosh'])).toMatchObject({
      people: 2,
    });
    expect(share([shaking(1, 2, { ownLevel: 97 })], ['vibration-action', 'niosh'])).toMatchObject({
      people: 2,
    });
    expect(
      share([task(1, { tool: 'hand-tools', ownVibration: 0 })], ['vibration-action']),
    ).toMatchObject({ people: 0 });
  });
  it('is not shared where no turn fits, and only at least so many where a tool is not known', () => {
    const unknown = settleTask({
      step: 'saw-cut',
      tool: 'hand-saw',
      setting: 'open',
      hours: [2, 2],
    });
    const { tool } = unknown;
    expect(share([shaking(1, 60), shaking(2, 60), unknown], ['vibration-action'])).toEqual({
      ...{ can: 'not', tools: ['jackhammer'], unknown: [tool] },
    });
    expect(share([unknown, { ...unknown, hours: [1, 1] }], ['vibration-action'])).toMatchObject({
      ...{ people: 1, unknown: [tool] },
    });
    expect(share([{ ...unknown, hours: [0, 0] }], ['vibration-action'])).toMatchObject({
      unknown: [],
    });
  });
  it('goes by usual values, and as a warning by the worst', () => {
    // A needle scaler: 5 to 18, usually 12 m/s2: 288 points an hour, at worst 648; of 0.5 to 1 h.
    const scaler = settleTask({
      step: 'edge-work',
      setting: 'open',
      hours: [0.5, 1],
      typical: 0.75,
    });
    const by = (how: 'usual' | 'worst') =>
      shareOut([scaler], ['vibration-limit'], 1, undefined, how);
    expect(by('usual')).toMatchObject({ people: 1 });
    expect(by('worst')).toMatchObject({ people: 2 });
    expect(
      shareOut([scaler], ['vibration-action'], 1, { 'vibration.needle-scaler': 20 }),
    ).toMatchObject({ can: 'not' });
  });
  it('of a large job is dealt, and told as proven only where no way needs fewer', () => {
    const tools = ['jackhammer', 'needle-scaler', 'hand-grinder', 'chipping-hammer'] as const;
    const large = tools.map((tool, at) => shaking(30, 2 + at, { tool }));
    const dealt = share(large, ['vibration-action'], 4);
    if (dealt.can === 'not') throw new Error('expected a sharing');
    expect(dealt.proven).toBe(dealt.people === dealt.atLeast);
    const given = (tool: string) =>
      dealt.allotments
        .flatMap(({ hours }) => hours)
        .reduce((sum, each) => sum + (each.tool === tool ? each.hours : 0), 0);
    for (const tool of tools) expect(given(tool)).toBeCloseTo(30, 9);
  });
});
