import { valueOf } from '$shared/figures';
import type { Day } from '$lib/climate/types';
import { findOrder } from './dates';
import { findOddities } from './oddities';
import { hasDate, temperatureHint } from './columns';
import { isBlank, isOfStation, rowReader } from './rows';
import { shorten, type Layout, type Problem, type Table } from './types';

/** What a file gave: days in order, and all that is wrong with it, the first of each row's problems first. */
export interface FileRead {
  readonly days: readonly Day[];
  readonly problems: readonly Problem[];
  /** Rows that hold anything, of the station chosen. */
  readonly rows: number;
}

const fatal = (problem: Problem, rows = 0): FileRead => ({ days: [], problems: [problem], rows });

/** What a layout still lacks before a row is read. */
function findGap(table: Table, layout: Layout): Problem | null {
  const { roles, order, header, columns, stations, station } = layout;
  const headerRow = header + 1;
  if (!hasDate(roles)) return { id: 'no-date-column', row: headerRow };
  if (roles.min === undefined || roles.max === undefined)
    return { id: 'no-temperature-column', row: headerRow };
  const [minName, maxName] = [columns[roles.min] ?? '', columns[roles.max] ?? ''];
  const [minUnit, maxUnit] = [temperatureHint(minName), temperatureHint(maxName)];
  if (minUnit && maxUnit && minUnit !== maxUnit)
    return { id: 'mixed-units', row: headerRow, text: shorten(`${minName} / ${maxName}`) };
  if (stations.length > 1 && station === null) {
    const column = roles.station ?? -1;
    const first = stations[0];
    const place = table.findIndex((row, index) => {
      const name = (row[column] ?? '').trim();
      return index > header && name !== '' && name !== first;
    });
    return { id: 'two-stations', row: place + 1, text: stations[1] ?? '', count: stations.length };
  }
  if (order !== null || roles.date === undefined) return null;
  const column = roles.date;
  const texts = table.slice(header + 1).map((row) => (row[column] ?? '').trim());
  const found = findOrder(texts);
  if (!('conflict' in found))
    return { id: 'order-unknown', row: headerRow + 1, text: texts[0] ?? '' };
  const [one, other] = found.conflict;
  return { id: 'order-conflict', row: headerRow + 1 + one, other: headerRow + 1 + other };
}

const sameValues = (one: Day, other: Day): boolean =>
  one.min === other.min &&
  one.max === other.max &&
  one.rain === other.rain &&
  one.snow === other.snow;

/**
 * Reads every row of a file as its layout says.
 * A date given twice with different values counts for neither; with the same values, once.
 */
export function readDays(table: Table, layout: Layout): FileRead {
  const gap = findGap(table, layout);
  if (gap) return fatal(gap);
  const readRow = rowReader(layout);
  const problems: Problem[] = [];
  const days = new Map<number, Day>();
  const rowOf = new Map<number, number>();
  const disputed = new Set<number>();
  let [rows, bad, sorted, before] = [0, 0, true, -Infinity];
  for (let index = layout.header + 1; index < table.length; index += 1) {
    const row = table[index];
    if (!row || isBlank(row) || !isOfStation(row, layout)) continue;
    const { day, problems: wrong } = readRow(row, index + 1);
    // Rows of units or notes between the names and the first day are not days gone wrong.
    if (!day && rows === 0 && index <= layout.header + 3) continue;
    rows += 1;
    if (wrong.length) {
      bad += 1;
      problems.push(...wrong);
    }
    if (!day) continue;
    if (day.at < before) sorted = false;
    before = day.at;
    const known = days.get(day.at);
    if (!known) {
      days.set(day.at, day);
      rowOf.set(day.at, index + 1);
    } else if (!sameValues(known, day)) {
      disputed.add(day.at);
      bad += 1;
      problems.push({ id: 'same-day-twice', row: index + 1, other: rowOf.get(day.at) ?? 0 });
    }
  }
  if (!rows) return fatal({ id: 'headers-only', row: layout.header + 1 });
  const limit = rows * valueOf('weather.bad-share');
  const [worst] = problems;
  if (disputed.size > limit) {
    const twice = problems.find(({ id }) => id === 'same-day-twice');
    return { days: [], rows, problems: [{ ...twice, id: 'not-daily' }, ...problems] };
  }
  if (bad > limit && bad > 1)
    return {
      days: [],
      rows,
      problems: [{ ...worst, id: 'too-many-bad', count: bad }, ...problems],
    };
  for (const at of disputed) days.delete(at);
  const inOrder = [...days.values()];
  if (!sorted) inOrder.sort((a, b) => a.at - b.at);
  if (!inOrder.length)
    return { days: [], rows, problems: [{ id: 'too-many-bad', count: bad }, ...problems] };
  const odd = findOddities(inOrder, (at) => rowOf.get(at));
  if (!sorted) odd.push({ id: 'out-of-order' });
  return { days: inOrder, rows, problems: [...problems, ...odd] };
}
