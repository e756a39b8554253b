import { mersenne } from 'pure-rand/generator/mersenne';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { fromUs } from '$lib/answers/units';
import { countFor, spotsFor } from '$lib/readiness/sampling';
import type { Problem } from '$lib/readiness/rules';

const tests = (check: CheckId, squareFeet: number) =>
  countFor(check, fromUs('m2', squareFeet), undefined, [])?.tests;

describe('how many tests an area asks for', () => {
  // Source: ASTM D4262-05(2012) 6.2: at least two readings for each 500 ft2 or portion of it.
  it.each([
    [1, 2],
    [499, 2],
    [500, 2],
    [501, 4],
    [1000, 4],
    [1001, 6],
    [5000, 20],
  ])('pH: %i ft2 asks for %i', (area, count) => {
    expect(tests('ph', area)).toBe(count);
  });

  // Source: ASTM F3191 (as reported): three in the first 2,000 ft2, one more for each 3,000 beyond.
  it.each([
    [1, 3],
    [2000, 3],
    [2001, 4],
    [5000, 4],
    [5001, 5],
    [8000, 5],
    [20000, 9],
  ])('absorption: %i ft2 asks for %i', (area, count) => {
    expect(tests('absorption', area)).toBe(count);
  });

  // Source: ASTM F2170 (as reported): three in the first 1,000 ft2, one more for each further 1,000.
  it.each([
    [200, 3],
    [1000, 3],
    [1001, 4],
    [2000, 4],
    [10000, 12],
  ])('humidity: %i ft2 asks for %i', (area, count) => {
    expect(tests('humidity', area)).toBe(count);
  });

  // Source: ASTM D4263 (from memory): one sheet for each 500 ft2 or portion of it.
  it.each([
    [100, 1],
    [500, 1],
    [1200, 3],
  ])('plastic sheet: %i ft2 asks for %i', (area, count) => {
    expect(tests('plastic-sheet', area)).toBe(count);
  });

  // Source: AS 1012.24:2015 6.6: the mean of a minimum of three normal results.
  it('pull-off: at least three, whatever the area', () => {
    expect(tests('pull-off', 10)).toBe(3);
    expect(tests('pull-off', 10000)).toBe(3);
  });

  it('looks at all of it where a check is no spot check', () => {
    expect(countFor('sounding', 20, undefined, [])).toBeNull();
    expect(countFor('bars-free', 20, undefined, [])).toBeNull();
  });

  it('gives the least the rule can ask while the area is unknown, and says so', () => {
    expect(countFor('ph', 'unknown', undefined, [])).toMatchObject({ tests: 2, areaOpen: true });
    expect(countFor('pull-off', 'unknown', undefined, [])?.areaOpen).toBe(false);
  });

  it("lets the reader's number add to a rule, not undercut it, and replace common practice", () => {
    expect(countFor('ph', 10, 1, [])).toMatchObject({ tests: 2, by: 'rule' });
    expect(countFor('ph', 10, 6, [])).toMatchObject({ tests: 6, by: 'own' });
    expect(countFor('dust-tape', 10, undefined, [])).toMatchObject({ tests: 3, by: 'practice' });
    expect(countFor('dust-tape', 10, 1, [])).toMatchObject({ tests: 1, by: 'own' });
  });

  it.each([
    ['many', 'not-a-number'],
    [NaN, 'not-a-number'],
    [2.5, 'not-whole'],
    [0, 'out-of-range'],
    [-3, 'out-of-range'],
    [1e6, 'out-of-range'],
  ])('says what is wrong with %s tests, and goes on with the rule', (typed, id) => {
    const problems: Problem[] = [];
    expect(countFor('ph', 10, typed, problems)?.tests).toBe(2);
    expect(problems).toMatchObject([{ id, check: 'ph', field: 'count', typed }]);
  });
});

describe('where to test', () => {
  // Source: ISO/IEC 14882 (the C++ standard), [rand.predef]: the 10,000th number of a default mt19937,
  // whose seed is 5489, is 4123659995.
  it('draws from the generator the C++ standard describes', () => {
    const generator = mersenne(5489);
    for (let draw = 1; draw < 10_000; draw += 1) generator.next();
    expect(generator.next() >>> 0).toBe(4123659995);
  });

  // The mapping of two draws to one fraction, worked here by whole numbers from the same generator.
  it('places the first spot where the documented recipe puts it', () => {
    const seed = 20;
    const generator = mersenne(seed + checkIds.indexOf('pull-off'));
    const fraction = () => {
      const high = BigInt(generator.next() & 0x3ffffff);
      const low = BigInt(generator.next() & 0x7ffffff);
      return Number(high * 2n ** 27n + low) / 2 ** 53;
    };
    const [spot] = spotsFor(seed, 'pull-off', 1);
    expect(spot).toEqual({ along: fraction(), across: fraction() });
  });

  const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });
  const sizes = fc.integer({ min: 1, max: 60 });
  const shapes = fc.double({ min: 0.05, max: 20, noNaN: true });

  it('is the same for the same seed, another for another check', () => {
    fc.assert(
      fc.property(seeds, sizes, shapes, (seed, n, shape) => {
        expect(spotsFor(seed, 'ph', n, shape)).toEqual(spotsFor(seed, 'ph', n, shape));
        expect(spotsFor(seed, 'ph', n, shape)).not.toEqual(spotsFor(seed, 'dust-tape', n, shape));
      }),
    );
  });

  it('gives as many places as asked, all inside, one in each piece of equal size', () => {
    fc.assert(
      fc.property(seeds, sizes, shapes, (seed, n, shape) => {
        const spots = spotsFor(seed, 'absorption', n, shape);
        expect(spots).toHaveLength(n);
        for (const { along, across } of spots) {
          expect(along).toBeGreaterThanOrEqual(0);
          expect(along).toBeLessThan(1);
          expect(across).toBeGreaterThanOrEqual(0);
          expect(across).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it('reaches every part of the zone alike: over many seeds each tenth gets its tenth', () => {
    const tally = new Map<string, number>();
    const count = (key: string) => tally.set(key, (tally.get(key) ?? 0) + 1);
    const draws = 4000;
    for (let seed = 0; seed < draws; seed += 1)
      for (const { along, across } of spotsFor(seed * 1009, 'pull-off', 5, 3)) {
        count(`along ${Math.floor(along * 10)}`);
        count(`across ${Math.floor(across * 10)}`);
      }
    // 20,000 places, 2,000 expected in each tenth. Six standard deviations of plain chance is 255;
    // places spread by pieces vary less.
    expect(tally.size).toBe(20);
    for (const found of tally.values()) expect(Math.abs(found - 2000)).toBeLessThan(255);
  });

  it('goes along a strip: four tests on one four times as long as wide, one in each quarter', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const quarters = spotsFor(seed, 'pull-off', 4, 4).map(({ along }) => Math.floor(along * 4));
        expect(quarters).toEqual([0, 1, 2, 3]);
      }),
    );
  });

  it('spreads: four tests on a square never share a quarter', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const quarters = spotsFor(seed, 'pull-off', 4).map(
          ({ along, across }) => Math.floor(along * 2) + 2 * Math.floor(across * 2),
        );
        expect(new Set(quarters).size).toBe(4);
      }),
    );
  });
});
