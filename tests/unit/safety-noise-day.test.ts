import { describe, expect, it } from 'vitest';
import { heardBeside, heardFrom, noiseOfDay } from '$lib/safety/noise';
import { noiseLimitIds, partOf } from '$lib/safety/noise-limits';
import { usualPart, usualPartOf } from '$lib/safety/noise-usual';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';

const near = (value: number) => expect.closeTo(value, 9) as number;
const task = (change: Partial<ShiftTask> = {}) =>
  settleTask({ step: 'break-out', setting: 'open', hours: [1, 2], ...change });
const loud = (ownLevel: number, hours: number) => task({ ownLevel, hours: [hours, hours] });

describe('what is heard from beside', () => {
  const hours = { low: 1, typical: 1.5, high: 2 };
  // A point source in the open: 6 dB less for each doubling from 1 m; under a roof 3 to 5. Beside is
  // 2 to 10 m off, usually 4 (figures `noise.*`). A jackhammer: 100 to 115, usually 108.
  it('is the machine, less what the distance takes off, farthest and quietest to nearest and loudest', () => {
    const far = Math.log2(10);
    expect(heardBeside(task())).toEqual({
      ...{ tool: 'jackhammer', hours },
      level: { low: near(100 - 6 * far), typical: near(108 - 12), high: near(115 - 6) },
    });
    for (const setting of ['indoors', 'sheltered'] as const)
      expect(heardBeside(task({ setting }))?.level).toEqual({
        ...{ low: near(100 - 5 * far), typical: near(108 - 8), high: near(115 - 3) },
      });
    expect(heardBeside(task({ ownLevel: 90 }))?.level?.typical).toBeCloseTo(78, 9);
    // Two doublings fewer where the level was taken at 4 m.
    const own = { 'noise.at-operator': 4, 'noise.beside': 8 };
    expect(heardBeside(task(), own)?.level).toEqual({
      ...{ low: near(94), typical: near(102), high: near(109) },
    });
    expect(heardBeside(task({ tool: 'hand-saw' }), { 'noise.concrete-saw': 102 })).toMatchObject({
      level: { typical: near(90) },
    });
  });
  it('is nothing of what makes no noise, and open of what nobody has measured', () => {
    expect(heardBeside(task({ tool: 'hand-tools' }))).toBeNull();
    expect(heardBeside(task({ tool: 'floor-grinder' }))).toEqual({
      ...{ tool: 'floor-grinder', level: null, hours },
    });
    const others = [[task(), task({ tool: 'hand-tools' })], [], [task({ tool: 'hand-saw' })]];
    expect(heardFrom([task()], others).map(({ tool }) => tool)).toEqual([
      ...['jackhammer', 'hand-saw'],
    ]);
    expect(heardFrom([], others)).toEqual([]);
  });
});

