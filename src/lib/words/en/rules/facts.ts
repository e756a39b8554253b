import type { Reason } from '$lib/advice/types';
import { depthNames } from '$words/names';
import type { Say } from '$lib/words/types';

/** Reading the values a rule saw. A value that is missing reads as empty, so a sentence can leave it out. */

/** One id among the names of a choice; empty where the rule did not carry it. */
export function named<N extends string>(
  reason: Reason,
  fact: string,
  names: Readonly<Record<N, string>>,
): string {
  const value = reason.facts?.[fact];
  return typeof value === 'string' && value in names ? names[value as N] : '';
}

/** Several ids, each by its name, in the order the rule gave them. */
export function namedAll<N extends string>(
  reason: Reason,
  fact: string,
  names: Readonly<Record<N, string>>,
): string[] {
  const value = reason.facts?.[fact];
  const ids = typeof value === 'string' ? [value] : Array.isArray(value) ? (value as string[]) : [];
  return ids.filter((id) => id in names).map((id) => names[id as N]);
}

/** A number the rule saw, in engine units; null where it did not carry one. */
export function amount(reason: Reason, fact: string): number | null {
  const value = reason.facts?.[fact];
  return typeof value === 'number' ? value : null;
}

/** How deep the damage goes: "30 mm deep" where somebody measured, else by its band. */
export function depthSaid(reason: Reason, say: Say): string {
  const mm = amount(reason, 'mm');
  return mm === null ? named(reason, 'depth', depthNames(say)) : `${say.length(mm)} deep`;
}

/** Whether the rule saw exactly this value. */
export const saw = (reason: Reason, fact: string, value: string): boolean =>
  reason.facts?.[fact] === value;
