import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { isKnown, type Amount } from '$lib/plan/amount';
import { compareOptions } from '$lib/plan/compare';
import { replacing, restoring } from '$lib/plan/options';
import { planJob } from '$lib/plan/plan';
import { readForOwner } from '$lib/plan/conclusion';
import { rangeOf } from '$shared/figures';

const span = (amount: Amount | null) => {
  if (!amount || !isKnown(amount)) throw new Error('not known');
  return amount.span;
};
const zone = (id: string, answers: object) => ({
  id,
  name: id,
  answers: {
    depth: ['film'],
    looseness: ['tight'],
    contamination: { yes: [], maybe: [] },
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['overlay'],
    area: 10,
    ...answers,
  },
});
const job = (zones: { answers: { area?: unknown } }[], site: object = {}): Job =>
  ({
    totalArea: zones.reduce(
      (total, { answers: { area } }: { answers: { area?: unknown } }) =>
        total + (typeof area === 'number' ? area : 0),
      0,
    ),
    name: '9 Larch Row (invented)',
    site: {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['rare'],
      thickness: 100,
      warnings: { yes: [], maybe: [] },
      ...site,
    },
    zones,
  }) as unknown as Job;
/** On a slab so large that no patch meets its edge. */
const wide = (zones: Parameters<typeof job>[0]): Job => ({
  ...job(zones, { thickness: 150 }),
  totalArea: 100,
});
const restored = (it_: Job) => restoring(planJob(it_), it_);
const replaced = (it_: Job, prices = {}) => replacing(planJob(it_), it_, prices);
const conclusion = (zones: Parameters<typeof job>[0], site: object = {}) => {
  const it_ = job(zones, site);
  return readForOwner(it_, planJob(it_));
};

describe('carbon and mass, worked by hand', () => {
  it('is not known where no zone can be planned, and never nothing', () => {
    // Common practice, no source: what may not start has no quantities yet.
    const held = job([zone('a', { depth: ['through'] })]);
    expect(restored(held)).toBeNull();
  });

  // Replacing 20 m2 of a 100 mm slab: 2 m3 out, 2.1 to 2.2 m3 in (5 to 10 % waste, common practice).
  // Debris at 2,323 to 2,403 kg/m3 (AASHTO LRFD Table 3.5.1-1, as reported): 4,646 to 4,806 kg.
  // Ready-mix at 257 to 382 kgCO2e/m3 (US GSA limits, A1 to A3): 539.7 to 840.4 kg.
  // Haulage of debris and fresh concrete at 0.12 to 0.25 kgCO2e/t km (UK government factors 2012)
  // over 10 to 50 km: debris 5.6 to 60.1 kg; fresh 2.1 x 2,323 = 4,878 kg to 2.2 x 2,403 = 5,287 kg: 5.9 to 66.1 kg.
  // Sum: 551.1 to 966.6 kg.
  const option = replaced(job([zone('a', { area: 20 })]));
  it('of replacing', () => {
    expect(span(option.material)[0]).toBeCloseTo(2.1, 6);
    expect(span(option.material)[1]).toBeCloseTo(2.2, 6);
    expect(span(option.debris)[0]).toBeCloseTo(4646, 0);
    expect(span(option.debris)[1]).toBeCloseTo(4806, 0);
    expect(span(option.carbon)[0]).toBeCloseTo(551.1, 0);
    expect(span(option.carbon)[1]).toBeCloseTo(966.6, 0);
  });

  // Restoring 1 m2 hollow to 40 mm: fill 0.0736 to 0.1982 m3 (see the plan's checks), mortar at
  // 2,000 to 2,300 kg/m3: 147.2 to 455.9 kg; 0.2 to 0.737 kgCO2e/kg: 29.4 to 336.0 kg, haulage of that and
  // of 433 kg of debris at most 0.889 t x 50 km x 0.25 = 11.1 kg more.
  it('of restoring a small patch', () => {
    const small = wide([zone('a', { area: 1, depth: 40, looseness: ['hollow'] })]);
    const [low, high] = span(restored(small)?.carbon ?? null);
    expect(low).toBeGreaterThan(29.4);
    expect(low).toBeLessThan(30.5);
    expect(high).toBeGreaterThan(336);
    expect(high).toBeLessThan(347.2);
  });

  it('of two like patches is twice that of one, and of nothing is nothing', () => {
    const patch = { area: 1, depth: 40, looseness: ['hollow'] };
    const one = restored(wide([zone('a', patch)]));
    const two = restored(wide([zone('a', patch), zone('b', patch)]));
    for (const id of ['debris', 'material', 'carbon'] as const)
      expect(span(two?.[id] ?? null)[1]).toBeCloseTo(2 * span(one?.[id] ?? null)[1], 6);
    expect(span(restored(job([zone('a', {})]))?.carbon ?? null)).toEqual([0, 0]);
  });

  // US GSA limits, kgCO2e/m3: 3,000 psi best fifth 257; 5,000 psi better than average 382.
  it('uses the published limits', () => expect(rangeOf('carbon.ready-mix')).toEqual([257, 382]));

  it("gives no cost without the reader's own prices, and theirs with them", () => {
    expect(option.cost).toBeNull();
    const priced = replaced(job([zone('a', { area: 20 })]), {
      perHour: 0,
      perConcrete: 200,
      perTonne: 0,
    });
    // 2.1 to 2.2 m3 at 200 a m3.
    expect(span(priced.cost)[0]).toBeCloseTo(420, 6);
    expect(span(priced.cost)[1]).toBeCloseTo(440, 6);
  });
});

