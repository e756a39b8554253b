import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import type { SilicaOfTask } from './silica';
import type { Region } from './types';

/** What one task asks its user to breathe through. */
export interface Mask {
  /** Least factor; 0 where none is asked for. */
  readonly factor: number;
  /** A blasting hood fed with clean air comes first: nothing less will do behind the nozzle. */
  readonly hood: boolean;
  /** `table`: the US table; `country`: a stricter national rule; `begin`: only until the dust is measured. */
  readonly by: 'table' | 'country' | 'begin' | 'none';
}

/** One person's mask for a whole day. */
export interface MaskOfDay extends Mask {
  /** Tools whose dust somebody has to measure; until then the mask is only a safe beginning. */
  readonly measure: readonly ToolId[];
  /** True where somebody else blasts with grit that day. */
  readonly besideBlast: boolean;
  /** The others' tools that ask for a mask which is not worn here all day anyway; null where there are none. */
  readonly besideDust: { readonly factor: number; readonly tools: readonly ToolId[] } | null;
}

/** The factor to begin with where no table has a row. Source: HSE, scabbling or grinding. */
export const beginMask: FigureId = 'dust.mask-gb';

/** Throws grit in the open air of the site, so that those around breathe its dust. */
const blasting = (tool: ToolId): boolean => tool === 'blast-nozzle';

/** Scabbling and grinding, whatever drives it: the work the British rule is written for. */
const scabblesOrGrinds: readonly ToolId[] = [
  'scabbler',
  'scarifier',
  'hand-grinder',
  'floor-grinder',
];

/** The mildest of the ways a row allows. */
const least = (task: Extract<SilicaOfTask, { kind: 'row' }>): number =>
  Math.min(...task.ways.map(({ protection }) => protection));

/**
 * The mask of one task. Where no row settles it, the safe mask to begin with: factor 20, and behind an
 * abrasive nozzle a hood fed with clean air. Outside the US the stricter British factor counts for
 * scabbling and grinding.
 * Source of the hood: WAC 296-818-20010 Table 1; 29 CFR 1926.57(f)(5), from memory.
 */
export function maskOfTask(task: SilicaOfTask, region: Region, own?: OwnFigures): Mask {
  const safe = valueOf(beginMask, own);
  if (task.kind === 'not-in-table') return { factor: safe, hood: blasting(task.tool), by: 'begin' };
  if (task.kind !== 'row') return { factor: 0, hood: false, by: 'none' };
  const factor = least(task);
  return region === 'elsewhere' && scabblesOrGrinds.includes(task.tool) && factor < safe
    ? { factor: safe, hood: false, by: 'country' }
    : { factor, hood: false, by: 'table' };
}

const isDusty = ({ kind }: SilicaOfTask): boolean => kind === 'row' || kind === 'not-in-table';

/**
 * Dust does not stay with who makes it: whoever is near breathes it, or keeps out.
 * Source: 29 CFR 1926.1153 (g)(1)(iv), access restricted, from memory; the mask near it: common
 * practice, no published source.
 */
function dustBeside(
  tasks: readonly SilicaOfTask[],
  others: readonly SilicaOfTask[],
  region: Region,
  own?: OwnFigures,
): MaskOfDay['besideDust'] {
  const dusty = tasks.filter(isDusty);
  const factors = dusty.map((task) => maskOfTask(task, region, own).factor);
  const allDay = factors.length ? Math.min(...factors) : 0;
  const mine = tasks.map(({ tool }) => tool);
  const near = others
    .filter(({ tool }) => !blasting(tool) && !mine.includes(tool))
    .map((task) => ({ tool: task.tool, factor: maskOfTask(task, region, own).factor }))
    .filter(({ factor }) => factor > allDay);
  return near.length && tasks.length
    ? {
        factor: Math.max(...near.map(({ factor }) => factor)),
        tools: [...new Set(near.map(({ tool }) => tool))],
      }
    : null;
}

/**
 * One person's mask for the day: the strictest of their own tasks, and at least the safe one for
 * whoever is near another's abrasive nozzle: those around breathe more than the man in the hood
 * (figure `dust.blast.bystander`).
 * @param others what other people do that day
 */
export function maskOfDay(
  tasks: readonly SilicaOfTask[],
  others: readonly SilicaOfTask[],
  region: Region,
  own?: OwnFigures,
): MaskOfDay {
  const masks = tasks.map((task) => maskOfTask(task, region, own));
  const besideBlast = tasks.length > 0 && others.some(({ tool }) => blasting(tool));
  const factor = Math.max(
    0,
    besideBlast ? valueOf(beginMask, own) : 0,
    ...masks.map((m) => m.factor),
  );
  return {
    factor,
    hood: masks.some(({ hood }) => hood),
    by: masks.find((mask) => mask.factor === factor)?.by ?? (besideBlast ? 'begin' : 'none'),
    besideBlast,
    besideDust: besideBlast ? null : dustBeside(tasks, others, region, own),
    measure: [
      ...new Set(tasks.flatMap((task) => (task.kind === 'not-in-table' ? [task.tool] : []))),
    ],
  };
}
