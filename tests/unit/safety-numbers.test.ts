import { describe, expect, it } from 'vitest';
import { exactly, mapBounds, nothing, passes, standingTo, sumOf, toStep } from '$lib/safety/bounds';
import { earsFor, mostWithBoth, takenOffBy } from '$lib/safety/ears';
import { figuresOfLimit, noiseAim, noiseLimitIds } from '$lib/safety/noise-limits';
import { shiftProblems } from '$lib/safety/problems';
import { protectorFigures, protectorFor, ratingFor, takenOff } from '$lib/safety/protector';
import { figuresOf, levelOf, settleTask, usualHours, vibrationOf } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';

describe('a number with a low and a high end', () => {
  it('adds end by end, and stays open where one part is', () => {
    expect([exactly(3), nothing]).toEqual([
      { low: 3, high: 3, open: false },
      { low: 0, high: 0, open: false },
    ]);
    expect(sumOf([])).toEqual(nothing);
    const span = { low: 1.2, high: 1.4, open: true };
    expect(sumOf([exactly(3), span])).toEqual({ low: 4.2, high: 4.4, open: true });
    expect(sumOf([exactly(3), exactly(4)])).toEqual(exactly(7));
    expect(mapBounds(span, (value) => 10 * value)).toEqual({ low: 12, high: 14, open: true });
    expect(toStep(span, 0.5)).toEqual({ low: 1, high: 1.5, open: true });
  });
  it('stands over, under or between; meeting a limit is not passing it', () => {
    expect([passes(1, 1), passes(1 + 1e-10, 1), passes(1.001, 1), passes(0.9, 1)]).toEqual([
      ...[false, false, true, false],
    ]);
    const stands = (low: number, high: number, open = false) => standingTo({ low, high, open }, 2);
    expect([stands(1, 2), stands(1, 3), stands(3, 3), stands(2, 2)]).toEqual([
      ...['under', 'may-be-over', 'over', 'under'],
    ]);
    expect([stands(1, 2, true), stands(1, 3, true), stands(3, 3, true)]).toEqual([
      ...['unknown', 'may-be-over', 'over'],
    ]);
  });
});

describe('the rules of noise', () => {
  // 29 CFR 1910.95 and 1926.52; NIOSH 98-126; 2003/10/EC: the last trade time for level by energy.
  it('lean on a day, a level, an exchange rate and a threshold, each where it has one', () => {
    const leans = Object.fromEntries(noiseLimitIds.map((id) => [id, figuresOfLimit(id).join(' ')]));
    expect(leans).toEqual({
      'osha-action': 'noise.day noise.osha-action noise.osha-exchange noise.osha-threshold',
      'osha-limit': 'noise.day noise.osha-criterion noise.osha-exchange noise.osha-threshold',
      niosh: 'noise.day noise.niosh-criterion noise.niosh-exchange',
      'eu-lower': 'noise.day noise.eu-lower',
      'eu-upper': 'noise.day noise.eu-upper',
      'eu-limit': 'noise.day noise.eu-limit',
    });
    expect(noiseAim).toEqual({ us: 'niosh', elsewhere: 'eu-upper' });
  });

  // 29 CFR 1910.95 Appendix B: rating less 7; halved in the field (OSHA Technical Manual). 33 is the
  // highest on sale, and muffs over plugs add 5 (from memory).
  it('ask of a protector what brings the day down to the limit', () => {
    expect([ratingFor(-1), ratingFor(0), ratingFor(0.5), ratingFor(13)]).toEqual([0, 0, 8, 33]);
    expect([takenOff(33), takenOff(7), takenOff(5)]).toEqual([13, 0, 0]);
    const own = { 'noise.rating-derating': 25, 'noise.rating-a-weighted': 3 };
    expect([takenOff(33, own), ratingFor(22.5, own)]).toEqual([22.5, 33]);
    const day = (high: number) => protectorFor({ low: 80, high, open: true }, 85);
    expect(day(98)).toEqual({
      needed: { low: 0, high: 13, open: true },
      rating: { low: 0, high: 33, open: true },
      beyondOne: false,
      cautions: ['rating-is-laboratory', 'fit-it-and-check', 'hear-the-warnings', 'quieter-first'],
    });
    expect(day(98.5)).toMatchObject({ rating: { high: 34 }, beyondOne: true });
    expect(protectorFor(exactly(95), 85, { 'noise.rating-highest': 20 }).beyondOne).toBe(true);
    expect(protectorFigures).toEqual([
      ...['noise.rating-a-weighted', 'noise.rating-derating', 'noise.rating-highest'],
    ]);
  });

  it('say whether one protector, plugs and muffs together, or neither does', () => {
    expect(takenOffBy()).toEqual({ one: 13, both: 18 });
    expect(takenOffBy({ 'noise.rating-second': 3, 'noise.rating-highest': 27 })).toEqual({
      ...{ one: 10, both: 13 },
    });
    // Twice the time for each 3 dB (NIOSH), ten times for 10 dB (equal energy).
    for (const [over, by] of [
      [12.9, 'one'],
      [13.1, 'both'],
      [17.9, 'both'],
      [18.1, 'neither'],
    ] as const) {
      expect(earsFor(2 ** (over / 3), 'niosh')).toEqual({ needed: expect.closeTo(over, 9), by });
      expect(earsFor(10 ** (over / 10), 'eu-upper')).toEqual({
        needed: expect.closeTo(over, 9),
        by,
      });
    }
    expect(mostWithBoth('niosh')).toBeCloseTo(2 ** (18 / 3), 9);
    expect(mostWithBoth('eu-upper')).toBeCloseTo(10 ** 1.8, 9);
  });
});

