import type { Job } from '$lib/answers/job';
import type { AnswerGiven } from '$lib/interview/context';
import { give } from '$lib/interview/replay';
import { zoneOf } from './job-in-hand';

/** The job with one more answer given, and the question that comes next. */
export function withAnswer({ rest, ...job }: Job, zoneId: string | null, given: AnswerGiven) {
  const { id, answers: before } = zoneOf(job, zoneId);
  const { answers, next } = give({ site: job.site, zone: before }, given);
  const changed: Job = {
    ...job,
    // An area of its own makes the rest a zone like the others.
    ...(rest && !(rest === id && given.question === 'area') && { rest }),
    site: answers.site,
    zones: job.zones.map((zone) => (zone.id === id ? { ...zone, answers: answers.zone } : zone)),
  };
  return { job: changed, next };
}
