import { readQuantity } from '$lib/answers/parse-number';
import type { Entry } from '$lib/answers/readiness-record';
import { fromUs, type Convertible, type UnitSystem } from '$lib/answers/units';
import { bounds } from '$lib/keep/bounds';

/** The kind of number a field takes; `plain` is the same in both systems of units. */
export type EntryKind = Extract<Convertible, 'MPa' | 'kN' | 'mm' | 'm'> | 'plain';

/** Longer text than this cannot be kept; no number is that long. */
const longest = 100;

const factor = (kind: EntryKind, units: UnitSystem) =>
  kind === 'plain' || units === 'metric' ? 1 : fromUs(kind, 1);

/** What was typed, as an entry: a number in engine units, or the text itself where it is none. */
export function entryOf(text: string, kind: EntryKind, units: UnitSystem): Entry {
  const plain = text.replace(/[\p{Cc}\u2028-\u202e\u2066-\u2069]+/gu, ' ').trim();
  const value = readQuantity(plain.replace('\u2212', '-'));
  const isKept = typeof value === 'number' && Math.abs(value) < bounds.entry / 1000;
  return isKept ? value * factor(kind, units) : plain.slice(0, longest);
}

/** An entry as its field shows it. */
export function textOf(entry: Entry | undefined, kind: EntryKind, units: UnitSystem): string {
  if (entry === undefined) return '';
  if (typeof entry === 'string') return entry;
  return String(Number((entry / factor(kind, units)).toPrecision(7)));
}
