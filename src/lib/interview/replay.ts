import { initialTransition, transition, type SnapshotFrom } from 'xstate';
import { questionIds, type QuestionId } from '$lib/answers/questions';
import { answerOf, type AnswerGiven, type InterviewContext, type InterviewPlace } from './context';
import { interview, type InterviewEvent } from './machine';

export type InterviewState = SnapshotFrom<typeof interview>;

/** The question a state stands at, or `done`. */
export const placeOf = (state: InterviewState): InterviewPlace => state.value as InterviewPlace;

const step = (state: InterviewState, event: InterviewEvent): InterviewState =>
  transition(interview, state, event)[0];

/**
 * The state the answers lead to: each fed to the machine as one given earlier, in the order of the
 * questions. It rests at the first question that became missing, or at `done`.
 * @param except a question whose answer is held back, so that the machine can stand at it
 */
export function replay(answers: InterviewContext, except?: QuestionId): InterviewState {
  let [state] = initialTransition(interview);
  for (const question of questionIds) {
    const answer = answerOf(answers, question);
    if (answer === undefined || question === except) continue;
    state = step(state, { type: 'KEEP', ...({ question, answer } as AnswerGiven) });
  }
  return state;
}

/** The machine standing at a question that is asked, its answer open; elsewhere when it is not asked. */
export const standAt = (answers: InterviewContext, question: QuestionId): InterviewState =>
  step(replay(answers, question), { type: 'GO_TO', question });

/** The answers with one more given, and the question that comes next. */
export function give(
  answers: InterviewContext,
  given: AnswerGiven,
): { readonly answers: InterviewContext; readonly next: InterviewPlace } {
  const state = step(standAt(answers, given.question), { type: 'ANSWER', ...given });
  return { answers: state.context, next: placeOf(state) };
}
