import type { CheckId, Entry } from '$lib/answers/readiness-record';
import { rangeOf, type FigureId } from '$shared/figures';
import type { Problem, ProblemField } from './rules';

/** Where an entry stands, for the problem that names it. */
export interface Place {
  readonly check: CheckId;
  readonly field: ProblemField;
  readonly row?: number;
}

/** Whether what was typed is a number at all. */
export const isNumber = (entry: Entry): entry is number => Number.isFinite(entry);

/**
 * Reads one typed number; a wrong one becomes a problem and is left out, never changed.
 * @param limit figure with the lowest and highest value that is taken seriously
 */
export function readNumber(
  entry: Entry | undefined,
  limit: FigureId,
  place: Place,
  problems: Problem[],
): number | undefined {
  if (entry === undefined || entry === '') return undefined;
  if (!isNumber(entry)) {
    problems.push({ id: 'not-a-number', ...place, typed: entry });
    return undefined;
  }
  const [lowest, highest] = rangeOf(limit);
  if (entry < lowest || entry > highest) {
    const id = entry < 0 && lowest >= 0 ? 'negative' : 'out-of-range';
    problems.push({ id, ...place, typed: entry, limits: [lowest, highest] });
    return undefined;
  }
  return entry;
}
