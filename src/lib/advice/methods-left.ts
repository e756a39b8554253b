import { methodIds, methods, type MethodId } from '$shared/methods';
import type { Decision } from './zone-advice';

/** Gentlest first, as the ladders go. */
const byStrength = [...methodIds].sort((one, other) => methods[one].class - methods[other].class);

/** The methods that are left, gentlest first: one that is only come to where the work is stopped is not. */
export const methodsLeft = (decisions: readonly Decision[]): readonly MethodId[] =>
  byStrength.filter((id) =>
    decisions.some(({ method, verdict }) => verdict !== 'stop' && method === id),
  );
