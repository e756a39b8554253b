import Papa from 'papaparse';

/** Without it, spreadsheets read UTF-8 as something else. */
export const byteOrderMark = '\uFEFF';

/**
 * A table as CSV (RFC 4180): a comma between cells, a line end of two characters, quotes where
 * needed. Text that a spreadsheet would run as a formula is made plain text.
 * @param head names of the columns
 */
export const csvOf = (
  head: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): string =>
  `${byteOrderMark}${Papa.unparse({ fields: [...head], data: rows.map((row) => [...row]) }, { escapeFormulae: true, newline: '\r\n' })}\r\n`;
