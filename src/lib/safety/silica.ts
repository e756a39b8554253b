import type { DustHours } from '$lib/answers/crew-day';
import type { Setting } from '$lib/answers/questions';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import {
  silicaOptions,
  silicaReadingOf,
  type ProtectionPair,
  type SilicaControlId,
  type SilicaOption,
  type SilicaReadingFacts,
  type SilicaRowId,
} from '$shared/silica-table';
import type { StepId } from '$shared/methods';
import { tools, type ToolId } from '$shared/tools';
import type { Basis } from '$shared/types';
import { exactly, sumOf } from './bounds';
import type { Bounds, SettledTask } from './types';

/** The two places of the table. */
export type SilicaPlace = 'outdoors' | 'enclosed';

/** The place a setting is read as. A roof or walls can let dust build up, so `sheltered` is read as enclosed. */
export const placeOf = (setting: Setting): SilicaPlace =>
  setting === 'open' ? 'outdoors' : 'enclosed';

/** Air a dust collector must move: through a wheel of a diameter in mm, in m3/min; or what the maker asks for. */
export type Airflow =
  | { readonly by: 'maker' }
  | {
      readonly by: 'wheel';
      readonly perMm: number;
      readonly wheel?: number;
      readonly flow?: number;
    };

/** One way to keep the dust down that the table allows here. */
export interface SilicaWay {
  readonly row: SilicaRowId;
  readonly controls: readonly (SilicaControlId | 'exhaust-the-room')[];
  /** Factor of the respirator at the hours of this day; 0 means the table asks for none. */
  readonly protection: number;
  /** The same, up to 4 h and over 4 h. */
  readonly pair: ProtectionPair;
  readonly airflow?: Airflow;
}

/** What the table says of one task. */
export type SilicaOfTask =
  | { readonly kind: 'not-dusty'; readonly tool: ToolId }
  | { readonly kind: 'housekeeping'; readonly tool: ToolId }
  | {
      /** Exposure must be assessed. `rows`: a row that could be argued for, where the reading is open. */
      readonly kind: 'not-in-table';
      readonly tool: ToolId;
      readonly rows: readonly SilicaRowId[];
      readonly open: boolean;
      readonly basis: Basis;
    }
  | {
      readonly kind: 'row';
      readonly tool: ToolId;
      readonly place: SilicaPlace;
      /** True where a sheltered place was read as enclosed. */
      readonly shelteredAsEnclosed: boolean;
      /** All rows it can be read under; the respirator is the strictest of them. */
      readonly rows: readonly [SilicaRowId, ...SilicaRowId[]];
      readonly open: boolean;
      readonly ways: readonly SilicaWay[];
      readonly basis: Basis;
    };

export type { DustHours } from '$lib/answers/crew-day';

export interface SilicaOfDay {
  /** What the hours are. */
  readonly counted: DustHours;
  readonly tasks: readonly SilicaOfTask[];
  /** Hours of all tasks of the table together. */
  readonly hours: Bounds;
  /** The column that counts, taken at the most hours. */
  readonly column: 'up-to-4' | 'over-4';
  /** True where fewer hours would do with the other column. */
  readonly columnDependsOnHours: boolean;
  /** The highest factor that any task asks for in the way that asks for least; null where one must be assessed. */
  readonly protection: number | null;
  readonly figures: readonly FigureId[];
}

/** Air a shroud needs for a wheel, m3/min. Source: 29 CFR 1926.1153 Table 1, 25 cfm for each inch. */
export const airflowFor = (wheel: number, own?: OwnFigures): number =>
  valueOf('silica.airflow', own) * wheel;

function airflowOf(option: SilicaOption, wheel?: number, own?: OwnFigures): Airflow | undefined {
  if (!option.airflow) return undefined;
  if (option.airflow === 'maker') return { by: 'maker' };
  const perMm = valueOf('silica.airflow', own);
  return wheel === undefined
    ? { by: 'wheel', perMm }
    : { by: 'wheel', perMm, wheel, flow: airflowFor(wheel, own) };
}

/** Steps that take up the dust of others, and are in no row of the table. */
const housekeeping: readonly StepId[] = ['vacuum', 'last-clean'];

