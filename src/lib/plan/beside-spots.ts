import { onlyBreakingReaches } from '$lib/advice/hole';
import type { SiteAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import type { Zone } from '$lib/answers/job';
import { choicesOf, type Looseness } from '$lib/answers/questions';
import type { PatchLayout } from '$lib/survey/patches';
import type { SurveyResult } from '$lib/survey/survey';

/**
 * What lies between the spots of a zone that counts by them: sound, loose in its skin as the zone was
 * answered, or not sounded, so that nobody knows.
 */
export type BesideSpots = 'sound' | 'surface' | 'not-sounded';

/** What a scraper or a brush finds: a skin is so all over, wherever a spot in it goes deeper. */
const ofSkin: readonly Looseness[] = ['powdery', 'flaking'];

/** Whether the zone as it was answered has a loose skin: what its spots alone do not take off. */
function hasLooseSkin({ answers }: Zone, { thickness = 'unknown' }: SiteAnswers): boolean {
  const { depth = choicesOf('depth'), looseness = [] } = answers;
  const bands = typeof depth === 'number' ? [bandOf(depth, thickness)] : depth;
  return looseness.some(
    (each) =>
      ofSkin.includes(each) ||
      (each !== 'tight' &&
        bands.every((band) => !onlyBreakingReaches({ depth: band, looseness: each }))),
  );
}

/**
 * What lies beside the spots of a zone; null where it has none, or nothing is left beside them.
 * A spot is worked as deep as it goes, and by itself; the zone round it stays as it was answered.
 * Source: common practice, no published source.
 * @param given the zone as it was answered
 * @param drawn the same with what the drawing measures
 */
export function besideSpots(
  given: Zone,
  drawn: Zone,
  site: SiteAnswers,
  layout: PatchLayout | null,
  survey: SurveyResult | null,
): BesideSpots | null {
  const patches = layout?.patches ?? [];
  const { area } = drawn.answers;
  const covered = patches.reduce((total, patch) => total + patch.area, 0);
  if (!patches.length || (typeof area === 'number' && covered >= area)) return null;
  if (hasLooseSkin(given, site)) return 'surface';
  return survey?.sounded.includes(drawn.id) ? 'sound' : 'not-sounded';
}
