import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import convert from 'convert';
import {
  parseNumber,
  questionField,
  readNumber,
  showNumber,
  type FieldUnit,
  type NumberField,
  type TypedQuestion,
} from '$lib/answers/parse-number';
import { numberInWords } from '$words/number-in-words';
import { questions } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import { rounds } from '../helpers/rounds';

const value = (question: TypedQuestion, text: string, units: 'metric' | 'us' = 'metric') => {
  const parsed = parseNumber(question, text, units);
  return parsed.ok ? parsed.value : parsed.problem;
};

describe('properties', () => {
  const typed: readonly TypedQuestion[] = ['depth', 'thickness', 'area', 'crackLength'];
  const inRange = fc.constantFrom(...typed).chain((question) => {
    const [least, most] = rangeOf(questions[question].limit);
    return fc.record({
      question: fc.constant(question),
      size: fc.double({ min: Math.max(least, 0.001), max: most, noNaN: true }),
    });
  });

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('metric' as const, 'us' as const), (text, units) => {
        const parsed = parseNumber('depth', text, units);
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
      }),
    );
  });

  // Reference: the library `convert`, which knows nothing of this project's factors.
  it('agrees with a general-purpose unit library', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (inches) => {
        expect(value('depth', String(inches), 'us')).toBeCloseTo(
          convert(inches, 'inches').to('millimeters'),
          9,
        );
      }),
    );
  });

  const fields: readonly NumberField[] = (['metric', 'us'] as const).flatMap((units) => [
    ...typed.map((question) => questionField(question, units)),
    { unit: 'MPa', range: rangeOf('limit.stress'), units },
    { unit: 'C', range: rangeOf('limit.temperature'), units },
    { unit: 'kN', range: [0, 1e6], units },
    { unit: 'mm', range: rangeOf('limit.spot-place'), units },
    { unit: 'plain', range: rangeOf('limit.price'), units },
    { unit: 'plain', range: [0, 1], factor: 100, units },
  ]);
  /** Numbers as people type them: up to seven digits that count, at most three behind the point. */
  const asTyped = fc
    .tuple(fc.integer({ min: 1, max: 9_999_999 }), fc.integer({ min: 0, max: 3 }))
    .map(([digits, decimals]) => digits / 10 ** decimals);

  it('a typed number comes back as typed, in both systems of units', () => {
    let taken = 0;
    fc.assert(
      fc.property(asTyped, fc.constantFrom(...fields), (size, field) => {
        // Four decimals are never thousands.
        const read = readNumber(size.toFixed(4), field);
        if (!read.ok) return;
        taken += 1;
        const shown = showNumber(read.value, field);
        expect(shown.replace(/(\.\d{3})0$/, '$1')).toBe(String(size));
        // What stands in the field means the same number, and no other.
        expect(readNumber(shown, field)).toEqual({ ok: true, value: read.value });
      }),
      { numRuns: rounds(750, 3000) },
    );
    expect(taken).toBeGreaterThan(300);
  });

  it('so does a fraction of the tape', () => {
    for (const bottom of [2, 3, 4, 6, 8, 12, 16, 32, 64])
      for (let top = 1; top < bottom; top++) {
        const field = questionField('depth', 'us');
        const read = readNumber(`3 ${top}/${bottom}`, field);
        const again = read.ok && readNumber(showNumber(read.value, field), field);
        expect(
          again && again.ok && Math.abs(again.value - (read.ok ? read.value : 0)),
        ).toBeLessThan(1e-9);
      }
  });

  it.each([
    ['crackLength', '12 ft', '12'],
    ['crackLength', '12\' 6"', '12.5'],
    ['depth', '1 1/2', '1.5'],
    ['depth', '8 1/3', '8 1/3'],
    // A tape is read to the hundredth at the finest, common practice, no source: 4 / 25.4 = 0.1575.
    ['depth', '4 mm', '0.16'],
    ['depth', '35 mm', '1.38'],
    ['depth', '1 mm', '0.039'],
    ['depth', '0.875', '0.875'],
    ['area', '250 sq ft', '250'],
    ['area', '12.3456', '12.3456'],
  ] as const)('%s in US units: %s is shown as %s', (question, text, shown) => {
    const field = questionField(question, 'us');
    const read = readNumber(text, field);
    expect(read.ok && showNumber(read.value, field)).toBe(shown);
  });

  it('what was typed in the other units is shown to four digits, inches to the hundredth, and reads back to them', () => {
    fc.assert(
      fc.property(inRange, fc.constantFrom('metric', 'us'), ({ question, size }, units) => {
        const field = questionField(question, units);
        const parsed = readNumber(showNumber(size, field), field);
        // The very edge of a limit may round past it; then the limit itself is named.
        const inches = field.unit === 'mm' && units === 'us';
        if (parsed.ok)
          expect(Math.abs(parsed.value - size)).toBeLessThan(
            Math.max(0.001 * size, inches ? 0.005 * 25.4 + 1e-9 : 0),
          );
        else expect(['too-small', 'too-large']).toContain(parsed.problem);
      }),
    );
  });

  it('a number with a separator before three digits is asked where both readings fit, else read', () => {
    const units: readonly FieldUnit[] = ['mm', 'm', 'm2', 'MPa', 'kN', 'plain'];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 999 }),
        fc.constantFrom('.', ','),
        fc.constantFrom(...units),
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 0, max: 2_000_000 }),
        (whole, rest, separator, unit, least, span) => {
          const decimals = String(rest).padStart(3, '0');
          const field: NumberField = { unit, range: [least, least + span], units: 'metric' };
          const big = whole * 1000 + rest;
          const little = big / 1000;
          const fits = [big, little].filter((each) => each >= least && each <= least + span);
          const read = readNumber(`${whole}${separator}${decimals}`, field);
          if (fits.length === 1) expect(read).toEqual({ ok: true, value: fits[0] });
          else if (!fits.length) expect(read.ok).toBe(false);
          else {
            const ways = read.ok ? [] : (read.ways ?? []);
            expect(ways.map(({ number }) => number)).toEqual(fits);
            // Whichever is picked is then read, and not asked again.
            expect(ways.map(({ text }) => readNumber(text, field))).toEqual(
              fits.map((value) => ({ ok: true, value })),
            );
          }
        },
      ),
      { numRuns: rounds(500, 2000) },
    );
  });

  it('a unit behind the number stays with both readings', () => {
    const read = readNumber('1,250 ft', questionField('crackLength', 'metric'));
    expect(!read.ok && read.ways?.map(({ text }) => text)).toEqual(['1250 ft', '1.25 ft']);
  });
});

describe('numbers in words', () => {
  it.each([
    [1250, 'one thousand two hundred and fifty'],
    [1.25, 'one and a quarter'],
    [12.5, 'twelve and a half'],
    [1.234, 'one point two three four'],
    [999999, 'nine hundred and ninety-nine thousand nine hundred and ninety-nine'],
    [20007, 'twenty thousand and seven'],
    [4, 'four'],
  ])('%s: %s', (value, words) => expect(numberInWords(value)).toBe(words));
});
