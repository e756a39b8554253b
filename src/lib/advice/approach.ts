import type { Approach } from './approach-asked';
import type { StepId } from '$shared/methods';
import { isDoneThere, type KeptClear } from './keep-clear';
import type { TestId } from './types';

/** Tests that knock on it or are done at arm’s length. */
const atArmsLength: ReadonlySet<TestId> = new Set<TestId>([
  'hammer-tap',
  'tap-crack',
  'sound-round-stain',
  'brush',
  'water-drop',
  'crack-gauge',
  'look-at-steel',
  'look-close',
  'measure-thickness',
  'measure-area',
]);

/** Tests that take something off, or open it up. */
const takesOff: ReadonlySet<TestId> = new Set<TestId>([
  'scrape',
  'measure-depth',
  'measure-bar',
  'chloride-test',
]);

/**
 * How a test is done where people are kept away. Whoever works there sounds what hangs from a tower
 * or a lift beside it, with nobody below, and takes nothing off it before the engineer has looked: what is
 * loose may hold the rest. An owner does neither.
 * Source: common practice, no published source; that nobody goes where pieces may fall:
 * 29 CFR 1926.501(c), from memory.
 * @param clear from where people are kept away; null where they are not
 */
export function approachTo(test: TestId, clear: KeptClear | null, toOwner: boolean): Approach {
  if (!clear) return 'as-usual';
  if (toOwner) return isDoneThere(test) ? 'leave' : 'as-usual';
  if (clear === 'keep-off') return 'as-usual';
  if (takesOff.has(test)) return 'leave';
  return atArmsLength.has(test) ? 'from-beside' : 'as-usual';
}

/** Steps that knock on it. */
const knocks: ReadonlySet<StepId> = new Set<StepId>(['sound-and-mark', 'tap-crack']);

/**
 * Of the steps that may go ahead, those that may where people are kept from under it: it is fenced
 * off, and sounded from beside it; nobody scrubs it. Source: common practice, no published source.
 */
export function begunHere(
  now: readonly StepId[],
  clear: KeptClear | null,
): { readonly now: readonly StepId[]; readonly approach: 'as-usual' | 'from-beside' } {
  if (clear !== 'keep-from-under') return { now, approach: 'as-usual' };
  const here = now.filter((step) => step === 'make-safe' || knocks.has(step));
  return {
    now: here,
    approach: here.some((step) => knocks.has(step)) ? 'from-beside' : 'as-usual',
  };
}
