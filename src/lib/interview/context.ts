import type { Answer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';
import type { TalkContext } from './talk-types';

/** Everything the interview knows: the answers. Its state is a fold of them. */
export interface InterviewContext {
  readonly site: SiteAnswers;
  readonly zone: ZoneAnswers;
}

/** A question with an answer that fits it; any other pair does not compile. */
export type AnswerGiven = {
  [Q in QuestionId]: { readonly question: Q; readonly answer: Answer<Q> };
}[QuestionId];

/** A question, or `done` when nothing that matters is missing. */
export type InterviewPlace = QuestionId | 'done';

/** The answer to a question of either scope; undefined while there is none. */
export const answerOf = ({ site, zone }: InterviewContext, question: QuestionId): unknown =>
  question in site ? site[question as keyof SiteAnswers] : zone[question as keyof ZoneAnswers];

/**
 * The question asked before this one, or null at the first and for one that is not asked.
 * Where BACK leads, by the machine and by the link it stands on.
 * @param asked the questions that count, in the order they are asked
 */
export const previousOf = (asked: readonly QuestionId[], question: QuestionId): QuestionId | null =>
  asked[asked.indexOf(question) - 1] ?? null;

/** The zone as addresses name it: a job of one zone needs no name for it. */
export const addressIn = ({ job, zone, named }: TalkContext): string | null =>
  job && job.zones.length > 1 ? zone : named;
