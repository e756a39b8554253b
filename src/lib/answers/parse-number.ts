import { rangeOf } from '$shared/figures';
import { numberIn, waysOf, type Way } from './number-text';
import { questions, type DepthQuestion, type NumberQuestion } from './questions';
import { fromFahrenheit, fromUs, toFahrenheit, toUs, usFactor, type UnitSystem } from './units';

/** Questions that can be answered with a typed number. */
export type TypedQuestion = NumberQuestion | DepthQuestion;

/** What is wrong with a typed number; the sentences are in `words/`. */
export const numberProblems = [
  'empty',
  'not-a-number',
  'two-ways',
  'not-whole',
  'negative',
  'other-unit',
  'too-small',
  'too-large',
  'deeper-than-slab',
] as const;
export type NumberProblem = (typeof numberProblems)[number];

export interface Unread {
  readonly ok: false;
  readonly problem: NumberProblem;
  /** The number that was passed, in the engine unit. */
  readonly limit?: number;
  /** Where a text can be read in two ways, both of which fit: the ways. */
  readonly ways?: readonly Way[];
}
export type ParsedNumber =
  /** In the engine unit, never rounded. */
  { readonly ok: true; readonly value: number } | Unread;

const bad = (problem: NumberProblem, limit?: number): Unread => ({
  ok: false,
  problem,
  ...(limit !== undefined && { limit }),
});

/** What a field is typed in; `plain` is the same in both systems of units. */
export type FieldUnit = 'mm' | 'm' | 'm2' | 'MPa' | 'kN' | 'C' | 'plain';

/** What a field takes. */
export interface NumberField {
  readonly unit: FieldUnit;
  /** Least and most that are taken, in the engine unit. */
  readonly range: readonly [number, number];
  readonly units: UnitSystem;
  /** How many of what is typed one engine unit is; for `plain` alone. */
  readonly factor?: number;
  /** Whole numbers only. */
  readonly whole?: boolean;
}

/** A number as typed, in the engine unit, and back. */
function toEngine(value: number, { unit, units, factor = 1 }: Omit<NumberField, 'range'>): number {
  if (unit === 'plain') return value / factor;
  if (units === 'metric') return value;
  return unit === 'C' ? fromFahrenheit(value) : fromUs(unit, value);
}
function fromEngine(
  value: number,
  { unit, units, factor = 1 }: Omit<NumberField, 'range'>,
): number {
  if (unit === 'plain') return value * factor;
  if (units === 'metric') return value;
  return unit === 'C' ? toFahrenheit(value) : toUs(unit, value);
}

/** Units a reader may write behind the number, by the engine unit they measure, and how many of it they are. */
const written: Readonly<Partial<Record<FieldUnit, Readonly<Record<string, number>>>>> = {
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
  // Units stand close behind a digit, too.
  // In Spanish, too: crews write as they speak, whatever language the page is in.
  [/(?<![a-z])(?:inches|inch|pulgadas?|pulg|plg)\b/g, 'in'],
  [/(?<![a-z])(?:feet|foot|pies|pie)\b/g, 'ft'],
  [/(?<![a-z])(?:metres|meters|metros|metre|meter|metro)\b/g, 'm'],
  [/(?<![a-z])(?:square|sq\.?)\s*/g, 'sq'],
  [/\u2212/g, '-'],
  [/[\s\u00a0\u202f]+/g, ' '],
];

