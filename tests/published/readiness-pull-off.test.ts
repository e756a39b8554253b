import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PullOffTest } from '$lib/answers/readiness-record';
import { judgePullOff } from '$lib/readiness/judge-pull-off';
import { readPullOff } from '$lib/readiness/pull-off';
import { askedBy } from '$lib/readiness/requirement';
import type { Problem } from '$lib/readiness/rules';
import { inBase as base, judgePulls as judge, overlay } from '../helpers/readiness';

const bond = (stress: number): PullOffTest => ({ stress, shares: { bond: 100 } });
const glue = (stress: number): PullOffTest => ({ stress, shares: { glue: 100 } });

describe('a worked example', () => {
  // Marrow Quay, boat-shed floor (invented). Disc 50 mm, area 1963.495 mm2. Worked by hand:
  //   1: 3.53 kN -> 3530 / 1963.495 = 1.7978 MPa, base
  //   2: 3.93 kN -> 3930 / 1963.495 = 2.0015 MPa, base
  //   3: 3.34 kN -> 3340 / 1963.495 = 1.7010 MPa, base
  //   4: 1.20 kN -> glue, void
  // mean (1.7978 + 2.0015 + 1.7010) / 3 = 5.5003 / 3 = 1.8334
  // deviations -0.0356, 0.1681, -0.1324; squares 0.00127, 0.02826, 0.01753, sum 0.04706
  // s = sqrt(0.04706 / 2) = 0.1534; lower bound 1.8334 - 1.686 x 0.1534 = 1.5748
  const force = (kN: number): PullOffTest => ({ force: kN, disc: 50, shares: { base: 100 } });
  const tests = [force(3.53), force(3.93), force(3.34), { ...force(1.2), shares: { glue: 100 } }];
  const { reading, ...verdict } = judge(tests);

  it('reads four tests, one of them void', () => {
    expect(reading).toMatchObject({ valid: 3, voided: 1 });
    expect(reading.tests.map((test) => test.void)).toEqual([false, false, false, true]);
  });

  it('has the mean, spread and bound worked by hand', () => {
    const [group] = reading.groups;
    expect(group?.mode).toBe('base');
    expect(group?.summary.mean).toBeCloseTo(1.8334, 3);
    expect(group?.summary.deviation).toBeCloseTo(0.1534, 3);
    expect(group?.summary.lowerBound).toBeCloseTo(1.5748, 3);
    expect(group?.summary.least).toBeCloseTo(1.701, 3);
    expect(group?.summary.most).toBeCloseTo(2.0015, 3);
  });

  it('passes the overlay rule on its mean, and says that the bound does not reach it', () => {
    expect(verdict).toMatchObject({ state: 'ready', facts: { have: 3, sure: 'no' } });
  });
});

describe('bonded overlay quality control', () => {
  // Source: ACI 548.8M-19: the mean of three is at least 1.7 MPa, on CSP 5 or rougher.
  it('passes on a mean of 1.7, though one result lies below', () => {
    expect(judge([base(1.5), base(1.7), base(1.9)]).state).toBe('ready');
  });
  it('fails on a mean of 1.69', () => {
    const verdict = judge([base(1.47), base(1.7), base(1.9)]);
    expect(verdict).toMatchObject({ state: 'not-ready', rule: 'mean-low-base' });
  });
  it('needs three', () => {
    expect(judge([base(2), base(2.2)])).toMatchObject({
      state: 'not-yet-checked',
      rule: 'too-few',
      facts: { have: 2, need: 3 },
    });
  });
  it('asks for CSP 5 as well', () => {
    expect(askedBy(overlay, [])).toMatchObject({ mean: 1.7, tests: 3, profile: 5 });
  });
});

describe('the German repair rules', () => {
  // Source: DAfStb repair guideline, as two test houses report it: a mean of at least 1.5 N/mm2, no
  // single result below 1.0; three tests from 50 m2, as many again for each further 250 m2.
  const german = { id: 'german-repair' } as const;
  const verdictOf = (stresses: readonly number[], area: number) => {
    const problems: Problem[] = [];
    return judgePullOff(
      readPullOff(stresses.map(base), problems),
      askedBy(german, problems, undefined, area),
      0,
    );
  };
  it.each([
    [[1.1, 1.6, 1.8], 20, 'passed'],
    [[0.9, 2, 2.2], 20, 'single-low'],
    [[1.2, 1.4, 1.5], 20, 'mean-low-base'],
    [[1.6, 1.7], 20, 'too-few'],
    [[1.6, 1.7, 1.8], 50, 'passed'],
    [[1.6, 1.7, 1.8], 51, 'too-few'],
    [[1.6, 1.7, 1.8, 1.6, 1.7, 1.8], 300, 'passed'],
    [[1.6, 1.7, 1.8, 1.6, 1.7, 1.8], 301, 'too-few'],
  ] as const)('%j MPa on %i m2: %s', (stresses, area, rule) => {
    expect(verdictOf(stresses, area).rule).toBe(rule);
  });
  it("let a specification's own least single result come first", () => {
    expect(askedBy({ ...german, least: 1.2 }, [])).toMatchObject({ mean: 1.5, least: 1.2 });
    expect(askedBy(german, [])?.borrowed).toBe(false);
  });
});

