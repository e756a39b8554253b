import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questions, type QuestionId } from '$lib/answers/questions';
import { openMany, possible } from './completions';
import { survey } from './survey';
import type { Decision, ResultOf } from './zone-advice';

/**
 * The answers whose results are told for an open question; null is none of its choices. Empty where a
 * number is asked for.
 */
export function resultsTold(
  question: QuestionId,
  site: SiteAnswers,
  zone: ZoneAnswers,
): readonly (string | null)[] {
  const answer = { ...site, ...zone }[question];
  if (question === 'warnings' || question === 'contamination')
    return [null, ...openMany(question, answer as never).maybe];
  if (questions[question].kind === 'number' || typeof answer === 'number') return [];
  return possible(question, answer as never);
}

/**
 * What each answer to an open question would mean here: everything the advice could then still come
 * to, likeliest first. For "tick all that apply" each choice that may be there is looked at by
 * itself, the others staying open, and then none of them.
 */
export function resultsOf(
  question: QuestionId,
  site: SiteAnswers,
  zone: ZoneAnswers,
): readonly ResultOf[] {
  const answers = { ...site, ...zone };
  const comesTo = (answer: unknown): readonly Decision[] => {
    const then = { ...answers, [question]: answer };
    return survey(then, then).tallies.map(({ verdict, method }) => ({ verdict, method }));
  };
  const told = resultsTold(question, site, zone);
  if (question === 'warnings' || question === 'contamination') {
    const { yes, maybe } = openMany(question, answers[question] as never);
    const left = (choice: string) => maybe.filter((each) => each !== choice);
    return told.map((choice) => ({
      choice,
      outcomes: comesTo(
        choice === null ? { yes, maybe: [] } : { yes: [...yes, choice], maybe: left(choice) },
      ),
    }));
  }
  return told.map((choice) => ({ choice, outcomes: comesTo([choice]) }));
}
