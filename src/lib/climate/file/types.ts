/** A file as cells of text, row by row, as the reader's own spreadsheet would number them from 1. */
export type Table = readonly (readonly string[])[];

/** What a column may hold. The date is one column, or year, month and day apart. */
export type Role = 'date' | 'year' | 'month' | 'day' | 'min' | 'max' | 'rain' | 'snow' | 'station';
/** The column of each role, counted from 0; absent where the file has none. */
export type Roles = Readonly<Partial<Record<Role, number>>>;

export const temperatureUnits = ['C', 'F', 'tenths-C'] as const;
export type TemperatureUnit = (typeof temperatureUnits)[number];

/** Units of rain and of snow: how the public services give depths. */
export const depthUnits = ['mm', 'tenths-mm', 'cm', 'in'] as const;
export type DepthUnit = (typeof depthUnits)[number];

/** Which number comes first in a date such as 03/04/2012; `ymd` also stands for dates that need no order. */
export const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
export type DateOrder = (typeof dateOrders)[number];

export interface FileUnits {
  readonly temperature: TemperatureUnit;
  readonly rain: DepthUnit;
  readonly snow: DepthUnit;
}

/** How a file is to be read. Guessed first, then shown to the reader, who may change any of it. */
export interface Layout {
  /** The row of column names, counted from 0. */
  readonly header: number;
  readonly columns: readonly string[];
  readonly roles: Roles;
  readonly units: FileUnits;
  /** Null while nothing in the file tells. */
  readonly order: DateOrder | null;
  /** The stations named in the file, and the one to read; null while there is a choice to make. */
  readonly stations: readonly string[];
  readonly station: string | null;
  /** What was guessed without a hint in the column names. */
  readonly unsure: readonly ('temperature' | 'rain' | 'snow')[];
}

/** What can be wrong with a file: nothing can be computed… */
export const fatalProblems = [
  'empty',
  'binary',
  'too-large',
  'too-many-rows',
  'no-columns',
  'headers-only',
  'no-date-column',
  'no-temperature-column',
  'order-unknown',
  'order-conflict',
  'mixed-units',
  'two-stations',
  'not-daily',
  'too-many-bad',
] as const;
/** …or some of it is left out, row by row… */
export const rowProblems = [
  'bad-date',
  'bad-number',
  'min-above-max',
  'beyond-record',
  'wide-day',
  'same-day-twice',
  'short-row',
] as const;
/** …or something looks odd, and the reader should look again. */
export const oddities = ['year-jump', 'snow-lying', 'out-of-order', 'odd-encoding'] as const;

type FatalId = (typeof fatalProblems)[number];
type RowProblemId = (typeof rowProblems)[number];
export type OddityId = (typeof oddities)[number];
export type ProblemId = FatalId | RowProblemId | OddityId;

/** One thing wrong. Rows are counted from 1, as a spreadsheet does. */
export interface Problem {
  readonly id: ProblemId;
  readonly row?: number;
  /** The other row, where two disagree. */
  readonly other?: number;
  /** What stood there, shortened. */
  readonly text?: string;
  /** The column's name. */
  readonly column?: string;
  /** How many rows altogether, or the limit that was passed. */
  readonly count?: number;
}

export const isFatal = ({ id }: Problem): boolean =>
  (fatalProblems as readonly string[]).includes(id);

/** A text from the file, short enough to be shown. */
export const shorten = (text: string): string =>
  text.length > 40 ? `${text.slice(0, 39)}…` : text;
