import type { OwnFigures } from '$shared/figures';
import { partOf, type NoiseLimitId } from './noise-limits';
import type { Heard } from './noise';
import { levelOf, usualHours } from './tasks';
import type { SettledTask } from './types';

/** The part of a limit that one task takes with its tool at its usual level for its usual hours; 0 where the level is not known. */
export function usualPartOf(task: SettledTask, limit: NoiseLimitId, own?: OwnFigures): number {
  const level = levelOf(task, own);
  if (typeof level === 'string') return 0;
  const { range, typical = (range[0] + range[1]) / 2 } = level;
  return partOf(limit, typical, usualHours(task), own);
}

/** The same of a whole day, with what is heard from beside; at least this where something is not known. */
export const usualPart = (
  tasks: readonly SettledTask[],
  beside: readonly Heard[],
  limit: NoiseLimitId,
  own?: OwnFigures,
): number =>
  tasks.reduce((sum, task) => sum + usualPartOf(task, limit, own), 0) +
  beside.reduce(
    (sum, { level, hours }) => sum + (level ? partOf(limit, level.typical, hours.typical, own) : 0),
    0,
  );
