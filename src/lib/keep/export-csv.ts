import Papa from 'papaparse';

/** Without it, spreadsheets read UTF-8 as something else. */
export const byteOrderMark = '\uFEFF';

/** Where a spreadsheet may begin to read a cell, what it takes away there, and the first sign of it. */
const beginning = /([;|\t\r\n]|^)([\s\p{Cc}\p{Cf}"']*)(?=(.))/gu;
/** Whether a formula begins so, also in the full-width and other forms of its signs (Unicode, NFKC). */
const runs = (sign: string): boolean => /^[=+\-@]/.test(sign.normalize('NFKC'));

/**
 * Text with an apostrophe where a spreadsheet would look for a formula: at the start, and after
 * what other spreadsheets take for the end of a cell. A tab becomes a space.
 */
export const plainCell = (text: string): string =>
  text
    .replaceAll('\t', ' ')
    .replace(/\r\n?/g, '\n')
    .replace(beginning, (all, start: string, blank: string, sign: string) =>
      runs(sign) ? `${start}${blank}'` : all,
    )
    .replace(/^\n/, "'\n");

/** The text a cell was made from: what `plainCell` put before a formula is taken away again. */
export const cellText = (cell: string): string =>
  cell
    .replace(beginning, (all, start: string, blank: string, sign: string) =>
      runs(sign) && blank.endsWith("'") ? `${start}${blank.slice(0, -1)}` : all,
    )
    .replace(/^'\n/, '\n');

/**
 * A table as CSV (RFC 4180): a comma between cells, a line end of two characters, quotes where
 * needed. Text that a spreadsheet would run as a formula is made plain text; numbers stay numbers.
 * @param head names of the columns
 */
export const csvOf = (
  head: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): string => {
  const plain = (row: readonly (string | number | null)[]) =>
    row.map((cell) => (typeof cell === 'string' ? plainCell(cell) : cell));
  const table = Papa.unparse(
    { fields: head.map(plainCell), data: rows.map(plain) },
    { newline: '\r\n' },
  );
  return `${byteOrderMark}${table}\r\n`;
};
