import { describe, expect, it } from 'vitest';
import type { ClockRecord } from '$lib/answers/readiness-record';
import { openTime } from '$lib/readiness/clock';
import { judgeReadings } from '$lib/readiness/judge-readings';
import type { Problem } from '$lib/readiness/rules';
import { rangeOf, valueOf } from '$shared/figures';
import { context, judgeCheck } from '../helpers/readiness';

describe('what is said of readings', () => {
  it('how many failed, of how many, in which rows, and the first of them', () => {
    expect(judgeCheck('dust-tape', [0, '', 4, 1, 3, 0])).toEqual({
      state: 'not-ready',
      rule: 'dust-left',
      facts: { failed: 2, have: 5, rows: ['3', '5'], worst: 4, low: 5, high: 10 },
      figures: ['dust.most', 'dust.scale'],
    });
  });
  it('the same of what is looked at, where a row left blank is no row', () => {
    const problems: Problem[] = [];
    const bars = { readings: ['clean', '', 'rusty', 'rusty'] };
    expect(judgeReadings('bars-clean', bars, null, context, problems).facts).toMatchObject({
      failed: 2,
      have: 3,
      rows: ['3', '4'],
      worst: 'rusty',
    });
    expect(problems).toEqual([]);
  });
  it('a failure comes before what cannot be told yet, which comes before a pass', () => {
    expect(judgeCheck('half-cell', [-100, -250, -400]).rule).toBe('potential-high');
    expect(judgeCheck('half-cell', [-100, -250]).rule).toBe('potential-between');
  });
  it.each([
    ['chloride', [0.5], 'retest'],
    ['half-cell', [-250], 'retest'],
    ['fill-cured', ['young'], 'retest'],
    ['carbonation', [5], 'not-yet-checked'],
    ['ph', [7], 'not-yet-checked'],
  ] as const)('%s %j: %s', (check, readings, state) => {
    expect(judgeCheck(check, [...readings]).state).toBe(state);
  });
  it('waits for the finish before it judges a profile', () => {
    const open = { ...context, profile: null };
    expect(judgeCheck('profile', [4], {}, open)).toMatchObject({
      state: 'not-yet-checked',
      rule: 'profile-unknown',
      facts: { failed: 1, have: 1, rows: ['1'], worst: 4 },
    });
    const facts = judgeCheck('profile', [4], {}, open).facts;
    expect(facts).not.toHaveProperty('low');
  });
  it('both ends of the profile will do', () => {
    expect(judgeCheck('profile', [5, 10]).rule).toBe('passed');
  });
  it('all but the first reading is too few; none is nothing', () => {
    const two = judgeReadings('dust-tape', { readings: [0, 1] }, 3, context, []);
    expect(two).toEqual({
      state: 'not-yet-checked',
      rule: 'too-few',
      facts: { have: 2, need: 3 },
    });
    expect(judgeReadings('dust-tape', { readings: [0] }, null, context, []).rule).toBe('passed');
    expect(judgeReadings('sounding', undefined, null, context, [])).toEqual({
      state: 'not-yet-checked',
      rule: 'nothing-entered',
      figures: [],
    });
    expect(judgeReadings('dust-tape', { readings: ['', ''] }, 3, context, []).rule).toBe(
      'nothing-entered',
    );
    // An entry that cannot be read is not nothing.
    expect(judgeReadings('dust-tape', { readings: ['x'] }, 3, context, []).rule).toBe('too-few');
  });
  it('has what else was measured, with the dew point it makes', () => {
    const dry = { ...context, wantsDry: true, cement: false };
    const given = { air: 20, humidity: 50 };
    // 9.3 C: psychrometric tables, from memory.
    expect(judgeCheck('dew-point', [15], given, dry).facts).toEqual({
      have: 1,
      dew: expect.closeTo(9.3, 1),
    });
    expect(judgeCheck('dew-point', [10], given, dry).facts).toMatchObject({
      air: 20,
      humidity: 50,
      dew: expect.closeTo(9.3, 1),
    });
    expect(judgeCheck('dew-point', [15], { air: 20 }, dry).facts).not.toHaveProperty('dew');
    // What was not measured is not told of at all.
    expect(judgeCheck('dew-point', [15], { humidity: 50 }, dry)).toStrictEqual({
      state: 'not-yet-checked',
      rule: 'air-unknown',
      facts: { failed: 1, have: 1, rows: ['1'], worst: 15, low: 5, high: 10, humidity: 50 },
      figures: ['cover.above-dew', 'place.temperature', 'place.temperature-least'],
    });
    expect(judgeCheck('dew-point', [15], { air: 20, humidity: 0 }, dry).facts).toEqual({ have: 1 });
  });
  // Source: UFC 3-270-03 16.4, through the figures: 13 to 32 C, never under 4.4 C.
  it.each([
    [0, 'too-cold'],
    [0.1, 'too-cold'],
    [valueOf('place.temperature-least'), 'cool'],
    [rangeOf('place.temperature')[0], 'passed'],
    [rangeOf('place.temperature')[1], 'passed'],
    [32.3, 'too-hot'],
  ])('cement on a surface of %f C: %s', (surface, rule) => {
    const damp = { ...context, wantsDry: false, cement: true };
    expect(judgeCheck('dew-point', [surface], {}, damp).rule).toBe(rule);
  });
  it('what is not cement has its limits on its own sheet, but never on ice', () => {
    const damp = { ...context, wantsDry: false, cement: false };
    expect(judgeCheck('dew-point', [0.1], {}, damp).rule).toBe('passed');
    expect(judgeCheck('dew-point', [40], {}, damp).rule).toBe('passed');
    expect(judgeCheck('dew-point', [0], {}, damp).rule).toBe('too-cold');
  });
  it('cool cement that has to be dry waits for the dew point first', () => {
    const both = { ...context, wantsDry: true, cement: true };
    expect(judgeCheck('dew-point', [8], {}, both).rule).toBe('air-unknown');
    expect(judgeCheck('dew-point', [8], { air: 8, humidity: 95 }, both).rule).toBe('too-near-dew');
    expect(judgeCheck('dew-point', [8], { air: 8, humidity: 30 }, both).rule).toBe('cool');
    const [least] = rangeOf('place.temperature');
    expect(judgeCheck('dew-point', [least], { air: 8, humidity: 30 }, both).rule).toBe('passed');
  });
  it('without a word of the covering it is taken to want it dry', () => {
    expect(judgeCheck('dew-point', [15]).rule).toBe('air-unknown');
  });
  it('500 readings are taken, not one more', () => {
    const problems: Problem[] = [];
    const all = (count: number) => ({ readings: Array<number>(count).fill(0) });
    expect(judgeReadings('dust-tape', all(500), 3, context, problems).rule).toBe('passed');
    expect(problems).toEqual([]);
    expect(judgeReadings('dust-tape', all(501), 3, context, problems)).toEqual({
      state: 'not-yet-checked',
      rule: 'too-few',
      facts: { have: 0, need: 3 },
    });
    expect(problems).toEqual([
      { id: 'too-many-rows', check: 'dust-tape', field: 'reading', typed: 501, limits: [0, 500] },
    ]);
  });
  it.each([
    ['carbonation', 'cover', [5]],
    ['ph', 'rinse', [7]],
    ['bars-free', 'aggregate', [30]],
    ['dew-point', 'air', [15]],
    ['dew-point', 'humidity', [15]],
  ] as const)('%s: %s has to be a number that can be', (check, field, readings) => {
    const problems: Problem[] = [];
    judgeReadings(check, { readings, given: { [field]: 1e6 } }, 1, context, problems);
    expect(problems).toMatchObject([{ id: 'out-of-range', check, field, typed: 1e6 }]);
  });
});

