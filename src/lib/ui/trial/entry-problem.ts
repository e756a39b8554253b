import type { Entry } from '$lib/answers/readiness-record';
import { entryLimits, numberIn } from '$lib/trial/found';
import { numberMessages } from '$words/numbers';
import type { Say } from '$lib/words/types';
import { figures, rangeOf } from '$shared/figures';

/** What is wrong with something typed on a square; empty while nothing is. */
export function entryProblem(
  entry: Entry | undefined,
  what: keyof typeof entryLimits,
  say: Say,
): string {
  if (entry === undefined || entry === '') return '';
  if (typeof entry === 'string') return numberMessages.notNumber(entry);
  if (numberIn(entry, what) !== undefined) return '';
  const { unit } = figures[entryLimits[what]];
  const [low, high] = rangeOf(entryLimits[what]);
  if (entry < 0) return numberMessages.negative;
  return entry < low
    ? numberMessages.tooSmall(say.between(unit, low, low))
    : numberMessages.tooLarge(say.between(unit, high, high));
}
