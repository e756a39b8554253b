import type { Job } from '$lib/answers/job';
import boatShed from './demos/boat-shed.json';
import forecourt from './demos/community-hall-forecourt.json';
import steps from './demos/community-hall-steps.json';
import larchRow from './demos/larch-row.json';
import { parseJob } from './job-file';

/** Ids of the example jobs, all in an invented town. Nothing in them is real. */
export const demoIds = [
  'community-hall-forecourt',
  'community-hall-steps',
  'larch-row',
  'boat-shed',
] as const;
export type DemoId = (typeof demoIds)[number];

/** The example jobs as job files, each marked as invented in its name. */
export const demoFiles: Readonly<Record<DemoId, { readonly site: { readonly name: string } }>> = {
  'community-hall-forecourt': forecourt,
  'community-hall-steps': steps,
  'larch-row': larchRow,
  'boat-shed': boatShed,
};

/**
 * An example job, read the way every job file is.
 * @throws Error when the file is not a job, which a test rules out
 */
export function demoJob(id: DemoId): Job {
  const read = parseJob(demoFiles[id]);
  if (!read.ok) throw new Error(`${id}: ${read.problem.path}`);
  return read.value;
}
