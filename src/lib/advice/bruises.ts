import { methods, type StepId } from '$shared/methods';
import type { ZoneAdvice } from './zone-advice';

/** Steps beside the method in which something strikes the concrete. */
const strikes: readonly StepId[] = ['chase-crack', 'free-bar', 'edge-work', 'blast-clean'];

/**
 * Whether what is done here may leave a bruised skin: where nothing strikes it there is none to tell
 * of. Source: common practice, no published source.
 */
export const mayBruise = ({
  methods: ways,
  steps,
}: Pick<ZoneAdvice, 'methods' | 'steps'>): boolean =>
  !ways.length ||
  ways.some((method) => methods[method].bruises !== 'no') ||
  steps.some(({ id }) => strikes.includes(id));
