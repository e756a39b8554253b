import { whyNotAsked } from '$lib/advice/relevance';
import type { Job } from '$lib/answers/job';
import { questions, type QuestionId } from '$lib/answers/questions';
import { answerOf, type AnswerGiven } from '$lib/interview/context';
import { withAnswer } from '$lib/ui/with-answer';

/** Why an answer given on the job page is not taken. */
export type Refused = 'zone-gone' | 'not-asked' | 'changed-elsewhere';

/** An answer that was changed, with what is needed to change it back. */
export interface Changed {
  /** The zone it was given in; for an answer about the site, any of the job. */
  readonly zone: string;
  readonly question: QuestionId;
  /** Undefined where there was none. */
  readonly before: unknown;
  readonly after: unknown;
  /** Whether the zone was the rest, and an area of its own made it a zone like the others. */
  readonly wasRest: boolean;
}

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/** The answer as the job has it; undefined where the zone is gone, too. */
export function answerNow(job: Job, zone: string, question: QuestionId): unknown {
  const found = job.zones.find(({ id }) => id === zone);
  return found && answerOf({ site: job.site, zone: found.answers }, question);
}

/**
 * An answer changed where it stands, by the same way an answer takes in the interview.
 * @param seen the answer the reader saw when they began; another one now came from elsewhere
 */
export function changeInPlace(
  job: Job,
  zone: string,
  given: AnswerGiven,
  seen: unknown,
): { readonly job: Job; readonly changed: Changed } | { readonly refused: Refused } {
  const found = job.zones.find(({ id }) => id === zone);
  if (!found) return { refused: 'zone-gone' };
  const { question, answer: after } = given;
  if (whyNotAsked(question, job.site, found.answers)) return { refused: 'not-asked' };
  const before = answerNow(job, zone, question);
  if (!same(before, seen)) return { refused: 'changed-elsewhere' };
  const next = withAnswer(job, zone, given);
  const wasRest = job.rest === zone && next.rest === undefined;
  return { job: next, changed: { zone, question, before, after, wasRest } };
}

/** The job with a changed answer as it was before; why not, where that would undo something else. */
export function changeBack(
  job: Job,
  { zone, question, before, after, wasRest }: Changed,
): { readonly job: Job } | { readonly refused: Refused } {
  const about = questions[question].scope;
  const place = job.zones.findIndex(({ id }) => id === zone);
  const found = job.zones[place];
  if (about === 'zone' && !found) return { refused: 'zone-gone' };
  const answers: Readonly<Record<string, unknown>> =
    about === 'site' ? job.site : (found?.answers ?? {});
  if (!same(answers[question], after)) return { refused: 'changed-elsewhere' };
  const others = Object.entries(answers).filter(([id]) => id !== question);
  const back = Object.fromEntries(before === undefined ? others : [...others, [question, before]]);
  if (about === 'site' || !found) return { job: { ...job, site: back } };
  const zones = job.zones.with(place, { ...found, answers: back });
  return { job: { ...job, zones, ...(wasRest && !job.rest && { rest: zone }) } };
}
