import type { Job } from '$lib/answers/job';

/** A name for the file of a job: the job's own, in letters every system takes: without their accents. */
export function jobFileName(job: Job): string {
  const plain = job.name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
    .toLowerCase();
  return `${plain || 'job'}.down-to-sound.json`;
}
