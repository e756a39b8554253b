import convert from 'convert';
import { describe, expect, it } from 'vitest';
import {
  parseNumber,
  questionField,
  readNumber,
  type NumberField,
} from '$lib/answers/parse-number';
import { rangeOf } from '$shared/figures';

const fields = {
  mm: { unit: 'mm', range: [0, 1e6], units: 'metric' },
  m: { unit: 'm', range: [0, 1e6], units: 'metric' },
  m2: { unit: 'm2', range: [0, 1e6], units: 'metric' },
  place: { unit: 'mm', range: rangeOf('limit.spot-place'), units: 'us' },
} as const satisfies Record<string, NumberField>;
const read = (text: string, field: NumberField) => {
  const parsed = readNumber(text, field);
  return parsed.ok ? parsed.value : parsed.problem;
};

// Reference: the library `convert`, which knows nothing of this project's factors.
describe('a unit written behind the number', () => {
  const length = [
    ['mm', 'mm'],
    ['cm', 'cm'],
    ['m', 'm'],
    ['metre', 'm'],
    ['meter', 'm'],
    ['metres', 'm'],
    ['meters', 'm'],
    ['metro', 'm'],
    ['metros', 'm'],
    ['in', 'in'],
    ['in.', 'in'],
    ['inch', 'in'],
    ['inches', 'in'],
    ['pulgada', 'in'],
    ['pulgadas', 'in'],
    ['pulg.', 'in'],
    ['plg', 'in'],
    ['"', 'in'],
    ['″', 'in'],
    ['”', 'in'],
    ['“', 'in'],
    ["''", 'in'],
    ['ft', 'ft'],
    ['ft.', 'ft'],
    ['foot', 'ft'],
    ['feet', 'ft'],
    ['pie', 'ft'],
    ['pies', 'ft'],
    ["'", 'ft'],
    ['′', 'ft'],
    ['’', 'ft'],
    ['‘', 'ft'],
  ] as const;
  it.each(length)('7.5 %s is a length', (text, unit) => {
    for (const space of ['', ' ', '\u00a0', '\u202f', '  ']) {
      const typed = `7.5${space}${text}`;
      expect(read(typed, fields.mm)).toBeCloseTo(convert(7.5, unit).to('mm'), 9);
      expect(read(typed.toUpperCase(), fields.m)).toBeCloseTo(convert(7.5, unit).to('m'), 9);
      expect(read(typed, fields.m2)).toBe('other-unit');
    }
  });

  const areas = [
    ['m2', 'square meters'],
    ['m²', 'square meters'],
    ['sqm', 'square meters'],
    ['sq m', 'square meters'],
    ['sq. m', 'square meters'],
    ['sq.m', 'square meters'],
    ['square metres', 'square meters'],
    ['square meter', 'square meters'],
    ['ft2', 'square feet'],
    ['ft²', 'square feet'],
    ['sf', 'square feet'],
    ['sqft', 'square feet'],
    ['sq ft', 'square feet'],
    ['sq. ft.', 'square feet'],
    ['square feet', 'square feet'],
    ['square  foot', 'square feet'],
  ] as const;
  it.each(areas)('7.5 %s is an area', (text, unit) => {
    expect(read(`7.5 ${text}`, fields.m2)).toBeCloseTo(convert(7.5, unit).to('square meters'), 9);
    expect(read(`7.5 ${text}`, fields.mm)).toBe('other-unit');
  });

  it.each([
    '7.5 yd',
    '7.5 mm deep',
    'about 7.5 mm',
    'mm',
    '7.5 mm mm',
    '7.5 mm2',
    '7.5 in5',
    '7..5 mm',
    '7.5 mm.4',
    '7.5 mmm',
  ])('nobody can tell what %s is', (text) => expect(read(text, fields.mm)).toBe('not-a-number'));

  it('comes behind a number with spaces of any kind in it', () => {
    for (const space of [' ', '  ', '\u00a0', '\u202f']) {
      expect(read(`12${space}345,678 mm`, fields.mm)).toBe(12345.678);
      expect(read(`12${space}345,678`, fields.mm)).toBe(12345.678);
    }
  });

  it('is no part of a field that has none', () => {
    const share: NumberField = { unit: 'plain', range: [0, 1], factor: 100, units: 'us' };
    expect(read('25', share)).toBe(0.25);
    expect(read('25 mm', share)).toBe('not-a-number');
    expect(read('7 MPa', { unit: 'MPa', range: [0, 100], units: 'metric' })).toBe('not-a-number');
  });
});

// By hand: 12 in to the foot. The dash between feet and inches is how drawings in US units write
// them ("12'-6"", "0'-6""): common practice, no source.
describe('feet and inches together, from a corner', () => {
  it.each([
    [`12' 6"`, 150],
    [`12'-6"`, 150],
    [`12' - 6"`, 150],
    [`12'6"`, 150],
    [`12ft6in`, 150],
    [`12 ft. 6 in.`, 150],
    [`0'-6"`, 6],
    [`0' 6 1/2"`, 6.5],
    [`-2' 6"`, -30],
    [`-2'-6"`, -30],
    [`−2' 6"`, -30],
    [`- 2' 6"`, -30],
    [`-2 ft`, -24],
    [`-6 1/2"`, -6.5],
    [`-6.5`, -6.5],
    [`+2' 6"`, 30],
  ])('%s is %s in', (text, inches) =>
    expect(read(text, fields.place)).toBeCloseTo(inches * 25.4, 9),
  );
  it.each([`--2' 6"`, `2' --6"`, `2' +-6"`, `-'6"`, `2'-"`])('%s is nothing', (text) =>
    expect(read(text, fields.place)).toBe('not-a-number'),
  );
});

