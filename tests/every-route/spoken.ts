import type { Advice } from '$lib/advice/types';

/** Placeholder until the sentences are checked here. */
export function unspoken(_advice: Advice, _rules?: Set<string>): string | null {
  return null;
}
