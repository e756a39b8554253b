import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { parseJob } from '$lib/keep/job-file';
import { problemSentence } from '$words/keep';
import { wholeJobs } from './golden-jobs';
import { toldOf } from './golden';

/**
 * Whole jobs with everything that is said of them, read once by hand against the rules of the trade.
 * A changed rule shows here as lines a person can read. `npm run golden` writes them anew and shows
 * what is different: read it before you keep it.
 */
describe('whole jobs', () => {
  it('are eighty or more, and no two have one name', () => {
    expect(wholeJobs.length).toBeGreaterThanOrEqual(80);
    expect(new Set(wholeJobs.map(({ id }) => id)).size).toBe(wholeJobs.length);
  });

  it.each(wholeJobs)('$id', async ({ id, title, file, units }) => {
    const read = parseJob(file);
    if (!read.ok) expect.fail(problemSentence(read.problem));
    const job: Job = read.value;
    await expect(toldOf(title, job, units)).toMatchFileSnapshot(`./golden/${id}.md`);
  });
});
