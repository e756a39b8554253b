import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deal, shareByDealing } from '$lib/safety/share-deal';
import { shareExactly } from '$lib/safety/share-exact';
import { shareOut, type BudgetId } from '$lib/safety/share-out';
import { fewestShares, fits, loadOf, worstLoad, type Pile } from '$lib/safety/share-piles';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { onTrial, rounds } from '../helpers/rounds';

/** The least worst-off load over every way to hand each single unit to somebody. */
function bruteForce(piles: readonly Pile[], places: number): number {
  const units = piles.flatMap(({ units: count }, pile) => Array<number>(count).fill(pile));
  const shares = Array.from({ length: places }, () => piles.map(() => 0));
  let best = Infinity;
  const give = (next: number): void => {
    const pile = units[next];
    if (pile === undefined) {
      best = Math.min(best, worstLoad(piles, shares));
      return;
    }
    for (const share of shares) {
      share[pile] = (share[pile] ?? 0) + 1;
      give(next + 1);
      share[pile] = (share[pile] ?? 0) - 1;
    }
  };
  give(0);
  return best;
}

// Plain fractions make sums that nearly fill a share, where handing out goes wrong first.
const part = fc.oneof(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.constantFrom(0.25, 0.3, 0.4, 0.45, 0.5, 0.55, 0.6),
);
const pilesOf = (most: number) =>
  fc.integer({ min: 1, max: 2 }).chain((budgets) =>
    fc.array(
      fc.record({
        units: fc.integer({ min: 0, max: most }),
        parts: fc.array(part, { minLength: budgets, maxLength: budgets }),
      }),
      { minLength: 1, maxLength: 2 },
    ),
  );

const given = (piles: readonly Pile[], shares: readonly (readonly number[])[]) =>
  piles.map((_, pile) => shares.reduce((sum, share) => sum + (share[pile] ?? 0), 0));

describe('exact sharing', () => {
  test('is the best there is: against every way of handing out the units', () => {
    fc.assert(
      fc.property(pilesOf(3), fc.integer({ min: 1, max: 3 }), (piles, crew) => {
        const placesFor = (fewest: number) => Math.ceil(fewest / crew) * crew;
        const { fewest, shares } = shareExactly(piles, placesFor);
        fc.pre(shares.length <= 4);
        expect(given(piles, shares)).toEqual(piles.map(({ units }) => units));
        if (fewest === 0) return;
        expect(fits(bruteForce(piles, fewest))).toBe(true);
        if (fewest > 1) expect(fits(bruteForce(piles, fewest - 1))).toBe(false);
        expect(worstLoad(piles, shares)).toBeCloseTo(bruteForce(piles, shares.length), 9);
      }),
      { numRuns: onTrial(rounds(75, 300), 20) },
    );
  });

  test('can need more than the sums say: two units of 0.6 do not fit one share, nor do three fit two', () => {
    const piles = [{ units: 3, parts: [0.6] }];
    expect(fewestShares(piles)).toBe(3);
    expect(shareExactly(piles, (fewest) => fewest).fewest).toBe(3);
    const odd = [
      { units: 3, parts: [0.4] },
      { units: 2, parts: [0.4] },
    ];
    // 2.0 in all, but a share holds two units, so five want three.
    expect(fewestShares(odd)).toBe(2);
    expect(shareExactly(odd, (fewest) => fewest).fewest).toBe(3);
    const mixed = [
      { units: 2, parts: [0.6] },
      { units: 2, parts: [0.35] },
    ];
    // 1.9 in all would fit two shares by the sum, and it does: 0.6 + 0.35 twice.
    expect(shareExactly(mixed, (fewest) => fewest).shares).toEqual([
      [1, 1],
      [1, 1],
    ]);
  });
});

