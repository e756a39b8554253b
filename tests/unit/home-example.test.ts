import { describe, expect, it } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import { readForOwner } from '$lib/plan/reading';
import { planJob } from '$lib/plan/plan';
import { exampleFor } from '$lib/ui/home/example-for';

// Common practice, no source: whoever shows a sheet to a customer wants both courses on it.
describe('the example on the start page', () => {
  it.each(['own', 'explain'] as const)('to “I %s it” weighs restoring and replacing', (reader) => {
    const job = demoJob(exampleFor(reader).id);
    const { reading, courses, lighter } = readForOwner(job, planJob(job));
    expect(reading).toBe('restore');
    expect(courses.restore).not.toBeNull();
    expect(courses.replace).not.toBeNull();
    expect(Object.values(lighter)).toContain('first');
  });
  it('shows the sheet at once to whoever explains', () => {
    expect(exampleFor('explain').page).toBe('owner');
    expect(exampleFor(null)).toEqual(exampleFor('work'));
  });
});
