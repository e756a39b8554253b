import { isSurely, type ZoneAnswers } from '$lib/answers/answers';
import type { MethodId, StepId } from '$shared/methods';
import { hasCoating } from './demands';
import type { Step } from './types';

/** What the main step meets on a zone. */
export interface SurfaceHere {
  /** Concrete that will not hold, and has to come off. */
  readonly weak: boolean;
  /** A coating that no step before has taken off. */
  readonly coated: boolean;
  /** Hollows that have to be reached, too. */
  readonly pitted: boolean;
}

/** The methods that work a whole face: what they meet there is told and drawn by the case. */
export const facing: ReadonlySet<StepId> = new Set<MethodId>([
  'grind',
  'scarify',
  'shotblast',
  'needle-scale',
  'abrasive-blast',
]);

/** What the main step meets there; null while an answer that says so is open. */
export function surfaceHere(
  { looseness, contamination, texture }: ZoneAnswers,
  steps: readonly Pick<Step, 'id'>[],
): SurfaceHere | null {
  if (looseness?.length !== 1 || texture?.length !== 1 || !contamination) return null;
  if (hasCoating(contamination.maybe)) return null;
  return {
    weak: !isSurely(looseness, 'tight'),
    coated: hasCoating(contamination.yes) && steps.every(({ id }) => id !== 'strip-coating'),
    pitted: isSurely(texture, 'pitted'),
  };
}
