import { carriesLoad } from '$lib/answers/elements';
import type { Job, Zone } from '$lib/answers/job';
import { session } from './session.svelte';

let reads = $state.raw<typeof import('$lib/trial/in-job')>();

/** Whether a zone of the job is not told by its own answers alone. */
const more = ({ survey, zones, site }: Job): boolean =>
  survey !== undefined || (zones.length > 1 && !!site.element?.some(carriesLoad));

/**
 * The zones of the open job with what its drawing measures and shows, which outranks what was typed,
 * and with what other zones of what hangs hold up. What reads that is fetched where it is needed.
 */
export const asDrawn = {
  /** To be called in an effect of the page. */
  load(): void {
    if (more(session.job) && !reads)
      void import('$lib/trial/in-job').then((found) => (reads = found));
  },
  /** Whether it is known by now what they say. */
  get ready(): boolean {
    return !more(session.job) || reads !== undefined;
  },
  zone: (job: Job, zone: Zone): Zone => reads?.zoneInJob(job, zone) ?? zone,
};