/** A quantity with the units written behind it, in the engine unit; feet and inches may come together. */
function measureIn(text: string, field: NumberField): number | NumberProblem {
  const sizes = written[field.unit];
  const piece = /([^a-z'"]+?)\s*(sqft|sqm|ft2|m2|sf|mm|cm|m|in|ft|"|')\.?(?=$|[\s\d-])/g;
  const pieces = [...text.matchAll(piece)];
  if (!sizes || !pieces.length) {
    const size = numberIn(text);
    return size === null ? 'not-a-number' : toEngine(size, field);
  }
  if (pieces.map(([found]) => found).join('') !== text) return 'not-a-number';
  let sum = 0;
  for (const [, digits = '', name = ''] of pieces) {
    const size = sizes[name];
    if (size === undefined) return 'other-unit';
    // A minus before all is one of all: -2' 6" is -30 in. The dash in 12'-6" is none.
    const count = numberIn(digits.replace(/^\s*-/, ''));
    if (count === null || count < 0) return 'not-a-number';
    sum += count * size;
  }
  return text.startsWith('-') ? -sum : sum;
}

/** Numbers that went through another unit and back may lie this share beside a limit they equal. */
const slack = 1e-12;

/** A text that can be read in one way. */
function readOne(text: string, field: NumberField): ParsedNumber {
  const [least, most] = field.range;
  const value = measureIn(text, field);
  if (typeof value !== 'number') return bad(value);
  if (value < 0 && least >= 0) return bad('negative');
  if (value < least - Math.abs(least) * slack) return bad('too-small', least);
  if (value > most + Math.abs(most) * slack) return bad('too-large', most);
  if (field.whole && !Number.isInteger(value)) return bad('not-whole');
  return { ok: true, value: Math.max(least, Math.min(most, value)) };
}

/**
 * The one reader of typed numbers: every field goes through here.
 * What can be read in two ways, of which only one fits the field, is read; where both fit, it is
 * asked back ("1,250": a thousand and more, or one and a quarter).
 * @param text as typed, in the reader's units unless a unit is written behind the number
 */
export function readNumber(text: string, field: NumberField): ParsedNumber {
  let plain = text.trim().toLowerCase();
  for (const [from, to] of spelled) plain = plain.replace(from, to);
  if (!plain) return bad('empty');
  const ways = waysOf(plain).map((way) => ({ way, read: readOne(way.text, field) }));
  const fit = ways.filter(({ read }) => read.ok);
  const [first] = fit.length ? fit : ways;
  if (fit.length < 2) return first?.read ?? bad('not-a-number');
  return { ok: false, problem: 'two-ways', ways: fit.map(({ way }) => way) };
}

/** What the field of a question takes. */
export const questionField = (question: TypedQuestion, units: UnitSystem): NumberField => {
  const { unit, limit } = questions[question];
  return { unit, range: rangeOf(limit), units };
};

/**
 * Reads what was typed for a question.
 * @param thickness mm of the slab; a depth past it is refused
 */
export function parseNumber(
  question: TypedQuestion,
  text: string,
  units: UnitSystem,
  thickness: number | 'unknown' = 'unknown',
): ParsedNumber {
  const field = questionField(question, units);
  const [least, most] = field.range;
  if (question !== 'depth' || thickness === 'unknown') return readNumber(text, field);
  const parsed = readNumber(text, { ...field, range: [least, Math.min(most, thickness)] });
  const past = !parsed.ok && parsed.problem === 'too-large' && thickness < most;
  return past ? bad('deeper-than-slab', thickness) : parsed;
}

/** Digits after which a number that was typed in other units is cut off for its field. */
const shownDigits = 4;
/** Digits by which a number that was typed in these units is known again. */
const typedDigits = 10;
const same = (one: number, other: number) => Math.abs(one - other) <= Math.abs(other) * 1e-14;

/**
 * A number as its field shows it. What was typed in these units comes back as typed, all its
 * digits or its fraction; what was typed in others, to four digits, in inches to the hundredth that
 * a tape is read to. Never stored.
 */
export function showNumber(value: number, field: NumberField): string {
  const shown = fromEngine(value, field);
  const text =
    digitsOf(shown) ?? fractionOf(shown) ?? (inches(field) ? usualInches(shown) : cut(shown));
  // What stands in a field can be read in one way only: "1.2340" where 1234 would fit too.
  const read = readNumber(text, field);
  return (read.ok ? undefined : read.ways?.[1]?.text) ?? text;
}
const cut = (shown: number): string =>
  plainDigits(Number(shown.toPrecision(Math.abs(shown) >= 1000 ? 7 : shownDigits)));

const inches = ({ unit, units }: NumberField): boolean => unit === 'mm' && units === 'us';
/** "0.16" for 4 mm; below a tenth of an inch two digits. */
const usualInches = (shown: number): string =>
  plainDigits(Number(Math.abs(shown) < 0.1 ? shown.toPrecision(2) : shown.toFixed(2)));

/** The fewest digits that are exactly this number; null where it takes too many. */
function digitsOf(shown: number): string | null {
  for (let digits = 1; digits <= typedDigits; digits++) {
    const short = Number(shown.toPrecision(digits));
    if (same(short, shown)) return plainDigits(short);
  }
  return null;
}
/** Never "1e-7": what a field shows can be read back. */
const plainDigits = (value: number): string =>
  /e/.test(String(value)) ? value.toFixed(12).replace(/\.?0+$/, '') : String(value);

/** "8 1/3" for what no short row of digits says. */
function fractionOf(shown: number): string | null {
  const whole = Math.floor(Math.abs(shown));
  const rest = Math.abs(shown) - whole;
  for (let bottom = 3; bottom <= 64; bottom++) {
    const top = Math.round(rest * bottom);
    if (same(whole + top / bottom, Math.abs(shown)))
      return `${shown < 0 ? '-' : ''}${whole ? `${whole} ` : ''}${top}/${bottom}`;
  }
  return null;
}