describe('product classes', () => {
  // Source: EN 1504-3 (as reported): R4 2.0, R3 1.5, R2 and R1 0.8 MPa; for products, not for sites.
  it.each([
    ['product-r4', 2],
    ['product-r3', 1.5],
    ['product-r2', 0.8],
  ] as const)('%s asks %f MPa and is marked as borrowed', (id, mean) => {
    expect(askedBy({ id }, [])).toMatchObject({ mean, borrowed: true });
  });
});

describe('like with like', () => {
  // Source: ASTM C1583-13 5.4: the mode is reported for each test; results are averaged only if the
  // same mode occurred.
  it('averages base failures apart from bond failures', () => {
    const { reading } = judge([base(2), bond(1), base(2.4), bond(1.4)]);
    expect(reading.groups.map(({ mode, summary }) => [mode, summary.n])).toEqual([
      ['base', 2],
      ['bond', 2],
    ]);
    expect(reading.groups[0]?.summary.mean).toBeCloseTo(2.2, 10);
    expect(reading.groups[1]?.summary.mean).toBeCloseTo(1.2, 10);
  });

  // Source: the same: the weakest plane governs.
  it('is not ready when the bond is low, however good the base', () => {
    const tests = [base(3), base(3), base(3), bond(1), bond(1.1), bond(0.9)];
    expect(judge(tests)).toMatchObject({ state: 'not-ready', rule: 'mean-low-bond' });
  });

  it('asks for more of a mode that is low on too few tests to average', () => {
    const tests = [base(3), base(3), base(3), bond(1)];
    expect(judge(tests)).toMatchObject({ state: 'retest', rule: 'too-few-alike' });
  });

  it('needs no mean where every single result reaches what is asked of the mean', () => {
    expect(judge([base(2), bond(1.8), base(1.9)]).state).toBe('ready');
  });

  it('holds the lowest single result against the least allowed, whichever way it broke', () => {
    const tests = [base(3), base(3), base(3), bond(2), bond(0.9), bond(2)];
    expect(judge(tests, { id: 'own', mean: 1.5, least: 1 })).toMatchObject({
      rule: 'single-low',
      facts: { lowest: 0.9, least: 1 },
    });
  });

  it('is surely strong enough only where every way of breaking is', () => {
    // Bond: mean 1.75 over 1.7, but spread so wide that the bound of the mean lies under it.
    const tests = [base(2.5), base(2.5), base(2.5), bond(1.5), bond(1.75), bond(2)];
    expect(judge(tests)).toMatchObject({ rule: 'passed', facts: { sure: 'no' } });
  });

  it('keeps breaks through two planes apart', () => {
    const mixed: PullOffTest = { stress: 1.9, shares: { base: 60, bond: 40 } };
    const { reading } = judge([mixed, base(2), mixed]);
    expect(reading.groups.map(({ mode }) => mode)).toEqual(['base', 'base+bond']);
  });
});

describe('glue failures', () => {
  // Source: AS 1012.24:2015 6.6: where the adhesive failed the strength is not calculated, and further
  // sites are tested until there are three normal results.
  it('do not count, and are tested again elsewhere', () => {
    expect(judge([base(2), base(2), glue(0.4)])).toMatchObject({
      state: 'retest',
      rule: 'glue-failed',
      facts: { have: 2, need: 3, voided: 1 },
    });
  });

  // Source: ASTM D4541 (from memory): over a quarter of the disc in the glue.
  it.each([
    [25, false],
    [26, true],
  ])('with %i %% in the glue a test is void: %s', (share, isVoid) => {
    const { reading } = judge([{ stress: 2, shares: { base: 100 - share, glue: share } }]);
    expect(reading.tests[0]?.void).toBe(isVoid);
  });

  it('make no other way of breaking of a disc that came off mostly in the concrete', () => {
    const { reading } = judge([base(2), { stress: 2.4, shares: { base: 80, glue: 20 } }, glue(1)]);
    expect(reading.groups).toMatchObject([{ mode: 'base', planes: ['base'], stresses: [2, 2.4] }]);
    expect(reading.tests.map(({ mode }) => mode)).toEqual(['base', 'base', 'glue']);
  });

  it('say nothing of the concrete, however much glue the reader lets pass', () => {
    const row = { stress: 2, shares: { glue: 100 } };
    expect(readPullOff([row], [], { 'pulloff.glue-void': 100 })).toMatchObject({
      valid: 0,
      voided: 1,
    });
  });

  const stress = fc.double({ min: 0, max: 5, noNaN: true });
  it('never change a mean, wherever they come', () => {
    fc.assert(
      fc.property(fc.array(stress, { minLength: 1 }), fc.array(stress), (good, bad) => {
        const plain = judge(good.map(base)).reading.groups;
        expect(judge([...bad.map(glue), ...good.map(base)]).reading.groups).toEqual(plain);
        expect(judge([...good.map(base), ...bad.map(glue)]).reading.groups).toEqual(plain);
      }),
    );
  });
});
