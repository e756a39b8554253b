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

/** A number as a cell may hold it; a comma is a decimal point wherever it does not part the columns. */
export function readNumber(text: string): Cell {
  let point = text;
  if (!plainNumber.test(text)) {
    const small = text.trim().toLowerCase();
    if (blanks.has(small)) return null;
    point = small.replace('\u2212', '-').replace(',', '.');
    if (!plainNumber.test(point)) return 'bad';
  }
  const number = Number(point);
  return codes.has(number) ? null : number;
}

/** A temperature in C. */
export function readTemperature(text: string, unit: TemperatureUnit): Cell {
  const number = readNumber(text);
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
