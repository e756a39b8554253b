import { rangeOf } from '$shared/figures';
import { questions, type DepthQuestion, type NumberQuestion } from './questions';
import { fromUs, toUs, usFactor, type UnitSystem } from './units';

/** Questions that can be answered with a typed number. */
export type TypedQuestion = NumberQuestion | DepthQuestion;

/** What is wrong with a typed number; the sentences are in `words/`. */
export const numberProblems = [
  'empty',
  'not-a-number',
  'which-comma',
  'negative',
  'other-unit',
  'too-small',
  'too-large',
  'deeper-than-slab',
] as const;
export type NumberProblem = (typeof numberProblems)[number];

export type ParsedNumber =
  /** In the question's engine unit, never rounded. */
  | { readonly ok: true; readonly value: number }
  /** `limit` is the number that was passed, in the engine unit. */
  | { readonly ok: false; readonly problem: NumberProblem; readonly limit?: number };

const bad = (problem: NumberProblem, limit?: number): ParsedNumber => ({
  ok: false,
  problem,
  ...(limit !== undefined && { limit }),
});

/** Units a reader may write behind the number, by the engine unit they measure, and how many of it they are. */
const written: Readonly<Record<'mm' | 'm' | 'm2', Readonly<Record<string, number>>>> = {
  mm: {
    mm: 1,
    cm: 10,
    m: 1000,
    in: usFactor.mm,
    '"': usFactor.mm,
    ft: 12 * usFactor.mm,
    "'": 12 * usFactor.mm,
  },
  m: {
    mm: 0.001,
    cm: 0.01,
    m: 1,
    in: usFactor.mm / 1000,
    '"': usFactor.mm / 1000,
    ft: usFactor.m,
    "'": usFactor.m,
  },
  m2: { m2: 1, sqm: 1, ft2: usFactor.m2, sqft: usFactor.m2, sf: usFactor.m2 },
};

const spelled: readonly (readonly [RegExp, string])[] = [
  [/[″”“]|''/g, '"'],
  [/[′’‘]/g, "'"],
  [/²/g, '2'],
  [/\b(?:inches|inch)\b/g, 'in'],
  [/\b(?:feet|foot)\b/g, 'ft'],
  [/\b(?:metres|meters|metre|meter)\b/g, 'm'],
  [/\b(?:square|sq\.?)\s*/g, 'sq'],
  [/\u2212/g, '-'],
  [/[\s\u00a0\u202f]+/g, ' '],
];

const whole: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** One written quantity: digits with point or comma, a fraction, or a whole and a fraction. */
const quantity = /^(-?)\s*(?:([\d.,][\d., ]*?))?\s*(?:(\d+)\s*\/\s*(\d+))?$/;

/**
 * A number as people write it: "12.5", "12,5", "1 000", "1,250.5", "3/4", "1 1/2", "1½".
 * One comma with exactly three digits behind it can be read both ways, and is asked back.
 */
export function readQuantity(text: string): number | NumberProblem {
  let plain = text.trim();
  for (const [sign, [top, bottom]] of Object.entries(whole))
    plain = plain.replace(sign, ` ${top}/${bottom}`).trim();
  // "1 1/2" is a whole and a fraction; "1000 " with digits only is not split.
  const mixed = /^(-?)(\d+) (\d+)\s*\/\s*(\d+)$/.exec(plain);
  const parts = mixed ?? quantity.exec(plain);
  if (!parts || (!parts[2] && !parts[3])) return 'not-a-number';
  if (!mixed && parts[2] && parts[3]) return 'not-a-number';
  const digits = parts[2] ? readDigits(parts[2]) : 0;
  if (typeof digits !== 'number') return digits;
  const bottom = parts[4] ? Number(parts[4]) : 1;
  if (bottom === 0) return 'not-a-number';
  const size = digits + (parts[3] ? Number(parts[3]) / bottom : 0);
  return parts[1] ? -size : size;
}

