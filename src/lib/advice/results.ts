import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questions, type QuestionId } from '$lib/answers/questions';
import { openMany, possible } from './completions';
import { survey } from './survey';
import type { Decision, ResultOf } from './zone-advice';

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
  if (question === 'warnings' || question === 'contamination') {
    const { yes, maybe } = openMany(question, answers[question] as never);
    const without = (choice: string) => maybe.filter((each) => each !== choice);
    return [
      { choice: null, outcomes: comesTo({ yes, maybe: [] }) },
      ...maybe.map((choice: string) => ({
        choice,
        outcomes: comesTo({ yes: [...yes, choice], maybe: without(choice) }),
      })),
    ];
  }
  const { kind } = questions[question];
  if (kind === 'number' || typeof answers[question] === 'number') return [];
  return possible(question, answers[question] as never).map((choice: string) => ({
    choice,
    outcomes: comesTo([choice]),
  }));
}
