import fc from 'fast-check';
import { zoneQuestionIds } from '$lib/answers/questions';
import { anyAnswer } from './any-job';
import type { Job, Zone } from '$lib/answers/job';
import { writeJob } from '$lib/keep/job-file';

/** Answers with something left open: each question answered in any way, half-way or not at all. */
const openAnswers = fc.record(
  Object.fromEntries(zoneQuestionIds.map((id) => [id, anyAnswer(id)])),
  { requiredKeys: [], noNullPrototype: true },
) as fc.Arbitrary<Zone['answers']>;

/** A job file of this many zones, no two alike, with much still open in each; always the same. */
export function openJobFile(zones: number): string {
  const answers = fc.sample(
    openAnswers.filter((each) => Object.keys(each).length < zoneQuestionIds.length),
    { seed: 20_241_127, numRuns: zones },
  );
  const job = {
    name: 'Many zones (invented)',
    site: {},
    zones: answers.map((each, index) => ({
      id: `z${index}`,
      name: '',
      answers: { ...each, area: index + 1 },
    })),
  } as unknown as Job;
  return JSON.stringify(writeJob(job));
}