describe('no thumb on the scale', () => {
  it('equal options compare as alike', () => {
    const option = replaced(job([zone('a', {})]));
    expect(new Set(Object.values(compareOptions(option, option)))).toEqual(
      new Set(['alike', 'not-known']),
    );
  });
  it('swapping the options swaps the result', () => {
    const corner = { area: 1, looseness: ['hollow'], depth: 30 };
    const it_ = job([zone('most', { area: 45 }), zone('corner', corner)]);
    const [one, other] = [restored(it_), replaced(it_)];
    const swap = { first: 'second', second: 'first', alike: 'alike', 'not-known': 'not-known' };
    const there = compareOptions(one, other);
    const back = compareOptions(other, one);
    expect(Object.values(there)).toContain('first');
    for (const [measure, result] of Object.entries(there))
      expect(back[measure as keyof typeof back]).toBe(swap[result]);
  });
});

describe('the conclusion', () => {
  it('says restore for a sound slab with a bad corner', () => {
    const { conclusion: said, conditions } = conclusion(
      [zone('most', { area: 45 }), zone('corner', { area: 5, depth: 30, looseness: ['hollow'] })],
      { thickness: 150 },
    );
    expect(said).toBe('restore');
    expect(conditions.share?.sound).toBeCloseTo(0.9, 9);
  });
  it('says replace where it is mostly rotten', () => {
    const { conclusion: said, points } = conclusion([
      zone('most', { area: 40, depth: 30, looseness: ['rotten'] }),
      zone('rest', { area: 10 }),
    ]);
    expect(said).toBe('replace');
    expect(points.replace?.speaksFor.map(({ id }) => id)).toContain('mostly-gone');
    expect(points.restore?.against.map(({ id }) => id)).toContain('mostly-gone');
  });
  it('says replace where it is gone to full depth', () => {
    expect(conclusion([zone('a', { depth: ['through'] })]).conclusion).toBe('replace');
    expect(conclusion([zone('a', { depth: 60, looseness: ['fractured'] })]).conclusion).toBe(
      'replace',
    );
  });
  it('says replace that part where only a part is gone', () => {
    const some = conclusion([zone('a', { depth: ['through'], area: 2 }), zone('b', { area: 20 })]);
    expect(some.conclusion).toBe('restore-part');
  });
  it('sends cracks like a map to the laboratory', () => {
    // Petrography tells whether the concrete itself fails (ASTM C856, from memory).
    const said = conclusion([zone('a', {})], { warnings: { yes: ['map-cracking'], maybe: [] } });
    expect(said.conclusion).toBe('laboratory-first');
  });
  it.each(['settled-or-rocking', 'fire-or-chemical'])('says engineer first for %s', (warning) => {
    const said = conclusion([zone('a', {})], { warnings: { yes: [warning], maybe: [] } });
    expect(said.conclusion).toBe('engineer-first');
  });
  it('says engineer first where structure would be cut', () => {
    const said = conclusion([zone('a', { depth: 30, looseness: ['hollow'] })], {
      element: ['suspended-slab'],
      thickness: 150,
    });
    expect(said.conclusion).toBe('engineer-first');
  });
  it('says not known yet where answers that matter are open', () => {
    expect(conclusion([zone('a', { looseness: ['tight', 'rotten'] })]).conclusion).toBe(
      'not-known-yet',
    );
  });
  it('always names what is not known, and that no one percentage holds', () => {
    const { notKnown } = conclusion([zone('a', { area: 'unknown' })], { thickness: 'unknown' });
    expect(notKnown.map(({ id }) => id)).toEqual([
      'unmeasured',
      'thickness-unknown',
      'no-one-percentage',
    ]);
  });
});
