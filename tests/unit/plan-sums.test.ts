import { describe, expect, it } from 'vitest';
import {
  asFactor,
  figureTerm,
  product,
  sum,
  times,
  together,
  typicalOf,
  wasteTerm,
  wholePieces,
  type Amount,
  type Ground,
} from '$lib/plan/amount';
import { areaOf, fullDepth, nothing } from '$lib/plan/full-depth';
import { deepestOf, sizeOf, volumeShare } from '$lib/plan/shares';
import { tradeJob } from '../helpers/trade-jobs';

// Hand sums. What a range is multiplied and divided by is arithmetic; the figures are those of shared/.
const area = { what: 'area', span: [2, 4], unit: 'm2' } as const;
const rate = { what: 'rate', span: [5, 10], typical: 8, unit: 'm2/h', by: 'over' } as const;
const missing: Amount = { missing: ['area'], unit: 'm2' };

describe('a sum', () => {
  it('of one part keeps how that was come to, parts and ground of it too; of more, none', () => {
    const parts = [product('m2', [area]), product('m2', [area])];
    const ground: Ground = {
      of: 'area',
      area: 4,
      past: [75, 100],
      inSpots: 1,
      spots: 9,
      side: 0.4,
      times: 3,
    };
    const told = { ...product('m2', [area]), added: parts, ground } as Amount;
    expect(sum('m2', [told])).toEqual(told);
    const bare = sum('m2', [product('m2', [area])]);
    expect(bare).not.toHaveProperty('added');
    expect(bare).not.toHaveProperty('ground');
    expect(sum('m2', [told, told])).toEqual({
      ...{ span: [4, 8], typical: 6, unit: 'm2', working: [] },
    });
  });
});

describe('a product of ranges', () => {
  it('goes low with low; what is divided by goes low with high', () => {
    // 2 to 4 m2, usually 3, at 5 to 10 m2/h, usually 8.
    expect(product('h', [area, rate])).toEqual({
      span: [0.2, 0.8],
      typical: 0.375,
      unit: 'h',
      working: [area, rate],
    });
    expect(product('m2', [])).toEqual({ span: [1, 1], typical: 1, unit: 'm2', working: [] });
  });
  it('has the middle for its usual value, and none outside its ends', () => {
    expect(typicalOf({ span: [2, 4] })).toBe(3);
    expect(typicalOf({ span: [2, 4], typical: 2.5 })).toBe(2.5);
    expect(typicalOf({ span: [2, 4], typical: 9 })).toBe(4);
    expect(typicalOf({ span: [2, 4], typical: 1 })).toBe(2);
  });
  it('is multiplied on from what it came to, with the whole working', () => {
    const ground: Amount = { span: [2, 4], typical: 2.5, unit: 'm2', working: [area] };
    expect(times('h', ground, rate)).toEqual({
      span: [0.2, 0.8],
      typical: 2.5 / 8,
      unit: 'h',
      working: [area, rate],
    });
    expect(times('h', missing, rate)).toEqual({ missing: ['area'], unit: 'h' });
  });
});

describe('a figure as a factor', () => {
  it('has its ends, its usual value and its name', () => {
    expect(figureTerm('rate', 'rate.saw-cut', undefined, 'over')).toEqual({
      ...{ what: 'rate', span: [6, 20], typical: 12, unit: 'm/h', figure: 'rate.saw-cut' },
      by: 'over',
    });
    expect(figureTerm('density', 'mortar.density')).toEqual({
      ...{ what: 'density', span: [2000, 2300], unit: 'kg/m3', figure: 'mortar.density' },
    });
  });
  it('is the reader’s own value where there is one, which is no range', () =>
    expect(figureTerm('rate', 'rate.saw-cut', { 'rate.saw-cut': 9 })).toEqual({
      ...{ what: 'rate', span: [9, 9], unit: 'm/h', figure: 'rate.saw-cut' },
    }));
  it('of waste is one and the waste: 5 to 10 %, usually 7', () => {
    const { span, typical, ...term } = wasteTerm('fill.waste');
    expect(term).toEqual({ what: 'waste', unit: 'ratio', figure: 'fill.waste' });
    expect([...span, typical]).toEqual([1.05, 1.1, 1.07]);
    expect(wasteTerm('fill.waste', { 'fill.waste': 0.2 })).toMatchObject({
      ...{ span: [1.2, 1.2], typical: 1.2 },
    });
  });
});

describe('a sum', () => {
  const one: Amount = { span: [1, 2], unit: 'm2', working: [area] };
  const other: Amount = { span: [3, 7], typical: 4, unit: 'm2', working: [area] };
  it('adds ends and usual values, and shows the working of a single part alone', () => {
    expect(sum('m2', [one, other])).toEqual({
      span: [4, 9],
      typical: 5.5,
      unit: 'm2',
      working: [],
    });
    expect(sum('m2', [other])).toEqual(other);
    expect(sum('m2', [])).toEqual({ span: [0, 0], typical: 0, unit: 'm2', working: [] });
  });
  it('of what is not known says what to ask, each thing once', () =>
    expect(sum('m3', [missing, one, { missing: ['depth', 'area'], unit: 'm3' }, missing])).toEqual({
      missing: ['area', 'depth'],
      unit: 'm3',
    }));
  it('of what arises is null where nothing does, and the part itself where one does', () => {
    expect(together('m2', [null, null])).toBeNull();
    expect(together('m2', [null, one])).toBe(one);
    const both = [one, other];
    expect(together('m2', [one, null, other])).toEqual({ ...sum('m2', both), added: both });
  });
  it('can stand in a working as one factor, where its own was lost', () => {
    const added: Amount = { span: [4, 9], typical: 5.5, unit: 'm3', working: [] };
    expect(asFactor('removed', added)).toEqual({
      ...added,
      working: [{ what: 'removed', span: [4, 9], typical: 5.5, unit: 'm3' }],
    });
    expect(asFactor('removed', { span: [4, 9], unit: 'm3', working: [] })).toEqual({
      ...{ span: [4, 9], unit: 'm3' },
      working: [{ what: 'removed', span: [4, 9], unit: 'm3' }],
    });
    expect(asFactor('removed', one)).toBe(one);
    expect(asFactor('removed', missing)).toBe(missing);
  });
});

