import { describe, expect, it } from 'vitest';
import { parseNumber, type TypedQuestion } from '$lib/answers/parse-number';

const value = (question: TypedQuestion, text: string, units: 'metric' | 'us' = 'metric') => {
  const parsed = parseNumber(question, text, units);
  return parsed.ok ? parsed.value : parsed.problem;
};

describe('numbers as people write them', () => {
  it.each([
    ['12', 12],
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 12,50 ', 12.5],
    ['.5', 0.5],
    ['1 000', 1000],
    ['1\u00a0000', 1000],
    ['1,2500', 1.25],
    // Deeper than any slab read as a thousand, so there is one way only.
    ['1,250', 1.25],
    ['1.250', 1.25],
    ['12,50 cm', 125],
    ['0,125', 0.125],
    ['3/4', 0.75],
    ['1 1/2', 1.5],
    ['1½', 1.5],
    ['½', 0.5],
    ['25 mm', 25],
    ['2.5 cm', 25],
    ['1 in', 25.4],
    ['1 1/2"', 38.1],
    ['2 inches', 50.8],
    ['0', 0],
  ])('%s mm deep', (text, expected) => expect(value('depth', text)).toBeCloseTo(expected, 9));

  it.each([
    ['1.000,5', 1000.5],
    ['1,000.5', 1000.5],
    ['1 000,5', 1000.5],
    ['1,250.50', 1250.5],
    ['1.250,50', 1250.5],
    ['1 250', 1250],
    ['1 250,500', 1250.5],
    // Thinner than any slab as one and a quarter.
    ['1,250', 1250],
    ['1.250', 1250],
  ])('%s mm thick', (text, expected) => expect(value('thickness', text)).toBe(expected));

  it.each([
    ['6', 152.4],
    ['1/2', 12.7],
    ['10 mm', 10],
  ])('%s inches deep', (text, expected) =>
    expect(value('depth', text, 'us')).toBeCloseTo(expected, 9),
  );

  it.each([
    ['12\' 6"', 3.81],
    ['12’-6”', 3.81],
    ['12 ft 6 in', 3.81],
    ['12 ft 6 1/2 in', 3.8227],
    ['12.5', 3.81],
    ['3 m', 3],
  ])('%s of crack, US', (text, expected) =>
    expect(value('crackLength', text, 'us')).toBeCloseTo(expected, 9),
  );

  it.each([
    ['100', 9.290304],
    ['100 sq ft', 9.290304],
    ['100 square feet', 9.290304],
    ['100 ft²', 9.290304],
    ['10 m²', 10],
    ['10 m2', 10],
  ])('%s of area, US', (text, expected) =>
    expect(value('area', text, 'us')).toBeCloseTo(expected, 9),
  );
});

describe('what cannot be taken', () => {
  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['deep', 'not-a-number'],
    ['12 mm deep', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['1/0', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1,2,3', 'not-a-number'],
    ['--4', 'not-a-number'],
    ['1.000', 'two-ways'],
    ['1,25.5', 'not-a-number'],
    ['1,2500,000', 'not-a-number'],
    ['1250,500.5', 'not-a-number'],
    ['-4', 'negative'],
    ['−4', 'negative'],
    ['-1/2', 'negative'],
    ['4 m2', 'other-unit'],
    ['3000', 'too-large'],
    ['3 m', 'too-large'],
  ])('"%s" as a depth: %s', (text, problem) => expect(value('depth', text)).toBe(problem));

  it('refuses a depth past the slab, and names the slab', () => {
    expect(parseNumber('depth', '120', 'metric', 100)).toEqual({
      ok: false,
      problem: 'deeper-than-slab',
      limit: 100,
    });
    expect(parseNumber('depth', '100', 'metric', 100)).toEqual({ ok: true, value: 100 });
  });

  it('refuses a slab as thin as paper', () => expect(value('thickness', '2')).toBe('too-small'));
});
