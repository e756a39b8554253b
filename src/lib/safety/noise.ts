import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { mapBounds, nothing, standingTo, sumOf } from './bounds';
import {
  allowedHours,
  dayLevel,
  figuresOfLimit,
  noiseLimitIds,
  partOf,
  type NoiseLimitId,
} from './noise-limits';
import { usualPart } from './noise-usual';
import { protectorFor, protectorFigures, type Protector } from './protector';
import { figuresOf, levelOf, usualHours, type Known, type Strength } from './tasks';
import { reachOf, type Reach } from '$lib/plan/tasks';
import type { Bounds, Origin, SettledTask, Standing } from './types';

/** How a day stands to one noise limit. */
export interface NoiseStanding {
  /** Part of the limit used up; 1 is all of it, so for the OSHA limit a hundred times this is the dose in percent. */
  readonly part: Bounds;
  /** Mean over the reference day, dB(A): TWA, or LEX,8h for the EU. */
  readonly level: Bounds;
  readonly standing: Standing;
  /** With every tool at its usual level for its usual hours; at least this where `part` is open. */
  readonly typical: { readonly part: number; readonly level: number };
  /** Hours of the same mix still left before the limit once it has run for its most hours, in a day of 24: `low` with every tool at its loudest, `high` at its quietest. */
  readonly hoursLeft: Bounds;
  readonly protector: Protector;
  readonly figures: readonly FigureId[];
}

/** One task's share in the day's noise. */
export interface NoiseOfTask {
  readonly tool: ToolId;
  /** dB(A) at the ear */
  readonly level: Known<Strength>;
  /** Hours with this tool alone that use up each limit, at its loudest and its quietest; null where unknown or silent. */
  readonly allowed: Readonly<Record<NoiseLimitId, readonly [number, number]>> | null;
}

export interface NoiseOfDay {
  readonly limits: Readonly<Record<NoiseLimitId, NoiseStanding>>;
  readonly tasks: readonly NoiseOfTask[];
  /** Machines of others that are heard from beside, by the distance law. */
  readonly beside: readonly Heard[];
  /** Tools without a level: the reader is asked for the maker's figure or a measurement. */
  readonly unknown: readonly ToolId[];
  /** How the loudest tool stands to the top of Table D-2, above which no time is allowed. */
  readonly ceiling: Standing;
  readonly figures: readonly FigureId[];
}

/** Another's machine, heard from beside. */
export interface Heard {
  readonly tool: ToolId;
  /** dB(A) at the ear of whoever stands beside: least, usual and most; null where nobody has said how loud it is. */
  readonly level: Reach | null;
  readonly hours: Reach;
}

/**
 * What somebody beside hears of a task: a point source loses some dB for each doubling of the
 * distance, less under a roof. Null where it makes no noise; one whose level is not known is heard
 * all the same, and leaves the day open.
 * Source: figures `noise.per-doubling`, `noise.indoors-near`; the distances are common practice.
 */
export function heardBeside(task: SettledTask, own?: OwnFigures): Heard | null {
  const level = levelOf(task, own);
  if (level === 'none') return null;
  const hours = { low: task.hours[0], typical: usualHours(task), high: task.hours[1] };
  if (level === 'unknown') return { tool: task.tool, level: null, hours };
  const [near, far] = rangeOf('noise.beside', own);
  const usual = reachOf('noise.beside', own).typical;
  const doublings = (metres: number) => Math.log2(metres / valueOf('noise.at-operator', own));
  const open = task.setting === 'open';
  const [least, most] = rangeOf(open ? 'noise.per-doubling' : 'noise.indoors-near', own);
  const [low, high] = level.range;
  const typical = level.typical ?? (low + high) / 2;
  return {
    tool: task.tool,
    level: {
      low: low - most * doublings(far),
      typical: typical - ((least + most) / 2) * doublings(usual),
      high: high - least * doublings(near),
    },
    hours,
  };
}

/** What somebody who works that day hears of the others' machines. */
export const heardFrom = (
  tasks: readonly SettledTask[],
  others: readonly (readonly SettledTask[])[],
  own?: OwnFigures,
): Heard[] =>
  tasks.length
    ? others.flatMap((theirs) => theirs.flatMap((task) => heardBeside(task, own) ?? []))
    : [];

const each = <T>(make: (limit: NoiseLimitId) => T): Readonly<Record<NoiseLimitId, T>> =>
  Object.fromEntries(noiseLimitIds.map((limit) => [limit, make(limit)])) as Record<NoiseLimitId, T>;

