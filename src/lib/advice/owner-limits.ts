import { carriesLoad } from '$lib/answers/elements';
import { warnedOf, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { Contaminant, Element } from '$lib/answers/questions';
import type { HazardId, StepId } from '$shared/methods';
import { hasCoating } from './demands';
import { isMadeNew } from './made-new';
import type { ZoneAdvice } from './zone-advice';

/** What an owner leaves to others, gravest first. Source: common practice, no published source. */
export const limitIds = [
  'edges',
  'overhead',
  'electricity',
  'steel',
  'break-out',
  'blasting',
  'old-coating',
  'cleaners',
] as const;
export type LimitId = (typeof limitIds)[number];

const breaks: readonly StepId[] = ['break-out', 'saw-cut', 'chase-crack', 'free-bar'];
const blasts: readonly StepId[] = ['shotblast', 'abrasive-blast', 'blast-clean', 'water-jet'];

const cleanedOff: readonly Contaminant[] = ['growth', 'salt-bloom', 'oil'];

type Advised = Pick<ZoneAdvice, 'methods' | 'steps' | 'cautions' | 'holds' | 'possibleHolds'>;

/**
 * Those of them that this case has, or may have, in their order. What is still open counts as
 * there: nobody is told that steel is no matter because nobody has looked. What was said to be none
 * is none, though washing brings water near leads, and a clear coat may have been missed.
 */
export function limitsHere(
  site: SiteAnswers,
  zone: ZoneAnswers,
  { methods, steps, cautions, holds, possibleHolds }: Advised,
): LimitId[] {
  const may = (warning: 'tendons-possible' | 'buried-services' | 'old-coating-or-adhesive') =>
    warnedOf(site)?.includes(warning) ?? true;
  const calls = (ids: readonly StepId[]) =>
    steps.some(({ id }) => ids.includes(id)) || methods.some((id) => ids.includes(id));
  const stopped = [...holds, ...possibleHolds].some(({ verdict }) => verdict === 'stop');
  const warns = (hazard: HazardId) =>
    cautions.includes(hazard) || steps.some(({ hazards }) => hazards.includes(hazard));
  const element: readonly Element[] = site.element ?? [];
  const here: Readonly<Record<LimitId, boolean>> = {
    edges: !element.length || warns('falls'),
    overhead: !element.length || element.includes('soffit') || warns('overhead'),
    electricity:
      may('buried-services') ||
      (warns('electric') && !site.setting?.every((setting) => setting === 'open')),
    steel:
      // In a part that is made new nobody is asked for steel; breaking it out is left to others as it is.
      (!zone.steel && !isMadeNew(holds)) ||
      zone.steel?.some((steel) => steel !== 'none-seen') ||
      may('tendons-possible') ||
      element.some(carriesLoad),
    'break-out': calls(breaks) || stopped,
    blasting: calls(blasts),
    'old-coating':
      may('old-coating-or-adhesive') ||
      (warns('lead-asbestos') && hasCoating(zone.contamination?.yes ?? [])),
    // What people reach for on moss, white crust and oil.
    cleaners: !!zone.contamination?.yes.some((each) => cleanedOff.includes(each)),
  };
  return limitIds.filter((id) => here[id]);
}
