import { describe, expect, it } from 'vitest';
import { firstPoints, readForOwner } from '$lib/plan/conclusion';
import { quantitiesWith, reach } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

// What an owner is told first. Common practice, no source: grave signs go before any share.
const planned = (id: string, more: object = {}) => ({
  ...{ id, method: 'scarify', steps: [], holds: [], possibleHolds: [], tools: new Map() },
  advice: { steps: [], beside: null },
  quantities: quantitiesWith({}),
  ...more,
});
const held = (id: string, rule: string, verdict = 'stop') => ({
  ...{ id, verdict, holds: [{ rule, verdict }], possibleHolds: [] },
});
const past = { steps: [{ why: [{ rule: 'depth-past-third' }] }], beside: null };
const read = (
  zones: readonly object[],
  plan: { zones?: readonly object[]; held?: readonly object[] },
  { site = {}, total = 100 as number | null, prices = undefined as object | undefined } = {},
) => {
  const job = tradeJob(zones, site, {
    ...(total !== null && { totalArea: total }),
    ...(prices && { prices: prices as never }),
  });
  return readForOwner(job, { drawn: job, tasks: [], zones: [], held: [], ...plan } as never);
};
const two = [{ area: 80 }, { area: 20 }];
const both = [planned('z0'), planned('z1')];

describe('what an owner is told first', () => {
  const conclusion = (...given: Parameters<typeof read>) => read(...given).conclusion;
  it('an engineer, where the slab sank, burnt or drank chemicals, or a zone is stopped', () => {
    for (const warning of ['settled-or-rocking', 'fire-or-chemical'])
      expect(
        conclusion(two, { zones: both }, { site: { warnings: { yes: [warning], maybe: [] } } }),
      ).toBe('engineer-first');
    expect(conclusion(two, { zones: [planned('z0')], held: [held('z1', 'moving-crack')] })).toBe(
      'engineer-first',
    );
  });
  it('a laboratory, where it is cracked like a map', () =>
    expect(
      conclusion(two, {
        zones: [planned('z0')],
        held: [held('z1', 'map-cracking', 'find-out-first')],
      }),
    ).toBe('laboratory-first'));
  it('replace, where most of it is gone; restore the rest, where a part is', () => {
    const gone = held('z0', 'full-depth');
    expect(conclusion(two, { zones: [planned('z1')], held: [gone] })).toBe('replace');
    expect(conclusion(two, { zones: [planned('z0')], held: [held('z1', 'through')] })).toBe(
      'restore-part',
    );
  });
  it('not known yet, where a zone is open, waits, or there is none', () => {
    expect(conclusion(two, { zones: [planned('z0')] })).toBe('not-known-yet');
    expect(conclusion([], {})).toBe('not-known-yet');
    const waits = planned('z1', { holds: [{ rule: 'sound-first', verdict: 'find-out-first' }] });
    expect(conclusion(two, { zones: [planned('z0'), waits] })).toBe('not-known-yet');
  });
  it('doubtful by depth: all of it, or a part where most is free', () => {
    const doubt = (id: string) => [
      ...both.filter((zone) => zone.id !== id),
      planned(id, { advice: past }),
    ];
    expect(conclusion(two, { zones: doubt('z0') })).toBe('doubtful');
    expect(conclusion(two, { zones: doubt('z1') })).toBe('part-doubtful');
  });
  it('restore, where the whole is known; its parts only, where half or more is not entered', () => {
    expect(conclusion(two, { zones: both })).toBe('restore');
    expect(conclusion(two, { zones: both }, { total: 199 })).toBe('restore');
    expect(conclusion(two, { zones: both }, { total: 200 })).toBe('parts-only');
    expect(conclusion([{ area: 80 }, { area: 'unknown' }], { zones: both }, { total: null })).toBe(
      'parts-only',
    );
  });
});

