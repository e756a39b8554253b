import { askedQuestions, whyNotAsked, type SkipReason } from '$lib/advice/relevance';
import { questions, type QuestionId } from '$lib/answers/questions';
import { previousOf, type InterviewContext } from './context';
import type { TalkContext, TalkJob } from './talk-types';

/** The zone by that id; undefined when the job has none: nothing stands in for it. */
export const zoneIn = (job: TalkJob, id: string | null) => job.zones.find((zone) => zone.id === id);

/** What is known of the zone that is meant; null while the job or the zone is not there. */
export function answersIn({ job, zone }: TalkContext): InterviewContext | null {
  const meant = job && zoneIn(job, zone);
  return meant ? { site: job.site, zone: meant.answers } : null;
}

/** Why the question is not asked; null when it is, or nothing is known yet. */
export function skipIn(context: TalkContext, question = context.question): SkipReason | null {
  const answers = answersIn(context);
  return question && answers ? whyNotAsked(question, answers.site, answers.zone) : null;
}

/** The question asked before the one that is open; null at the first. */
export function backIn(context: TalkContext): QuestionId | null {
  const answers = answersIn(context);
  if (!answers || !context.question) return null;
  return previousOf(askedQuestions(answers.site, answers.zone), context.question);
}

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/**
 * Whether a newer state of the job differs in what a draft is about: its zone as it was last there,
 * or the site's answer to the question. A zone that is gone is told as that.
 */
export function differs({ job, zone, seen, question }: TalkContext, newer: TalkJob): boolean {
  if (!job || !question || job.hand !== newer.hand) return false;
  if (questions[question].scope === 'zone') {
    const now = zoneIn(newer, zone);
    return !!seen && !!now && !same(seen, now);
  }
  const id = question as keyof TalkJob['site'];
  return !same(job.site[id], newer.site[id]);
}

/** Whether the answer on its way stands in a state of the job. */
export function holdsGiven(context: TalkContext, newer: TalkJob): boolean {
  const { given, zone, hand } = context;
  if (!given || newer.hand !== hand) return false;
  const answers = { ...newer.site, ...zoneIn(newer, zone)?.answers };
  return same(answers[given.question], given.answer);
}
