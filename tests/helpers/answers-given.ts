import { notSure } from '$lib/answers/answers';
import { choicesOf, questions, type QuestionId } from '$lib/answers/questions';
import type { AnswerGiven, InterviewContext } from '$lib/interview/context';

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