describe('what is known of a tool', () => {
  const task = (change: Partial<ShiftTask> = {}) =>
    settleTask({ step: 'break-out', setting: 'open', hours: [1, 2], ...change });

  it('is the usual tool of the place, where none is named', () => {
    expect(task()).toEqual({
      ...{ step: 'break-out', setting: 'open', hours: [1, 2] },
      ...{ element: 'slab', tool: 'jackhammer' },
    });
    expect(task({ element: 'wall' }).tool).toBe('chipping-hammer');
    expect(task({ tool: 'hand-saw' }).tool).toBe('hand-saw');
  });

  it('is a range with its origin, the reader’s own before the published, or nothing', () => {
    // Levels and vibration as the sources have them: see the published tests.
    expect(levelOf(task())).toEqual({
      ...{ range: [100, 115], typical: 108 },
      origin: { from: 'figure', figure: 'noise.jackhammer' },
    });
    expect(levelOf(task({ ownLevel: 97 }))).toEqual({ range: [97, 97], origin: { from: 'own' } });
    expect(levelOf(task({ tool: 'hand-tools' }))).toBe('none');
    expect(levelOf(task({ tool: 'floor-grinder' }))).toBe('unknown');
    expect(levelOf(task(), { 'noise.jackhammer': 104 })).toMatchObject({
      ...{ range: [104, 104], typical: 104 },
    });
    expect(vibrationOf(task({ tool: 'scabbler' }))).toStrictEqual({
      range: [40, 40],
      origin: { from: 'figure', figure: 'vibration.scabbler' },
    });
    expect(vibrationOf(task({ tool: 'vacuum' }))).toBe('none');
    expect(vibrationOf(task({ tool: 'hand-saw' }))).toBe('unknown');
    const doubled = { 'vibration.maker-factor': 2 };
    expect(vibrationOf(task({ ownVibration: 3 }), doubled)).toMatchObject({ range: [6, 6] });
    const maker = { from: 'maker', figure: 'vibration.maker-factor' } as const;
    expect(vibrationOf(task({ ownVibration: 3 }))).toEqual({ range: [3, 6], origin: maker });
    expect(vibrationOf(task({ ownVibration: 3, ownVibrationFrom: 'maker' }))).toEqual({
      ...{ range: [3, 6], origin: maker },
    });
    expect(vibrationOf(task({ ownVibration: 3, ownVibrationFrom: 'measured' }))).toEqual({
      ...{ range: [3, 3], origin: { from: 'own' } },
    });
    expect(
      figuresOf([{ from: 'own' }, maker, maker, { from: 'figure', figure: 'noise.jackhammer' }]),
    ).toEqual(['vibration.maker-factor', 'noise.jackhammer']);
  });

  it('runs for its usual hours, the middle where nobody said, never past the ends', () => {
    expect(
      [{}, { typical: 1.2 }, { typical: 5 }, { typical: 0.5 }].map((more) =>
        usualHours(task(more)),
      ),
    ).toEqual([1.5, 1.2, 2, 1]);
  });
});

