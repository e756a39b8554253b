import type { Job } from '$lib/answers/job';

/** Whether a job is one of the examples, by the mark in its name. */
export const isDemo = ({ name }: Pick<Job, 'name'>): boolean => name.endsWith('(invented example)');
