import { describe, expect, it } from 'vitest';
import { hoursOf } from '$lib/plan/hours';
import { passesTerm } from '$lib/plan/passes';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';
const near = (values: readonly number[]) => values.map((value) => Math.round(value * 1e9) / 1e9);

// 1/8 in, 3.2 mm: what shotblasting is typically used to (Concrete Construction); with cutters common practice.
describe('passes before anything was tried', () => {
  const passes = (method: string, answers: object, own?: object) =>
    passesTerm(workOf({ method, tried: [] }, answers), own)?.span ?? null;
  it('are as many as the depth takes at the deepest pass of the machine', () => {
    for (const method of ['scarify', 'shotblast']) {
      expect(passes(method, { depth: 3.2 }), method).toBeNull();
      expect(passes(method, { depth: 4 }), method).toEqual([2, 2]);
      expect(passes(method, { depth: 6.4 }), method).toEqual([2, 2]);
      expect(passes(method, { depth: ['under-3', '3-to-6'] }), method).toEqual([1, 2]);
    }
    expect(passes('shotblast', { depth: 4 }, { 'shotblast.pass': 1.5 })).toEqual([3, 3]);
  });
  it('are not counted on firm concrete, at an unknown depth, or by other methods', () => {
    expect(passes('shotblast', { depth: 4, looseness: ['tight'] })).toBeNull();
    expect(passes('shotblast', { depth: undefined })).toBeNull();
    expect(passes('grind', { depth: 4 })).toBeNull();
    expect(passes('pressure-wash', { depth: 4 })).toBeNull();
  });
  it('make it take twice as long: 30 m2 at 15 m2/h in two passes are 4 hours', () => {
    const area = quantitiesWith({ area: reach('m2', [30, 30, 30]) });
    const work = workOf({ method: 'shotblast' }, { depth: 4 });
    expect(endsOf(hoursOf('shotblast', work, area))).toEqual([2, 4, 8]);
    expect(endsOf(hoursOf('shotblast', work, area, { 'rate.shotblast': 10 }))).toEqual([3, 3, 3]);
  });
});

describe('passes that a square metre tried has shown', () => {
  const patch = { passes: 2, depths: [4, 6], area: 1, notch: 1 };
  const passes = (change: object, answers: object = {}, own?: object) =>
    passesTerm(workOf({ method: 'scarify', tried: [patch], ...change }, answers), own);
  it('are those of the patch, where the damage goes no deeper or is not known', () => {
    const made = { what: 'passes', unit: 'ratio', fromPatch: true, span: [2, 2] };
    expect(passes({}, { depth: 5 })).toEqual(made);
    expect(passes({}, { depth: undefined })).toEqual(made);
    expect(passes({}, { depth: 30, looseness: ['tight'] })).toEqual(made);
    // Of two patches the deeper has shown it.
    const tried = [patch, { ...patch, depths: [1, 3] }];
    expect(passes({ tried }, { depth: 5 })).toEqual(made);
    expect(passes({}, { depth: 30 }, { 'scarify.pass': 2 })).toEqual(made);
  });
  it('are as many more as the depth asks for, least with what a pass takes at the most', () => {
    const term = passes({}, { depth: 30 });
    const [low = 0, high = 0] = term?.span ?? [];
    // The patch took off 2.5 mm a pass, so 30 mm take some 12.
    expect(term?.typical).toBeGreaterThan(8);
    expect(term?.typical).toBeLessThan(16);
    expect(low).toBeLessThan(term?.typical ?? 0);
    expect(high).toBeGreaterThan(term?.typical ?? 0);
    const ranged = passes({}, { depth: ['6-to-20'] });
    expect((ranged?.span[1] ?? 0) / high).toBeCloseTo(20 / 30, 9);
    // In the middle of 6.4 and 20 mm.
    expect((ranged?.typical ?? 0) / (term?.typical ?? 1)).toBeCloseTo(13.2 / 30, 1);
    expect(ranged?.span[0]).toBeCloseTo(Math.max(2, (low * 6.4) / 30), 1);
  });
  it('are none where a method does not go by passes', () => {
    expect(passes({ method: 'break-out' })).toBeNull();
  });
  it('make the hours of the main method as many times as long, unless the rate is the reader’s', () => {
    const area = quantitiesWith({ area: reach('m2', [30, 30, 30]) });
    const tried = workOf({ method: 'scarify', tried: [patch] }, { depth: 5 });
    const hours = (step: 'scarify' | 'grind', own?: object) =>
      endsOf(hoursOf(step, tried, area, own));
    expect(hours('scarify')).toEqual(near([60 / 33, 60 / 11.9, 60 / 5]));
    expect(hours('scarify', { 'rate.scarify': 10 })).toEqual([3, 3, 3]);
    expect(hours('grind')).toEqual([1.5, 2.5, 5]);
    // Timed: 2 passes over 1 m2 in 12 minutes are 10 m2/h of one pass.
    const timed = workOf({ method: 'scarify', tried: [{ ...patch, minutes: 12 }] }, { depth: 5 });
    const learnt = hoursOf('scarify', timed, area);
    expect('working' in (learnt ?? {}) && learnt).toMatchObject({
      working: [
        { what: 'passes', fromPatch: true },
        { what: 'rate', fromPatch: true, by: 'over' },
      ],
    });
    const [low, usual, high] = endsOf(learnt) as number[];
    expect(usual).toBeGreaterThan(4.5);
    expect(usual).toBeLessThan(8);
    expect((high ?? 0) / (low ?? 1)).toBeLessThan(33 / 5);
  });
});
