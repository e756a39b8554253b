import { describe, expect, it } from 'vitest';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import {
  toldTime,
  triggerMinutes,
  turnOf,
  usualMinutes,
  usualPoints,
  vibrationLimit,
  vibrationOfDay,
} from '$lib/safety/vibration';

const near = (value: number) => expect.closeTo(value, 9) as number;
const task = (change: Partial<ShiftTask> = {}) =>
  settleTask({ step: 'break-out', setting: 'open', hours: [1, 2], ...change });

// HSE ready reckoner: points are 2 a2 an hour; 100 at the action value, 400 at the limit.
describe('the vibration of a day', () => {
  it('runs from the weak end and the short time to the strong end and the long, with both values', () => {
    const day = vibrationOfDay([task(), task({ tool: 'hand-tools' })]);
    const daily = (points: number) => near(2.5 * Math.sqrt(points / 100));
    expect(day).toEqual({
      points: { low: near(50), high: near(1600), open: false },
      typical: { points: near(432), daily: daily(432) },
      daily: { low: daily(50), high: daily(1600), open: false },
      standing: { action: 'may-be-over', limit: 'may-be-over' },
      tasks: [
        {
          tool: 'jackhammer',
          magnitude: expect.objectContaining({ range: [5, 20], typical: 12 }) as object,
          points: { low: near(50), high: near(1600), open: false },
          minutes: {
            action: { atHigh: near(7.5), atTypical: near((60 * 50) / 144), atLow: near(120) },
            limit: { atHigh: near(30), atTypical: near((60 * 200) / 144), atLow: near(480) },
          },
        },
        ...[
          {
            tool: 'hand-tools',
            magnitude: 'none',
            points: { low: 0, high: 0, open: false },
            minutes: null,
          },
        ],
      ],
      unknown: [],
      figures: [
        ...['vibration.road-breaker', 'vibration.day', 'vibration.action', 'vibration.limit'],
        'vibration.action-points',
      ],
    });
  });

  it('is open with a tool nobody has measured, but for one that does not run', () => {
    const saw = task({ tool: 'hand-saw' });
    const day = vibrationOfDay([saw, saw, task({ tool: 'scarifier', hours: [0, 0] })]);
    expect(day.unknown).toEqual(['hand-saw']);
    expect(day.points).toEqual({ low: 0, high: 0, open: true });
    expect(day.standing).toEqual({ action: 'unknown', limit: 'unknown' });
    expect(day.tasks[0]).toMatchObject({ magnitude: 'unknown', minutes: null });
    expect(vibrationOfDay([task({ tool: 'scarifier', hours: [0, 0] })]).points.open).toBe(false);
    expect(usualPoints(saw)).toBe(0);
    expect(usualPoints(task({ tool: 'scabbler' }))).toBeCloseTo(2 * 40 ** 2 * 1.5, 9);
  });

  it('is told in times that a crew can keep, rounded down, in a day of 24 h', () => {
    expect([toldTime(0.9), toldTime(59.9), toldTime(60), toldTime(119)]).toEqual([
      { value: 0, unit: 'min' },
      { value: 59, unit: 'min' },
      { value: 1, unit: 'h' },
      { value: 1.9, unit: 'h' },
    ]);
    expect([turnOf(14.99), turnOf(15), turnOf(44), turnOf(45), turnOf(0)]).toEqual([
      ...[null, 0.25, 0.5, 0.75, null],
    ]);
    expect(turnOf(45, { 'share.step': 0.5 })).toBe(0.5);
    expect(usualMinutes({ atHigh: 1, atLow: 3 })).toBe(1);
    expect(usualMinutes({ atHigh: 1, atTypical: 2, atLow: 3 })).toBe(2);
    expect([triggerMinutes('action', 0), triggerMinutes('action', -1)]).toEqual([
      Infinity,
      Infinity,
    ]);
    const weak = task({ ownVibration: 0.1, ownVibrationFrom: 'measured' });
    expect(vibrationOfDay([weak]).tasks[0]?.minutes?.action).toEqual({ atHigh: 1440, atLow: 1440 });
    expect([vibrationLimit('action'), vibrationLimit('limit')]).toEqual([2.5, 5]);
  });
});
