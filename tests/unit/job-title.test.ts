import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { summaryOf, recordOf } from '$lib/keep/record';
import { jobSpoken, jobTitle } from '$lib/ui/jobs/job-title';

const zone = (name: string, id: string) => ({ id, name, answers: {} });
const listed = (job: Partial<Job>, minute = 0) =>
  summaryOf(
    recordOf({
      id: 'a',
      job: { name: '', site: {}, zones: [zone('', 'z1')], ...job },
      createdAt: 1,
      changedAt: Date.UTC(2026, 10, 27, 10, minute),
      revision: 1,
    }),
  );

describe('jobs without a name in a list', () => {
  it('are told by what they are about, as far as that is known', () => {
    const steps = { site: { element: ['steps'] } } as const;
    expect(jobTitle(listed({ name: 'Larch Row', ...steps }))).toBe('Larch Row');
    expect(jobTitle(listed(steps))).toBe('Job without a name: Steps on the ground');
    const zones = ['Landing', '', 'Top step', 'Kerb'].map((name, at) => zone(name, `z${at}`));
    expect(jobTitle(listed({ ...steps, zones }))).toBe(
      'Job without a name: Steps on the ground, Landing, Top step',
    );
    expect(jobTitle(listed({ site: { element: ['steps', 'wall'] } }))).toBe('Job without a name');
    expect(jobTitle(listed({}))).toBe('Job without a name');
  });

  it('are told apart by the minute of their last change where they are about the same', () => {
    const [one, other] = [jobSpoken(listed({}, 5)), jobSpoken(listed({}, 6))];
    expect(one).toMatch(/^Job without a name, changed .*27 Nov.* \d\d:05$/);
    expect(other).not.toBe(one);
    expect(jobSpoken(listed({ name: 'Larch Row' }))).toBe('Larch Row');
  });
});
