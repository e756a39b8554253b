import { describe, expect, test } from 'vitest';
import {
  americanClass,
  europeanClass,
  frequencyOfDays,
  freezeThawAnswer,
} from '$lib/climate/answer';
import { frequencies, wetnesses } from '$lib/climate/types';
import { choicesOf } from '$lib/answers/questions';
import { toUs } from '$lib/answers/units';
import { valueOf } from '$shared/figures';

/** ACI 318-19 Table 19.3.1.1: no freezing; limited water; frequent water; frequent water and de-icing chemicals. */
test('American classes go by freezing, water and de-icing salt', () => {
  expect(americanClass('never', 'stays-wet', 'de-icing')).toBe('F0');
  expect(americanClass('some', 'drains', 'none')).toBe('F1');
  expect(americanClass('some', 'stays-wet', 'none')).toBe('F2');
  expect(americanClass('some', 'stays-wet', 'de-icing')).toBe('F3');
});

/**
 * EN 206-1:2000 Table 1: moderate saturation, with and without de-icing agent; high saturation,
 * without, and with de-icing agent or sea water (from memory).
 */
test('European classes go by saturation and salt', () => {
  expect(europeanClass('never', 'stays-wet', 'de-icing')).toBe('none');
  expect(europeanClass('many', 'drains', 'none')).toBe('XF1');
  expect(europeanClass('many', 'drains', 'de-icing')).toBe('XF2');
  expect(europeanClass('many', 'stays-wet', 'none')).toBe('XF3');
  expect(europeanClass('many', 'stays-wet', 'de-icing')).toBe('XF4');
  expect(europeanClass('many', 'stays-wet', 'sea-or-pool')).toBe('XF4');
});

/** ACI 318-19 Table 19.3.2.1 (from memory): 3,500, 4,500 and 5,000 psi. */
test('strengths asked of new concrete are the published psi', () => {
  const psi = (id: 'f1' | 'f2' | 'f3') => toUs('MPa', valueOf(`exposure.${id}.strength`));
  expect(psi('f1')).toBeCloseTo(3500, -1);
  expect(psi('f2')).toBeCloseTo(4500, -1);
  expect(psi('f3')).toBeCloseTo(5000, -1);
});

describe('every combination', () => {
  const rank = { rare: 0, some: 1, often: 2 };
  const american = ['F0', 'F1', 'F2', 'F3'];
  const european = ['none', 'XF1', 'XF2', 'XF3', 'XF4'];
  const salts = choicesOf('salts');

  test('more freezing, more water or more salt never gives a milder answer or class', () => {
    for (const salt of salts)
      for (const [f, often] of frequencies.entries())
        for (const [w, wet] of wetnesses.entries()) {
          const [moreOften, wetter] = [frequencies[f + 1] ?? often, wetnesses[w + 1] ?? wet];
          for (const [o, v] of [
            [moreOften, wet],
            [often, wetter],
          ] as const) {
            expect(rank[freezeThawAnswer(o, v)]).toBeGreaterThanOrEqual(
              rank[freezeThawAnswer(often, wet)],
            );
            expect(american.indexOf(americanClass(o, v, salt))).toBeGreaterThanOrEqual(
              american.indexOf(americanClass(often, wet, salt)),
            );
            expect(european.indexOf(europeanClass(o, v, salt))).toBeGreaterThanOrEqual(
              european.indexOf(europeanClass(often, wet, salt)),
            );
          }
          expect(american.indexOf(americanClass(often, wet, salt))).toBeGreaterThanOrEqual(
            american.indexOf(americanClass(often, wet, 'none')),
          );
          expect(european.indexOf(europeanClass(often, wet, salt))).toBeGreaterThanOrEqual(
            european.indexOf(europeanClass(often, wet, 'none')),
          );
        }
  });

  test('the three choices of the interview are all reached', () => {
    const reached = new Set(
      frequencies.flatMap((f) => wetnesses.map((w) => freezeThawAnswer(f, w))),
    );
    expect([...reached].sort()).toEqual([...choicesOf('freezeThaw')].sort());
  });

  test('days alone: the limits follow from the index over 10 in of rain', () => {
    const inches = toUs('mm', valueOf('freeze.rain.usual'));
    expect(valueOf('weathering.moderate') / inches).toBeCloseTo(valueOf('freeze.days.some'), 9);
    expect(valueOf('weathering.severe') / inches).toBeCloseTo(valueOf('freeze.days.many'), 9);
    expect([0, 0.9, 1, 4.9, 5, 49, 50, 200].map((days) => frequencyOfDays(days))).toEqual([
      'never',
      'never',
      'few',
      'few',
      'some',
      'some',
      'many',
      'many',
    ]);
  });
});
