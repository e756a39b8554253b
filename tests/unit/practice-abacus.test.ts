import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beadsOf, checkOf, lettersOf } from '$lib/keep/practice/abacus';
import { onTrial, rounds } from '../helpers/rounds';

describe('the checksum', () => {
  it('is CRC-32 as the platform reckons it', () => {
    // The check value of the catalogue of checksums, and zlib beside ours.
    expect(checkOf('123456789')).toBe(0xcbf43926);
    fc.assert(
      fc.property(fc.stringMatching(/^[ -~]*$/), (text) => {
        expect(checkOf(text)).toBe(crc32(text));
      }),
      { numRuns: onTrial(rounds(50, 200), 20) },
    );
  });
});

describe('numbers as letters', () => {
  it('come back in their order, each within its base', () => {
    const anyBead = fc
      .integer({ min: 1, max: 2 ** 32 })
      .chain((base) => fc.tuple(fc.integer({ min: 0, max: base - 1 }), fc.constant(base)));
    fc.assert(
      fc.property(fc.array(anyBead, { maxLength: 60 }), (beads) => {
        const read = beadsOf(lettersOf(beads));
        expect(beads.map(([, base]) => read?.take(base))).toEqual(beads.map(([value]) => value));
        expect(read?.empty()).toBe(true);
      }),
      { numRuns: onTrial(rounds(75, 300), 20) },
    );
  });
});
