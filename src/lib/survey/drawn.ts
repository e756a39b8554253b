import type { Job, Rectangle, Zone } from '$lib/answers/job';
import type { Survey } from '$lib/answers/survey';
import { carriesLoad } from '$lib/answers/elements';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { rangeOf } from '$shared/figures';
import { withDamage, withDullSpots, type DrawnDamage } from './damage-by-zone';
import { boxOf } from './geometry';
import type { PatchLayout } from './patches';
import type { SurveyResult } from './survey';

/**
 * A job with what its drawing measures in place of what was typed: areas, lengths of cracks and of
 * borders by zone, and the whole surface; and with the damage it shows, where that is worse. What the
 * drawing says nothing about stays as it was typed.
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
          ...damaged(zone, survey.damage[zone.id], job.site),
          ...(area !== undefined && area >= rangeOf('limit.area')[0] && { area }),
          // Once anything upright is drawn, a zone without it has no border.
          ...(survey.upright > 0 &&
            area !== undefined && { borderLength: survey.uprightByZone[zone.id] ?? 0 }),
          ...barsOf(zone.answers, survey.barsByZone[zone.id]),
          ...(cracked && crackLength !== undefined && { crackLength }),
        },
      };
    }),
  };
}

/** Whoever typed a longer length may have counted bars that nobody drew. */
const barsOf = ({ barLength }: ZoneAnswers, drawn: number | undefined): ZoneAnswers =>
  drawn === undefined || (typeof barLength === 'number' && barLength >= drawn)
    ? {}
    : { barLength: drawn };

function damaged(zone: Zone, damage: DrawnDamage | undefined, site: SiteAnswers): ZoneAnswers {
  const answers = withDamage(zone.answers, damage, site.thickness ?? 'unknown');
  // Where nobody has said what it is, it may hang.
  const carries = (site.element ?? ['suspended-slab']).some(carriesLoad);
  return carries && damage ? withDullSpots(answers, damage) : answers;
}

/** The patches of one zone as the drawing lays them; null where it has no spot of that zone. */
export function drawnPatches(zone: string, survey: SurveyResult | null): PatchLayout | null {
  const patches = survey?.patches.filter((patch) => patch.zone === zone) ?? [];
  return patches.length ? { patches, skipped: [] } : null;
}

/** The spots in a layout of a drawing as rectangles, and the layout with their places in that list. */
export function spotsOf(
  survey: Survey,
  layout: PatchLayout,
): { readonly spots: readonly Rectangle[]; readonly layout: PatchLayout } {
  const marks = [...new Set(layout.patches.flatMap(({ spots }) => spots))].sort((a, b) => a - b);
  return {
    spots: marks.map((index): Rectangle => {
      const mark = survey.marks?.[index];
      const { x0, y0, x1, y1 } = boxOf(mark && 'corners' in mark ? mark.corners : []);
      return { x: x0, y: y0, length: x1 - x0, width: y1 - y0 };
    }),
    layout: {
      ...layout,
      patches: layout.patches.map((patch) => ({
        ...patch,
        spots: patch.spots.map((index) => marks.indexOf(index)),
      })),
    },
  };
}
