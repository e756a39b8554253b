import { describe, expect, it } from 'vitest';
import { compareOptions, overlapsOf } from '$lib/plan/compare';
import { conditionsOf } from '$lib/plan/conditions';
import { measureIds, type OwnerOption } from '$lib/plan/options';
import { signsOf } from '$lib/plan/signs';
import type { Amount } from '$lib/plan/amount';
import { reach } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

// In what state a surface is, and which option takes less. Common practice, no source.
const stop = { rule: 'moving-crack', verdict: 'stop' };
const find = { rule: 'sound-first', verdict: 'find-out-first' };

const option = (span: readonly [number, number] | null, id = 'debris'): OwnerOption => ({
  ...(Object.fromEntries(measureIds.map((each) => [each, null])) as unknown as OwnerOption),
  [id]: span && ({ span, unit: 'kg', working: [] } satisfies Amount),
});

describe('two options held against each other', () => {
  const lighter = (one: [number, number] | null, other: [number, number] | null) =>
    compareOptions(option(one), option(other)).debris;
  it('takes less where its most is less than the least of the other; else they are alike', () => {
    expect(lighter([1, 2], [3, 4])).toBe('first');
    expect(lighter([3, 4], [1, 2])).toBe('second');
    expect(lighter([1, 3], [3, 4])).toBe('alike');
    expect(lighter([3, 4], [1, 3])).toBe('alike');
    expect(lighter([1, 9], [3, 4])).toBe('alike');
    expect(lighter(null, [3, 4])).toBe('not-known');
    expect(lighter([3, 4], null)).toBe('not-known');
    const none = compareOptions(null, option([1, 2]));
    expect(new Set(Object.values(none))).toEqual(new Set(['not-known']));
    expect(Object.keys(none)).toEqual([...measureIds]);
    const open: OwnerOption = { ...option(null), debris: { missing: ['area'], unit: 'kg' } };
    expect(compareOptions(open, option([1, 2])).debris).toBe('not-known');
    expect(compareOptions(option([1, 2]), open).debris).toBe('not-known');
  });
  it('names the pairs that cross', () => {
    const { debris, hours } = overlapsOf({
      ...{ restore: option([1, 3]), parts: option([2, 5]), replace: option([4, 6]) },
    });
    expect(debris).toEqual([
      ['restore', 'parts'],
      ['parts', 'replace'],
    ]);
    expect(hours).toEqual([]);
  });
});

