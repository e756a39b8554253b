import { methodIds, methods, type MethodId } from '$shared/methods';
import type { Ended } from './zone-advice';

/** Gentlest first, as the ladders go. */
const byStrength = [...methodIds].sort((one, other) => methods[one].class - methods[other].class);

/** The methods that are left, gentlest first: one that is only come to where the work is stopped is not. */
export const methodsLeft = (endings: readonly Ended[]): readonly MethodId[] =>
  byStrength.filter((id) =>
    endings.some(({ method, verdict }) => verdict !== 'stop' && method === id),
  );
