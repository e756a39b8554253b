import type { Job, Zone } from '$lib/answers/job';
import { session } from './session.svelte';

let reads = $state.raw<typeof import('$lib/survey/zone-as-drawn')>();

/**
 * The zones of the open job with what its drawing measures and shows, which outranks what was typed.
 * What reads a drawing is fetched where there is one.
 */
export const asDrawn = {
  /** To be called in an effect of the page. */
  load(): void {
    if (session.job.survey && !reads)
      void import('$lib/survey/zone-as-drawn').then((found) => (reads = found));
  },
  /** Whether it is known by now what the drawing says. */
  get ready(): boolean {
    return !session.job.survey || reads !== undefined;
  },
  zone: (job: Job, zone: Zone): Zone => reads?.zoneAsDrawn(job, zone) ?? zone,
};