describe('in what state the parts of a surface are', () => {
  const planned = (id: string, method: string, steps: string[] = []) => ({ id, method, steps });
  const held = (id: string, verdict: string, holds: object[], possibleHolds: object[] = []) => ({
    ...{ id, verdict, holds, possibleHolds },
  });
  const state = (of: { zones?: object[]; held?: object[] }, answers: object = {}) =>
    conditionsOf(tradeJob([answers]), { zones: [], held: [], ...of } as never).of['z0'];
  const full = { rule: 'full-depth', verdict: 'stop' };
  it('is by the method, and by what stands before it', () => {
    expect(state({ zones: [planned('z0', 'break-out')] })).toBe('break-out');
    expect(state({ zones: [planned('z0', 'water-jet', ['saw-cut'])] })).toBe('break-out');
    expect(state({ zones: [planned('z0', 'water-jet', ['vacuum'])] })).toBe('sound');
    expect(state({ zones: [planned('z0', 'scarify', ['saw-cut'])] })).toBe('sound');
    expect(state({ zones: [planned('z0', 'scarify')] }, { looseness: ['powdery'] })).toBe(
      'surface',
    );
    expect(state({})).toBe('not-known');
    expect(state({ held: [held('other', 'stop', [stop])] })).toBe('not-known');
    expect(state({ zones: [planned('other', 'break-out')] })).toBe('not-known');
    expect(state({ held: [held('z0', 'find-out-first', [find])] })).toBe('not-known');
    expect(state({ held: [held('z0', 'find-out-first', [stop])] })).toBe('not-known');
    expect(state({ held: [held('z0', 'stop', [stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [full, stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [full, find], [stop])] })).toBe('replace');
    for (const [who, told] of [
      ['engineer', 'engineer'],
      ['concrete-contractor', 'replace'],
    ])
      expect(state({ held: [held('z0', 'stop', [{ ...full, who }])] })).toBe(told);
    expect(state({ held: [held('z0', 'stop', [{ ...full, rule: 'through' }])] })).toBe('replace');
    expect(state({ held: [held('z0', 'stop', [], [stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [find], [full])] })).toBe('replace');
  });
  it('has the parts of the whole: 30, 10 and 20 of 80 m2, the rest not entered', () => {
    const zones = [
      { area: 30 },
      { area: 10 },
      { area: 20, looseness: ['powdery'] },
      { area: 'unknown' },
    ];
    const plan = {
      held: [],
      zones: [planned('z0', 'scarify'), planned('z1', 'break-out'), planned('z2', 'scarify')],
    } as never;
    const area = {
      ...{ sound: 30, surface: 20, 'break-out': 10, replace: 0, engineer: 0, 'not-known': 0 },
      'not-sounded': 0,
    };
    const of = { z0: 'sound', z1: 'break-out', z2: 'surface', z3: 'not-known' };
    expect(conditionsOf(tradeJob(zones, {}, { totalArea: 80 }), plan)).toEqual({
      ...{ known: 60, whole: 80, unmeasured: ['z3'], of },
      area: { ...area, 'not-entered': 20 },
      share: {
        ...{ sound: 0.375, surface: 0.25, 'break-out': 0.125, 'not-entered': 0.25 },
        ...{ replace: 0, engineer: 0, 'not-known': 0, 'not-sounded': 0 },
      },
      // Two lost as much: the first of them has the percent that is missing.
      told: {
        ...{ sound: 0.38, surface: 0.25, 'break-out': 0.12, 'not-entered': 0.25 },
        ...{ replace: 0, engineer: 0, 'not-known': 0, 'not-sounded': 0 },
      },
    });
    expect(conditionsOf(tradeJob([{ area: undefined }]), plan)).toMatchObject({
      ...{ known: 0, unmeasured: ['z0'] },
    });
    // Zones that come to more than the whole were measured.
    expect(conditionsOf(tradeJob(zones, {}, { totalArea: 50 }), plan)).toMatchObject({
      ...{ known: 60, whole: 60, area: { 'not-entered': 0 }, share: { sound: 0.5 } },
    });
    expect(conditionsOf(tradeJob(zones), plan)).toEqual({
      ...{ known: 60, whole: null, share: null, told: null, unmeasured: ['z3'], of },
      area: { ...area, 'not-entered': 0 },
    });
  });
});

describe('signs', () => {
  const past = { why: [{ rule: 'depth-past-third' }] };
  const planned = (
    id: string,
    holds: object[] = [],
    steps: object[] = [],
    fill: unknown = null,
  ) => ({
    ...{ id, holds, advice: { steps }, quantities: { fill } },
  });
  const zones = [{ area: 10, looseness: ['rotten'] }, { area: 20 }, { area: 30 }];
  const conditions = (whole: number | null, of: object = {}, more: object = {}) =>
    ({
      whole,
      of: { z0: 'sound', z1: 'replace', z2: 'sound', ...of },
      unmeasured: [],
      ...more,
    }) as never;
  const job = tradeJob(zones, {
    warnings: { yes: ['settled-or-rocking'], maybe: ['through-cracks'] },
  });
  const plan = {
    drawn: job,
    held: [{ id: 'z1', holds: [{ rule: 'through' }] }],
    zones: [planned('z0', [{ rule: 'map-cracking' }]), planned('z2', [], [past])],
  } as never;
  it('are zones by their state, by what holds them, and what is warned of', () => {
    const signs = signsOf(plan, conditions(100));
    expect(signs.zonesIn('sound')).toEqual(['z0', 'z2']);
    expect(signs.zonesIn('replace', 'engineer')).toEqual(['z1']);
    expect(signs.held('map-cracking')).toEqual(['z0']);
    expect(signs.held('through')).toEqual(['z1']);
    expect(signs.held('moving-crack')).toEqual([]);
    expect(signs.warned('settled-or-rocking')).toBe(true);
    expect(signs.warned('fire-or-chemical')).toBe(false);
    const bare = { ...(plan as object), drawn: tradeJob(zones, { warnings: undefined }) } as never;
    expect(signsOf(bare, conditions(100)).warned('settled-or-rocking')).toBe(false);
    expect(signs).toMatchObject({ doubtful: ['z2'], patched: false, mostly: 0.5 });
  });
  it('say that most is gone past one half: rotten and gone, each once', () => {
    // z0 is rotten and z1 gone: 30 m2.
    expect(signsOf(plan, conditions(100))).toMatchObject({ gone: 0.3, mostlyGone: false });
    expect(signsOf(plan, conditions(60))).toMatchObject({ gone: 0.5, mostlyGone: false });
    expect(signsOf(plan, conditions(50))).toMatchObject({ gone: 0.6, mostlyGone: true });
    expect(signsOf(plan, conditions(100, { z0: 'replace' }))).toMatchObject({ gone: 0.3 });
    expect(signsOf(plan, conditions(null))).toMatchObject({ gone: 0, mostlyGone: false });
    expect(signsOf(plan, conditions(100), { 'compare.mostly': 0.2 }).mostlyGone).toBe(true);
  });
  it('say that most is free of doubt where less than half is doubtful or not entered', () => {
    const free = (whole: number | null, entered = 0, unmeasured: string[] = []) =>
      signsOf(plan, conditions(whole, {}, { unmeasured, share: { 'not-entered': entered } }))
        .mostlyFree;
    // z2, 30 m2, is doubtful.
    expect(free(100)).toBe(true);
    expect(free(60)).toBe(false);
    expect(free(100, 0.2)).toBe(false);
    expect(free(100, 0.19)).toBe(true);
    expect(free(100, 0, ['z1'])).toBe(false);
    expect(free(null)).toBe(false);
  });
  it('speak of the life of patches where a hole is filled', () => {
    const filled = { drawn: job, held: [], zones: [planned('z0', [], [], reach('m3', [1, 2, 3]))] };
    expect(signsOf(filled as never, conditions(100)).patched).toBe(true);
    const also = { ...filled, zones: [...filled.zones, planned('z2')] };
    expect(signsOf(also as never, conditions(100)).patched).toBe(true);
  });
  it('say that salt and frost have worked on it: scaled for sure, salted, and it freezes', () => {
    const cold = { salts: ['de-icing'], freezeThaw: ['some', 'often'] };
    const salted = (zones: readonly object[], site: object = {}) => {
      const drawn = tradeJob(zones, { ...cold, ...site });
      return signsOf({ drawn, zones: [], held: [] } as never, conditions(100)).salted;
    };
    const scaled = ['powdery', 'flaking', 'fractured', 'rotten'];
    for (const each of scaled) expect(salted([{ looseness: [each] }]), each).toBe(true);
    expect(salted([{ looseness: scaled }])).toBe(true);
    expect(salted([{ looseness: ['tight'] }, { looseness: ['flaking'] }])).toBe(true);
    for (const looseness of [['tight'], ['hollow'], ['flaking', 'tight'], undefined])
      expect(salted([{ looseness }]), String(looseness)).toBe(false);
    const flaking = [{ looseness: ['flaking'] }];
    for (const site of [
      { salts: ['none'] },
      { salts: ['none', 'de-icing'] },
      { salts: undefined },
      { freezeThaw: ['rare'] },
      { freezeThaw: ['rare', 'often'] },
      { freezeThaw: undefined },
    ])
      expect(salted(flaking, site), JSON.stringify(site)).toBe(false);
  });
  it('say of zones counted by their spots alone that nobody has sounded them, until somebody has', () => {
    const laid = { patches: [{ area: 1, spots: [0] }] };
    const notSounded = (...heard: string[]) => {
      const spots = (id: string, patches: object | null) => ({
        ...planned(id),
        patches,
        sounded: heard.includes(id),
      });
      const some = {
        drawn: tradeJob([{}, {}, {}, {}]),
        zones: [spots('z0', laid), spots('z2', null), spots('z3', laid)],
        held: [{ ...spots('z1', laid), holds: [{ rule: 'through' }] }],
      } as never;
      return signsOf(some, conditions(100, { z0: 'break-out', z2: 'break-out' })).notSounded;
    };
    // z2 has no spots and is damaged all over.
    expect(notSounded()).toContain('z0');
    expect(notSounded()).not.toContain('z2');
    expect(notSounded('z0')).not.toContain('z0');
    expect(notSounded('z0', 'z1', 'z3')).toEqual([]);
  });
  it('name the planned zones of which nobody has said what goes on top', () => {
    const drawn = tradeJob([
      { finish: ['undecided'] },
      { finish: ['undecided', 'overlay'] },
      { finish: undefined },
      { finish: ['overlay'] },
      { finish: ['undecided'] },
    ]);
    const some = { drawn, zones: ['z0', 'z1', 'z2', 'z3'].map((id) => planned(id)), held: [] };
    expect(signsOf(some as never, conditions(100)).undecided).toEqual(['z0', 'z1', 'z2']);
  });
});
