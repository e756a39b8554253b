import Papa from 'papaparse';
import type { Plane, PullOffTest } from '$lib/answers/readiness-record';
import type { UnitSystem } from '$lib/answers/units';
import { entryOf } from './entry-text';

/** The cells of a pasted table: tabs, commas or semicolons, quoted or not; empty lines left out. */
export function cellsOf(text: string): string[][] {
  const { data } = Papa.parse<string[]>(text.trim(), {
    skipEmptyLines: 'greedy',
    delimitersToGuess: ['\t', ';', ',', '|'],
  });
  return data.map((row) => row.map((cell) => cell.trim()));
}

/** Words by which people name a plane, in a heading or a cell. */
const planeWords: readonly (readonly [Plane, RegExp])[] = [
  ['glue', /glue|adhesive|epoxy|resin/i],
  ['bond', /bond|interface|joint/i],
  ['repair', /repair|overlay|topping|mortar|coating/i],
  ['base', /base|substrate|concrete/i],
];
const planeOf = (text: string): Plane | undefined =>
  planeWords.find(([, words]) => words.test(text))?.[0];

type Column = 'stress' | 'force' | 'disc' | 'broke' | 'skip' | Plane;

function columnOf(heading: string): Column {
  if (/stress|strength|mpa|psi/i.test(heading)) return 'stress';
  if (/force|load|kn|lbf/i.test(heading)) return 'force';
  if (/disc|disk|dolly|diam/i.test(heading)) return 'disc';
  if (/broke|break|fail|mode|plane|where/i.test(heading)) return 'broke';
  return planeOf(heading) ?? 'skip';
}

/** Columns by position, where there is no line of names. */
const byPosition = (width: number): Column[] =>
  width >= 3 ? ['force', 'disc', 'broke'] : ['stress', 'broke'];

/**
 * Reads pasted pull-off results. Whatever is in a cell is taken over as it is, right or wrong, so
 * that nothing is lost and the checks can say what is wrong with it.
 */
export function testsFrom(text: string, units: UnitSystem): PullOffTest[] {
  const rows = cellsOf(text);
  const [first] = rows;
  if (!first) return [];
  const named = first.map(columnOf);
  const isHeading =
    named.some((column) => column === 'stress' || column === 'force') &&
    first.every((cell) => !/^[-\u2212]?[\d.,]/.test(cell));
  const columns = isHeading ? named : byPosition(first.length);
  return (isHeading ? rows.slice(1) : rows).map((row) => testFrom(row, columns, units));
}

function testFrom(row: readonly string[], columns: readonly Column[], units: UnitSystem) {
  const test: { -readonly [K in keyof PullOffTest]: PullOffTest[K] } = { shares: {} };
  row.forEach((cell, index) => {
    const column = columns[index];
    if (!column || column === 'skip' || cell === '') return;
    if (column === 'stress') test.stress = entryOf(cell, 'MPa', units, 'limit.stress');
    else if (column === 'force') test.force = entryOf(cell, 'kN', units);
    else if (column === 'disc') test.disc = entryOf(cell, 'mm', units, 'limit.disc');
    else if (column === 'broke') {
      const plane = planeOf(cell);
      test.shares = plane ? { [plane]: 100 } : { base: cell.slice(0, 100) };
    } else test.shares = { ...test.shares, [column]: entryOf(cell, 'plain', units, 'limit.share') };
  });
  return test;
}
