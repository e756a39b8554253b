import type { StepId } from './methods';
import table from './silica-table.json';
import type { ToolId } from './tools';
import type { Basis } from './types';

/** Rows of 29 CFR 1926.1153 Table 1 that the tools here can fall under. */
export type SilicaRowId = keyof typeof table.rows;
export const silicaRowIds = Object.keys(table.rows) as SilicaRowId[];

export const silicaControlIds = [
  'water-to-blade',
  'water-to-wheel',
  'water-to-cutter',
  'water-at-point',
  'water-with-surfactant',
  'shroud-and-collector',
  'makers-collector',
  'cyclone-or-cleaning',
  'hepa-for-holes',
  'vacuum-between-passes',
] as const;
export type SilicaControlId = (typeof silicaControlIds)[number];

/** Assigned protection factor of the respirator, up to 4 h and over 4 h in a shift; 0 means none is asked for. */
export type ProtectionPair = readonly [number, number];

/** One way a row allows. */
export interface SilicaOption {
  readonly controls: readonly SilicaControlId[];
  readonly outdoors: ProtectionPair | null;
  readonly enclosed: ProtectionPair | null;
  /** Controls that come on top indoors or in an enclosed area. */
  readonly enclosedControls?: readonly SilicaControlId[];
  /** Air the collector must move: by the wheel's diameter, or what the maker asks for. */
  readonly airflow?: 'per-wheel' | 'maker';
}

/** Which rows a tool falls under. More than one row, or `unlisted`, means that the reading is open. */
export interface SilicaReadingFacts {
  readonly tool: ToolId;
  /** Only in this step; without it, in every step that has no reading of its own. */
  readonly step?: StepId;
  readonly rows: readonly SilicaRowId[];
  /** True where "in no row" is one of the possible readings. */
  readonly unlisted?: boolean;
  readonly basis: Basis;
  readonly note: string;
}

const rows = table.rows as Readonly<Record<string, unknown>> as Readonly<
  Record<SilicaRowId, { readonly options: readonly SilicaOption[] }>
>;
const readings = table.readings as readonly unknown[] as readonly SilicaReadingFacts[];

/** The ways one row allows, in the order of the table. */
export const silicaOptions = (row: SilicaRowId): readonly SilicaOption[] => rows[row].options;

/** Where the table is from, for the reader. */
export const silicaTableSource = {
  basis: table.basis as Basis,
  source: table.source as readonly string[],
  note: table.note,
};

/** The rows a tool in a step falls under; undefined where nothing is said of it (it throws no dust). */
export function silicaReadingOf(tool: ToolId, step: StepId): SilicaReadingFacts | undefined {
  return (
    readings.find((reading) => reading.tool === tool && reading.step === step) ??
    readings.find((reading) => reading.tool === tool && reading.step === undefined)
  );
}
