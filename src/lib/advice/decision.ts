import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { StepId } from '$shared/methods';
import { onlyCompletion } from './completions';
import { adviseSettled } from './settle';
import { survey } from './survey';
import type { Decision } from './zone-advice';

/** All that the answers may come to. */
function decisionsOf(answers: SiteAnswers & ZoneAnswers): readonly Decision[] {
  const sure = onlyCompletion(answers);
  if (!sure) return survey(answers, answers).tallies;
  const { verdict, underneath } = adviseSettled(sure.site, sure.zone);
  return [{ verdict, method: underneath }];
}

const onlyOne = (decisions: readonly Decision[]): Decision | null => {
  const [only] = decisions;
  return only && decisions.length === 1 ? { verdict: only.verdict, method: only.method } : null;
};

/** What the answers come to; null while they come to more than one thing. */
export const decisionOf = (answers: SiteAnswers & ZoneAnswers): Decision | null =>
  onlyOne(decisionsOf(answers));

/**
 * What a change makes of a decision. A stop leaves questions unasked: what lifts it may hang on
 * those, and they have to be answered first.
 */
export function changedTo(
  answers: SiteAnswers & ZoneAnswers,
  now: Decision | null,
): Decision | null {
  const decisions = decisionsOf(answers);
  const lifted = now?.verdict === 'stop' && decisions.some(({ verdict }) => verdict !== 'stop');
  return onlyOne(decisions) ?? (lifted ? { verdict: 'find-out-first', method: null } : null);
}

/** A stop is a stop: what the method would be behind it changes nothing for whoever stands there. */
export const sameDecision = (one: Decision | null, other: Decision | null): boolean =>
  one?.verdict === other?.verdict && (one?.verdict === 'stop' || one?.method === other?.method);

/** What gets the surface clean for the work. */
const cleaning: readonly StepId[] = ['degrease', 'strip-growth', 'strip-coating'];

/** The first cleaning that the one answers call for in any case and the other do not; null where none. */
export function cleanedFirst(
  then: SiteAnswers & ZoneAnswers,
  now: SiteAnswers & ZoneAnswers,
): StepId | null {
  const known = survey(now, now).commonSteps;
  const called = survey(then, then).commonSteps;
  return cleaning.find((step) => called.includes(step) && !known.includes(step)) ?? null;
}
