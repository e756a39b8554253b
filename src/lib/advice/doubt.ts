import type { Reason, Step } from './types';

/** Why a patch is doubtful for its depth (`depth-past-third`); undefined where it is not. */
export const depthDoubt = (steps: readonly Step[]): Reason | undefined =>
  steps.flatMap(({ why }) => why).find(({ rule }) => rule === 'depth-past-third');

/** The depth past which a patch is doubtful, mm; null where nothing is doubtful. */
export function doubtfulPast(steps: readonly Step[]): number | null {
  const third = depthDoubt(steps)?.facts?.['third'];
  return typeof third === 'number' ? third : null;
}
