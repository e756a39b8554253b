import type { Job, Zone } from '$lib/answers/job';
import { drawnJob } from './drawn';
import { surveyOf } from './survey';

/** A zone of a job with what the drawing measures and shows of it; as it stands where nothing is drawn. */
export const zoneAsDrawn = (job: Job, zone: Zone): Zone =>
  job.survey ? (drawnJob(job, surveyOf(job)).zones.find(({ id }) => id === zone.id) ?? zone) : zone;
