import { describe, expect, it } from 'vitest';
import { context, judgeCheck as judge } from '../helpers/readiness';

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
  // Source: The Concrete Society and BRE Digest 444 (as it reports it), of old concrete: under 0.4
  // low, 0.4 to 1 medium, over 1 high.
  it.each([
    [0.05, 'ready', 'passed'],
    [0.15, 'ready', 'passed'],
    [0.39, 'ready', 'passed'],
    [0.4, 'retest', 'chloride-between'],
    [1, 'retest', 'chloride-between'],
    [1.1, 'not-ready', 'chloride-high'],
    [1.6, 'not-ready', 'chloride-high'],
  ])('%f: %s', (value, state, rule) => {
    expect(judge('chloride', [value])).toMatchObject({ state, rule });
  });

  it("passes by the engineer's own limit once it is given", () => {
    const around = { ...context, own: { 'chloride.old-low': 0.6 } };
    expect(judge('chloride', [0.5], {}, around).state).toBe('ready');
  });
});

describe('chloride where there may be tendons', () => {
  // Source: ACI 318-19 (as a ready-mix association prints it): 0.06 for new prestressed concrete.
  // That an engineer judges all above it in old concrete: common practice, no source.
  it.each([
    [0.06, 'ready', 'passed'],
    [0.1, 'retest', 'chloride-tendons'],
    [0.5, 'retest', 'chloride-between'],
    [1.1, 'not-ready', 'chloride-high'],
  ])('%f: %s', (value, state, rule) => {
    const tendons = { ...context, tendons: true };
    expect(judge('chloride', [value], {}, tendons)).toMatchObject({ state, rule });
  });
});

describe('temperature and dew point at covering', () => {
  // Dew point 9.3 C of air at 20 C and 50 percent, 16.7 C at 25 C and 60 percent: psychrometric
  // tables, from memory. 3 C above it: ISO 8502-4 (as reported, written for steel).
  const dry = { ...context, wantsDry: true, cement: false };
  it.each([
    [20, 50, 12.5, 'ready', 'passed'],
    [20, 50, 12, 'not-ready', 'too-near-dew'],
    [25, 60, 20, 'ready', 'passed'],
    [25, 60, 19, 'not-ready', 'too-near-dew'],
    [20, 100, 20, 'not-ready', 'too-near-dew'],
    [20, 50, 0, 'not-ready', 'too-cold'],
    [20, 0, 5, 'ready', 'passed'],
    // Air full of water at 0 C has its dew point there: a surface just 3 C above it will do.
    [0, 100, 3, 'ready', 'passed'],
    [0, 100, 2.99, 'not-ready', 'too-near-dew'],
  ])('air %i C, %i %%, surface %f C under a coating: %s', (air, humidity, surface, state, rule) => {
    expect(judge('dew-point', [surface], { air, humidity }, dry)).toMatchObject({ state, rule });
  });

  it('waits for the air to be measured', () => {
    expect(judge('dew-point', [15], { air: 20 }, dry)).toMatchObject({
      state: 'not-yet-checked',
      rule: 'air-unknown',
    });
  });

  // Source: UFC 3-270-03 16.4: the slab from 55 to 90 F (13 to 32 C), never under 40 F (4.4 C),
  // colder than 55 F only insulated and cured longer. Dew does not harm cement: common practice.
  it.each([
    [4, 'not-ready', 'too-cold'],
    [8, 'retest', 'cool'],
    [14, 'ready', 'passed'],
    [31, 'ready', 'passed'],
    [33, 'not-ready', 'too-hot'],
  ])('a surface of %f C under cement: %s', (surface, state, rule) => {
    const damp = { ...context, wantsDry: false, cement: true };
    expect(judge('dew-point', [surface], {}, damp)).toMatchObject({ state, rule });
    // Where its sheet wants it dry, the dew point counts as well.
    const both = { ...damp, wantsDry: true };
    const given = { air: surface, humidity: 30 };
    expect(judge('dew-point', [surface], given, both)).toMatchObject({ state, rule });
    if (state === 'ready')
      expect(judge('dew-point', [surface], { air: surface, humidity: 95 }, both).rule).toBe(
        'too-near-dew',
      );
  });
});

describe('slurry and wash water', () => {
  // Source: 40 CFR 261.22 (as reported): from pH 12.5 on, corrosive waste.
  it.each([
    [9, 'ready'],
    [12.4, 'ready'],
    [12.5, 'not-ready'],
    [13, 'not-ready'],
  ])('pH %f: %s', (ph, state) => {
    expect(judge('slurry-ph', [ph]).state).toBe(state);
  });
});

describe('a levelling fill', () => {
  // Common practice, no source: it is as old as its label asks, sounds clear, and its skin is open.
  it.each([
    ['cured', 'ready', 'passed'],
    ['young', 'retest', 'fill-young'],
    ['dull', 'not-ready', 'fill-dull'],
    ['closed', 'not-ready', 'fill-closed'],
  ])('%s: %s', (choice, state, rule) => {
    expect(judge('fill-cured', [choice])).toMatchObject({ state, rule });
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
    [60, 'ready', 'passed'],
    [75, 'ready', 'passed'],
    [76, 'not-ready', 'too-humid'],
  ])('%i %%: %s', (percent, state, rule) => {
    expect(judge('humidity', [percent])).toMatchObject({ state, rule });
  });
});

describe('pH against the rinse water', () => {
  // Source: SSPC-SP 13 (from memory): from one below the rinse water to two above.
  it.each([
    [6.4, 'not-ready', 'ph-off'],
    [6.5, 'ready', 'passed'],
    [7.5, 'ready', 'passed'],
    [9.5, 'ready', 'passed'],
    [9.6, 'not-ready', 'ph-off'],
  ])('%f with rinse water of 7.5: %s', (ph, state, rule) => {
    expect(judge('ph', [ph], { rinse: 7.5 })).toMatchObject({ state, rule });
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
