import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { levelOf } from './tasks';
import type { SettledTask } from './types';

/** How far off others stay who wear nothing on the ears. */
export interface KeepOff {
  /** The loudest tool of the day, as it usually is. */
  readonly tool: ToolId;
  /** Where a whole day of it would be as much as is advised; null where walls or a roof hold noise in. */
  readonly metres: number | null;
}

/**
 * How far from the loudest tool of a day bare ears may stay. Null where no known tool is loud.
 * Source: figures `noise.niosh-criterion` and `noise.per-doubling`, at the usual level of the tool; in a
 * room distance hardly helps (figure `noise.indoors-far`).
 */
export function keepOff(tasks: readonly SettledTask[], own?: OwnFigures): KeepOff | null {
  const aim = valueOf('noise.niosh-criterion', own);
  let loudest: { task: SettledTask; level: number } | null = null;
  for (const task of tasks) {
    const known = levelOf(task, own);
    if (typeof known === 'string') continue;
    const { range, typical = (range[0] + range[1]) / 2 } = known;
    if (typical > (loudest?.level ?? aim)) loudest = { task, level: typical };
  }
  if (!loudest) return null;
  const { task, level } = loudest;
  const [least] = rangeOf('noise.per-doubling', own);
  const metres = valueOf('noise.at-operator', own) * 2 ** ((level - aim) / least);
  return { tool: task.tool, metres: task.setting === 'open' ? metres : null };
}
