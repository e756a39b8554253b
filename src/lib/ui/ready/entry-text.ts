import { readQuantity } from '$lib/answers/parse-number';
import type { Entry } from '$lib/answers/readiness-record';
import {
  fromFahrenheit,
  fromUs,
  toFahrenheit,
  toUs,
  type Convertible,
  type UnitSystem,
} from '$lib/answers/units';
import { bounds } from '$lib/keep/bounds';

/** The kind of number a field takes; `plain` is the same in both systems of units. */
export type EntryKind = Extract<Convertible, 'MPa' | 'kN' | 'mm' | 'm'> | 'C' | 'plain';

/** Longer text than this cannot be kept; no number is that long. */
const longest = 100;

/** A number as typed in engine units, and back. */
const toEngine = (value: number, kind: EntryKind, units: UnitSystem) =>
  kind === 'plain' || units === 'metric'
    ? value
    : kind === 'C'
      ? fromFahrenheit(value)
      : fromUs(kind, value);
const fromEngine = (value: number, kind: EntryKind, units: UnitSystem) =>
  kind === 'plain' || units === 'metric'
    ? value
    : kind === 'C'
      ? toFahrenheit(value)
      : toUs(kind, value);

/** What was typed, as an entry: a number in engine units, or the text itself where it is none. */
export function entryOf(text: string, kind: EntryKind, units: UnitSystem): Entry {
  const plain = text.replace(/[\p{Cc}\u2028-\u202e\u2066-\u2069]+/gu, ' ').trim();
  const value = readQuantity(plain.replace('\u2212', '-'));
  const isKept = typeof value === 'number' && Math.abs(value) < bounds.entry / 1000;
  return isKept ? toEngine(value, kind, units) : plain.slice(0, longest);
}

/** An entry as its field shows it. */
export function textOf(entry: Entry | undefined, kind: EntryKind, units: UnitSystem): string {
  if (entry === undefined) return '';
  if (typeof entry === 'string') return entry;
  return String(Number(fromEngine(entry, kind, units).toPrecision(7)));
}
