import { describe, expect, it } from 'vitest';
import type { CheckId, ReadinessRecord } from '$lib/answers/readiness-record';
import type { OpenNeed } from '$lib/readiness/open-needs';
import { judgeZone, type ZoneCircumstances } from '$lib/readiness/zone';

const need = (check: CheckId, level: OpenNeed['level'] = 'needed'): OpenNeed => ({
  check,
  level,
  why: { rule: 'sound-everywhere' },
  passes: [],
  certain: true,
  depends: [],
  locate: [],
});
const around = (needs: readonly OpenNeed[], more: Partial<ZoneCircumstances> = {}) => ({
  needs: {
    needs,
    profile: [3, 5] as const,
    corroded: false,
    tendons: false,
    wantsDry: false,
    cement: true,
    finishes: ['overlay'] as const,
  },
  area: 5,
  method: null,
  floor: true,
  held: false,
  now: '2026-05-04T12:00:00Z',
  ...more,
});
const judge = (record: Partial<ReadinessRecord>, ...needs: OpenNeed[]) =>
  judgeZone({ seed: 1, results: {}, ...record }, around(needs));
const base = { stress: 2, shares: { base: 100 } };
const overlay = { id: 'overlay-control' } as const;

describe('how a zone stands by its clock', () => {
  // Source: UFC 3-270-03 3.1: open no longer than 24 h; what spoils it is common practice, no source.
  it.each([
    [undefined, 'not-yet-checked', 'not-started', undefined],
    ['2026-05-04T13:00:00Z', 'not-yet-checked', 'fix-entries', undefined],
    ['2026-05-04T08:00:00Z', 'ready', 'passed', { open: 4, left: 20 }],
    ['2026-05-03T08:00:00Z', 'not-ready', 'gone-stale', { open: 28 }],
  ] as const)('cleaned at %s: %s', (prepared, state, rule, facts) => {
    const clock = { spoiled: [], ...(prepared && { prepared }) };
    const { checks, state: whole, clock: read } = judge({ clock }, need('open-time'));
    const verdict = checks[0]?.verdict;
    expect([whole, verdict?.rule, verdict?.facts]).toEqual([state, rule, facts]);
    if (rule !== 'fix-entries') expect(verdict?.figures).toEqual(['open.limit']);
    expect(read.state).not.toBe('spoiled');
  });
  it('rain after the cleaning, and a time that cannot be read', () => {
    const prepared = '2026-05-04T08:00:00Z';
    const rain = { by: 'rain', at: '2026-05-04T09:00:00Z' } as const;
    const spoiled = judge({ clock: { prepared, spoiled: [rain] } }, need('open-time'));
    expect(spoiled.checks[0]?.verdict).toMatchObject({
      state: 'not-ready',
      rule: 'spoiled',
      facts: { by: 'rain' },
      figures: ['open.limit'],
    });
    // What cannot be read spoils nothing, and is asked about before any good news.
    const unread = judge(
      { clock: { prepared, spoiled: [{ by: 'dust', at: 'then' }] } },
      need('open-time'),
    );
    expect(unread.clock.state).toBe('fresh');
    expect(unread.checks[0]?.verdict).toMatchObject({
      state: 'not-yet-checked',
      rule: 'fix-entries',
      problems: [{ id: 'bad-time', row: 1 }],
    });
    expect(unread.problems).toHaveLength(1);
  });
});

describe('which checks count', () => {
  const counts = (record: Partial<ReadinessRecord>, level: OpenNeed['level'], check: CheckId) =>
    judge(record, need(check, level)).checks[0]?.counts;
  it('what is needed, asked for, or was done; nothing else', () => {
    expect(counts({}, 'needed', 'pull-off')).toBe(true);
    expect(counts({}, 'if-specified', 'pull-off')).toBe(false);
    expect(counts({ asked: ['pull-off'] }, 'if-specified', 'pull-off')).toBe(true);
    expect(counts({ pullOff: { tests: [base] } }, 'if-specified', 'pull-off')).toBe(true);
    expect(counts({ pullOff: { tests: [] } }, 'if-specified', 'pull-off')).toBe(false);
    const typed = (...readings: (number | string)[]) => ({ results: { humidity: { readings } } });
    expect(counts(typed(60), 'if-specified', 'humidity')).toBe(true);
    expect(counts(typed('', 60), 'if-specified', 'humidity')).toBe(true);
    expect(counts(typed(''), 'if-specified', 'humidity')).toBe(false);
    expect(counts({}, 'needed', 'slurry-ph')).toBe(false);
  });
  it('a zone without any is not yet checked', () => {
    expect(judge({}).state).toBe('not-yet-checked');
    expect(judge({}, need('pull-off', 'if-specified')).state).toBe('not-yet-checked');
  });
});

