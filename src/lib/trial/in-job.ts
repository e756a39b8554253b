import type { Job, Zone } from '$lib/answers/job';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { zonesOfPart } from './same-part';

/**
 * A zone of a job as its advice is asked for: with what the drawing measures and shows of it, and
 * with what other zones of the same part hold up.
 */
export function zoneInJob(job: Job, zone: Zone): Zone {
  const drawn = drawnJob(job, surveyOf(job));
  return zonesOfPart(drawn).find(({ id }) => id === zone.id) ?? zone;
}
