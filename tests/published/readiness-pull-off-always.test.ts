import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PullOffTest, Requirement } from '$lib/answers/readiness-record';
import { fromUs } from '$lib/answers/units';
import { judgePullOff } from '$lib/readiness/judge-pull-off';
import { readPullOff } from '$lib/readiness/pull-off';
import { askedBy } from '$lib/readiness/requirement';
import type { Problem } from '$lib/readiness/rules';
import { inBase as base, judgePulls as judge } from '../helpers/readiness';

describe('whatever the results', () => {
  const stress = fc.double({ min: 0, max: 5, noNaN: true });
  const shares = fc.constantFrom<PullOffTest['shares']>(
    { base: 100 },
    { bond: 100 },
    { repair: 100 },
    { glue: 100 },
    { base: 50, bond: 50 },
    { base: 90, glue: 10 },
  );
  const tests = fc.array(fc.record({ stress, shares }), { maxLength: 20 });

  it('their order does not matter', () => {
    fc.assert(
      fc.property(tests, (typed) => {
        const forwards = judge(typed);
        const backwards = judge([...typed].reverse());
        const sums = (verdict: typeof forwards) =>
          verdict.reading.groups.map(({ mode, summary }) => [mode, summary]);
        expect(sums(backwards)).toEqual(sums(forwards));
        expect(backwards.state).toBe(forwards.state);
        expect(backwards.rule).toBe(forwards.rule);
      }),
    );
  });

  it('their unit does not matter: psi, and pounds-force on inches, give the same megapascals', () => {
    const psi = fc.array(fc.double({ min: 1, max: 700, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(psi, (values) => {
        const area = (Math.PI * 2 * 2) / 4;
        const byStress = judge(values.map((value) => base(fromUs('MPa', value))));
        const byForce = judge(
          values.map((value) => ({
            force: fromUs('kN', value * area),
            disc: fromUs('mm', 2),
            shares: { base: 100 },
          })),
        );
        const mean = byStress.reading.groups[0]?.summary.mean ?? NaN;
        expect(byForce.reading.groups[0]?.summary.mean).toBeCloseTo(mean, 9);
        // The mean in psi is the mean of the psi.
        const plain = values.reduce((sum, value) => sum + value, 0) / values.length;
        expect(mean / fromUs('MPa', 1)).toBeCloseTo(plain, 6);
      }),
    );
  });

  it('a stronger result never makes a ready surface not ready', () => {
    fc.assert(
      fc.property(
        tests,
        fc.nat(),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (typed, at, more) => {
          if (typed.length === 0 || judge(typed).state !== 'ready') return;
          const index = at % typed.length;
          const better = typed.map((test, i) =>
            i === index ? { ...test, stress: test.stress + more } : test,
          );
          expect(judge(better).state).toBe('ready');
        },
      ),
    );
  });
});

describe("the reader's own requirement", () => {
  // No published rule for a single result was found: the reader's own, or none.
  it('may have a least single result', () => {
    const own: Requirement = { id: 'own', mean: 1.5, least: 1 };
    expect(judge([base(2), base(2), base(1.1)], own).state).toBe('ready');
    expect(judge([base(3), base(3), base(0.9)], own)).toMatchObject({
      state: 'not-ready',
      rule: 'single-low',
      facts: { lowest: 0.9, least: 1 },
    });
  });
  it('is asked for before anything is judged', () => {
    const problems: Problem[] = [];
    const reading = readPullOff([base(2), base(2), base(2)], problems);
    expect(judgePullOff(reading, askedBy(undefined, problems), 0).rule).toBe('no-requirement');
    expect(judgePullOff(reading, askedBy({ id: 'own' }, problems), 0).rule).toBe('no-requirement');
  });
});