const isRow = (rows: readonly SilicaRowId[]): rows is readonly [SilicaRowId, ...SilicaRowId[]] =>
  rows.length > 0;

/** What a row asks for at a place in the mildest of its ways there. */
function pairOfRow(row: SilicaRowId, place: SilicaPlace): ProtectionPair {
  const pairs = silicaOptions(row).flatMap((option) => option[place] ?? []);
  const column = (at: 0 | 1) =>
    Math.min(...silicaOptions(row).flatMap((option) => option[place]?.[at] ?? []));
  return pairs.length ? [column(0), column(1)] : [Infinity, Infinity];
}

/** The ways of the first row, with the respirator raised to what the other readings ask for. */
function waysOf(
  rows: readonly [SilicaRowId, ...SilicaRowId[]],
  place: SilicaPlace,
  over: boolean,
  wheel?: number,
  own?: OwnFigures,
): SilicaWay[] {
  const [row, ...others] = rows;
  return silicaOptions(row).flatMap((option) => {
    const pairHere = option[place];
    if (!pairHere) return [];
    const pairs = [pairHere, ...others.map((other) => pairOfRow(other, place))];
    const pair: ProtectionPair = [
      Math.max(...pairs.map(([short]) => short)),
      Math.max(...pairs.map(([, long]) => long)),
    ];
    const airflow = airflowOf(option, wheel, own);
    return [
      {
        row,
        controls: [
          ...option.controls,
          ...(place === 'enclosed'
            ? [...(option.enclosedControls ?? []), 'exhaust-the-room' as const]
            : []),
        ],
        protection: pair[over ? 1 : 0],
        pair,
        ...(airflow ? { airflow } : {}),
      },
    ];
  });
}

function readTask(
  task: SettledTask,
  reading: SilicaReadingFacts | undefined,
  over: boolean,
  own?: OwnFigures,
): SilicaOfTask {
  const { tool, step, setting, wheel } = task;
  if (!reading)
    return {
      kind: housekeeping.includes(step) && tools[tool].dust ? 'housekeeping' : 'not-dusty',
      tool,
    };
  const { rows, unlisted = false, basis } = reading;
  if (!isRow(rows) || unlisted)
    return { kind: 'not-in-table', tool, rows, open: rows.length > 0, basis };
  const place = placeOf(setting);
  return {
    kind: 'row',
    tool,
    place,
    shelteredAsEnclosed: setting === 'sheltered',
    rows,
    open: rows.length > 1,
    ways: waysOf(rows, place, over, wheel, own),
    basis,
  };
}

/**
 * What 29 CFR 1926.1153 Table 1 says of one person's day. The hours of all tasks of the table add up;
 * over 4 h together, each task takes the column for over 4 h (paragraph (c)(3)).
 * Hours are those at the task, breaks between cuts and cleaning up counted: the stricter reading, from
 * memory of the agency's guide to the rule. The reader may choose the hours the tool runs.
 */
export function silicaOfDay(
  tasks: readonly SettledTask[],
  own?: OwnFigures,
  count: DustHours = 'at-task',
): SilicaOfDay {
  const readings = tasks.map((task) => silicaReadingOf(task.tool, task.step));
  const listed = tasks.filter((_, index) => (readings[index]?.rows.length ?? 0) > 0);
  const hours = sumOf(
    listed.map(({ hours: [low, high], atTask }) =>
      count === 'at-task' && atTask !== undefined ? exactly(atTask) : { low, high, open: false },
    ),
  );
  const longShift = valueOf('silica.long-shift', own);
  const over = hours.high > longShift;
  const read = tasks.map((task, index) => readTask(task, readings[index], over, own));
  const least = read.map((task) => {
    if (task.kind === 'not-in-table') return null;
    return task.kind === 'row' ? Math.min(...task.ways.map((way) => way.protection)) : 0;
  });
  return {
    tasks: read,
    counted: count,
    hours,
    column: over ? 'over-4' : 'up-to-4',
    columnDependsOnHours: over && hours.low <= longShift,
    protection: least.includes(null) ? null : Math.max(0, ...least.map((factor) => factor ?? 0)),
    figures: ['silica.limit', 'silica.action-level', 'silica.long-shift', 'silica.airflow'],
  };
}
