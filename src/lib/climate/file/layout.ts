import { depthHint, findRoles, hasDate, temperatureHint } from './columns';
import { findOrder, looksLikeDate } from './dates';
import { guessRain, guessSnow, guessTemperature } from './guess';
import { rowDate } from './rows';
import type { FileUnits, Layout, Problem, Roles, Table } from './types';

/** Rows searched for the column names: some services put a page of notes before them. */
const searched = 200;

const trimmed = (row: readonly string[]): string[] =>
  row.map((cell, index) => (index === 0 ? cell.replace(/^[\ufeff#\s]+/, '') : cell).trim());

/** How much a row looks like the row of column names: 0 not at all. */
export function headerScore(row: readonly string[]): number {
  const roles = findRoles(trimmed(row));
  if (!hasDate(roles)) return 0;
  return 1 + ['min', 'max', 'rain', 'snow'].filter((role) => role in roles).length;
}

/** The row of column names, counted from 0; the one before the first date where none is known; or null. */
function findHeader(table: Table): number | null {
  let [best, found] = [0, -1];
  for (const [index, row] of table.slice(0, searched).entries()) {
    const score = headerScore(row);
    if (score > best) [best, found] = [score, index];
  }
  if (best > 1) return found;
  const firstDate = table
    .slice(0, searched)
    .findIndex((row) => row.length > 1 && row.some((cell) => looksLikeDate(cell.trim())));
  if (firstDate > 0) return firstDate - 1;
  return found >= 0 ? found : null;
}

/** Every station named, in the order of the file. */
function findStations(rows: Table, column: number | undefined): readonly string[] {
  if (column === undefined) return [];
  const names = new Set<string>();
  for (const row of rows) {
    const name = row[column]?.trim();
    if (name) names.add(name);
  }
  return [...names];
}

/** The units: by the column names where they tell, by the numbers where they do not. */
function findUnits(
  rows: Table,
  columns: readonly string[],
  roles: Roles,
): { units: FileUnits; unsure: Layout['unsure'] } {
  const named = <Hint>(column: number | undefined, hint: (name: string) => Hint | null) =>
    column === undefined ? null : hint(columns[column] ?? '');
  const hinted = {
    temperature: named(roles.max, temperatureHint) ?? named(roles.min, temperatureHint),
    rain: named(roles.rain, depthHint),
    snow: named(roles.snow, depthHint),
  };
  const temperature = hinted.temperature ?? guessTemperature(rows, roles);
  const rain = hinted.rain ?? guessRain(rows, roles, temperature);
  const snow = hinted.snow ?? guessSnow(rows, roles, { temperature, rain });
  const unsure = (['temperature', 'rain', 'snow'] as const).filter((role) => {
    const present = role === 'temperature' ? (roles.max ?? roles.min) : roles[role];
    return present !== undefined && hinted[role] === null;
  });
  return { units: { temperature, rain, snow }, unsure };
}

/** A reading of the file to show to the reader, or what stands in the way of one. */
export function findLayout(table: Table): { layout: Layout } | { problem: Problem } {
  if (!table.some((row) => row.some((cell) => cell.trim()))) return { problem: { id: 'empty' } };
  const header = findHeader(table);
  if (header === null) return { problem: { id: 'no-columns', row: 1 } };
  const columns = trimmed(table[header] ?? []);
  const rows = table.slice(header + 1).filter((row) => row.some((cell) => cell.trim()));
  if (!rows.length) return { problem: { id: 'headers-only', row: header + 1 } };
  return { layout: fitLayout(table, header, findRoles(columns)) };
}

/** The layout for roles that are known, by guess or by the reader's choice: units, order and stations again. */
export function fitLayout(table: Table, header: number, roles: Roles): Layout {
  const columns = trimmed(table[header] ?? []);
  const rows = table.slice(header + 1).filter((row) => row.some((cell) => cell.trim()));
  const stations = findStations(rows, roles.station);
  const { date } = roles;
  const found =
    date === undefined
      ? { order: 'ymd' as const }
      : findOrder(rows.map((row) => (row[date] ?? '').trim()));
  const order = 'order' in found ? found.order : null;
  // Rows of units or notes stand at the start; what follows them is dated, or is found wanting later.
  const first = rows.findIndex((row) => rowDate(row, roles, order) !== null);
  const dated = first > 0 ? rows.slice(first) : rows;
  return {
    header,
    columns,
    roles,
    ...findUnits(dated, columns, roles),
    order,
    stations,
    station: stations.length === 1 ? (stations[0] ?? null) : null,
  };
}
