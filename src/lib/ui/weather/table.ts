import Papa from 'papaparse';
import { valueOf } from '$shared/figures';
import { headerScore } from '$lib/climate/file/layout';
import type { Problem, Table } from '$lib/climate/file/types';
import { readText } from './bytes';

const separators = [',', ';', '\t'];
/** Characters of the start in which the column names are looked for. */
const head = 60_000;
/** How far the work has come, of 1, once the bytes are text, and once the text is cells. */
const [decoded, parsed] = [0.2, 0.6];

/** The separator under which the start of the file shows the most columns we know; of equals, the most cells. */
function findSeparator(text: string): string {
  const start = text.slice(0, head);
  const scores = separators.map((delimiter) => {
    const rows = Papa.parse<string[]>(start, { delimiter, preview: 200 }).data;
    const names = Math.max(0, ...rows.map(headerScore));
    const cells = rows.reduce((sum, row) => sum + row.length - 1, 0);
    return { delimiter, names, cells };
  });
  scores.sort((a, b) => b.names - a.names || b.cells - a.cells);
  return scores[0]?.delimiter ?? ',';
}

export type TableRead =
  { readonly table: Table; readonly odd: boolean } | { readonly problem: Problem };

/**
 * A file's bytes as rows of cells.
 * @param report told the share read so far, 0 to 1
 */
export function readTable(
  bytes: Uint8Array,
  report: (share: number) => void = () => {},
): TableRead {
  const read = readText(bytes);
  if ('problem' in read) return read;
  // Old and new line ends, and files that mix them.
  const text = read.text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const limit = valueOf('weather.days-limit');
  report(decoded);
  // All rows at once: one row at a time makes twice the garbage. One past the limit tells that there are more.
  const { data: table } = Papa.parse<string[]>(text, {
    delimiter: findSeparator(text),
    newline: '\n',
    preview: limit + 1,
  });
  report(parsed);
  if (table.length > limit)
    return { problem: { id: 'too-many-rows', row: limit + 1, count: limit } };
  return { table, odd: read.odd };
}
