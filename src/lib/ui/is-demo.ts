import type { Job } from '$lib/answers/job';
import { exampleMark } from '$words/ui/example-mark';

/** Whether a job is one of the examples, by the mark in its name. */
export const isDemo = ({ name }: Pick<Job, 'name'>): boolean => name.endsWith(exampleMark);
