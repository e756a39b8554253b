import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { safetyOf } from '$lib/safety/safety-of';
import { shiftProblems } from '$lib/safety/problems';
import type { ShiftTask } from '$lib/safety/types';
import { figures, rangeOf } from '$shared/figures';
import { stepIds } from '$shared/methods';
import { onTrial, rounds } from '../helpers/rounds';

const task: ShiftTask = { step: 'break-out', setting: 'indoors', hours: [1, 2] };
const problemsOf = (change: Partial<ShiftTask>) =>
  shiftProblems([
    { id: 'a', tasks: [task] },
    { id: 'b', tasks: [task, { ...task, ...change }] },
  ]);

describe('bad numbers', () => {
  test.each<[Partial<ShiftTask>, string, string]>([
    [{ ownLevel: 49.9 }, 'level-outside', 'ownLevel'],
    [{ ownLevel: 140.1 }, 'level-outside', 'ownLevel'],
    [{ ownLevel: NaN }, 'not-a-number', 'ownLevel'],
    [{ ownVibration: -0.1 }, 'vibration-outside', 'ownVibration'],
    [{ ownVibration: 100.1 }, 'vibration-outside', 'ownVibration'],
    [{ ownVibration: Infinity }, 'not-a-number', 'ownVibration'],
    [{ wheel: 0 }, 'wheel-outside', 'wheel'],
    [{ hours: [-1 / 60, 1] }, 'hours-negative', 'hours[0]'],
    [{ hours: [0, 24.1] }, 'hours-over-a-day', 'hours[1]'],
    [{ hours: [NaN, 1] }, 'not-a-number', 'hours[0]'],
    [{ hours: [3, 2] }, 'hours-wrong-way-round', 'hours'],
  ])('%j is %s at %s', (change, problem, field) => {
    expect(problemsOf(change)).toEqual([
      expect.objectContaining({ problem, field: `workers[1].tasks[1].${field}` }),
    ]);
  });
  test('the ends of each range are still sound', () => {
    for (const ownLevel of rangeOf('limit.noise-level'))
      expect(problemsOf({ ownLevel })).toEqual([]);
    for (const ownVibration of rangeOf('limit.vibration'))
      expect(problemsOf({ ownVibration })).toEqual([]);
    expect(problemsOf({ hours: [0, 0] })).toEqual([]);
  });
  test('a day of more than 24 h in all', () => {
    expect(problemsOf({ hours: [23.5, 24] })).toEqual([
      expect.objectContaining({ problem: 'day-too-long', field: 'workers[1].tasks', got: 24.5 }),
    ]);
  });
  test('the crew is a whole number', () => {
    expect(shiftProblems([], 2.5)).toEqual([
      expect.objectContaining({ problem: 'crew-outside', field: 'crew' }),
    ]);
    expect(shiftProblems([], 51)).toHaveLength(1);
    expect(shiftProblems([], 3)).toEqual([]);
  });
  test('only the problems come back', () => {
    const result = safetyOf({
      region: 'us',
      workers: [{ id: 'a', tasks: [{ ...task, ownLevel: 0 }] }],
    });
    expect(result.ok).toBe(false);
    expect(result).not.toHaveProperty('safety');
  });
});

const anyTask: fc.Arbitrary<ShiftTask> = fc
  .record(
    {
      step: fc.constantFrom(...stepIds),
      setting: fc.constantFrom('indoors', 'sheltered', 'open'),
      element: fc.constantFrom('slab', 'steps', 'wall', 'soffit', 'suspended-slab'),
      hours: fc
        .tuple(fc.integer({ min: 0, max: 16 }), fc.integer({ min: 0, max: 16 }))
        .map(([a, b]) => [Math.min(a, b) / 4, Math.max(a, b) / 4] as const),
      ownLevel: fc.integer({ min: 50, max: 140 }),
      ownVibration: fc.integer({ min: 0, max: 100 }),
      wheel: fc.integer({ min: 25, max: 1200 }),
    },
    { requiredKeys: ['step', 'setting', 'hours'] },
  )
  .map((made) => made as ShiftTask);