describe('what stands beside it', () => {
  it('zones that restoring leaves out, so that it is held against nothing', () => {
    const all = read(two, { zones: both });
    expect(all.leftOut).toEqual([]);
    expect(all.lighter.debris).toBe('first');
    const some = read(two, { zones: [planned('z0')], held: [held('z1', 'through')] });
    expect(some.leftOut).toEqual(['z1']);
    expect(some.lighter.debris).toBe('not-known');
    // The part that is gone is made new: that option leaves nothing out.
    const less = { id: 'less', than: 'replace' };
    expect(some.points.parts?.speaksFor).toContainEqual(expect.objectContaining(less));
    const open = read([...two, { area: 5 }], {
      zones: [planned('z0')],
      held: [held('z1', 'through')],
    });
    expect(open.leftOut).toEqual(['z1', 'z2']);
    expect(open.points.parts?.speaksFor).not.toContainEqual(expect.objectContaining(less));
  });
  it('options against each other: restoring against all, parts against all, restoring against parts', () => {
    const broken = planned('z1', {
      method: 'break-out',
      quantities: quantitiesWith({
        'debris-mass': reach('kg', [10, 20, 30]),
        'patch-area': reach('m2', [20, 20, 20]),
      }),
    });
    const { points, options } = read(two, { zones: [planned('z0'), broken] });
    expect(options.parts).not.toBeNull();
    const told = (id: 'restore' | 'parts' | 'replace') =>
      [...(points[id]?.speaksFor ?? []), ...(points[id]?.against ?? [])].flatMap((point) =>
        point.measures?.includes('debris') ? [`${point.id} than ${point.than}`] : [],
      );
    expect(told('restore')).toEqual(['less than replace', 'less than parts']);
    expect(told('parts')).toEqual(['less than replace', 'more than restore']);
    expect(told('replace')).toEqual(['more than restore']);
    const washed = read(two, { zones: both });
    expect(washed.options.parts).toBeNull();
    expect(washed.points).not.toHaveProperty('parts');
    expect(read(two, {}).options.restore).toBeNull();
    expect(read(two, {}).points).not.toHaveProperty('restore');
  });
  it('what rings: sound and skin-deep zones, unless they may be dull', () => {
    const rings = (looseness: unknown) =>
      read([{ area: 80 }, { area: 20, looseness }], { zones: both }).rings;
    expect(rings(['powdery'])).toBe(1);
    for (const dull of [['hollow'], ['rotten'], ['powdery', 'rotten'], undefined])
      expect(rings(dull), String(dull)).toBe(0.8);
    expect(read(two, { zones: both }, { total: null }).rings).toBeNull();
  });
  it('parts that are made new, and those that may have to be', () => {
    const { madeNew } = read([{ area: 60 }, { area: 20 }, { area: 10 }, { area: 5 }, { area: 5 }], {
      zones: [planned('z0'), planned('z1', { advice: past })],
      held: [held('z2', 'through'), held('z3', 'moving-crack')],
    });
    expect(madeNew).toEqual({ parts: 1, perhaps: 3, of: 5 });
  });
  it('costs, by the prices of the job', () => {
    const prices = { perHour: 1, perTonne: 1, perConcrete: 1, perBag: 1 };
    expect(read(two, { zones: both }, { prices }).options.replace.cost).not.toBeNull();
    expect(read(two, { zones: both }).options.replace.cost).toBeNull();
  });
});

describe('the first points of each option', () => {
  const point = (id: string) => ({ id });
  const first = (conclusion: string, points: object) =>
    firstPoints({ conclusion, points } as never);
  it('are the gravest on each side that stands nowhere above', () => {
    expect(
      first('restore', {
        restore: {
          speaksFor: [point('mostly-sound')],
          against: [point('settled'), point('structure')],
        },
        parts: {
          speaksFor: [point('mostly-sound')],
          against: [point('settled'), point('structure')],
        },
        replace: { speaksFor: [point('settled')], against: [] },
      }),
    ).toEqual({
      restore: { speaksFor: [point('mostly-sound')], against: [point('settled')] },
      parts: { speaksFor: [], against: [point('structure')] },
    });
  });
  it('say nothing that the conclusion says', () => {
    const restore = { speaksFor: [], against: [point('map-cracking')] };
    expect(first('laboratory-first', { restore })).toEqual({});
    expect(first('replace', { restore })).toEqual({ restore });
  });
});
