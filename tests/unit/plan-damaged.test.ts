import { describe, expect, it } from 'vitest';
import { damagedArea, damagedIn, damagedSize, isUnheard, spotMadeNewFor } from '$lib/plan/damaged';
import { endsOf, reach } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

// How much of a zone is broken out or made new. Common practice, no source; sums by hand.
const laid = (...areas: readonly number[]) => ({ patches: areas.map((area) => ({ area })) });
const plan = {
  zones: [
    { id: 'z0', patches: laid(2, 1), quantities: { 'patch-area': reach('m2', [3, 3, 3]) } },
    { id: 'z1', patches: null, quantities: { 'patch-area': null } },
  ],
  held: [
    { id: 'z2', patches: laid(1, 2, 0.5), sounded: true },
    { id: 'z3', patches: laid() },
  ],
} as never;
const job = tradeJob([
  { area: 10 },
  { area: 5 },
  { area: 3 },
  { area: 7 },
  { area: 'unknown' },
  { area: undefined },
]);

describe('what is damaged of a zone', () => {
  it('is its patches where it has some, planned or held; else all of it', () => {
    expect(damagedIn(plan, 'z0', 10)).toBe(3);
    expect(damagedIn(plan, 'z1', 5)).toBe(5);
    expect(damagedIn(plan, 'z3', 7)).toBe(7);
    expect(damagedIn(plan, 'z9', 7)).toBe(7);
  });
  it('may be more next to its spots, where nobody sounded all of it', () =>
    expect(['z0', 'z1', 'z2', 'z3', 'z9'].map((id) => isUnheard(plan, id))).toEqual([
      ...[true, false, false, false, false],
    ]));
  it('is never more than the zone, though patches go past the damage', () =>
    expect(damagedIn(plan, 'z2', 3)).toBe(3));
  it('adds up over zones as far as they are measured', () => {
    expect(damagedSize(plan, job, ['z0', 'z1', 'z2'])).toBe(3 + 5 + 3);
    expect(damagedSize(plan, job, ['z1', 'z4', 'z5'])).toBe(5);
    expect(damagedSize(plan, job, [])).toBe(0);
  });
  it('is told with how it was come to, and asks for the area where nobody measured', () => {
    expect(endsOf(damagedArea(plan, job, 'z0'))).toEqual([3, 3, 3]);
    expect(endsOf(damagedArea(plan, job, 'z1'))).toEqual([5, 5, 5]);
    expect(damagedArea(plan, job, 'z2')).toEqual({
      ...{ span: [3.5, 3.5], typical: 3.5, unit: 'm2' },
      working: [{ what: 'patches', span: [3.5, 3.5], unit: 'm2' }],
    });
    expect(endsOf(damagedArea(plan, job, 'z4'))).toBe('asks for area');
  });
});

describe('a spot drawn deeper than its zone was answered', () => {
  const zone = (depth: unknown) => ({ id: 'z', name: 'Z', answers: { depth } }) as never;
  const asks = (
    spots: readonly (readonly number[])[],
    more: { area?: number; holds?: readonly string[]; answered?: number } = {},
  ) =>
    spotMadeNewFor(
      zone(more.answered ?? 40),
      zone(120),
      (more.holds ?? ['full-depth']).map((rule) => ({ rule })) as never,
      {
        patches: [
          ...spots.map((of) => ({ zone: 'z', area: 1, spots: of })),
          { zone: 'other', area: 5, spots: [7, 8] },
        ],
        areas: { z: more.area ?? spots.length, other: 50 },
        damage: { z: { deepestMark: 4 } },
      } as never,
    );
  it('asks for a zone of its own where something else is left to plan', () => {
    expect(asks([[0], [4]])).toBe(4);
    expect(asks([[0, 4]])).toBe(4);
    expect(asks([[4]], { area: 9 })).toBe(4);
    expect(asks([[0], [4]], { holds: ['sound-first', 'through'] })).toBe(4);
  });
  it('asks for none where the zone is no more than its spot', () => {
    expect(asks([[4]])).toBeNull();
    expect(asks([[4]], { area: 0.5 })).toBeNull();
    expect(asks([])).toBeNull();
  });
  it('asks for none where nothing is made new, or the answer was as deep', () => {
    expect(asks([[0], [4]], { holds: [] })).toBeNull();
    expect(asks([[0], [4]], { holds: ['moving-crack'] })).toBeNull();
    expect(asks([[0], [4]], { answered: 120 })).toBeNull();
  });
  it('asks for none where nothing is drawn', () =>
    expect(spotMadeNewFor(zone(40), zone(120), [{ rule: 'through' }] as never, null)).toBeNull());
});