describe('how many tests a zone waits for', () => {
  it('as many as the rule asks, and more where the reader asks for more', () => {
    const tests = [base, base, base];
    const pulls = (counts?: ReadinessRecord['counts']) =>
      judge(
        { pullOff: { requirement: overlay, tests }, ...(counts && { counts }) },
        need('pull-off'),
      ).checks[0]?.verdict;
    expect(pulls()?.rule).toBe('passed');
    expect(pulls({ 'pull-off': 5 })).toMatchObject({
      rule: 'too-few',
      facts: { have: 3, need: 5, voided: 0 },
    });
    const tapes = (...readings: number[]) =>
      judge({ results: { 'dust-tape': { readings } } }, need('dust-tape')).checks[0]?.verdict;
    expect(tapes(0, 0)).toMatchObject({ rule: 'too-few', facts: { have: 2, need: 3 } });
    expect(tapes(0, 0, 0)?.rule).toBe('passed');
  });
});

describe('an entry that cannot be read', () => {
  it('stands before good news, not before bad', () => {
    const tests = (...stresses: (number | string)[]) => ({
      pullOff: { requirement: overlay, tests: stresses.map((stress) => ({ ...base, stress })) },
    });
    const good = judge(tests(2, 2, 2, 'x'), need('pull-off')).checks[0]?.verdict;
    expect(good).toMatchObject({ state: 'not-yet-checked', rule: 'fix-entries' });
    expect(good).not.toHaveProperty('facts');
    expect(good).not.toHaveProperty('figures');
    const bad = judge(tests(1, 1, 1, 'x'), need('pull-off')).checks[0]?.verdict;
    expect(bad).toMatchObject({ state: 'not-ready', rule: 'mean-low-base' });
    expect(bad?.problems).toMatchObject([{ id: 'not-a-number', row: 4, field: 'stress' }]);
  });
  it('a number beyond what can be is negative only where nothing negative can be', () => {
    const read = (check: CheckId, reading: number) =>
      judge({ results: { [check]: { readings: [reading] } } }, need(check)).problems[0]?.id;
    expect(read('half-cell', -5000)).toBe('out-of-range');
    expect(read('dew-point', -200)).toBe('out-of-range');
    expect(read('humidity', -1)).toBe('negative');
    expect(read('humidity', 101)).toBe('out-of-range');
  });
});

// ACI 548.8M asks for CSP 5 under a bonded overlay: it lifts the lower end, never above the upper.
it.each([
  [overlay, [5], 'passed'],
  [overlay, [4], 'too-smooth'],
  [overlay, [6], 'too-rough'],
  [{ id: 'own', mean: 1 } as const, [3], 'passed'],
  [undefined, [3], 'passed'],
])('with %j a profile of %j is %s', (requirement, readings, rule) => {
  const record = {
    pullOff: { tests: [], ...(requirement && { requirement }) },
    results: { profile: { readings: [...readings, ...readings, ...readings] } },
  };
  expect(judge(record, need('profile')).checks[0]?.verdict.rule).toBe(rule);
});

it('the reader’s own figures, the area and the number of tests are heard', () => {
  const record = {
    seed: 1,
    results: { 'dust-tape': { readings: [2] } },
    counts: { 'dust-tape': 1 },
  };
  const verdict = (own?: ZoneCircumstances['own']) =>
    judgeZone(record, around([need('dust-tape')], own && { own })).checks[0]?.verdict.rule;
  expect(verdict()).toBe('dust-left');
  expect(verdict({ 'dust.most': 2 })).toBe('passed');
  const ph = { seed: 1, results: {} };
  const wanted = (area: number | 'unknown') =>
    judgeZone(ph, around([need('ph')], { area })).checks[0]?.wanted?.tests;
  expect([wanted(40), wanted(100), wanted('unknown')]).toEqual([2, 6, 2]);
});