/** The longest a day can be, h; times beyond it mean "all day". */
const longestDay = (own?: OwnFigures): number => rangeOf('limit.exposure-hours', own)[1];

/** What one task adds to a limit. */
function partOfTask(
  limit: NoiseLimitId,
  [least, most]: SettledTask['hours'],
  level: Known<Strength>,
  own?: OwnFigures,
): Bounds {
  if (level === 'none') return nothing;
  if (level === 'unknown') return { ...nothing, open: most > 0 };
  return {
    low: partOf(limit, level.range[0], least, own),
    high: partOf(limit, level.range[1], most, own),
    open: false,
  };
}

/** Hours of a mix left before a limit, when `hours` of it use up `part`. */
function hoursLeft(hours: number, part: number, longest: number): number {
  return part <= 0 ? longest : Math.min(longest, Math.max(0, hours / part - hours));
}

/** A mean level as low as silence carries no news; it is shown as 0 dB(A). */
const floorAtSilence = (level: number): number => Math.max(0, level);

/**
 * The noise of one person's day. Levels are ranges, so every result has a low and a high end;
 * a tool without a level leaves the result open: at least the part of the known tools.
 */
export function noiseOfDay(
  tasks: readonly SettledTask[],
  own?: OwnFigures,
  beside: readonly Heard[] = [],
): NoiseOfDay {
  const levels = tasks.map((task) => levelOf(task, own));
  const longest = longestDay(own);
  const mostHours = tasks.reduce(
    (sum, { hours: [, most] }, index) => sum + (levels[index] === 'none' ? 0 : most),
    0,
  );

  const limits = each((limit): NoiseStanding => {
    const heard = (low: 'low' | 'high') =>
      beside.map(({ level, hours }) =>
        level
          ? {
              low: partOf(limit, level.low, hours[low], own),
              high: partOf(limit, level.high, hours.high, own),
              open: false,
            }
          : { ...nothing, open: hours.high > 0 },
      );
    const partAt = (
      hoursOf: (task: SettledTask) => SettledTask['hours'],
      low: 'low' | 'high' = 'low',
    ) =>
      sumOf([
        ...tasks.map((task, index) =>
          partOfTask(limit, hoursOf(task), levels[index] ?? 'unknown', own),
        ),
        ...heard(low),
      ]);
    const usual = usualPart(tasks, beside, limit, own);
    const part = partAt(({ hours }) => hours);
    // Both ends of the time left start from the same mix, or the quieter end could come out shorter.
    const afterAll = partAt(({ hours: [, most] }) => [most, most], 'high');
    const level = mapBounds(part, (value) => floorAtSilence(dayLevel(limit, value, own)));
    return {
      part,
      level,
      standing: standingTo(part, 1),
      typical: { part: usual, level: floorAtSilence(dayLevel(limit, usual, own)) },
      hoursLeft: {
        low: part.open ? 0 : hoursLeft(mostHours, afterAll.high, longest),
        high: hoursLeft(mostHours, afterAll.low, longest),
        open: part.open,
      },
      protector: protectorFor(level, dayLevel(limit, 1, own), own),
      figures: [...figuresOfLimit(limit), ...protectorFigures],
    };
  });

  const strengths = levels.filter((level): level is Strength => typeof level === 'object');
  return {
    limits,
    beside,
    tasks: tasks.map((task, index) => {
      const level = levels[index] ?? 'unknown';
      return {
        tool: task.tool,
        level,
        allowed:
          typeof level === 'string'
            ? null
            : each((limit) => {
                const [low, high] = level.range;
                const at = (decibels: number) =>
                  Math.min(longest, allowedHours(limit, decibels, own));
                return [at(high), at(low)] as const;
              }),
      };
    }),
    unknown: [
      ...new Set(
        tasks.flatMap((task, index) =>
          levels[index] === 'unknown' && task.hours[1] > 0 ? [task.tool] : [],
        ),
      ),
    ],
    ceiling: standingTo(
      {
        low: Math.max(0, ...strengths.map(({ range }) => range[0])),
        high: Math.max(0, ...strengths.map(({ range }) => range[1])),
        open: levels.includes('unknown'),
      },
      valueOf('noise.osha-ceiling', own),
    ),
    figures: [
      ...figuresOf(strengths.map(({ origin }): Origin => origin)),
      'noise.osha-ceiling',
      ...(beside.length
        ? ([
            'noise.beside',
            'noise.at-operator',
            'noise.per-doubling',
            'noise.indoors-near',
          ] as const)
        : []),
    ],
  };
}
