import { assign, setup } from 'xstate';
import { questionIds, questions, type QuestionId } from '$lib/answers/questions';
import { whyNotAsked } from '$lib/advice/relevance';
import { answerOf, type AnswerGiven, type InterviewContext } from './context';
import { descriptions } from './descriptions';

export type InterviewEvent =
  /** An answer to the question the machine stands at. */
  | ({ readonly type: 'ANSWER' } & AnswerGiven)
  /**
   * An answer given earlier. One to a question that is not asked now waits until it counts again, and
   * what it leaves no question for is not asked either.
   */
  | ({ readonly type: 'KEEP' } & AnswerGiven)
  /** To the question asked before this one. */
  | { readonly type: 'BACK' }
  /** To any question that is asked, to change its answer. */
  | { readonly type: 'GO_TO'; readonly question: QuestionId };

const blank = setup({
  types: {
    context: {} as InterviewContext,
    events: {} as InterviewEvent,
    input: {} as Partial<InterviewContext> | undefined,
  },
  guards: {
    /** The question can still matter. */
    isAsked: ({ context }, { question }: { question: QuestionId }) =>
      whyNotAsked(question, context.site, context.zone) === null,
    /** The question can still matter and has no answer. */
    isMissing: ({ context }, { question }: { question: QuestionId }) =>
      answerOf(context, question) === undefined &&
      whyNotAsked(question, context.site, context.zone) === null,
    /** The answer belongs to this question. */
    isAbout: ({ event }, { question }: { question: QuestionId }) =>
      event.type === 'ANSWER' && event.question === question,
    /** The reader wants this question, and it can still matter. */
    isWanted: ({ context, event }, { question }: { question: QuestionId }) =>
      event.type === 'GO_TO' &&
      event.question === question &&
      whyNotAsked(question, context.site, context.zone) === null,
  },
  actions: {
    record: assign(({ context, event }) => {
      if (event.type !== 'ANSWER' && event.type !== 'KEEP') return context;
      const { question, answer } = event;
      return questions[question].scope === 'site'
        ? { site: { ...context.site, [question]: answer } }
        : { zone: { ...context.zone, [question]: answer } };
    }),
  },
});

/** One state of the machine: a question. */
function stateOf(question: QuestionId) {
  const before = questionIds.slice(0, questionIds.indexOf(question)).reverse();
  return blank.createStateConfig({
    description: descriptions[question],
    on: {
      ANSWER: {
        guard: { type: 'isAbout', params: { question } },
        actions: 'record',
        target: 'next',
      },
      KEEP: { actions: 'record', target: 'next' },
      BACK: before.map((earlier) => ({
        guard: { type: 'isAsked' as const, params: { question: earlier } },
        target: earlier,
      })),
    },
  });
}

/**
 * The interview: one state a question, `next` to pick the question that became missing,
 * `done` when none is. It routes and decides nothing: the guards ask `advice/relevance`.
 * Nothing of it is ever stored; what is stored is the answers, and they are replayed.
 */
export const interview = blank.createMachine({
  id: 'interview',
  description: 'Asks about the site once, then about one zone, and only what can still matter.',
  context: ({ input }) => ({ site: input?.site ?? {}, zone: input?.zone ?? {} }),
  initial: 'next',
  on: {
    GO_TO: questionIds.map((question) => ({
      guard: { type: 'isWanted' as const, params: { question } },
      target: `.${question}`,
    })),
    // At the end nothing is left to pass over.
    KEEP: { actions: 'record' },
  },
  states: {
    next: {
      description: 'Picks the first question that can matter and has no answer.',
      always: [
        ...questionIds.map((question) => ({
          guard: { type: 'isMissing' as const, params: { question } },
          target: question,
        })),
        { target: 'done' },
      ],
    },
    ...(Object.fromEntries(questionIds.map((id) => [id, stateOf(id)])) as Record<
      QuestionId,
      ReturnType<typeof stateOf>
    >),
    done: {
      description: 'Nothing that matters is missing: the advice can be read.',
      type: 'final',
    },
  },
});
