import { drawing } from '$lib/practice/generate';
import type { SetResult } from '$lib/practice/given';
import { casesOf, lastStart, mostGenerated, type PracticeSet } from '$lib/practice/set';
import { isName } from '$lib/keep/names';
import { describe, harmless, refuse, type Checked } from '$lib/keep/problem';
import { beadsOf, checked, checkOf, lettersOf, withCheck, type Bead, type Beads } from './abacus';
import { resultTables, type ResultTable } from './result-tables';

/*
 * A result as a code of letters and digits that goes behind the `#` of a link, through a message or
 * over the phone. It holds the set itself, so that it can be read on any device, what was picked, when
 * the run ended, and the learner's name; never whether a pick was right. A code of 50 cases with a
 * name of 12 letters has at most 120 characters, all told.
 *
 * There is no server and so no secret: whoever wants to can make a code that looks right. What is
 * told is what was changed on the way (a checksum), what no screen could have given (every number has
 * its base, and a result has one code alone), and what comes twice (`runOf`).
 */

const prefix = 'done';
const written = resultTables.length;

/** Letters of a name, and the bytes they may take in UTF-8. */
export const nameLetters = 12;
const nameBytes = 3 * nameLetters;

/** The first minute a code can name, and how many there are from it on: until the year 2057. */
const firstMinute = Date.UTC(2026, 0, 1) / 60_000;
const minutes = 2 ** 24;
/** Marks that tell runs of one minute apart go from 0 to one below this. */
export const marks = 2 ** 16;

/** Characters that are read: twice what every case there is would take. */
const mostCharacters = 300;

/** A moment (ms since 1970) as a minute a code can name; one before or after is taken for the nearest. */
export const minuteOf = (moment: number): number =>
  Math.min(Math.max(Math.floor(moment / 60_000), firstMinute), firstMinute + minutes - 1);

/** Whether a name, as it was typed, goes into a code. */
export const isResultName = (name: string): boolean =>
  [...name].length <= nameLetters &&
  new TextEncoder().encode(name).length <= nameBytes &&
  isName(name) &&
  name === plainName(name);

/** A name without blanks round it, its accents in one piece. */
export const plainName = (name: string): string => name.normalize('NFC').trim();

/**
 * The code of a result. The cases stand in the order of the table, whatever order they were tried in:
 * the same cases are the same set.
 * @throws RangeError where something in it has no place in a code
 */
export function resultCode({ set, calls, minute, mark, name }: SetResult): string {
  const table = resultTables[written - 1] as ResultTable;
  const unknown = set.cases.find((id) => !table.cases.includes(id));
  if (unknown !== undefined) throw new RangeError(`No place for the case ${unknown}.`);
  if (!isResultName(name)) throw new RangeError('No place for this name.');
  const picked = new Map(casesOf(set).map((id, at) => [id, calls[at]]));
  const { seed = 0, count = 0 } = set.generated ?? {};
  const bytes = new TextEncoder().encode(name);
  const ordered = { ...set, cases: table.cases.filter((id) => picked.has(id)) };
  const beads: Bead[] = [
    ...table.cases.map((id): Bead => [picked.has(id) ? 1 : 0, 2]),
    [count, mostGenerated + 1],
    ...(count ? [[seed, lastStart(count) + 1] as const] : []),
    ...casesOf(ordered).map((id): Bead => [
      table.calls.findIndex((call) => call === picked.get(id)),
      table.calls.length,
    ]),
    [minute - firstMinute, minutes],
    [mark, marks],
    [bytes.length, nameBytes + 1],
    ...[...bytes].map((byte): Bead => [byte, 256]),
  ];
  if (beads.some(([value, base]) => !(value >= 0 && value < base)))
    throw new RangeError('A number of a result has no place in its code.');
  return withCheck(`${prefix}${String(written)}.${lettersOf(beads)}`);
}

/** A link that gives a result back, behind its `#`, so no server ever sees it. */
export const resultLink = (result: SetResult, page: string): string =>
  `${page}#${resultCode(result)}`;

/** Whether the part of an address behind `#` means to carry a result. */
export const carriesResult = (fragment: string): boolean => /^#?done[^/]*\./.test(fragment);

/** Every code in a text, bare or in links, in the order they stand there. */
export const codesIn = (text: string): string[] => text.match(/\bdone\d+\.\w+/g) ?? [];

/** The result in a code, or behind the `#` of its link. Never throws; bounded work whatever comes. */
export function readResultCode(text: string): Checked<SetResult> {
  const { length } = text;
  if (length > mostCharacters)
    return refuse([], { id: 'smaller', limit: mostCharacters }, { id: 'long-text', length });
  const code = text.replace(/^#/, '');
  const version = /^done([^.]*)\./.exec(code)?.[1];
  if (version === undefined) return refuse([], { id: 'result-code' }, describe(text));
  const table = resultTables[Number(version) - 1];
  if (!table || String(Number(version)) !== version)
    return refuse(
      [],
      { id: 'result-version', known: resultTables.map((_, at) => String(at + 1)) },
      { id: 'text', text: harmless(version) },
    );
  const whole = checked(code);
  const beads = whole === null ? null : beadsOf(whole.slice(code.indexOf('.') + 1));
  if (!beads) return refuse([], { id: 'whole-result' }, { id: 'broken' });
  return takeResult(
    beads,
    table,
    (result) => version !== String(written) || resultCode(result) === code,
  );
}

/** Takes a result off the beads; refuses what no screen gives. */
function takeResult(
  { take, empty }: Beads,
  table: ResultTable,
  isItsCode: (result: SetResult) => boolean,
): Checked<SetResult> {
  const cases = table.cases.filter(() => take(2) === 1);
  const count = take(mostGenerated + 1);
  const seed = count ? take(lastStart(count) + 1) : 0;
  // Drawn another way the same seed is another case.
  if (count && table.drawing !== drawing)
    return refuse(['seed'], { id: 'case-drawing', drawing }, describe(`${table.drawing}-${seed}`));
  const set: PracticeSet = { cases, ...(count && { generated: { seed, count } }) };
  const calls = casesOf(set).map(
    () => table.calls[take(table.calls.length)] as SetResult['calls'][number],
  );
  const minute = firstMinute + take(minutes);
  const mark = take(marks);
  const bytes = Uint8Array.from({ length: take(nameBytes + 1) }, () => take(256));
  const name = textOf(bytes);
  // A code of an older version has its end alone to go by: it is not written any more.
  const known = calls.length > 0 && empty() && name !== null && isResultName(name);
  const result = { set, calls, minute, mark, name: name ?? '' };
  return known && isItsCode(result)
    ? { ok: true, value: result }
    : refuse([], { id: 'possible-result' }, { id: 'broken' });
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Which set a result is of: the same for the same cases. */
export const setKeyOf = ({ set }: Pick<SetResult, 'set'>): string =>
  [...casesOf(set)].sort().join(',');

/**
 * Which run a result is of: the same whatever name stands on it. Two learners who end the same set in
 * the same minute share it but once in 65,536.
 */
export const runOf = (result: SetResult): string =>
  `${result.minute}-${result.mark}-${checkOf(setKeyOf(result)).toString(16)}`;
