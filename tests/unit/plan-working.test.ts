import { describe, expect, it } from 'vitest';
import type { Amount } from '$lib/plan/amount';
import { groundOf } from '$lib/plan/ground';
import { quantitiesOf } from '$lib/plan/quantities';
import { formatter } from '$lib/words/format';
import { workingLine } from '$words/plan/working';
import { untied } from '../helpers/plain-formatter';
import { workOf } from '../helpers/zone-work';

const line = (amount: Amount | null) =>
  amount ? untied(workingLine(amount, formatter('metric'))) : null;

// By hand, with the figures `patch.*`: 6 m2 in one square 2.45 m wide, 100 mm past the damage on
// every side, are 2.65 x 2.65 = 7.0 m2; 9 spots of 0.4 x 0.4 m are 1.44 m2 and come to 3.4 times that,
// 4.9 m2, and the other 4.56 m2 in one square to 2.34 x 2.34 = 5.5 m2: together 10.4 m2.
describe('the working of patches that nobody has drawn', () => {
  const often = { frost: 'often' } as const;
  const ground = (area: number, change: object = often) => groundOf(workOf(change, { area }));
  it('has the formula of each end, so that it can be done by hand', () => {
    expect(line(ground(6).area)).toBe(
      '(√6 m² + 2 × 100 mm)² (one square) to 1.44 m² × 3.4 + (√4.56 m² + 2 × 100 mm)² (many spots) = 7 to 11 m²',
    );
    expect(line(ground(6).perimeter)).toBe(
      '4 × (√6 m² + 2 × 100 mm) (one square) to 9 × 4 × (400 mm + 2 × 100 mm) + 4 × (√4.56 m² + 2 × 100 mm) (many spots) = 10 to 31 m',
    );
  });
  it('has no rest where all of it is in spots', () =>
    expect(line(ground(1.44).area)).toMatch(/ to 1\.44 m² × 3\.4 \(many spots\) = /));
  it('is not told where a formula is not all of it: at the end of the surface, and on less than a spot', () => {
    expect(line(ground(6, { ...often, whole: 8 }).area)).toBe('');
    expect(line(ground(0.1).area)).toBe('');
    // 1.44 m2 in spots leave 0.06 m2, which is less than one.
    expect(line(ground(1.5).area)).toBe('');
    expect(line(ground(1.5).perimeter)).toBe('');
  });
  it('of a single spot of 0.4 x 0.4 m is that of its area; sawn round it is one way or the other', () => {
    const { area, perimeter } = ground(0.4 ** 2);
    expect(line(area)).toMatch(/ 0\.16 m² × 3\.4 /);
    expect(line(perimeter)).toBe('');
    expect([ground(6).area, ground(6).perimeter]).toMatchObject([
      ...[{ ground: { of: 'area' } }, { ground: { of: 'perimeter' } }],
    ]);
  });
});

describe('the working of a sum within a zone', () => {
  it('has each part: water of the wash and of the saw', () => {
    const work = workOf({ steps: ['saw-cut', 'final-wash'], frost: 'often' }, { area: 6 });
    expect(line(quantitiesOf(work)['wash-water'])).toMatch(
      /^7\.01 to 10\.4 m² .* × 5 to 20 L\/m² .* \+ 10\.5 to 31 m .* × 5 to 20 L\/m .* = 88 to 830 L$/,
    );
  });
});
