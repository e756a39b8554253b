import { initialTransition, transition } from 'xstate';
import { whyNotAsked, type SkipReason } from '$lib/advice/relevance';
import type { Answer } from '$lib/answers/answers';
import { questionIds, questions, type QuestionId } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import type { AnswerGiven, InterviewContext, InterviewPlace } from './context';
import { interview } from './machine';
import { placeOf, type InterviewState } from './replay';

/** A way the interview can go on from a question, as the machine itself went. */
export interface MapArrow {
  readonly from: QuestionId;
  readonly to: InterviewPlace;
  /** What it passes over, and why: each reason that was seen. Empty for the plain next question. */
  readonly skipped: readonly { readonly question: QuestionId; readonly why: SkipReason }[];
  /** Why it passes over them; null for the plain next question. */
  readonly why: SkipReason | null;
}

/** The interview as it can be drawn. */
export interface InterviewMap {
  /** The questions in the order in which the machine looks for one that is missing. */
  readonly questions: readonly QuestionId[];
  readonly arrows: readonly MapArrow[];
}

type Answers = { readonly [Q in QuestionId]?: readonly Answer<Q>[] };

/**
 * The answers that can make a question not count, each tried with all the others; a question that
 * is not named is answered in one way. That no other way leads anywhere else is held in the tests.
 */
const telling: Answers = {
  thickness: ['unknown', valueOf('depth.deep') / valueOf('depth.full-limit')],
  warnings: [
    { yes: [], maybe: [] },
    { yes: ['fire-or-chemical'], maybe: [] },
    { yes: ['settled-or-rocking'], maybe: [] },
  ],
  depth: questions.depth.choices.map((choice) => [choice]),
  looseness: questions.looseness.choices.map((choice) => [choice]),
  element: [['slab'], ['wall']],
  finish: [['undecided'], ['overlay'], ['sealer']],
  makerProfile: [['no-sheet'], ['csp-3']],
  cracks: [['none'], ['hairline']],
  steel: [['none-seen'], ['corroded']],
};

/** An answer to a question that tells nothing about the others: a typed number, or its first choice. */
function plainAnswer(question: QuestionId): unknown {
  const { kind } = questions[question];
  if (kind === 'number') return 1;
  if (kind === 'many') return { yes: [], maybe: [] };
  return [(questions[question] as { choices: readonly string[] }).choices[0]];
}

const answersTo = (question: QuestionId): readonly unknown[] =>
  telling[question] ?? [plainAnswer(question)];

/** The reasons a question after `from` and before `to` was passed over. */
function passedOver(from: QuestionId, to: InterviewPlace, { site, zone }: InterviewContext) {
  const until = to === 'done' ? questionIds.length : questionIds.indexOf(to);
  return questionIds.slice(questionIds.indexOf(from) + 1, until).flatMap((question) => {
    const why = whyNotAsked(question, site, zone);
    return why ? [{ question, why }] : [];
  });
}

/**
 * Draws the interview by walking the machine: from its first question along every answer that can
 * make a difference to what is asked, writing down each step it takes.
 */
export function interviewMap(): InterviewMap {
  const arrows = new Map<string, MapArrow>();
  const seen = new Set<string>();
  const walk = (state: InterviewState): void => {
    const from = placeOf(state);
    if (from === 'done') return;
    // What was answered alike goes on alike.
    const key = JSON.stringify([from, state.context]);
    if (seen.has(key)) return;
    seen.add(key);
    for (const answer of answersTo(from)) {
      const event = { type: 'ANSWER', question: from, answer } as { type: 'ANSWER' } & AnswerGiven;
      const [next] = transition(interview, state, event);
      const to = placeOf(next);
      const passed = passedOver(from, to, next.context);
      const why = passed[0]?.why ?? null;
      // An arrow tells one reason; what is passed over for another has an arrow of its own.
      const skipped = passed.filter((each) => each.why === why);
      const name = `${from} ${to} ${why ?? ''}`;
      if (!arrows.has(name)) arrows.set(name, { from, to, skipped, why });
      walk(next);
    }
  };
  walk(initialTransition(interview)[0]);
  const at = ({ from }: MapArrow) => questionIds.indexOf(from);
  return {
    questions: questionIds,
    arrows: [...arrows.values()].sort((one, other) => at(one) - at(other)),
  };
}
