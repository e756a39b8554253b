import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedHours, noiseLimitIds, partOf } from '$lib/safety/noise-limits';
import { noiseOfDay } from '$lib/safety/noise';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { rangeOf } from '$shared/figures';

const level = fc.double({ min: 50, max: 140, noNaN: true });
// A thousandth of an hour, or none: what is shorter is lost in rounding.
const hours = fc.integer({ min: 0, max: 24_000 }).map((thousandths) => thousandths / 1000);
const limit = fc.constantFrom(...noiseLimitIds);
const loud = (ownLevel: number, time: number): ShiftTask => ({
  step: 'break-out',
  setting: 'open',
  hours: [time, time],
  ownLevel,
});
const dayOf = (...tasks: ShiftTask[]) => noiseOfDay(tasks.map(settleTask));

describe('parts of a limit', () => {
  test('add over time: two stretches at one level are one long stretch', () => {
    fc.assert(
      fc.property(limit, level, hours, hours, (id, decibels, one, two) => {
        const both = partOf(id, decibels, one + two);
        expect(partOf(id, decibels, one) + partOf(id, decibels, two)).toBeCloseTo(
          both,
          9 - Math.ceil(Math.log10(1 + both)),
        );
      }),
    );
  });
  test('a day is the sum of its tasks, in any order', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(level, hours), { minLength: 1, maxLength: 5 }), (mix) => {
        const tasks = mix.map(([decibels, time]) => loud(decibels, time));
        const day = dayOf(...tasks);
        const turned = dayOf(...[...tasks].reverse());
        for (const id of noiseLimitIds) {
          const sum = mix.reduce((all, [decibels, time]) => all + partOf(id, decibels, time), 0);
          expect(day.limits[id].part.high / Math.max(sum, 1e-300)).toBeCloseTo(sum ? 1 : 0, 9);
          expect(turned.limits[id].standing).toBe(day.limits[id].standing);
        }
      }),
    );
  });
  test('louder or longer never counts less', () => {
    fc.assert(
      fc.property(limit, level, level, hours, hours, (id, a, b, c, d) => {
        const [quieter, louder] = [Math.min(a, b), Math.max(a, b)];
        const [shorter, longer] = [Math.min(c, d), Math.max(c, d)];
        expect(partOf(id, louder, longer)).toBeGreaterThanOrEqual(partOf(id, quieter, shorter));
      }),
    );
  });
  test('each exchange rate halves the time', () => {
    fc.assert(
      fc.property(fc.double({ min: 85, max: 130, noNaN: true }), (decibels) => {
        expect(allowedHours('osha-limit', decibels + 5) * 2).toBeCloseTo(
          allowedHours('osha-limit', decibels),
          9,
        );
        expect(allowedHours('niosh', decibels + 3) * 2).toBeCloseTo(
          allowedHours('niosh', decibels),
          9,
        );
      }),
    );
  });
  test('the stricter rule is never the laxer one: NIOSH counts at least as much as OSHA', () => {
    fc.assert(
      fc.property(level, hours, (decibels, time) => {
        expect(partOf('niosh', decibels, time)).toBeGreaterThanOrEqual(
          partOf('osha-limit', decibels, time),
        );
      }),
    );
  });
});

describe('a day with ranges', () => {
  test('takes the quiet end with the short time and the loud end with the long', () => {
    const [quiet, loudest] = rangeOf('noise.jackhammer');
    const { limits, tasks } = dayOf({ step: 'break-out', setting: 'open', hours: [1, 2] });
    expect(limits.niosh.part.low).toBeCloseTo(partOf('niosh', quiet, 1), 12);
    expect(limits.niosh.part.high).toBeCloseTo(partOf('niosh', loudest, 2), 9);
    expect(limits.niosh.part.open).toBe(false);
    expect(tasks[0]?.allowed?.['osha-limit']).toEqual([
      allowedHours('osha-limit', loudest),
      allowedHours('osha-limit', quiet),
    ]);
  });
  test('the hours left bring the day to the limit and not past it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 81, max: 105, noNaN: true }),
        fc.double({ min: 0.05, max: 4, noNaN: true }),
        (decibels, time) => {
          for (const id of noiseLimitIds) {
            const { part, hoursLeft, standing } = dayOf(loud(decibels, time)).limits[id];
            if (standing === 'over') expect(hoursLeft.high).toBe(0);
            else if (hoursLeft.high < 24)
              expect((part.high * (time + hoursLeft.low)) / time).toBeCloseTo(1, 9);
          }
        },
      ),
    );
  });
  test('no level published: at least what the known tools give, never a guess', () => {
    const known = dayOf({ step: 'edge-work', setting: 'open', hours: [1, 1] });
    const mixed = dayOf(
      { step: 'edge-work', setting: 'open', hours: [1, 1] },
      { step: 'scarify', setting: 'open', hours: [4, 4] },
    );
    expect(mixed.unknown).toEqual(['scarifier']);
    for (const id of noiseLimitIds) {
      expect(mixed.limits[id].part).toEqual({ ...known.limits[id].part, open: true });
      expect(mixed.limits[id].hoursLeft.low).toBe(0);
      expect(mixed.limits[id].standing).not.toBe('under');
    }
  });
  test('an unknown tool alone is unknown, and the reader can say', () => {
    const day = dayOf({ step: 'shotblast', setting: 'indoors', hours: [2, 2] });
    expect(day.limits['osha-limit'].standing).toBe('unknown');
    expect(day.tasks[0]).toMatchObject({ level: 'unknown', allowed: null });
    const told = dayOf({ step: 'shotblast', setting: 'indoors', hours: [2, 2], ownLevel: 84 });
    expect(told.unknown).toEqual([]);
    expect(told.limits['osha-limit'].standing).toBe('under');
    expect(told.tasks[0]?.level).toMatchObject({ origin: { from: 'own' } });
  });
  test('hand tools add nothing, and a silent day has no mean level to speak of', () => {
    const day = dayOf({ step: 're-sound', setting: 'indoors', hours: [1, 1] });
    expect(day.limits['eu-lower']).toMatchObject({
      part: { low: 0, high: 0, open: false },
      level: { low: 0, high: 0 },
      standing: 'under',
    });
  });
  test('the top of Table D-2 is told whatever the time', () => {
    const day = (ownLevel: number) => dayOf(loud(ownLevel, 0.01)).ceiling;
    expect([day(115), day(116)]).toEqual(['under', 'over']);
    expect(dayOf({ step: 'abrasive-blast', setting: 'open', hours: [1, 1] }).ceiling).toBe(
      'may-be-over',
    );
  });
});

describe('protector', () => {
  test('worn as rated for, it brings the day down to the limit', () => {
    fc.assert(
      fc.property(fc.double({ min: 90, max: 115, noNaN: true }), (decibels) => {
        const { level: mean, protector } = dayOf(loud(decibels, 8)).limits.niosh;
        expect(mean.high - protector.needed.high).toBeCloseTo(85, 9);
        expect((protector.rating.high - 7) * 0.5).toBeCloseTo(protector.needed.high, 9);
      }),
    );
  });
  test('more than any on sale is said', () => {
    expect(dayOf(loud(104, 8)).limits.niosh.protector.beyondOne).toBe(true);
    expect(dayOf(loud(95, 8)).limits.niosh.protector.beyondOne).toBe(false);
  });
});
