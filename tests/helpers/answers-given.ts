import { notSure } from '$lib/answers/answers';
import { choicesOf, questionIds, questions, type QuestionId } from '$lib/answers/questions';
import type { AnswerGiven, InterviewContext, InterviewPlace } from '$lib/interview/context';
import { give, placeOf, replay } from '$lib/interview/replay';

/** The answers that the guards can tell apart, for each question. */
export function legal(question: QuestionId): AnswerGiven[] {
  const { kind } = questions[question];
  const answers: unknown[] =
    kind === 'number'
      ? ['unknown', 100]
      : kind === 'many'
        ? [
            notSure(question),
            { yes: [], maybe: [] },
            ...choicesOf(question).map((choice) => ({ yes: [choice], maybe: [] })),
          ]
        : [notSure(question), ...choicesOf(question).map((choice) => [choice])];
  if (kind === 'depth') answers.push(4, 60, 100);
  return answers.map((answer) => ({ question, answer }) as AnswerGiven);
}

/** The answers as the interview holds them, the last to each question. */
export const filled = (given: readonly AnswerGiven[]): InterviewContext => {
  const answers = { site: {}, zone: {} } as Record<'site' | 'zone', Record<string, unknown>>;
  for (const { question, answer } of given) answers[questions[question].scope][question] = answer;
  return answers as unknown as InterviewContext;
};

/**
 * From the first question to the end, each answered as it is asked: what is known then, and the steps.
 * More steps than there are questions lead in a circle.
 */
export function toTheEnd(answerTo: (question: QuestionId) => unknown) {
  let answers: InterviewContext = { site: {}, zone: {} };
  let place = placeOf(replay(answers));
  const steps: { from: QuestionId; to: InterviewPlace }[] = [];
  while (place !== 'done') {
    if (steps.length === questionIds.length) throw new Error(`back at ${place}: a circle`);
    const from = place;
    const given = { question: from, answer: answerTo(from) } as AnswerGiven;
    ({ answers, next: place } = give(answers, given));
    steps.push({ from, to: place });
  }
  return { answers, steps };
}
