import type { KeptClear } from '$lib/advice/keep-clear';
import type { Hold } from '$lib/advice/types';
import { count } from '$words/count';
import { verdictWords } from '$words/verdicts';

/** From where people are kept away, before anything else is done. */
export const keepWords: Readonly<Record<KeptClear, string>> = {
  'keep-off': 'Keep people away from it.',
  'keep-from-under': 'Keep people off it and from under it.',
};

export const callSentence = (who: string): string => `Call ${who}.`;

/** Of tests and checks: where people are kept away, an owner does none of them. */
export const leftToThem = 'Do not go there. Whoever you call does these, from where it is safe.';

/** More zones than these are counted. */
const named = 3;

/**
 * Where people are kept away and who is called about it, in one line.
 * @param zones the names of the zones it is said of; none where it is all of them, or where they are read beside it
 */
export function keepAwayLine(
  { clear, call }: { readonly clear: KeptClear; readonly call: Hold['who'] | null },
  zones: readonly string[],
  list: (items: readonly string[]) => string,
): string {
  const where = zones.length > named ? count(zones.length, 'zone', 'zones') : list(zones);
  return [
    `${where ? `${where}: ` : ''}${keepWords[clear]}`,
    ...(call ? [callSentence(verdictWords.who[call].name)] : []),
  ].join(' ');
}