describe('what a field takes, to the limit itself', () => {
  const questions = [
    'thickness',
    'depth',
    'barCover',
    'barDiameter',
    'barSpacing',
    'area',
    'crackLength',
    'borderLength',
    'barLength',
  ] as const;
  const perUnit = { mm: 25.4, m: 0.3048, m2: 0.09290304 } as const;
  it.each(questions)('%s, in both systems of units', (question) => {
    for (const units of ['metric', 'us'] as const) {
      const field = questionField(question, units);
      const [least, most] = field.range;
      const factor = units === 'us' ? perUnit[field.unit as keyof typeof perUnit] : 1;
      const typed = (value: number) => parseNumber(question, (value / factor).toFixed(14), units);
      expect(typed(least)).toEqual({ ok: true, value: expect.closeTo(least, 9) });
      expect(typed(most)).toEqual({ ok: true, value: expect.closeTo(most, 6) });
      expect(typed(most * (1 + 1e-9))).toEqual({ ok: false, problem: 'too-large', limit: most });
      if (least > 0)
        expect(typed(least * (1 - 1e-9))).toEqual({
          ok: false,
          problem: 'too-small',
          limit: least,
        });
    }
  });

  it('below nothing is told as that, and past the far end of a place as too small', () => {
    expect(parseNumber('thickness', '-200', 'metric')).toEqual({ ok: false, problem: 'negative' });
    const [least] = fields.place.range;
    const place = { ...fields.place, units: 'metric' as const };
    expect(readNumber(String(least), place)).toEqual({ ok: true, value: least });
    expect(readNumber('-1000000.001', place)).toEqual({
      ok: false,
      problem: 'too-small',
      limit: least,
    });
    // A limit that went through inches and back lies a hair beside itself.
    for (const limit of [-0.3, 0.7, 30, -999999.9]) {
      const beside = { ...place, range: [limit, limit] as const };
      for (const hair of [-1e-13, 0, 1e-13])
        expect(readNumber((limit * (1 + hair)).toFixed(16), beside)).toEqual({
          ok: true,
          value: limit,
        });
      for (const more of [-1e-11, 1e-11])
        expect(readNumber((limit * (1 + more)).toFixed(16), beside).ok).toBe(false);
    }
  });

  it('whole numbers alone, where the field counts', () => {
    const crew: NumberField = { unit: 'plain', range: [1, 50], units: 'metric', whole: true };
    expect(readNumber('4', crew)).toEqual({ ok: true, value: 4 });
    expect(readNumber('2.5', crew)).toEqual({ ok: false, problem: 'not-whole' });
    expect(readNumber('2.5', { ...crew, whole: false })).toEqual({ ok: true, value: 2.5 });
    expect(readNumber('51', crew)).toEqual({ ok: false, problem: 'too-large', limit: 50 });
    expect(readNumber(' ', crew)).toEqual({ ok: false, problem: 'empty' });
    expect(readNumber('four', crew)).toStrictEqual({ ok: false, problem: 'not-a-number' });
  });

  it('strength, force and heat as a US crew types them', () => {
    // By definition: 0.45359237 kg to the pound, 9.80665 m/s2; 32 F is 0 C, 212 F is 100 C.
    const us = (unit: 'MPa' | 'kN' | 'C') => ({ unit, range: [-300, 300], units: 'us' }) as const;
    expect(read('250', us('MPa'))).toBeCloseTo(1.7237, 4);
    expect(read('1000', us('kN'))).toBeCloseTo(4.44822, 5);
    expect(read('212', us('C'))).toBeCloseTo(100, 9);
    expect(read('-40', us('C'))).toBeCloseTo(-40, 9);
    expect(read('2', { ...us('MPa'), units: 'metric' })).toBe(2);
    expect(read('21.5', { ...us('C'), units: 'metric' })).toBe(21.5);
  });
});

describe('a depth and the slab it is in', () => {
  it('is held against the thinner of the slab and what any slab is', () => {
    const past = (limit: number) => ({ ok: false, problem: 'deeper-than-slab', limit });
    const large = (limit: number) => ({ ok: false, problem: 'too-large', limit });
    expect(parseNumber('depth', '101', 'metric', 100)).toEqual(past(100));
    expect(parseNumber('depth', '4', 'us', 100)).toEqual(past(100));
    expect(parseNumber('depth', '1200', 'metric', 2000)).toEqual(large(1000));
    expect(parseNumber('depth', '1200', 'metric', 1000)).toEqual(large(1000));
    expect(parseNumber('depth', '1200', 'metric')).toEqual(large(1000));
    expect(parseNumber('depth', '-3', 'metric', 100)).toEqual({ ok: false, problem: 'negative' });
    expect(parseNumber('depth', 'deep', 'metric', 100)).toEqual({
      ok: false,
      problem: 'not-a-number',
    });
    // The thickness asks nothing of another question.
    expect(parseNumber('barSpacing', '200', 'metric', 100)).toEqual({ ok: true, value: 200 });
    // A thousand and more is deeper than this slab, so it is one and a quarter.
    expect(parseNumber('depth', '1,250', 'metric', 100)).toEqual({ ok: true, value: 1.25 });
  });
});
