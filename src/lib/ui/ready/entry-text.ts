import type { Way } from '$lib/answers/number-text';
import { readNumber, showNumber, type FieldUnit } from '$lib/answers/parse-number';
import type { Entry } from '$lib/answers/readiness-record';
import type { UnitSystem } from '$lib/answers/units';
import { bounds } from '$lib/keep/bounds';
import { rangeOf, type FigureId } from '$shared/figures';

/** The kind of number a field takes; `plain` is the same in both systems of units. */
export type EntryKind = FieldUnit;

/** Longer text than this cannot be kept; no number is that long. */
const longest = 100;
/** What is no slip is judged by the check; anything that can be kept is read. */
const kept: readonly [number, number] = [-bounds.entry / 1000, bounds.entry / 1000];

const fieldOf = (kind: EntryKind, units: UnitSystem, limit?: FigureId) => ({
  unit: kind,
  units,
  range: limit ? rangeOf(limit) : kept,
});

/**
 * What was typed, as an entry: a number in engine units, or the text itself where it is none or
 * can be read in two ways that fit.
 * @param limit what is taken seriously there; tells apart what could be read in two ways
 */
export function entryOf(text: string, kind: EntryKind, units: UnitSystem, limit?: FigureId): Entry {
  const plain = text.replace(/[\p{Cc}\u2028-\u202e\u2066-\u2069]+/gu, ' ').trim();
  const read = readNumber(plain, fieldOf(kind, units, limit));
  if (read.ok) return read.value;
  const wide = read.ways ? read : readNumber(plain, fieldOf(kind, units));
  return wide.ok ? wide.value : plain.slice(0, longest);
}

/** The readings of an entry that has two. */
export function waysIn(
  entry: Entry | undefined,
  kind: EntryKind,
  units: UnitSystem,
  limit?: FigureId,
): readonly Way[] | undefined {
  if (typeof entry !== 'string') return undefined;
  const read = readNumber(entry, fieldOf(kind, units, limit));
  return read.ok ? undefined : read.ways;
}

/** An entry as its field shows it. */
export function textOf(
  entry: Entry | undefined,
  kind: EntryKind,
  units: UnitSystem,
  limit?: FigureId,
): string {
  if (entry === undefined) return '';
  return typeof entry === 'string' ? entry : showNumber(entry, fieldOf(kind, units, limit));
}
