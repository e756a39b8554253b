import { describe, expect, it } from 'vitest';
import { judgeReadings, type ReadingContext } from '$lib/readiness/judge-readings';
import type { CheckResult, Reading } from '$lib/answers/readiness-record';

type Check = Parameters<typeof judgeReadings>[0];
const context: ReadingContext = { profile: [5, 10], corroded: false };
const judge = (
  check: Check,
  readings: Reading[],
  given: CheckResult['given'] = {},
  around = context,
) => judgeReadings(check, { readings, given }, readings.length, around, []);

describe('half-cell potential', () => {
  // Source: ASTM C876 (as reported): above -200 mV low risk, below -350 mV high, between undecided.
  it.each([
    [-50, 'ready', 'passed'],
    [-199, 'ready', 'passed'],
    [-200, 'retest', 'potential-between'],
    [-275, 'retest', 'potential-between'],
    [-350, 'retest', 'potential-between'],
    [-351, 'not-ready', 'potential-high'],
    [-500, 'not-ready', 'potential-high'],
  ])('%i mV: %s', (value, state, rule) => {
    expect(judge('half-cell', [value])).toMatchObject({ state, rule });
  });
});

describe('chloride at the bar, percent of cement', () => {
  // Source: ACI 364.6T-02(11): 0.15 is a limit for new concrete; above 1 the risk is high.
  it.each([
    [0.05, 'ready', 'passed'],
    [0.15, 'ready', 'passed'],
    [0.4, 'retest', 'chloride-between'],
    [1, 'not-ready', 'chloride-high'],
    [1.6, 'not-ready', 'chloride-high'],
  ])('%f: %s', (value, state, rule) => {
    expect(judge('chloride', [value])).toMatchObject({ state, rule });
  });

  it("passes by the engineer's own limit once it is given", () => {
    const around = { ...context, own: { 'chloride.new-concrete': 0.6 } };
    expect(judge('chloride', [0.4], {}, around).state).toBe('ready');
  });
});

describe('absorption', () => {
  // Source: ASTM F3191 (as reported): the drop is drunk in under one minute.
  it.each([
    [0.5, 'ready'],
    [0.99, 'ready'],
    [1, 'not-ready'],
    [5, 'not-ready'],
  ])('%f min: %s', (minutes, state) => {
    expect(judge('absorption', [minutes]).state).toBe(state);
  });
});

describe('floor humidity', () => {
  // Source: ASTM F710 (as reported): 75 percent.
  it.each([
    [60, 'ready'],
    [75, 'ready'],
    [76, 'not-ready'],
  ])('%i %%: %s', (percent, state) => {
    expect(judge('humidity', [percent]).state).toBe(state);
  });
});

describe('pH against the rinse water', () => {
  // Source: SSPC-SP 13 (from memory): from one below the rinse water to two above.
  it.each([
    [6.4, 'not-ready'],
    [6.5, 'ready'],
    [7.5, 'ready'],
    [9.5, 'ready'],
    [9.6, 'not-ready'],
  ])('%f with rinse water of 7.5: %s', (ph, state) => {
    expect(judge('ph', [ph], { rinse: 7.5 }).state).toBe(state);
  });
  it('cannot be judged without the rinse water', () => {
    expect(judge('ph', [7])).toMatchObject({ state: 'not-yet-checked', rule: 'rinse-unknown' });
  });
});

describe('space behind a freed bar', () => {
  // Source: ICRI 310.1R, ACI PRC-364.6: the greater of 19 mm (3/4 in) and the aggregate + 6 mm (1/4 in).
  it.each([
    [18, undefined, 'not-ready'],
    [19, undefined, 'ready'],
    [19, 10, 'ready'],
    [22, 16, 'not-ready'],
    [23, 16, 'ready'],
  ])('%f mm, aggregate %s mm: %s', (clear, aggregate, state) => {
    const given = aggregate === undefined ? {} : { aggregate };
    expect(judge('bars-free', [clear], given).state).toBe(state);
  });

  // Source: ICRI 310.1R (as reported): a clean bar with its bond unbroken needs no undercut.
  it('may stay bonded where it is clean, not where it is corroded', () => {
    expect(judge('bars-free', ['still-bonded']).state).toBe('ready');
    const corroded = { ...context, corroded: true };
    expect(judge('bars-free', ['still-bonded'], {}, corroded).rule).toBe('bar-must-be-freed');
  });
});

describe('carbonation', () => {
  // Source: EN 14630 method: the depth that stays colourless. That it must not reach the bar is
  // common practice, no source.
  it.each([
    [10, 25, 'ready', 'passed'],
    [25, 25, 'not-ready', 'carbonated-to-bar'],
    [30, 25, 'not-ready', 'carbonated-to-bar'],
    [10, undefined, 'not-yet-checked', 'cover-unknown'],
  ])('%i mm deep, cover %s mm: %s', (depth, cover, state, rule) => {
    const given = cover === undefined ? {} : { cover };
    expect(judge('carbonation', [depth], given)).toMatchObject({ state, rule });
  });
});

describe('profile', () => {
  // Source: ICRI 310.2R through the figure csp.needs.overlay: CSP 5 to 10 (as reported).
  it.each([
    [[5, 6, 7], 'ready', 'passed'],
    [[5, 4, 7], 'not-ready', 'too-smooth'],
  ])('%j under an overlay: %s', (readings, state, rule) => {
    expect(judge('profile', readings)).toMatchObject({ state, rule });
  });
  it('is too rough for a thin film', () => {
    const film = { ...context, profile: [1, 3] as const };
    expect(judge('profile', [4], {}, film).rule).toBe('too-rough');
  });
});

describe('dust on tape', () => {
  // Scale 0 to 5: ISO 8502-3, written for steel (from memory). That no more than a trace may stay:
  // common practice, no source.
  it.each([
    [0, 'ready'],
    [1, 'ready'],
    [2, 'not-ready'],
    [5, 'not-ready'],
  ])('rating %i: %s', (rating, state) => {
    expect(judge('dust-tape', [rating]).state).toBe(state);
  });
});

describe('what is looked at', () => {
  // Common practice, no source.
  it.each([
    ['sounding', 'clear', 'ready'],
    ['sounding', 'dull', 'not-ready'],
    ['edges', 'square', 'ready'],
    ['edges', 'not-square', 'not-ready'],
    ['bars-clean', 'clean', 'ready'],
    ['bars-clean', 'rusty', 'not-ready'],
    ['water-drop', 'spreads', 'ready'],
    ['water-drop', 'beads', 'not-ready'],
    ['plastic-sheet', 'dry', 'ready'],
    ['plastic-sheet', 'damp', 'not-ready'],
    ['surface-damp', 'damp', 'ready'],
    ['surface-damp', 'dry', 'not-ready'],
    ['surface-damp', 'wet', 'not-ready'],
  ] as const)('%s, %s: %s', (check, choice, state) => {
    expect(judge(check, [choice]).state).toBe(state);
  });
});