describe('the noise of a day', () => {
  it('is held against every rule, with what is left of the day and what the ears need', () => {
    const day = noiseOfDay([loud(94, 2), task({ tool: 'hand-tools', hours: [3, 3] })]);
    // NIOSH: 94 dB(A) for 1 h is all, so 2 h are twice, 88 over 8 h; a rating of 3 / 0.5 + 7 = 13.
    expect(day.limits.niosh).toEqual({
      part: { low: near(2), high: near(2), open: false },
      level: { low: near(88), high: near(88), open: false },
      standing: 'over',
      typical: { part: near(2), level: near(88) },
      hoursLeft: { low: 0, high: 0, open: false },
      protector: {
        needed: { low: near(3), high: near(3), open: false },
        rating: { low: near(13), high: near(13), open: false },
        beyondOne: false,
        cautions: expect.any(Array) as string[],
      },
      figures: [
        ...['noise.day', 'noise.niosh-criterion', 'noise.niosh-exchange'],
        ...['noise.rating-a-weighted', 'noise.rating-derating', 'noise.rating-highest'],
      ],
    });
    expect(Object.keys(day.limits)).toEqual([...noiseLimitIds]);
    // OSHA: 94 dB(A) is allowed for 8 / 2^(4/5) = 4.59 h: half a working day of it is left, no more.
    const allowed = 8 / 2 ** 0.8;
    expect(day.limits['osha-limit']).toMatchObject({
      standing: 'under',
      part: { low: near(2 / allowed) },
      hoursLeft: { low: near(allowed - 2), high: near(allowed - 2), open: false },
      protector: { needed: { low: 0, high: 0 }, rating: { low: 0, high: 0 } },
    });
    expect(day.tasks[0]?.allowed?.niosh).toEqual([near(1), near(1)]);
    expect(day.tasks[1]).toEqual({ tool: 'hand-tools', level: 'none', allowed: null });
    expect(day).toMatchObject({ beside: [], unknown: [], ceiling: 'under' });
    expect(day.figures).toEqual(['noise.osha-ceiling']);
  });

  it('of a quiet tool leaves all day, and of none is silence', () => {
    // 82 dB(A): NIOSH allows 16 h, so 4 h are a quarter, and 12 more are left; what is silent counts nothing.
    const day = noiseOfDay([loud(82, 4), task({ tool: 'hand-tools', hours: [3, 3] })]);
    expect(day.limits.niosh).toMatchObject({
      part: { high: near(0.25) },
      hoursLeft: { low: near(12) },
    });
    const silent = noiseOfDay([task({ tool: 'hand-tools' })]);
    expect(silent.limits.niosh).toMatchObject({
      part: { low: 0, high: 0, open: false },
      level: { low: 0, high: 0, open: false },
      typical: { part: 0, level: 0 },
      standing: 'under',
      hoursLeft: { low: 24, high: 24, open: false },
    });
    expect(noiseOfDay([]).ceiling).toBe('under');
    // Below the threshold of the OSHA rule nothing counts; a day has 24 h.
    expect(noiseOfDay([loud(70, 1)]).tasks[0]?.allowed).toMatchObject({
      ...{ 'osha-limit': [24, 24], niosh: [24, 24] },
    });
    expect(noiseOfDay([loud(83, 1)]).limits.niosh.hoursLeft.high).toBeCloseTo(
      8 * 2 ** (2 / 3) - 1,
      9,
    );
    expect(noiseOfDay([loud(60, 1)]).limits.niosh.hoursLeft.low).toBe(24);
  });

  it('runs from the quiet end and the short time to the loud end and the long', () => {
    const { limits, tasks, figures } = noiseOfDay([task()]);
    const part = (level: number, hours: number) => partOf('niosh', level, hours);
    expect(limits.niosh.part).toEqual({ low: part(100, 1), high: part(115, 2), open: false });
    expect(limits.niosh.typical.part).toBe(part(108, 1.5));
    expect(limits['osha-limit'].standing).toBe('may-be-over');
    // 100 dB(A): OSHA allows 2 h, and both have run; at 115 none is left.
    expect(limits['osha-limit'].hoursLeft).toEqual({ low: 0, high: near(0), open: false });
    expect(tasks[0]?.allowed?.['osha-limit']).toEqual([near(0.25), near(2)]);
    expect(figures).toEqual(['noise.jackhammer', 'noise.osha-ceiling']);
  });

  it('is open beside or with a machine nobody has measured, but for one that does not run', () => {
    const grind = task({ tool: 'floor-grinder' });
    const day = noiseOfDay([
      grind,
      grind,
      loud(82, 4),
      task({ tool: 'shotblaster', hours: [0, 0] }),
    ]);
    expect(day.unknown).toEqual(['floor-grinder']);
    expect(day.limits.niosh).toMatchObject({
      part: { low: near(0.25), high: near(0.25), open: true },
      standing: 'unknown',
      hoursLeft: { low: 0, open: true },
    });
    expect(day.ceiling).toBe('unknown');
    expect(noiseOfDay([task({ tool: 'shotblaster', hours: [0, 0] })]).limits.niosh.part.open).toBe(
      false,
    );
    const heard = {
      tool: 'floor-grinder',
      level: null,
      hours: { low: 0, typical: 0, high: 0 },
    } as const;
    const beside = (high: number) =>
      noiseOfDay([loud(82, 4)], undefined, [{ ...heard, hours: { ...heard.hours, high } }]);
    expect(beside(0).limits.niosh.part.open).toBe(false);
    expect(beside(1).limits.niosh.part).toEqual({ low: near(0.25), high: near(0.25), open: true });
  });

  it('counts what is heard from beside, and what that leaves', () => {
    const level = { low: 79, typical: 82, high: 85 };
    const heard = { tool: 'jackhammer', level, hours: { low: 2, typical: 4, high: 8 } } as const;
    const { limits, beside, figures } = noiseOfDay([loud(82, 4)], undefined, [heard]);
    // 85 dB(A) for 8 h, 82 for 16 and 79 for 32 are all of it.
    expect(limits.niosh.part).toEqual({ low: near(0.25 + 2 / 32), high: near(1.25), open: false });
    expect(limits.niosh.typical.part).toBeCloseTo(0.5, 9);
    // After 8 h beside, 4 h have used up 0.5 at the quiet end: 4 more.
    expect(limits.niosh.hoursLeft).toEqual({ low: 0, high: near(4), open: false });
    expect(beside).toEqual([heard]);
    expect(figures).toEqual([
      ...['noise.osha-ceiling', 'noise.beside', 'noise.at-operator', 'noise.per-doubling'],
      'noise.indoors-near',
    ]);
    expect(usualPart([loud(82, 4)], [heard, { ...heard, level: null }], 'niosh')).toBeCloseTo(
      0.5,
      9,
    );
    expect(usualPartOf(task({ tool: 'floor-grinder' }), 'niosh')).toBe(0);
    expect(
      usualPartOf(task({ tool: 'hand-saw' }), 'niosh', { 'noise.concrete-saw': 94 }),
    ).toBeCloseTo(1.5, 9);
  });

  // 29 CFR 1926.52 Table D-2 ends at 115 dB(A): above it no time is allowed.
  it('is told where the loudest tool passes the top of the table', () => {
    const ceiling = (...levels: number[]) =>
      noiseOfDay(levels.map((level) => loud(level, 0.1))).ceiling;
    expect([ceiling(115), ceiling(90, 116), ceiling(116, 90)]).toEqual(['under', 'over', 'over']);
    expect(noiseOfDay([task({ tool: 'blast-nozzle' }), loud(80, 1)]).ceiling).toBe('may-be-over');
  });
});
