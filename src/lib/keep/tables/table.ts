/**
 * One question as a version of the job file and of the link has it: what its answer is about, how
 * it is given, the unit of its numbers, and its choices in the order in which the link counts them.
 */
export interface TableRow {
  readonly id: string;
  readonly scope: 'site' | 'zone';
  readonly kind: 'one' | 'many' | 'number' | 'depth';
  readonly unit?: string;
  readonly choices?: readonly string[];
  /**
   * The word of a data sheet: one choice, never several; the first says that there is none. A
   * `grade` stands in the file as the number of its place, a `word` as its id.
   */
  readonly sheet?: 'grade' | 'word';
}
/** All questions of a version, in the order in which its links carry them. */
export type Table = readonly TableRow[];

export const rowsOf = (table: Table, scope: TableRow['scope']): Table =>
  table.filter((row) => row.scope === scope);

/** "Not sure" as the version meant it: every choice there was, none of those that came later. */
export function everyChoice({ kind, choices, sheet }: TableRow): unknown {
  if (!choices || sheet) return undefined;
  return kind === 'many' ? { yes: [], maybe: [...choices] } : [...choices];
}
