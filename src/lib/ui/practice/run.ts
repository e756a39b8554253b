import { resultCode } from '$lib/keep/practice/result-code';
import { setLink } from '$lib/keep/practice/set-link';
import { calls as known, type Call } from '$lib/practice/case';
import type { SetResult } from '$lib/practice/given';
import { ratings, type Rating } from '$lib/practice/grade';
import { casesOf, type PracticeSet } from '$lib/practice/set';
import { siteName } from '$lib/ui/site-name';

/** A set somebody chose, and how far it has come. */
export interface Run {
  readonly set: PracticeSet;
  readonly ids: readonly string[];
  /** The place of the case in hand; past the last when the set is done. */
  readonly at: number;
  /** How it went and what was picked, case by case. */
  readonly went: readonly Rating[];
  readonly calls: readonly Call[];
  /** When it ended, and by which mark it is told from others; set with the last case. */
  readonly end?: Pick<SetResult, 'minute' | 'mark'>;
}

/** A run through a set from its first case. */
export const freshRun = (set: PracticeSet): Run => ({
  set,
  ids: casesOf(set),
  at: 0,
  went: [],
  calls: [],
});

const key = siteName('down-to-sound.set-run');
const nameOf = (set: PracticeSet) => setLink(set, '');

/** Keeps a run for this tab: a phone that closes the page must not cost a set. Null lets go of it. */
export function keepRun(run: Run | null): void {
  try {
    if (!run) sessionStorage.removeItem(key);
    else {
      const { set, went, calls, end } = run;
      sessionStorage.setItem(key, JSON.stringify({ set: nameOf(set), went, calls, end }));
    }
  } catch {
    // No storage, or none left: it holds as long as the page stands.
  }
}

/** The run kept of this set, on its next case; a fresh one where none is, or where it makes no sense. */
export function keptRun(set: PracticeSet): Run {
  const fresh = freshRun(set);
  try {
    const { set: name, went, calls, end } = JSON.parse(sessionStorage.getItem(key) ?? '{}') as Run;
    const whole =
      (name as unknown) === nameOf(set) &&
      went.every((rating) => ratings.includes(rating)) &&
      calls.every((call) => known.includes(call)) &&
      went.length === calls.length &&
      calls.length <= fresh.ids.length &&
      (calls.length === fresh.ids.length) === (end !== undefined);
    if (!whole) return fresh;
    // Throws where it would not go into a code.
    if (end) resultCode({ set, calls, ...end, name: '' });
    return { ...fresh, at: calls.length, went, calls, ...(end && { end }) };
  } catch {
    return fresh;
  }
}
