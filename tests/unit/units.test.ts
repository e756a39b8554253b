import convert from 'convert';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromUs, toUs, usFactor, type Convertible } from '$lib/answers/units';

describe('units', () => {
  // Checked against the general-purpose npm library `convert`.
  it.each([
    ['mm', 'inches', 'millimeters'],
    ['m', 'feet', 'meters'],
    ['m2', 'square feet', 'square meters'],
    ['m3', 'cubic feet', 'cubic meters'],
    ['kg', 'pounds', 'kilograms'],
  ] as const)('%s agrees with the library', (kind, us, metric) => {
    expect(fromUs(kind, 7.25)).toBeCloseTo(
      Number(convert(7.25, us as never).to(metric as never)),
      9,
    );
  });

  // NIST SP 811, appendix B: 1 psi = 6.894757 E+03 Pa (value from memory, check a copy).
  it('psi agrees with the published factor', () => {
    expect(usFactor.MPa).toBeCloseTo(6.894757e-3, 8);
    expect(convert(1, 'psi').to('pascals')).toBeCloseTo(usFactor.MPa * 1e6, 0);
  });

  it('comes back to the same number', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(usFactor) as Convertible[])),
        fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
        (kind, value) => {
          expect(Math.abs(toUs(kind, fromUs(kind, value)) / value - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});
