import { readdirSync, readFileSync } from 'node:fs';
import type { Facts } from '$lib/advice/types';

/**
 * Reads the figures in a sentence back, apart from the code that wrote them: by factors from the
 * international yard and pound agreement of 1959 and from the files in `shared/figures` as they stand.
 */
interface Figure {
  readonly unit: string;
  readonly value?: number;
  readonly range?: readonly [number, number];
}
const folder = new URL('../../shared/figures/', import.meta.url);
const figures: Readonly<Record<string, Figure>> = Object.assign(
  {},
  ...readdirSync(folder).map((name) => JSON.parse(readFileSync(new URL(name, folder), 'utf8'))),
);

/** What a unit measures, and how many of the base unit it is: mm, m², kg, minutes, kelvins. */
const units: Readonly<Record<string, readonly [kind: string, factor: number]>> = {
  mm: ['length', 1],
  m: ['length', 1000],
  in: ['length', 25.4],
  ft: ['length', 304.8],
  'm²': ['area', 1],
  m2: ['area', 1],
  'sq ft': ['area', 0.3048 ** 2],
  kg: ['mass', 1],
  lb: ['mass', 0.45359237],
  min: ['time', 1],
  h: ['time', 60],
  hours: ['time', 60],
  d: ['time', 1440],
  days: ['time', 1440],
  '%': ['share', 0.01],
  ratio: ['share', 1],
  percent: ['share', 0.01],
  '°': ['angle', 1],
  degree: ['angle', 1],
  '°C': ['heat', 1],
  C: ['heat', 1],
  '°F': ['heat', 1 / 1.8],
  K: ['heat', 1],
  bar: ['pressure', 0.1],
  MPa: ['pressure', 1],
  psi: ['pressure', 0.00689475729],
  CSP: ['CSP', 1],
  pH: ['pH', 1],
  'dB(A)': ['noise', 1],
  dBA: ['noise', 1],
  ppm: ['gas', 1],
  'µg/m³': ['dust', 1],
  'ug/m3': ['dust', 1],
};
const shares: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };

/** A measure in its base unit: one number, or the two ends of a range. `slack`: what its rounding may hide. */
export interface Measure {
  readonly said: string;
  readonly kind: string;
  readonly ends: readonly number[];
  readonly slack: number;
}

const number = String.raw`(?:\d+\/\d+|\d[\d,]*(?:\.\d+)?(?: \d+\/\d+)?)`;
const label = String.raw`µg\/m³|dB\(A\)|sq ft|mm|m²|m|in|ft|kg|lb|hours|days|°C|°F|°|%|MPa|bar|psi|ppm`;
const measure = new RegExp(
  String.raw`(?:(?<scale>CSP|pH) )?(?<low>${number})(?: to (?<high>${number}))? ?(?<unit>(?:${label})(?![a-z]))?|(?<word>half|third)(?= (?:of|the)|, stop)`,
  'g',
);
const valueOf = (text: string): number =>
  text
    .replaceAll(',', '')
    .split(' ')
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [over = NaN, under = 1]) => sum + over / under, 0);

/** Every measure in a sentence, in its order. A number without a unit that is known has no kind. */
export function measuresIn(text: string): Measure[] {
  return [...text.matchAll(measure)].map(({ 0: said, groups = {} }) => {
    const { scale, low = '', high, unit, word } = groups;
    if (word) return { said, kind: 'share', ends: [shares[word] as number], slack: 0.001 };
    const [kind, factor] = units[scale ?? unit ?? ''] ?? ['nothing known', NaN];
    const off = unit === '°F' && !/above the dew/.test(text) ? 32 : 0;
    const ends = [low, ...(high ? [high] : [])].map((each) => (valueOf(each) - off) * factor);
    // On a tape to a 16th of an inch, from half an inch on to an eighth; other US units to two figures.
    const us = ['in', 'ft', 'sq ft', 'lb', '°F', 'psi'].includes(unit ?? '');
    const largest = Math.max(...ends.map(Math.abs));
    const tape =
      kind === 'length' ? Math.max(largest < 12 ? 0.8 : 1.6, 0.02 * largest) : 0.05 * largest + 0.3;
    // Fractions of an inch are told in whole mm, as a ruler shows them: 3 mm for 1/8 in.
    const ruler = unit === 'mm' && ends.every(Number.isInteger) ? 0.45 : 0;
    return { said, kind, ends, slack: us ? tape : Math.max(ruler, 0.01 * largest) };
  });
}

/** Bands of depth by the figures at their ends. */
const bands: Readonly<Record<string, readonly string[]>> = {
  film: ['depth.film'],
  'under-3': ['depth.film', 'depth.thin'],
  '3-to-6': ['depth.thin', 'depth.shallow'],
  '6-to-20': ['depth.shallow', 'depth.spall-small'],
  '20-to-50': ['depth.spall-small', 'depth.deep'],
  'over-50': ['depth.deep'],
};
const inBase = (id: string): Omit<Measure, 'said' | 'slack'> => {
  const { unit, value, range } = figures[id] as Figure;
  const [kind, factor] = units[unit] ?? [unit, 1];
  return { kind, ends: (range ?? [value as number]).map((each) => each * factor) };
};

/**
 * What a source stands for in a case. An id of a figure; `@depth`, the band that the case answered;
 * `@reach`, the far end of the band that a method clears; `#half mm`, a fact of the case and its unit.
 */
export function meant(source: string, facts: Facts = {}): Omit<Measure, 'said' | 'slack'> | null {
  if (source.startsWith('#')) {
    const [name = '', unit = ''] = source.slice(1).split(' ');
    const value = facts[name];
    const [kind, factor] = units[unit] as readonly [string, number];
    return typeof value === 'number' ? { kind, ends: [value * factor] } : null;
  }
  if (!source.startsWith('@')) return inBase(source);
  const band = bands[String(facts[source.slice(1)])];
  const ids = source === '@reach' ? band?.slice(-1) : band;
  return ids ? { kind: 'length', ends: ids.flatMap((id) => inBase(id).ends) } : null;
}

/** Whether a measure says that, but for its rounding. */
export const says = (one: Measure, other: Omit<Measure, 'said' | 'slack'> | null): boolean =>
  other !== null &&
  one.kind === other.kind &&
  one.ends.length === other.ends.length &&
  one.ends.every((end, place) => Math.abs(end - (other.ends[place] as number)) <= one.slack);
