import { describe, expect, it } from 'vitest';
import type { CheckResult, ClockRecord, PullOffTest } from '$lib/answers/readiness-record';
import { openTime } from '$lib/readiness/clock';
import { judgeReadings } from '$lib/readiness/judge-readings';
import { readPullOff } from '$lib/readiness/pull-off';
import { askedBy } from '$lib/readiness/requirement';
import type { Problem } from '$lib/readiness/rules';

const good: PullOffTest = { stress: 2, shares: { base: 100 } };
const read = (rows: readonly PullOffTest[]) => {
  const problems: Problem[] = [];
  return { ...readPullOff(rows, problems), problems };
};

describe('a pull-off row that cannot be read names its row and field', () => {
  it.each<[string, PullOffTest, Partial<Problem>]>([
    ['NaN', { stress: NaN, shares: { base: 100 } }, { id: 'not-a-number', field: 'stress' }],
    ['text', { stress: '1.8?', shares: { base: 100 } }, { id: 'not-a-number', typed: '1.8?' }],
    ['endless', { stress: Infinity, shares: { base: 100 } }, { id: 'not-a-number' }],
    ['negative', { stress: -1, shares: { base: 100 } }, { id: 'negative', field: 'stress' }],
    ['psi typed as MPa', { stress: 250, shares: { base: 100 } }, { id: 'out-of-range' }],
    ['no stress', { shares: { base: 100 } }, { id: 'no-stress', field: 'stress' }],
    ['both', { stress: 2, force: 3, disc: 50, shares: { base: 100 } }, { id: 'stress-and-force' }],
    ['0 mm disc', { force: 3, disc: 0, shares: { base: 100 } }, { id: 'zero-disc', field: 'disc' }],
    ['no disc', { force: 3, shares: { base: 100 } }, { id: 'zero-disc', field: 'disc' }],
    [
      'tiny disc',
      { force: 3, disc: 2, shares: { base: 100 } },
      { id: 'out-of-range', field: 'disc' },
    ],
    ['negative force', { force: -3, disc: 50, shares: { base: 100 } }, { id: 'negative' }],
    ['N typed as kN', { force: 3600, disc: 50, shares: { base: 100 } }, { id: 'out-of-range' }],
    ['NaN force', { force: NaN, disc: 50, shares: { base: 100 } }, { id: 'not-a-number' }],
    ['no plane', { stress: 2, shares: {} }, { id: 'no-plane', field: 'shares' }],
    ['70 %', { stress: 2, shares: { base: 40, bond: 30 } }, { id: 'shares-not-100', typed: 70 }],
    ['120 %', { stress: 2, shares: { base: 60, glue: 60 } }, { id: 'shares-not-100', typed: 120 }],
    [
      'share below 0',
      { stress: 2, shares: { base: -10, bond: 110 } },
      { id: 'negative', field: 'base' },
    ],
    [
      'share in words',
      { stress: 2, shares: { base: 'half' } },
      { id: 'not-a-number', field: 'base' },
    ],
  ])('%s', (_, row, expected) => {
    const { problems, tests } = read([good, row, good]);
    expect(problems[0]).toMatchObject({ check: 'pull-off', row: 2, ...expected });
    // The rows beside it still count.
    expect(tests.map((test) => test.row)).toEqual([1, 3]);
  });

  it('takes thirds typed as 33, 33, 33', () => {
    const { problems } = read([{ stress: 2, shares: { base: 33, bond: 33, repair: 33 } }]);
    expect(problems).toEqual([]);
  });

  it('says how wide the force may be for that disc', () => {
    const { problems } = read([{ force: 100, disc: 50, shares: { base: 100 } }]);
    // 20 MPa on 1963.5 mm2 is 39.27 kN, by hand.
    expect(problems[0]?.limits?.[1]).toBeCloseTo(39.27, 2);
  });

  it('refuses 10,000 rows in one piece, quickly, and says how many it takes', () => {
    const rows = Array.from({ length: 10_000 }, () => good);
    const place = { check: 'pull-off', field: 'reading' };
    expect(read(rows)).toEqual({
      ...{ tests: [], groups: [], valid: 0, voided: 0 },
      problems: [{ id: 'too-many-rows', ...place, typed: 10_000, limits: [0, 500] }],
    });
  });

  it('takes 500 rows', () => {
    expect(read(Array.from({ length: 500 }, () => good)).valid).toBe(500);
  });
});

