import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { dailyOfPoints, pointsOf, triggerMinutes, vibrationOfDay } from '$lib/safety/vibration';
import { rangeOf } from '$shared/figures';

const magnitude = fc.double({ min: 0, max: 100, noNaN: true });
const hours = fc.double({ min: 0, max: 24, noNaN: true });
const measured = (ownVibration: number, time: number): ShiftTask => ({
  step: 'chase-crack',
  setting: 'open',
  hours: [time, time],
  ownVibration,
  ownVibrationFrom: 'measured',
});
const dayOf = (...tasks: ShiftTask[]) => vibrationOfDay(tasks.map(settleTask));

test('tools add as the root of the sum of squares', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(magnitude, hours), { maxLength: 5 }), (mix) => {
      const squares = mix.reduce((sum, [a, time]) => sum + (a * a * time) / 8, 0);
      const { daily } = dayOf(...mix.map(([a, time]) => measured(a, time)));
      expect(daily.high).toBeCloseTo(Math.sqrt(squares), 6);
    }),
  );
});

test('stronger or longer never counts less', () => {
  fc.assert(
    fc.property(magnitude, magnitude, hours, hours, (a, b, c, d) => {
      expect(pointsOf(Math.max(a, b), Math.max(c, d))).toBeGreaterThanOrEqual(
        pointsOf(Math.min(a, b), Math.min(c, d)),
      );
    }),
  );
});

test('the trigger minutes reach each limit exactly', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 100, noNaN: true }), (a) => {
      expect(dailyOfPoints(pointsOf(a, triggerMinutes('action', a) / 60))).toBeCloseTo(2.5, 9);
      expect(dailyOfPoints(pointsOf(a, triggerMinutes('limit', a) / 60))).toBeCloseTo(5, 9);
    }),
  );
  expect(triggerMinutes('action', 0)).toBe(Infinity);
});

describe('a task', () => {
  test('low, typical and high are all told where the table has them', () => {
    const [task] = dayOf({ step: 'break-out', setting: 'open', hours: [1, 1] }).tasks;
    expect(task?.tool).toBe('jackhammer');
    expect(task?.minutes?.action).toEqual({
      atHigh: triggerMinutes('action', 20),
      atTypical: triggerMinutes('action', 12),
      atLow: triggerMinutes('action', 5),
    });
    expect(task?.points).toMatchObject({ low: pointsOf(5, 1), high: pointsOf(20, 1) });
  });
  test('no typical value is made up where there is none', () => {
    const task = { step: 'scarify', tool: 'scabbler', setting: 'open', hours: [1, 1] } as const;
    expect(dayOf(task).tasks[0]?.minutes?.limit).not.toHaveProperty('atTypical');
  });
  test("the reader's own value wins; a maker's may be doubled", () => {
    const task = { step: 'break-out', setting: 'open', hours: [1, 1], ownVibration: 6 } as const;
    expect(dayOf(task).tasks[0]?.magnitude).toMatchObject({
      range: [6, 12],
      origin: { from: 'maker', figure: 'vibration.maker-factor' },
    });
    expect(dayOf({ ...task, ownVibrationFrom: 'measured' }).tasks[0]?.magnitude).toEqual({
      range: [6, 6],
      origin: { from: 'own' },
    });
  });
  test('an own value laid over a figure replaces its range and its typical value', () => {
    const day = vibrationOfDay(
      [settleTask({ step: 'break-out', setting: 'open', hours: [1, 1] })],
      { 'vibration.road-breaker': 7 },
    );
    expect(day.tasks[0]?.magnitude).toMatchObject({ range: [7, 7], typical: 7 });
  });
  test('nothing found: at least what the known tools give', () => {
    const known = dayOf({
      step: 'edge-work',
      tool: 'hand-grinder',
      setting: 'open',
      hours: [2, 2],
    });
    const mixed = dayOf(
      { step: 'edge-work', tool: 'hand-grinder', setting: 'open', hours: [2, 2] },
      { step: 'scarify', setting: 'open', hours: [1, 1] },
    );
    expect(mixed.points).toEqual({ ...known.points, open: true });
    expect(mixed.unknown).toEqual(['scarifier']);
    expect(mixed.standing.limit).toBe('unknown');
    const [low, high] = rangeOf('vibration.angle-grinder');
    expect(known.points).toEqual({ low: pointsOf(low, 2), high: pointsOf(high, 2), open: false });
  });
  test('what nobody holds shakes nobody', () => {
    const day = dayOf({ step: 'vacuum', setting: 'open', hours: [8, 8] });
    expect(day).toMatchObject({ points: { low: 0, high: 0, open: false }, unknown: [] });
  });
});
