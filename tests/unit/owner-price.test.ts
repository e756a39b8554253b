import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { takeNumber } from '$lib/ui/job/take-number';
import { priceField, priceNames, priceShown } from '$lib/ui/owner/price';
import { formatter } from '$lib/words/format';

/** NIST SP 811, B.8: a cubic yard is 0.764 554 9 m3, a short ton 907.184 74 kg. */
const cubicYard = 0.7645549;
const shortTon = 0.90718474;

const us = formatter('us');
const kept = (name: (typeof priceNames)[number], text: string) => {
  const taken = takeNumber(text, { ...priceField(name, 'us'), say: us });
  if (!taken.ok) throw new Error(taken.problem);
  return taken.value as number;
};

describe('a price in US units', () => {
  it('is paid for a cubic yard of concrete and a short ton of debris', () => {
    expect(kept('perConcrete', '150')).toBeCloseTo(150 / cubicYard, 4);
    expect(kept('perTonne', '90')).toBeCloseTo(90 / shortTon, 9);
    expect(kept('perHour', '60')).toBe(60);
  });

  it('comes back as typed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...priceNames),
        fc.integer({ min: 1, max: 99_999 }),
        (name, cents) => {
          const typed = String(cents / 100);
          expect(priceShown(name, kept(name, typed), 'us')).toBe(typed);
        },
      ),
    );
  });
});