describe('a requirement that cannot be read', () => {
  it.each([
    [NaN, 'not-a-number'],
    ['lots', 'not-a-number'],
    [-1, 'negative'],
    [250, 'out-of-range'],
  ])('%s', (mean, id) => {
    const problems: Problem[] = [];
    expect(askedBy({ id: 'own', mean }, problems)).toBeNull();
    expect(problems).toMatchObject([{ id, check: 'pull-off', field: 'mean', typed: mean }]);
  });
});

describe('a reading that cannot be read', () => {
  const judge = (check: 'ph' | 'water-drop' | 'profile', result: CheckResult) => {
    const problems: Problem[] = [];
    const context = { profile: [5, 10] as const, corroded: false };
    return { ...judgeReadings(check, result, 1, context, problems), problems };
  };
  it.each([
    ['ph', 'seven', 'not-a-number'],
    ['ph', 15, 'out-of-range'],
    ['ph', -1, 'negative'],
    ['profile', 0, 'out-of-range'],
    ['profile', 11, 'out-of-range'],
    ['water-drop', 'dances', 'unknown-choice'],
    ['water-drop', 3, 'unknown-choice'],
  ] as const)('%s %s: %s', (check, reading, id) => {
    const { problems } = judge(check, { readings: [reading], given: { rinse: 7 } });
    expect(problems).toMatchObject([{ id, check, field: 'reading', row: 1, typed: reading }]);
  });
  it('names the circumstance that is wrong', () => {
    const { problems } = judge('ph', { readings: [7], given: { rinse: 'tap' } });
    expect(problems).toMatchObject([{ id: 'not-a-number', field: 'rinse', typed: 'tap' }]);
  });
  it('refuses too many in one piece', () => {
    const readings = Array.from({ length: 10_000 }, () => 7);
    expect(judge('ph', { readings, given: { rinse: 7 } }).problems).toMatchObject([
      { id: 'too-many-rows', typed: 10_000 },
    ]);
  });
});

describe('the clock', () => {
  const now = '2026-05-04T12:00:00Z';
  const clock = (prepared?: string, spoiled: ClockRecord['spoiled'] = []) => {
    const problems: Problem[] = [];
    const record = { spoiled, ...(prepared && { prepared }) };
    return { ...openTime(record, now, problems), problems };
  };

  // Source: UFC 3-270-03 3.1: open no longer than 24 h, else clean again.
  it.each([
    ['2026-05-04T08:00:00Z', 'fresh', 4],
    ['2026-05-03T12:00:00Z', 'fresh', 24],
    ['2026-05-03T11:59:00Z', 'gone-stale', 24 + 1 / 60],
    ['2026-05-01T12:00:00Z', 'gone-stale', 72],
  ])('prepared %s: %s after %f h', (prepared, state, open) => {
    const found = clock(prepared);
    expect(found.state).toBe(state);
    expect('open' in found && found.open).toBeCloseTo(open, 6);
  });

  it('tells how long is left', () => {
    expect(clock('2026-05-04T08:00:00Z')).toMatchObject({ left: 20, limit: 24 });
  });

  it('counts hours across a change of the clocks, by the zone written with the time', () => {
    // Central Europe, 25 October 2026: 02:30 summer time to 02:30 winter time is one hour later.
    const problems: Problem[] = [];
    const record = { prepared: '2026-10-25T02:30:00+02:00', spoiled: [] };
    const found = openTime(record, '2026-10-25T02:30:00+01:00', problems);
    expect(found).toMatchObject({ state: 'fresh', open: 1 });
  });

  it.each(['rain', 'dust', 'traffic'] as const)('%s ends it at once', (by) => {
    const found = clock('2026-05-04T08:00:00Z', [{ by, at: '2026-05-04T09:00:00Z' }]);
    expect(found).toMatchObject({ state: 'spoiled', by });
  });

  it('forgets what spoiled it before it was cleaned again', () => {
    const rain = { by: 'rain', at: '2026-05-04T09:00:00Z' } as const;
    expect(clock('2026-05-04T10:00:00Z', [rain]).state).toBe('fresh');
  });

  it('has not started without a time, and says so of a time it cannot read', () => {
    expect(clock().state).toBe('not-started');
    expect(clock('yesterday-ish')).toMatchObject({
      state: 'not-started',
      problems: [{ id: 'bad-time', check: 'open-time', field: 'prepared' }],
    });
  });

  it('refuses a time that has not come', () => {
    expect(clock('2026-05-05T12:00:00Z')).toMatchObject({
      state: 'time-ahead',
      problems: [{ id: 'time-ahead' }],
    });
  });
});