describe('the clock at the edges', () => {
  const now = '2026-05-04T12:00:00Z';
  const of = (record?: ClockRecord) => {
    const problems: Problem[] = [];
    return { clock: openTime(record, now, problems), problems };
  };
  it('runs from this very moment', () => {
    expect(of({ prepared: now, spoiled: [] })).toEqual({
      clock: { state: 'fresh', open: 0, left: 24, limit: 24 },
      problems: [],
    });
    expect(of(undefined).clock).toEqual({ state: 'not-started' });
  });
  it('is ended by the first that spoiled it, and says how long it had been open', () => {
    const prepared = '2026-05-04T08:00:00Z';
    const { clock, problems } = of({
      prepared,
      spoiled: [
        { by: 'dust', at: '2026-05-04T10:00:00Z' },
        { by: 'rain', at: '2026-05-04T09:00:00Z' },
        { by: 'traffic', at: '2026-05-04T09:00:00Z' },
        { by: 'traffic', at: 'then' },
      ],
    });
    expect(clock).toEqual({ state: 'spoiled', by: 'rain', open: 4 });
    expect(problems).toEqual([
      { id: 'bad-time', check: 'open-time', field: 'spoiled', typed: 'then', row: 4 },
    ]);
    // What spoiled it in the moment the cleaning ended, spoiled it.
    expect(of({ prepared, spoiled: [{ by: 'rain', at: prepared }] }).clock.state).toBe('spoiled');
  });
  it('names the time that has not come', () => {
    expect(of({ prepared: '2026-05-04T12:01:00Z', spoiled: [] }).problems).toEqual([
      { id: 'time-ahead', check: 'open-time', field: 'prepared', typed: '2026-05-04T12:01:00Z' },
    ]);
    expect(of({ prepared: 'x', spoiled: [] }).problems).toEqual([
      { id: 'bad-time', check: 'open-time', field: 'prepared', typed: 'x' },
    ]);
  });
});