describe('dealing', () => {
  test('hands out all, fits, and is never below what no way can go below', () => {
    fc.assert(
      fc.property(pilesOf(60), fc.integer({ min: 1, max: 4 }), (piles, crew) => {
        const { fewest, shares } = shareByDealing(piles, (n) => Math.ceil(n / crew) * crew);
        expect(given(piles, shares)).toEqual(piles.map(({ units }) => units));
        expect(fits(worstLoad(piles, shares))).toBe(true);
        expect(fewest).toBeGreaterThanOrEqual(fewestShares(piles));
      }),
      { numRuns: onTrial(rounds(15, 60), 20) },
    );
  });
  test('no budget passes the even split by more than one unit of each pile', () => {
    fc.assert(
      fc.property(pilesOf(40), fc.integer({ min: 1, max: 7 }), (piles, places) => {
        for (const share of deal(piles, places))
          for (const budget of (piles[0]?.parts ?? []).keys()) {
            const single = piles.map((pile) => ({ ...pile, parts: [pile.parts[budget] ?? 0] }));
            const even = single.reduce((sum, { units, parts }) => sum + units * (parts[0] ?? 0), 0);
            const oneEach = single.reduce((sum, { parts }) => sum + (parts[0] ?? 0), 0);
            expect(loadOf(single, share)).toBeLessThanOrEqual(even / places + oneEach + 1e-9);
          }
      }),
    );
  });
  test('never beats the exact way', () => {
    fc.assert(
      fc.property(pilesOf(6), (piles) => {
        const same = (fewest: number) => fewest;
        const exact = shareExactly(piles, same);
        const dealt = shareByDealing(piles, same);
        expect(dealt.fewest).toBeGreaterThanOrEqual(exact.fewest);
        if (dealt.fewest === exact.fewest)
          expect(worstLoad(piles, dealt.shares)).toBeGreaterThanOrEqual(
            worstLoad(piles, exact.shares) - 1e-9,
          );
      }),
      { numRuns: onTrial(rounds(15, 60), 20) },
    );
  });
});

const share = (tasks: ShiftTask[], budgets: BudgetId[], crew: number) =>
  shareOut(tasks.map(settleTask), budgets, crew);
const breaking = (hours: number, ownVibration: number): ShiftTask => ({
  step: 'break-out',
  setting: 'open',
  hours: [hours, hours],
  ownVibration,
  ownVibrationFrom: 'measured',
});

describe('sharing out work', () => {
  test('10 m/s2 for 4 h: 800 points, so eight quarter-day shares under 100 and two under 400 (HSE points)', () => {
    expect(share([breaking(4, 10)], ['vibration-action'], 2)).toMatchObject({
      can: 'share',
      people: 8,
      days: 4,
      proven: true,
    });
    const limit = share([breaking(4, 10)], ['vibration-limit'], 2);
    expect(limit).toMatchObject({ people: 2, days: 1, proven: true });
    if (limit.can === 'not') throw new Error('expected a sharing');
    expect(limit.allotments).toHaveLength(2);
    expect(limit.allotments[0]).toMatchObject({
      day: 1,
      person: 1,
      hours: [{ tool: 'jackhammer', hours: 2 }],
    });
    expect(limit.allotments[0]?.load).toBeCloseTo(1, 9);
  });
  test('everybody on site shares, so that the worst-off has less', () => {
    const result = share([breaking(3, 10)], ['vibration-limit'], 4);
    if (result.can === 'not') throw new Error('expected a sharing');
    expect(result).toMatchObject({ people: 2, days: 1 });
    expect(result.allotments.map(({ hours }) => hours[0]?.hours)).toEqual([0.75, 0.75, 0.75, 0.75]);
  });
  test('the shift is a budget too: 20 h of a harmless tool want three people', () => {
    const result = share([breaking(20, 0.1)], ['vibration-action'], 1);
    expect(result).toMatchObject({ people: 3, days: 3 });
  });
  test('not even a quarter of an hour: sharing cannot help, and it names the tool', () => {
    expect(
      share([{ step: 'abrasive-blast', setting: 'open', hours: [1, 1] }], ['niosh'], 9),
    ).toEqual({ can: 'not', tools: ['blast-nozzle'], unknown: [] });
  });
  test('an unknown tool leaves the numbers lower bounds', () => {
    const result = share(
      [breaking(1, 10), { step: 'scarify', setting: 'open', hours: [2, 2] }],
      ['vibration-limit'],
      1,
    );
    expect(result).toMatchObject({ can: 'share', people: 1, unknown: ['scarifier'] });
  });
  test('nothing to share asks for nobody', () => {
    expect(
      share([{ step: 'vacuum', setting: 'open', hours: [3, 3] }], ['vibration-action'], 2),
    ).toMatchObject({ people: 0, days: 0, allotments: [], proven: true });
  });
  test('a large job is dealt out in time, and says whether it is proven', () => {
    const tasks: ShiftTask[] = [
      breaking(37.25, 11),
      { ...breaking(22.5, 7), step: 'chase-crack' },
      { ...breaking(61, 4), step: 'edge-work' },
      { ...breaking(18, 14), step: 'needle-scale' },
    ];
    const started = process.cpuUsage();
    const result = share(tasks, ['vibration-action'], 4);
    const milliseconds = process.cpuUsage(started).user / 1000;
    if (result.can === 'not') throw new Error('expected a sharing');
    expect(result.people).toBeGreaterThanOrEqual(result.atLeast);
    expect(result.people).toBeLessThanOrEqual(result.atLeast * 2);
    expect(result.allotments.every(({ load }) => fits(load))).toBe(true);
    expect(milliseconds).toBeLessThan(5000);
  });
});