describe('what is wrong with a day', () => {
  const good: ShiftTask = { step: 'break-out', setting: 'open', hours: [1, 2] };
  const of = (...changes: Partial<ShiftTask>[]) =>
    shiftProblems([
      { id: 'a', tasks: [] },
      { id: 'b', tasks: changes.map((change) => ({ ...good, ...change })) },
    ]);
  const at = (field: string) => `workers[1].tasks[0].${field}`;
  const day = 'limit.exposure-hours';

  it.each([
    [{ ownLevel: 49 }, 'level-outside', 'ownLevel', 49, 'limit.noise-level'],
    [{ ownLevel: 141 }, 'level-outside', 'ownLevel', 141, 'limit.noise-level'],
    [{ ownLevel: NaN }, 'not-a-number', 'ownLevel', NaN, 'limit.noise-level'],
    [{ ownVibration: 101 }, 'vibration-outside', 'ownVibration', 101, 'limit.vibration'],
    [{ ownVibration: -1 }, 'vibration-outside', 'ownVibration', -1, 'limit.vibration'],
    [{ wheel: 24 }, 'wheel-outside', 'wheel', 24, 'limit.wheel'],
    [{ wheel: 1201 }, 'wheel-outside', 'wheel', 1201, 'limit.wheel'],
    [{ hours: [-1, 2] }, 'hours-negative', 'hours[0]', -1, day],
    [{ hours: [1, 25] }, 'hours-over-a-day', 'hours[1]', 25, day],
    [{ hours: [Infinity, 2] }, 'not-a-number', 'hours[0]', Infinity, day],
  ] as const)('%j', (change, problem, field, got, limit) => {
    expect(of(change)).toEqual([{ problem, field: at(field), got, limit }]);
  });

  it('is all of it, in the order of the input, and the whole day only where its parts are right', () => {
    expect(of({})).toEqual([]);
    expect(of({ ownLevel: 50, ownVibration: 100, wheel: 25, hours: [0, 24] })).toEqual([]);
    expect(of({ hours: [2, 1] })).toEqual([
      { problem: 'hours-wrong-way-round', field: at('hours'), got: 2 },
    ]);
    expect(of({ hours: [-1, 25], ownLevel: 1 }).map(({ field }) => field)).toEqual([
      ...[at('hours[0]'), at('hours[1]'), at('ownLevel')],
    ]);
    expect(of({ hours: [12, 24] }, { hours: [12, 24] })).toEqual([]);
    expect(of({ hours: [12, 24] }, { hours: [12.5, 13] })).toEqual([
      { problem: 'day-too-long', field: 'workers[1].tasks', got: 24.5, limit: day },
    ]);
    expect(of({ hours: [20, 24] }, { hours: [20, 24], wheel: 1 })).toHaveLength(1);
  });

  it('and with the crew', () => {
    const crew = (people: number) => shiftProblems([], people);
    expect([crew(1), crew(50)]).toEqual([[], []]);
    for (const got of [0, 51, 2.5])
      expect(crew(got)).toEqual([
        { problem: 'crew-outside', field: 'crew', got, limit: 'limit.crew' },
      ]);
    expect(crew(NaN)).toEqual([
      { problem: 'not-a-number', field: 'crew', got: NaN, limit: 'limit.crew' },
    ]);
    expect(shiftProblems([{ id: 'a', tasks: [{ ...good, wheel: 1 }] }], 0)).toHaveLength(2);
  });
});
