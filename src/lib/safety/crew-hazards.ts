import { hazardsHere } from '$lib/advice/cautions';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { mayBeThere, notSure } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import { choicesOf } from '$lib/answers/questions';
import { hazardIds, type HazardId, type StepId } from '$shared/methods';

/** Only what hazards are decided by; the rest of an answer does not matter here. */
const sitesOf = ({ site }: Job): SettledSite[] =>
  (site.element ?? choicesOf('element')).flatMap((element) =>
    (site.setting ?? choicesOf('setting')).map((setting): SettledSite => ({
      element,
      setting,
      warnings: mayBeThere(site.warnings ?? notSure('warnings')),
      salts: 'none',
      freezeThaw: 'rare',
      thickness: 'unknown',
    })),
  );

const zoneOf = ({ answers }: Zone): SettledZone => ({
  contamination: mayBeThere(answers.contamination ?? notSure('contamination')),
  depth: 'film',
  looseness: 'tight',
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'undecided',
  area: 'unknown',
});

/** A hazard of a day, and the steps that bring it. */
export interface CrewHazard {
  readonly hazard: HazardId;
  readonly steps: readonly StepId[];
}

/**
 * The hazards of a day's steps, in the order of `hazardIds`. What may be there is taken as there:
 * an open answer never hides a hazard.
 * @param steps each with the ids of the zones it is done in
 */
export function crewHazards(
  job: Job,
  steps: readonly { readonly id: StepId; readonly zones: readonly string[] }[],
): CrewHazard[] {
  const sites = sitesOf(job);
  const zones = new Map(job.zones.map((zone) => [zone.id, zoneOf(zone)]));
  const bySteps = steps.map(({ id, zones: where }) => ({
    id,
    hazards: new Set(
      where.flatMap((zone) => {
        const settled = zones.get(zone);
        return settled ? sites.flatMap((site) => hazardsHere(site, settled)(id)) : [];
      }),
    ),
  }));
  return hazardIds.flatMap((hazard) => {
    const bringing = bySteps.filter(({ hazards }) => hazards.has(hazard)).map(({ id }) => id);
    return bringing.length ? [{ hazard, steps: bringing }] : [];
  });
}
