import { numberIn, waysOf } from '$lib/answers/number-text';
import { fromUs } from '$lib/answers/units';
import type { DepthUnit, TemperatureUnit } from './types';

/** Signs that nobody measured. */
const blanks = new Set(['', 'm', 'na', 'n/a', 'nan', 'null', 'none', '-', '--', '---', 'x', '*']);
/** Numbers that stand for the same; none of them could be weather in any unit a file is likely to use. */
const codes = new Set([
  -9999, -999, -999.9, -99.9, -99.99, -9999.9, -32768, -32767, 9999, 9999.9, 99999, 999.9, -8888,
]);
/** Traces: less than can be measured, so nothing. */
const traces = new Set(['t', 'tr', 'trace']);

/** Stands for the same, except in tenths, where it is a mild frost. */
const shortCode = -99;

/** A number, nothing measured, or a text that is neither. */
export type Cell = number | null | 'bad';

const plainNumber = /^\s*[-+]?(\d+\.?\d*|\.\d+)\s*$/;

/**
 * A number as a cell may hold it; a comma is a decimal point wherever it does not part the columns.
 * @param most above this nothing of the kind is measured, which tells "1,250" apart; absent where
 *   a thousand is as likely as one and a quarter, so that the cell cannot be read
 */
export function readNumber(text: string, most?: number): Cell {
  let number: number | null = plainNumber.test(text) ? Number(text) : null;
  if (number === null) {
    const small = text.trim().toLowerCase();
    if (blanks.has(small)) return null;
    // Dates have strokes; a fraction no instrument writes.
    if (small.includes('/')) return 'bad';
    const [first, decimal] = waysOf(small);
    number = numberIn((decimal ?? first)?.text ?? '');
    if (number === null || (decimal && Math.abs(number) > (most ?? 0))) return 'bad';
  }
  return codes.has(number) ? null : number;
}
/** No air is hotter than this in any unit, nor in tenths. */
const mostHeat = 999;

/** A temperature in C. */
export function readTemperature(text: string, unit: TemperatureUnit): Cell {
  const number = readNumber(text, mostHeat);
  if (typeof number !== 'number') return number;
  if (unit === 'tenths-C') return number / 10;
  if (number === shortCode) return null;
  // Exact at the freezing point: 32 F is 0 C, on which the counting turns.
  return unit === 'F' ? ((number - 32) * 5) / 9 : number;
}

const millimetres: Readonly<Record<DepthUnit, (value: number) => number>> = {
  mm: (value) => value,
  'tenths-mm': (value) => value / 10,
  cm: (value) => value * 10,
  in: (value) => fromUs('mm', value),
};

/** A depth of rain or snow in mm. A trace is nothing; so is the -1 by which some services write one. */
export function readDepth(text: string, unit: DepthUnit): Cell {
  const number = readNumber(text);
  if (number === 'bad' && traces.has(text.trim().toLowerCase())) return 0;
  if (typeof number !== 'number') return number;
  if (number === -1) return 0;
  if (number === shortCode) return null;
  return number === 99.99 && unit === 'in' ? null : millimetres[unit](number);
}