describe('pieces that are bought whole', () => {
  it('go up to the next, both ends and the usual', () => {
    const bags: Amount = { span: [5.2, 14.001], typical: 7.5, unit: 'count', working: [] };
    expect(wholePieces(bags)).toEqual({ ...bags, span: [6, 15], typical: 8 });
    expect(wholePieces({ span: [0, 3], unit: 'count', working: [] })).toMatchObject({
      ...{ span: [0, 3], typical: 2 },
    });
    expect(wholePieces(missing)).toBe(missing);
  });
  it('a hair above a whole number, as arithmetic leaves it, is that number', () =>
    expect(
      wholePieces({ span: [0.1 * 3 * 10, 7 + 1e-12], unit: 'count', working: [] }),
    ).toMatchObject({ span: [3, 7], typical: 5 }));
});

describe('through its full depth', () => {
  const job = tradeJob([{ area: 4 }, { area: 6, depth: 60 }, { area: 'unknown', depth: 30 }], {
    thickness: 150,
  });
  const known = (value: number): Amount => ({
    span: [value, value],
    typical: value,
    unit: 'm2',
    working: [{ what: 'area', span: [value, value], unit: 'm2' }],
  });
  it('10 m2 of a slab of 150 mm are 1.5 m3', () => {
    expect(areaOf(job, ['z0', 'z1'])).toEqual({ ...known(10), working: [] });
    expect(areaOf(job, ['z1'])).toEqual(known(6));
    expect(fullDepth(known(10), job)).toEqual({
      span: [1.5, 1.5],
      typical: 1.5,
      unit: 'm3',
      working: [
        { what: 'area', span: [10, 10], unit: 'm2' },
        { what: 'depth', span: [0.15, 0.15], unit: 'm' },
      ],
    });
  });
  it('of no zones is nothing, and of one without a size asks for it', () => {
    expect(areaOf(job, [])).toEqual({ span: [0, 0], typical: 0, unit: 'm2', working: [] });
    expect(nothing('L')).toEqual({ span: [0, 0], typical: 0, unit: 'L', working: [] });
    expect(areaOf(job, ['z0', 'z2'])).toEqual({ missing: ['area'], unit: 'm2' });
  });
  it('of a slab of unknown thickness asks for that as well', () => {
    for (const thickness of [undefined, 'unknown']) {
      const thick = tradeJob([{ area: 4 }], { thickness });
      expect(fullDepth(known(4), thick)).toEqual({ missing: ['thickness'], unit: 'm3' });
      expect(fullDepth(missing, thick)).toEqual({ missing: ['area', 'thickness'], unit: 'm3' });
    }
    expect(fullDepth(missing, job)).toEqual({ missing: ['area'], unit: 'm3' });
  });

  it('is measured by the zones: sizes added, and the deepest as part of the thickness', () => {
    expect(sizeOf(['z0', 'z1', 'z2'], job)).toBe(10);
    expect(sizeOf(['z1'], job)).toBe(6);
    expect(deepestOf(job)).toBeCloseTo(60 / 150, 12);
    expect(deepestOf(tradeJob([{ depth: 60 }], { thickness: 'unknown' }))).toBeNull();
    expect(deepestOf(tradeJob([{ depth: ['film'] }]))).toBeNull();
  });
  it('counts in the share that comes off: 0.09 to 0.3 of 3 m3 planned, 0.9 of it gone', () => {
    const drawn = tradeJob([{ area: 4 }, { area: 6 }], { thickness: 150 });
    const removed: Amount = { span: [0.09, 0.3], typical: 0.15, unit: 'm3', working: [] };
    const plan = (amount: Amount | null) =>
      ({ drawn, zones: [{ id: 'z0', quantities: { removed: amount } }], held: [] }) as never;
    const conditions = { whole: 20, of: { z0: 'break-out', z1: 'replace' } } as never;
    const share = volumeShare(plan(removed), conditions);
    expect(share?.low).toBeCloseTo(0.99 / 3, 9);
    expect(share?.typical).toBeCloseTo(1.05 / 3, 9);
    expect(share?.high).toBeCloseTo(1.2 / 3, 9);
    // Nothing comes off where it is washed; more than all never does.
    expect(volumeShare(plan(null), conditions)?.high).toBeCloseTo(0.3, 9);
    const all = { ...removed, span: [9, 9] as const };
    expect(volumeShare(plan(all), conditions)).toEqual({ low: 1, typical: 1, high: 1 });
    const open = { whole: 20, of: { z0: 'break-out', z1: 'not-known' } } as never;
    expect(volumeShare(plan(removed), open)).toBeNull();
    expect(
      volumeShare(plan(removed), { ...(conditions as object), whole: null } as never),
    ).toBeNull();
    const thick = tradeJob([], { thickness: 'unknown' });
    expect(volumeShare({ drawn: thick, zones: [] } as never, conditions)).toBeNull();
  });
});
