import { rangeOf, valueOf } from '$shared/figures';
import { dayNumber, isRealDate, type CalendarDate } from '$lib/climate/calendar';
import type { Day } from '$lib/climate/types';
import { readDepth, readTemperature, type Cell } from './cells';
import { parseDate } from './dates';
import {
  shorten,
  type DateOrder,
  type Layout,
  type Problem,
  type Roles,
  type Table,
} from './types';

/** The date of a row, or null. */
export function rowDate(
  row: readonly string[],
  roles: Roles,
  order: DateOrder | null,
): CalendarDate | null {
  const text = (column: number | undefined) => (row[column ?? -1] ?? '').trim();
  if (roles.date !== undefined) return parseDate(text(roles.date), order);
  const whole = (column: number | undefined) =>
    /^\d+(\.0*)?$/.test(text(column)) ? Number(text(column)) : NaN;
  const date = { year: whole(roles.year), month: whole(roles.month), day: whole(roles.day) };
  return isRealDate(date) ? date : null;
}

/** One row as a day, and what is wrong with it. Without a date there is no day. */
export interface ReadRow {
  readonly day: Day | null;
  readonly problems: readonly Problem[];
}

const fine: readonly Problem[] = [];

/**
 * Makes the reader of a file's rows. What cannot be used is named and becomes a missing value.
 * The reader takes a row and its number as a spreadsheet counts, from 1.
 */
export function rowReader(layout: Layout): (row: readonly string[], number: number) => ReadRow {
  const { roles, units, order, columns } = layout;
  const [air, rainDay, snowDay] = [
    rangeOf('air.temperature'),
    rangeOf('rain.day'),
    rangeOf('snow.day'),
  ];
  const widest = valueOf('air.day-spread');
  const temperature = (text: string) => readTemperature(text, units.temperature);
  const rain = (text: string) => readDepth(text, units.rain);
  const snow = (text: string) => readDepth(text, units.snow);

  return (row, number) => {
    const date = rowDate(row, roles, order);
    if (!date) return { day: null, problems: [undated(row, number, roles)] };
    let problems: Problem[] | null = null;
    const note = (problem: Problem) => (problems ??= []).push(problem);
    const read = (
      column: number | undefined,
      cell: (text: string) => Cell,
      [low, high]: readonly [number, number],
    ): number | null => {
      const text = column === undefined ? undefined : row[column];
      if (column === undefined || text === undefined) return null;
      const value = cell(text);
      if (value === null) return null;
      if (value !== 'bad' && value >= low && value <= high) return value;
      const id = value === 'bad' ? 'bad-number' : 'beyond-record';
      note({ id, row: number, column: columns[column] ?? '', text: shorten(text.trim()) });
      return null;
    };
    let min = read(roles.min, temperature, air);
    let max = read(roles.max, temperature, air);
    if (min !== null && max !== null && (min > max || max - min > widest)) {
      const text = [roles.min, roles.max].map((at) => (row[at ?? -1] ?? '').trim()).join(' / ');
      const id = min > max ? 'min-above-max' : 'wide-day';
      note({ id, row: number, text: shorten(text) });
      [min, max] = [null, null];
    }
    const day = {
      year: date.year,
      month: date.month,
      day: date.day,
      at: dayNumber(date),
      min,
      max,
      rain: read(roles.rain, rain, rainDay),
      snow: read(roles.snow, snow, snowDay),
    };
    return { day, problems: problems ?? fine };
  };
}

function undated(row: readonly string[], number: number, roles: Roles): Problem {
  const column = roles.date ?? roles.year ?? 0;
  const id = column >= row.length ? 'short-row' : 'bad-date';
  return { id, row: number, text: shorten((row[column] ?? '').trim()) };
}

/** Whether a row belongs to the station chosen. */
export function isOfStation(row: readonly string[], { roles, station }: Layout): boolean {
  if (roles.station === undefined || station === null) return true;
  const name = (row[roles.station] ?? '').trim();
  return name === '' || name === station;
}

/** Whether a row is empty, as at the end of many files. */
export const isBlank = (row: Table[number]): boolean => row.every((cell) => !cell.trim());
