import { setKeyOf } from '$lib/keep/practice/result-code';
import { problemSentence } from '$words/keep';
import { resultsWords as words } from '$words/practice/results';
import type { Outcome } from './bring';
import { whoOf } from './names';

/** A line of what became of pasted codes. */
export interface Line {
  readonly text: string;
  readonly bad: boolean;
}

const said = (outcome: Exclude<Outcome, { what: 'added' }>, byLink: boolean): string => {
  if (outcome.what === 'no-code') return words.noCode(outcome.line);
  if (outcome.what === 'broken') {
    const problem = problemSentence(outcome.problem);
    return byLink ? words.byLink(problem) : words.broken(outcome.line, problem);
  }
  const who = whoOf(outcome.result);
  if (outcome.what === 'here') return words.here(who);
  if (outcome.what === 'other-picks') return words.otherPicks(who);
  return outcome.what === 'quota' ? words.full(who) : words.failed;
};

/**
 * What became of pasted codes: those that were added in one line, each other in its own.
 * @param before the sets that were here before
 * @param byLink whether they came as the link that opened the page
 */
export function sayOutcomes(
  outcomes: readonly Outcome[],
  before: readonly string[],
  byLink = false,
): readonly Line[] {
  const added = outcomes.flatMap((one) => (one.what === 'added' ? [one.result] : []));
  const strange = before.length > 0 && added.some((one) => !before.includes(setKeyOf(one)));
  const lines: Line[] = [];
  if (added.length)
    lines.push({
      text: [
        words.added(added.map((one) => one.name || words.nameless).join(', '), added.length),
        ...(strange ? [words.otherSet(added.length)] : []),
      ].join(' '),
      bad: false,
    });
  for (const one of outcomes)
    if (one.what !== 'added') lines.push({ text: said(one, byLink), bad: true });
  return lines;
}
