import type { Job } from '$lib/answers/job';
import type { AnswerGiven } from '$lib/interview/context';
import { give } from '$lib/interview/replay';

/**
 * The job with one more answer given to a zone of it, or about the site; the job as it was when
 * it has no such zone, or the question is not asked there.
 */
export function withAnswer(job: Job, zoneId: string, given: AnswerGiven): Job {
  const zone = job.zones.find(({ id }) => id === zoneId);
  if (!zone) return job;
  const { answers } = give({ site: job.site, zone: zone.answers }, given);
  const { rest, ...others } = job;
  return {
    ...others,
    // An area of its own makes the rest a zone like the others.
    ...(rest && !(rest === zoneId && given.question === 'area') && { rest }),
    site: answers.site,
    zones: job.zones.map((each) => (each === zone ? { ...each, answers: answers.zone } : each)),
  };
}
