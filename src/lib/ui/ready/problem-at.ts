import type { Problem, ProblemField } from '$lib/readiness/rules';
import { readinessWords } from '$words/readiness';
import type { Say } from '$lib/words/types';

/** What is wrong at one place, in a sentence; empty where nothing is. */
export function problemAt(
  problems: readonly Problem[],
  say: Say,
  at: { readonly field: ProblemField; readonly row?: number },
): string {
  const found = problems.find(({ field, row }) => field === at.field && row === at.row);
  return found ? readinessWords.problems[found.id](found, say) : '';
}
