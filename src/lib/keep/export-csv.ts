import Papa from 'papaparse';

/** Without it, spreadsheets read UTF-8 as something else. */
export const byteOrderMark = '\uFEFF';

/** A sign that begins a formula, also in its full-width and small forms, with what a spreadsheet takes away before it. */
const formula =
  /(^|[;|\t\r\n])([\s\p{Cc}\p{Cf}"']*)([=+\-@\uff1d\uff0b\uff0d\uff20\ufe66\ufe62\ufe63\ufe6b\u207a\u207b\u207c\u208a-\u208c])/gu;

/**
 * Text with an apostrophe where a spreadsheet would look for a formula: at the start, and after
 * what other spreadsheets take for the end of a cell. A tab becomes a space.
 */
export const plainCell = (text: string): string =>
  text
    .replaceAll('\t', ' ')
    .replace(/\r\n?/g, '\n')
    .replace(formula, "$1$2'$3")
    .replace(/^\n/, "'\n");

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
