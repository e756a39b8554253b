import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { isKnown, type Amount } from '$lib/plan/amount';
import { layPatches, rectangleRing, squarePatch } from '$lib/survey/patches';
import { planJob } from '$lib/plan/plan';
import { rangeOf, valueOf } from '$shared/figures';

const span = (amount: Amount | null | undefined) => {
  if (!amount || !isKnown(amount)) throw new Error('not known');
  return amount.span;
};

const job = (answers: object, more: object = {}): Job =>
  ({
    name: '9 Larch Row (invented)',
    site: {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['rare'],
      thickness: 150,
      warnings: { yes: [], maybe: [] },
    },
    zones: [
      {
        id: 'a',
        name: 'By the door',
        answers: {
          depth: 40,
          looseness: ['hollow'],
          contamination: { yes: [], maybe: [] },
          texture: ['sandy'],
          cracks: ['none'],
          steel: ['none-seen'],
          finish: ['overlay'],
          area: 1,
          ...answers,
        },
        ...more,
      },
    ],
  }) as unknown as Job;

describe('density and bulking', () => {
  // AASHTO LRFD Table 3.5.1-1, as reported: 145 lb/ft3 plain, 150 lb/ft3 with steel.
  it('of concrete is the handbook weight', () => {
    const poundPerFoot = 0.45359237 / 0.3048 ** 3;
    expect(rangeOf('concrete.density')[0]).toBeCloseTo(145 * poundPerFoot, -1);
    expect(rangeOf('concrete.density')[1]).toBeCloseTo(150 * poundPerFoot, -1);
  });
  // CalRecycle conversion table: solid 4,050 lb/yd3, broken and loose 2,400 lb/yd3.
  it('of broken concrete follows from the published weights', () => {
    expect(rangeOf('concrete.bulking')[0]).toBeCloseTo(4050 / 2400, 2);
  });
});

describe('a break-out worked by hand', () => {
  // 1 m2 hollow to 40 mm, frost rare. As a square 1 m x 1 m, taken 75 to 100 mm past the damage:
  // 1.15^2 = 1.3225 m2; in many spots 0.4 m across up to 3.4 times the hollow area (simulated, figure
  // patch.scattered): 3.4 m2. Saw-cut round one square 4.6 m; round 1 / 0.16 = 6.25 spots, each
  // 0.4 + 0.2 = 0.6 m a side: 6.25 x 2.4 = 15 m.
  // Depth 40 + 13 mm into sound (UFC 3-270-03) = 53 mm: 0.0701 to 0.1802 m3.
  // Mass at 2,323 to 2,403 kg/m3: 162.8 to 433.0 kg. Loose at 1.69 to 2.9: 0.1185 to 0.5226 m3.
  const { quantities } = planJob(job({})).zones[0] ?? {};
  it('takes the ground past the damage', () => {
    expect(span(quantities?.['patch-area'])[0]).toBeCloseTo(1.3225, 4);
    expect(span(quantities?.['patch-area'])[1]).toBeCloseTo(3.4, 4);
    expect(span(quantities?.['saw-cut'])[0]).toBeCloseTo(4.6, 4);
    expect(span(quantities?.['saw-cut'])[1]).toBeCloseTo(15, 4);
  });
  it('weighs and bulks what comes out', () => {
    expect(span(quantities?.removed)[0]).toBeCloseTo(0.07009, 4);
    expect(span(quantities?.removed)[1]).toBeCloseTo(0.1802, 4);
    expect(span(quantities?.['debris-mass'])[0]).toBeCloseTo(162.8, 0);
    expect(span(quantities?.['debris-mass'])[1]).toBeCloseTo(433.0, 0);
    expect(span(quantities?.['debris-loose'])[0]).toBeCloseTo(0.1185, 3);
    expect(span(quantities?.['debris-loose'])[1]).toBeCloseTo(0.5226, 3);
  });
  // Fill with 5 to 10 % waste: 0.0736 to 0.1982 m3; at 0.01416 m3 a bag: 5.2 to 14.0 bags,
  // which are bought whole: 6 to 14.
  it('fills what was taken out, with waste, in bags', () => {
    expect(span(quantities?.fill)[0]).toBeCloseTo(0.0736, 3);
    expect(span(quantities?.fill)[1]).toBeCloseTo(0.1982, 3);
    expect(span(quantities?.['fill-bags'])).toEqual([6, 14]);
  });
  it('says what is missing instead of a number', () => {
    const without = planJob(job({ area: 'unknown' })).zones[0]?.quantities;
    expect(without?.removed).toMatchObject({ missing: ['area'] });
    expect(without?.['saw-cut']).toMatchObject({ missing: ['area'] });
  });
  it('has nothing to remove from a firm hollow, only to fill', () => {
    const firm = planJob(job({ looseness: ['tight'], texture: ['pitted'] })).zones[0]?.quantities;
    expect(firm?.removed).toBeNull();
    // 1 m2 x 40 mm = 0.04 m3, with 5 to 10 % waste.
    expect(span(firm?.fill)[0]).toBeCloseTo(0.042, 4);
    expect(span(firm?.fill)[1]).toBeCloseTo(0.044, 4);
  });
});

describe('patches', () => {
  // FHWA, Partial-depth repairs, 4.2: 4 in past the damage in frost, 12 x 4 in at least, merge under 12 in,
  // leave spalls under 6 in long and 1.5 in wide.
  it('merge two spots 200 mm apart and keep two 600 mm apart', () => {
    const left = { x: 0, y: 0, length: 400, width: 300 };
    const near = layPatches([left, { ...left, x: 600 }].map(rectangleRing), 'often');
    expect(near.patches).toHaveLength(1);
    expect(near.patches[0]).toMatchObject({ x: -100, y: -100, length: 1200, width: 500 });
    const far = layPatches([left, { ...left, x: 1000 }].map(rectangleRing), 'often');
    // 600 mm between the spots, 100 mm past each: 400 mm between the patches.
    expect(far.patches).toHaveLength(2);
  });
  it('leave a spall smaller than both limits', () => {
    const skipped = (length: number) =>
      layPatches([rectangleRing({ x: 0, y: 0, length, width: 30 })], 'rare').skipped;
    expect(skipped(140)).toEqual([0]);
    expect(skipped(160)).toEqual([]);
  });
  it('bring a small one to the least size', () => {
    expect(valueOf('patch.min-length')).toBe(300);
    const tiny = squarePatch(0.0001, 'rare');
    expect(tiny.area[0]).toBeGreaterThanOrEqual(0.03 - 1e-9);
  });
});
