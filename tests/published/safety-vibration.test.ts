import { describe, expect, test } from 'vitest';
import { wholeFigures } from '$shared/figure-notes';
import { rangeOf } from '$shared/figures';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import {
  dailyOfPoints,
  dailyVibration,
  pointsOf,
  pointsOfDay,
  triggerMinutes,
  vibrationOfDay,
} from '$lib/safety/vibration';

describe('hand-arm vibration', () => {
  test('HSE ready reckoner: 5 m/s2 for 3 h is 150 points', () => {
    expect(pointsOf(5, 3)).toBeCloseTo(150, 9);
    // A(8) 3.06, derived: 5 sqrt(3 / 8).
    expect(dailyVibration(5, 3)).toBeCloseTo(3.06, 2);
  });
  test('HSE ready reckoner: 100 points at the action value, 400 at the limit value', () => {
    expect(pointsOfDay(2.5)).toBeCloseTo(100, 12);
    expect(pointsOfDay(5)).toBeCloseTo(400, 12);
    expect(dailyOfPoints(400)).toBeCloseTo(5, 12);
  });

  // EU guide to good practice, three tools: 4 m/s2 2.5 h, 3 m/s2 1 h, 20 m/s2 15 min
  // (from memory; the arithmetic is derived).
  const tools: readonly (readonly [number, number])[] = [
    [4, 2.5],
    [3, 1],
    [20, 0.25],
  ];
  test('EU guide: partial exposures 2.2, 1.1, 3.5 and together 4.3 m/s2', () => {
    const partial = tools.map(([magnitude, hours]) => dailyVibration(magnitude, hours));
    expect(partial.map((value) => value.toFixed(1))).toEqual(['2.2', '1.1', '3.5']);
    const day = vibrationOfDay(
      tools.map(([ownVibration, hours]) =>
        settleTask({
          step: 'chase-crack',
          setting: 'open',
          hours: [hours, hours],
          ownVibration,
          ownVibrationFrom: 'measured',
        } satisfies ShiftTask),
      ),
    );
    expect(day.daily.high.toFixed(1)).toBe('4.3');
    expect(day.standing).toEqual({ action: 'over', limit: 'under' });
    expect(day.points.high).toBeCloseTo(298, 9);
  });
  test('EU guide: 80 + 18 + 200 = 298 points', () => {
    expect(tools.map(([magnitude, hours]) => Math.round(pointsOf(magnitude, hours)))).toEqual([
      80, 18, 200,
    ]);
  });
  test('trigger time: 10 m/s2 reaches the action value in 30 minutes and the limit in 2 hours (derived from A(8))', () => {
    expect(triggerMinutes('action', 10)).toBeCloseTo(30, 9);
    expect(triggerMinutes('limit', 10)).toBeCloseTo(120, 9);
  });

  // HSE's table of common tools, as reported in a university's copy: lowest, typical, highest.
  test.each([
    ['vibration.road-breaker', 5, 12, 20],
    ['vibration.demolition-hammer', 8, 15, 25],
    ['vibration.hammer-drill', 6, 9, 25],
    ['vibration.needle-scaler', 5, undefined, 18],
    ['vibration.angle-grinder', 4, undefined, 8],
    ['vibration.scabbler', 40, undefined, 40],
  ] as const)('%s: %d, %s, %d m/s2', (figure, low, typical, high) => {
    expect(rangeOf(figure)).toEqual([low, high]);
    // What the table leaves open may stand on common practice, and has to say so.
    const { typical: here, partBasis } = wholeFigures[figure];
    if (typical === undefined) expect(here === undefined || partBasis?.typical).toBeTruthy();
    else expect([here, partBasis]).toEqual([typical, undefined]);
  });
});
