import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questions, type QuestionId } from '$lib/answers/questions';
import { openMany, possible } from './completions';
import { survey, type Survey } from './survey';
import { stopsFrom } from './stops-from';
import type { Hold } from './types';
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
  const surveyed = (answer: unknown): Survey => {
    const then = { ...answers, [question]: answer };
    return survey(then, then);
  };
  const outcomesOf = ({ tallies }: Survey): readonly Decision[] =>
    tallies.map(({ verdict, method }) => ({ verdict, method }));
  const told = resultsTold(question, site, zone);
  if (question === 'warnings' || question === 'contamination') {
    const { yes, maybe } = openMany(question, answers[question] as never);
    // What a sign brings is what stands there with it alone and does not without it.
    const without = surveyed({ yes, maybe: [] });
    const known = held(without);
    return told.map((choice) => {
      if (choice === null) return { choice, outcomes: outcomesOf(without), brings: [] };
      const left = maybe.filter((each) => each !== choice);
      return {
        choice,
        outcomes: outcomesOf(surveyed({ yes: [...yes, choice], maybe: left })),
        brings: held(surveyed({ yes: [...yes, choice], maybe: [] })).filter(
          (hold) => !known.some((each) => isAsGrave(each, hold)),
        ),
      };
    });
  }
  const branches = told.map((choice) => ({ choice, then: surveyed([choice]) }));
  const stops = ({ tallies }: Survey) => tallies.every(({ verdict }) => verdict === 'stop');
  const stopWithin = (band: string | null, then: Survey) => {
    if (question !== 'depth' || band === null || stops(then)) return {};
    const at = stopsFrom(band, answers.thickness ?? 'unknown', (depth) => stops(surveyed(depth)));
    return at === undefined ? {} : { stopsFrom: at };
  };
  return branches.map(({ choice, then }) => ({
    choice,
    ...stopWithin(choice, then),
    outcomes: outcomesOf(then),
    // What stands there whatever the answer is told with the advice itself.
    brings: then.holds.filter(
      (hold) => !branches.every((each) => each.then.holds.some((other) => isAsGrave(other, hold))),
    ),
  }));
}

/** What stands before the work, and what may. */
const held = ({ holds, possibleHolds }: Survey): readonly Hold[] => [...holds, ...possibleHolds];

const isAsGrave = (one: Hold, other: Hold): boolean =>
  one.rule === other.rule && one.verdict === other.verdict;
