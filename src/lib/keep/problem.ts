import type { FaultId } from '$lib/survey/faults';

/**
 * What is wrong with work that comes from outside, as data. The sentences are in
 * `$words/keep`; the command line and the pages make the same sentence from the same problem.
 */

/** What would have been right at that place. */
export type Expected =
  /** A file or a link no longer than `limit` characters. */
  | { readonly id: 'smaller'; readonly limit: number }
  | { readonly id: 'content' }
  | { readonly id: 'utf-8' }
  /** JSON; line and column count from 1 and are absent where they could not be told. */
  | { readonly id: 'json'; readonly line?: number; readonly column?: number }
  /** The same field again in one object; where it stands again, as for `json`. */
  | { readonly id: 'once'; readonly line?: number; readonly column?: number }
  | { readonly id: 'flatter'; readonly limit: number }
  | { readonly id: 'format'; readonly format: string }
  | { readonly id: 'version'; readonly known: readonly number[] }
  | { readonly id: 'object'; readonly fields: readonly string[] }
  | { readonly id: 'known-field'; readonly fields: readonly string[] }
  | { readonly id: 'field'; readonly field: string }
  | { readonly id: 'list'; readonly most: number }
  | { readonly id: 'choice'; readonly choices: readonly string[] }
  | { readonly id: 'choices'; readonly choices: readonly string[] }
  | {
      readonly id: 'depth';
      readonly choices: readonly string[];
      readonly unit: string;
      readonly range: readonly [number, number];
    }
  | { readonly id: 'number'; readonly unit: string; readonly range: readonly [number, number] }
  /** A number that has to be given, unlike the answer to a question. */
  | { readonly id: 'amount'; readonly unit: string; readonly range: readonly [number, number] }
  | { readonly id: 'truth' }
  | { readonly id: 'one-of'; readonly choices: readonly string[] }
  | { readonly id: 'own-number'; readonly unit: string; readonly range: readonly [number, number] }
  | { readonly id: 'count'; readonly range: readonly [number, number] }
  | { readonly id: 'names'; readonly choices: readonly string[] }
  | { readonly id: 'unique' }
  /** A day of the calendar, "2026-05-04". */
  | { readonly id: 'date' }
  /** A moment as the clock on the wall had it, "2026-05-04T07:30:00+02:00". */
  | { readonly id: 'wall-time' }
  /** Goes at a step, each under the moment it was started. */
  | { readonly id: 'goes'; readonly most: number }
  | { readonly id: 'unique-id' }
  | { readonly id: 'name'; readonly most: number }
  | { readonly id: 'seen' }
  | { readonly id: 'entry'; readonly most: number }
  | { readonly id: 'zone-id'; readonly most: number }
  | { readonly id: 'slab' }
  | { readonly id: 'place' }
  | { readonly id: 'line' }
  /** A mark of a drawing, or its surface, that cannot be as it is. */
  | { readonly id: 'drawing'; readonly fault: FaultId }
  | { readonly id: 'moment' }
  /** A spot of a picture, as shares of its width and height. */
  | { readonly id: 'spot' }
  /** Base64 of a JPEG that holds its picture alone. */
  | { readonly id: 'plain-jpeg' }
  | { readonly id: 'case-id' }
  | { readonly id: 'authored-case' }
  | { readonly id: 'set-link' }
  | { readonly id: 'set-part' }
  | { readonly id: 'case-drawing'; readonly drawing: string }
  | { readonly id: 'result-code' }
  | { readonly id: 'result-version'; readonly known: readonly string[] }
  | { readonly id: 'whole-result' }
  | { readonly id: 'possible-result' }
  | { readonly id: 'link' }
  | { readonly id: 'link-version'; readonly known: readonly string[] }
  | { readonly id: 'whole-link' };

/** What was there instead, cut short and made harmless to show. */
export type Found =
  | { readonly id: 'nothing' }
  | { readonly id: 'text'; readonly text: string }
  | { readonly id: 'long-text'; readonly length: number }
  | { readonly id: 'number'; readonly text: string }
  | { readonly id: 'truth'; readonly value: boolean }
  | { readonly id: 'null' }
  | { readonly id: 'list'; readonly length: number }
  | { readonly id: 'object' }
  | { readonly id: 'field'; readonly field: string }
  | { readonly id: 'broken' };

/** One thing wrong: where (`zones[2].depth`; empty for the whole), what was expected, what was found. */
export interface Problem {
  readonly path: string;
  readonly expected: Expected;
  readonly found: Found;
}

export type Checked<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

const shownLength = 40;

/** Characters that could act on a screen or a terminal, or hide what a text says: controls, line ends, turns of direction, halves. */
const acting = /\p{Cc}|[\u2028-\u202e\u200e\u200f\u2066-\u2069]|\p{Cs}/gu;

/** Whether a text has something in it that can be seen: more than blanks, marks of joining and turning, fillers. */
export const canBeSeen = (text: string): boolean =>
  /[^\s\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}\u2800]/u.test(text);

/** Text from outside as it may be shown: at most 40 characters, acting characters spelled out, and all of them where none could be seen. */
export function harmless(text: string): string {
  const start = [...text.slice(0, 2 * shownLength)].slice(0, shownLength).join('');
  const shown = start.replace(
    canBeSeen(start) ? acting : /[^ ]/gu,
    (character) => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  );
  return start.length < text.length ? `${shown}…` : shown;
}

/** What a value is, for a sentence about it. Looks no deeper than its first level. */
export function describe(value: unknown): Found {
  if (value === undefined) return { id: 'nothing' };
  if (value === null) return { id: 'null' };
  if (typeof value === 'string')
    return value.length > 4 * shownLength
      ? { id: 'long-text', length: value.length }
      : { id: 'text', text: harmless(value) };
  if (typeof value === 'boolean') return { id: 'truth', value };
  if (Array.isArray(value)) return { id: 'list', length: value.length };
  if (typeof value === 'object') return { id: 'object' };
  return { id: 'number', text: String(value) };
}

/** A path as it is shown: `zones[2].depth`, `own["removal.x"]`. */
export function pathOf(keys: readonly (string | number)[]): string {
  return keys
    .map((key) =>
      typeof key === 'number'
        ? `[${key}]`
        : /^[A-Za-z_$][\w$-]{0,39}$/.test(key)
          ? `.${key}`
          : `["${harmless(key)}"]`,
    )
    .join('')
    .replace(/^\./, '');
}

export const refuse = (
  keys: readonly (string | number)[],
  expected: Expected,
  found: Found,
): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem: { path: pathOf(keys), expected, found },
});
