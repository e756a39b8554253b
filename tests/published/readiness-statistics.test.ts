import * as fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { studentQuantile } from '$lib/readiness/student';
import { summaryOf } from '$lib/readiness/statistics';
import { stressFrom } from '$lib/readiness/stress';
import { fromUs } from '$lib/answers/units';

describe("Student's t, upper 0.95 quantile", () => {
  // Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, column 0.95 (alpha 0.05).
  const table: [degrees: number, t: number][] = [
    [1, 6.314],
    [2, 2.92],
    [3, 2.353],
    [4, 2.132],
    [5, 2.015],
    [6, 1.943],
    [7, 1.895],
    [8, 1.86],
    [9, 1.833],
    [10, 1.812],
    [11, 1.796],
    [14, 1.761],
    [19, 1.729],
    [20, 1.725],
    [29, 1.699],
    [30, 1.697],
    [40, 1.684],
    [60, 1.671],
    [100, 1.66],
  ];
  it.each(table)('%i degrees of freedom: %f', (degrees, t) => {
    expect(studentQuantile(0.95, degrees)).toBeCloseTo(t, 3);
  });

  // The same table, columns 0.90, 0.975, 0.99, 0.995 for 1, 2 and 10 degrees.
  it.each([
    [0.9, 1, 3.078],
    [0.975, 1, 12.706],
    [0.99, 2, 6.965],
    [0.995, 2, 9.925],
    [0.975, 10, 2.228],
    [0.99, 10, 2.764],
  ])('probability %f, %i degrees: %f', (probability, degrees, t) => {
    expect(studentQuantile(probability, degrees)).toBeCloseTo(t, 3);
  });

  // Source: jstat, a general statistics library, which inverts the incomplete beta function instead.
  it('agrees with a general library for every size of sample up to 500', () => {
    // While rules are changed for trial what is counted takes long, and small samples tell.
    const most = process.env.MUTATE_ROOM ? 20 : 500;
    for (let degrees = 1; degrees <= most; degrees += 1)
      for (const probability of [0.9, 0.95, 0.99])
        expect(studentQuantile(probability, degrees)).toBeCloseTo(
          jstat.studentt.inv(probability, degrees),
          6,
        );
  });

  it('has its middle at nought, since it is even about it', () => {
    for (const degrees of [1, 2, 10]) expect(studentQuantile(0.5, degrees)).toBeCloseTo(0, 9);
  });

  it.each([
    [0.95, 0, 'degrees of freedom 0: expected a whole number, 1 or more'],
    [0.95, 2.5, 'degrees of freedom 2.5: expected a whole number, 1 or more'],
    [0.95, NaN, 'degrees of freedom NaN: expected a whole number, 1 or more'],
    [1, 3, 'probability 1: expected 0.5 or more and below 1'],
    [0.4, 3, 'probability 0.4: expected 0.5 or more and below 1'],
    [NaN, 3, 'probability NaN: expected 0.5 or more and below 1'],
  ])('refuses probability %f with %f degrees', (probability, degrees, says) => {
    expect(() => studentQuantile(probability, degrees)).toThrow(new RangeError(says));
  });
});

describe('mean, range, standard deviation, lower bound', () => {
  // Worked by hand: 1.6, 1.9, 2.2. Sum 5.7, mean 1.9. Deviations -0.3, 0, +0.3; squares 0.09, 0, 0.09;
  // sum 0.18 over (3 - 1) = 0.09; s = 0.3. t(0.95, 2) = 2.920 (NIST), 2.920 x 0.3 / sqrt(3) = 0.5058.
  // Lower bound 1.9 - 0.5058 = 1.394. The same as mean - 1.686 s: 1.9 - 0.5058.
  it('worked by hand for three results', () => {
    const summary = summaryOf([1.6, 1.9, 2.2]);
    expect(summary).toMatchObject({ n: 3, least: 1.6, most: 2.2 });
    expect(summary?.mean).toBeCloseTo(1.9, 10);
    expect(summary?.deviation).toBeCloseTo(0.3, 10);
    expect(summary?.lowerBound).toBeCloseTo(1.394, 3);
    expect(summary?.lowerBound).toBeCloseTo(1.9 - 1.686 * 0.3, 4);
  });

  // Worked by hand: 2, 4, 4, 4, 5, 5, 7, 9. Sum 40, mean 5; squares of deviations 9 1 1 1 0 0 4 16 = 32;
  // 32 / 7 = 4.5714, s = 2.1381. t(0.95, 7) = 1.895; 1.895 x 2.1381 / sqrt(8) = 1.4325; bound 3.5675.
  it('worked by hand for eight results', () => {
    const summary = summaryOf([2, 4, 4, 4, 5, 5, 7, 9]);
    expect(summary?.mean).toBe(5);
    expect(summary?.deviation).toBeCloseTo(2.1381, 4);
    expect(summary?.lowerBound).toBeCloseTo(3.5675, 3);
  });

  it('has neither spread nor bound for a single result, and nothing for none', () => {
    expect(summaryOf([1.8])).toEqual({ n: 1, mean: 1.8, least: 1.8, most: 1.8 });
    expect(summaryOf([])).toBeNull();
  });

  // Source: jstat, which sums and spreads in its own way.
  it('agrees with a general library on any results', () => {
    const results = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { minLength: 2 });
    fc.assert(
      fc.property(results, (values) => {
        const summary = summaryOf(values);
        expect(summary?.mean).toBeCloseTo(jstat.mean(values), 9);
        expect(summary?.deviation).toBeCloseTo(jstat.stdev(values, true), 7);
      }),
    );
  });
});

describe('force to stress', () => {
  // Source: ASTM C1583, force over area. Worked by hand: a 50 mm disc has pi x 50^2 / 4 = 1963.5 mm2;
  // 3.6 kN = 3600 N; 3600 / 1963.5 = 1.8335 MPa.
  it('3.6 kN on 50 mm is 1.833 MPa', () => {
    expect(stressFrom(3.6, 50)).toBeCloseTo(1.8335, 4);
  });

  // Worked by hand in pounds: a 2 in disc has pi = 3.1416 in2; 785.4 lbf / 3.1416 in2 = 250 psi.
  it('785.4 lbf on 2 in is 250 psi, whichever way it is typed', () => {
    const stress = stressFrom(fromUs('kN', 785.398), fromUs('mm', 2));
    expect(stress).toBeCloseTo(fromUs('MPa', 250), 5);
    // 1 psi = 0.00689476 MPa (NIST SP 811, appendix B): 250 psi = 1.72369 MPa.
    expect(stress).toBeCloseTo(1.72369, 4);
  });

  it('goes with the square of the disc and straight with the force', () => {
    const positive = fc.double({ min: 0.1, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (force, disc) => {
        expect(stressFrom(2 * force, disc) / stressFrom(force, disc)).toBeCloseTo(2, 9);
        expect(stressFrom(force, disc) / stressFrom(force, 2 * disc)).toBeCloseTo(4, 9);
      }),
    );
  });
});