/** Digits with their separators; the last separator of two kinds is the decimal one. */
function readDigits(text: string): number | NumberProblem {
  const tight = text.replace(/(\d) (?=\d{3}(?!\d))/g, '$1');
  const point = tight.lastIndexOf('.');
  const comma = tight.lastIndexOf(',');
  let plain: string;
  if (point >= 0 && comma >= 0)
    plain = point > comma ? tight.replaceAll(',', '') : tight.replaceAll('.', '').replace(',', '.');
  else if (/^[1-9]\d{0,2},\d{3}$/.test(tight)) return 'which-comma';
  else if (/^\d{1,3}(,\d{3}){2,}$/.test(tight)) plain = tight.replaceAll(',', '');
  else plain = tight.replace(',', '.');
  return /^(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : 'not-a-number';
}

/** A quantity with the units written behind it, in the engine unit; feet and inches may come together. */
function readMeasure(
  text: string,
  unit: 'mm' | 'm' | 'm2',
  factor: number,
): number | NumberProblem {
  const sizes = written[unit];
  const piece = /([^a-z'"]+?)\s*(sqft|sqm|ft2|m2|sf|mm|cm|m|in|ft|"|')\.?(?=$|[\s\d-])/g;
  const pieces = [...text.matchAll(piece)];
  if (!pieces.length) {
    const size = readQuantity(text);
    return typeof size === 'number' ? size * factor : size;
  }
  if (
    pieces
      .map(([found]) => found)
      .join('')
      .replace(/\s/g, '') !== text.replace(/\s/g, '')
  )
    return 'not-a-number';
  let sum = 0;
  for (const [, digits = '', name = ''] of pieces) {
    const size = sizes[name];
    if (size === undefined) return 'other-unit';
    // "12'-6"" is written with a dash between, which is no minus.
    const count = readQuantity(sum > 0 ? digits.replace(/^\s*-/, '') : digits);
    if (typeof count !== 'number') return count;
    sum += count * size;
  }
  return sum;
}

/**
 * Reads what was typed for a question.
 * @param text as typed, in the reader's units unless a unit is written behind the number
 * @param thickness mm of the slab; a depth past it is refused
 */
export function parseNumber(
  question: TypedQuestion,
  text: string,
  units: UnitSystem,
  thickness: number | 'unknown' = 'unknown',
): ParsedNumber {
  const { unit, limit } = questions[question];
  const parsed = parseMeasure(text, unit, rangeOf(limit), units);
  const tooDeep = question === 'depth' && thickness !== 'unknown' && thickness;
  if (tooDeep === false) return parsed;
  if (parsed.ok && parsed.value <= tooDeep) return parsed;
  const past = parsed.ok || (parsed.problem === 'too-large' && tooDeep < rangeOf(limit)[1]);
  return past ? bad('deeper-than-slab', tooDeep) : parsed;
}

/**
 * Reads a typed length or area that no question asks for.
 * @param unit the engine unit it comes back in
 * @param range least and most that are taken, in the engine unit
 */
export function parseMeasure(
  text: string,
  unit: 'mm' | 'm' | 'm2',
  [least, most]: readonly [number, number],
  units: UnitSystem,
): ParsedNumber {
  let plain = text.trim().toLowerCase();
  for (const [from, to] of spelled) plain = plain.replace(from, to);
  if (!plain) return bad('empty');
  const value = readMeasure(plain, unit, units === 'us' ? fromUs(unit, 1) : 1);
  if (typeof value !== 'number') return bad(value);
  if (value < 0 && least >= 0) return bad('negative');
  if (value < least) return bad('too-small', least);
  if (value > most) return bad('too-large', most);
  return { ok: true, value };
}

/** The number in the reader's units, for a field to show; four digits that count, never stored. */
export function showNumber(question: TypedQuestion, value: number, units: UnitSystem): string {
  const shown = units === 'us' ? toUs(questions[question].unit, value) : value;
  return String(Number(shown.toPrecision(Math.abs(shown) >= 1000 ? 7 : 4)));
}
