import { methodsLeft } from '$lib/advice/methods-left';
import type { Verdict } from '$lib/advice/types';
import type { Decision, ResultOf } from '$lib/advice/zone-advice';
import { capital } from '$lib/words/by-language';
import { methodNames } from '$words/names';
import { resultWords as labels } from '$words/ui/reader';
import type { Say } from '$lib/words/types';
import { endingText } from './ending-text';

/** Answers to an open question that mean the same. */
export interface ResultRow {
  /** The choices; null for none of those that may be there. */
  readonly choices: readonly (string | null)[];
  /** What these answers put before the work, one line each. */
  readonly brings: readonly string[];
  /** What it then comes to; empty where nothing is left to do. */
  readonly means: string;
  /** One ending is left. */
  readonly settled: boolean;
}

/**
 * What each result of a test would mean, results that mean the same together. What stops the work or
 * has to come first stands apart, and before any method; "none of them" stands with nothing that may.
 */
export function resultRows(results: readonly ResultOf[], say: Say): readonly ResultRow[] {
  const rows = new Map<string, ResultRow>();
  for (const result of results) {
    const { choice, outcomes } = result;
    // Whoever works on it measures nothing before what stops it is cleared.
    const stops = result.brings.some(({ verdict }) => verdict === 'stop');
    const named = result.brings.filter(({ who }) => !stops || who !== 'crew');
    const brings = [...new Set(named.map(({ verdict, who }) => labels.brings[verdict][who]))];
    const ends = brings.length ? afterwards(outcomes, say) : meaning(results, outcomes, say);
    const { stopsFrom } = result;
    const means = [ends, ...(stopsFrom ? [labels.stopsFrom(say.edge(stopsFrom))] : [])].join('; ');
    const clear = outcomes.every(({ verdict }) => verdict === 'prepare');
    const apart = choice === null && !clear ? 'none' : '';
    const key = [apart, ...brings, means].join('\n');
    const row = rows.get(key);
    const settled = outcomes.length === 1;
    rows.set(key, { choices: [...(row?.choices ?? []), choice], brings, means, settled });
  }
  return [...rows.values()];
}

/** The methods that may follow what has to come first. */
function afterwards(outcomes: readonly Decision[], say: Say): string {
  const names = methodsLeft(outcomes).map((id) => methodNames[id]);
  return names.length ? labels.then(say.either(names)) : '';
}

/** What is left where the answer itself puts nothing before the work. */
function meaning(results: readonly ResultOf[], outcomes: readonly Decision[], say: Say): string {
  const [only] = outcomes;
  if (only && outcomes.length === 1) return endingText(only, say);
  const some = (verdict: Verdict) => outcomes.some((each) => each.verdict === verdict);
  // What every result leaves possible says nothing about any of them: the head has told it.
  const always = (verdict: Verdict) =>
    results.every((result) => result.outcomes.some((each) => each.verdict === verdict));
  const methods = methodsLeft(outcomes).map((id) => methodNames[id]);
  const held = (['find-out-first', 'stop'] as const).filter(
    (verdict) => some(verdict) && !(methods.length && always(verdict)),
  );
  return capital(say.either([...methods, ...held.map((verdict) => labels[verdict])]));
}
