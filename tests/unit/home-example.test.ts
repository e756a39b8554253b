import { describe, expect, it } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import { readForOwner } from '$lib/plan/conclusion';
import { planJob } from '$lib/plan/plan';
import { exampleFor } from '$lib/ui/home/example-for';

// Common practice, no source: whoever shows a sheet to a customer wants both options on it.
describe('the example on the start page', () => {
  it.each(['own', 'explain'] as const)('to “I %s it” weighs restoring and replacing', (reader) => {
    const job = demoJob(exampleFor(reader).id);
    const { conclusion, options, lighter } = readForOwner(job, planJob(job));
    expect(conclusion).toBe('restore');
    expect(options.restore).not.toBeNull();
    expect(options.replace).not.toBeNull();
    expect(Object.values(lighter)).toContain('first');
  });
  it('shows the sheet at once to whoever explains', () => {
    expect(exampleFor('explain').page).toBe('owner');
    expect(exampleFor(null)).toEqual(exampleFor('work'));
  });
});
