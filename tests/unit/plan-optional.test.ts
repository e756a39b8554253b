import { describe, expect, it } from 'vitest';
import { parseJob } from '$lib/keep/job-file';
import { planJob } from '$lib/plan/plan';

describe('a plan', () => {
  it('is made of a job that says nothing of bars, data sheets and borders: files of before did not', () => {
    const read = parseJob({
      format: 'down-to-sound.job',
      version: 1,
      site: {
        element: 'slab',
        setting: 'open',
        salts: 'none',
        freezeThaw: 'some',
        thickness: 300,
        warnings: [],
      },
      zones: [
        {
          id: 'a',
          area: 4,
          depth: 30,
          looseness: 'hollow',
          contamination: [],
          texture: 'sandy',
          cracks: 'open',
          steel: 'exposed',
          finish: 'overlay',
        },
      ],
    });
    if (!read.ok) throw new Error('The file of the test cannot be read.');
    const plan = planJob(read.value);
    expect(plan.held).toEqual([]);
    expect(plan.steps.map(({ id }) => id)).toContain('break-out');
  });
});
