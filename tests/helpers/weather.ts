import { dayNumber, isRealDate } from '$lib/climate/calendar';
import { findLayout } from '$lib/climate/file/layout';
import { readDays, type FileRead } from '$lib/climate/file/read';
import type { Layout } from '$lib/climate/file/types';
import type { Day } from '$lib/climate/types';
import { readTable } from '$lib/ui/weather/table';

/** Every day of the years given, in order, with the weather that `make` gives it. Invented. */
export function inventDays(
  from: number,
  to: number,
  make: (date: { year: number; month: number; day: number }) => Partial<Day>,
): Day[] {
  const days: Day[] = [];
  for (let year = from; year <= to; year += 1)
    for (let month = 1; month <= 12; month += 1)
      for (let day = 1; day <= 31; day += 1) {
        const date = { year, month, day };
        if (!isRealDate(date)) continue;
        const blank = { min: null, max: null, rain: null, snow: null };
        days.push({ ...date, at: dayNumber(date), ...blank, ...make(date) });
      }
  return days;
}

/** A year that runs as a wave: coldest in January, with a swing from night to day. Invented. */
export function wave({ month, day }: { month: number; day: number }): { min: number; max: number } {
  const angle = ((month - 1) * 30.4 + day - 15) / 365;
  const mean = 8 - 13 * Math.cos(2 * Math.PI * angle);
  return { min: Math.round((mean - 5) * 10) / 10, max: Math.round((mean + 5) * 10) / 10 };
}

const two = (number: number) => String(number).padStart(2, '0');
export const isoDate = ({ year, month, day }: { year: number; month: number; day: number }) =>
  `${year}-${two(month)}-${two(day)}`;

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The whole way of a file, as the page goes it; throws with the first thing in the way. */
export function readFile(
  file: string | Uint8Array,
  change: (layout: Layout) => Layout = (layout) => layout,
): FileRead & { layout: Layout | null } {
  const read = readTable(typeof file === 'string' ? bytesOf(file) : file);
  if ('problem' in read) return { days: [], problems: [read.problem], rows: 0, layout: null };
  const found = findLayout(read.table);
  if ('problem' in found) return { days: [], problems: [found.problem], rows: 0, layout: null };
  const layout = change(found.layout);
  return { ...readDays(read.table, layout), layout };
}
