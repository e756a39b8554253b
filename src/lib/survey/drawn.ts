import type { Job, Zone } from '$lib/answers/job';
import { rangeOf } from '$shared/figures';
import type { PatchLayout } from './patches';
import type { SurveyResult } from './survey';

/**
 * A job with what its drawing measures in place of what was typed: areas and lengths of cracks by
 * zone, and the whole surface. What the drawing says nothing about stays as it was typed.
 */
export function drawnJob(job: Job, survey: SurveyResult | null): Job {
  if (!survey) return job;
  const cracked = Object.keys(survey.cracks).length > 0;
  return {
    ...job,
    totalArea: survey.area,
    zones: job.zones.map((zone): Zone => {
      const area = survey.areas[zone.id];
      const crackLength = survey.cracksByZone[zone.id];
      return {
        ...zone,
        answers: {
          ...zone.answers,
          ...(area !== undefined && area >= rangeOf('limit.area')[0] && { area }),
          ...(cracked && crackLength !== undefined && { crackLength }),
        },
      };
    }),
  };
}

/** The patches of one zone as the drawing lays them; null where it has no spot of that zone. */
export function drawnPatches(zone: string, survey: SurveyResult | null): PatchLayout | null {
  const patches = survey?.patches.filter((patch) => patch.zone === zone) ?? [];
  return patches.length ? { patches, skipped: [] } : null;
}