describe('any crew', () => {
  test('gets a result whose every basis is a figure, with ends the right way round', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(anyTask, { maxLength: 4 }), { minLength: 1, maxLength: 3 }),
        fc.constantFrom('us' as const, 'elsewhere' as const),
        (days, region) => {
          const workers = days.map((tasks, index) => ({ id: String(index), tasks }));
          const result = safetyOf({ region, workers });
          if (!result.ok) throw new Error('expected a result');
          for (const id of result.safety.basis) expect(figures).toHaveProperty([id]);
          for (const { noise, vibration, silica } of result.safety.workers) {
            for (const { part, level, hoursLeft } of Object.values(noise.limits)) {
              for (const bounds of [part, level, hoursLeft])
                expect(bounds.low).toBeLessThanOrEqual(bounds.high);
              expect(Number.isFinite(level.high)).toBe(true);
            }
            expect(vibration.points.low).toBeLessThanOrEqual(vibration.points.high);
            for (const read of silica.tasks)
              if (read.kind === 'row') {
                expect(read.ways.length).toBeGreaterThan(0);
                for (const { pair } of read.ways) {
                  expect(pair[0]).toBeLessThanOrEqual(pair[1]);
                  expect(Number.isFinite(pair[1])).toBe(true);
                }
              }
          }
        },
      ),
      { numRuns: onTrial(rounds(15, 60), 5) },
    );
  });

  test('more work never makes a day safer', () => {
    fc.assert(
      fc.property(fc.array(anyTask, { maxLength: 3 }), anyTask, (tasks, more) => {
        const day = (list: readonly ShiftTask[]) => {
          const result = safetyOf({ region: 'us', workers: [{ id: 'a', tasks: list }] });
          const first = result.ok ? result.safety.workers[0] : undefined;
          if (!first) throw new Error('expected a result');
          return first;
        };
        const [before, after] = [day(tasks), day([...tasks, more])];
        for (const [id, { part }] of Object.entries(before.noise.limits))
          expect(
            after.noise.limits[id as keyof typeof after.noise.limits].part.high,
          ).toBeGreaterThanOrEqual(part.high);
        expect(after.vibration.points.high).toBeGreaterThanOrEqual(before.vibration.points.high);
        if (before.silica.protection === null) expect(after.silica.protection).toBeNull();
        else if (after.silica.protection !== null)
          expect(after.silica.protection).toBeGreaterThanOrEqual(before.silica.protection);
      }),
      { numRuns: onTrial(rounds(15, 60), 5) },
    );
  });
});

describe('duties', () => {
  const duties = (region: 'us' | 'elsewhere', change: Partial<ShiftTask> = {}) => {
    const result = safetyOf({ region, workers: [{ id: 'a', tasks: [{ ...task, ...change }] }] });
    if (!result.ok) throw new Error('expected a result');
    return result.safety.duties.map(({ id }) => id);
  };
  test('a respirator brings fit test and examination; shotblasting an assessment', () => {
    expect(duties('us')).toContain('medical-exam');
    expect(duties('us', { setting: 'open' })).not.toContain('medical-exam');
    expect(duties('us', { step: 'shotblast' })).toContain('assess-exposure');
    expect(duties('us')).toContain('written-plan');
  });
  test('elsewhere the country has the first word', () => {
    expect(duties('elsewhere')[0]).toBe('ask-your-country');
    expect(duties('us')).not.toContain('ask-your-country');
  });
});

test('sharing aims at the recommended noise limit, and at the upper action value elsewhere', () => {
  const work = { ...task, ownLevel: 91, ownVibration: 0, hours: [4, 4] as const };
  for (const [region, people] of [
    ['us', 2],
    ['elsewhere', 2],
  ] as const) {
    const result = safetyOf({ region, workers: [{ id: 'a', tasks: [work] }] });
    if (!result.ok) throw new Error('expected a result');
    expect(result.safety.sharing['noise-limit']).toMatchObject({ can: 'share', people });
  }
});
