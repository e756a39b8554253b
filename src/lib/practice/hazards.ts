import type { Advice } from '$lib/advice/types';
import { hazardIds, type HazardId, type StepId } from '$shared/methods';
import type { Case } from './case';
import { diceFrom, seedOf } from './dice';

/**
 * Hazards that hang on the place or on one step rather than on most work; they are asked first,
 * since they are the ones that are overlooked. Source: common practice, no published source.
 */
const overlooked: readonly HazardId[] = [
  'lead-asbestos',
  'structure',
  'overhead',
  'carbon-monoxide',
  'chemicals',
  'water-injection',
  'silica',
  'wash-water',
];
const mostAsked = 5;
const strangers = 3;

/** The hazards offered for a case, in their usual order: some that are there, and some that are not. */
export function hazardsOffered(one: Case, { cautions }: Advice): readonly HazardId[] {
  const dice = diceFrom(seedOf(`${one.id} hazards`));
  const first = overlooked.filter((id) => cautions.includes(id));
  const rest = dice.shuffle(cautions.filter((id) => !first.includes(id)));
  const asked = [...first, ...rest].slice(0, mostAsked);
  const others = dice.shuffle(hazardIds.filter((id) => !cautions.includes(id)));
  const offered = [...asked, ...others.slice(0, strangers)];
  return hazardIds.filter((id) => offered.includes(id));
}

/** A learner's hazards beside those of the advice. */
export interface HazardsGrade {
  readonly found: readonly HazardId[];
  /** There, offered, and not picked; with the steps that bring it, none where the place does. */
  readonly missed: readonly { readonly hazard: HazardId; readonly steps: readonly StepId[] }[];
  /** Picked, and not among those of this work. Taking care of it harms nobody. */
  readonly extra: readonly HazardId[];
  /** There, and not asked about. */
  readonly besides: readonly HazardId[];
}

/** Compares the picked hazards with all there are. */
export function gradeHazards(picks: readonly HazardId[], one: Case, advice: Advice): HazardsGrade {
  const offered = hazardsOffered(one, advice);
  const there = advice.cautions;
  return {
    found: there.filter((id) => picks.includes(id)),
    missed: there
      .filter((id) => offered.includes(id) && !picks.includes(id))
      .map((hazard) => ({
        hazard,
        steps: advice.steps
          .filter(({ hazards }) => hazards.includes(hazard))
          .map((step) => step.id),
      })),
    extra: hazardIds.filter((id) => picks.includes(id) && !there.includes(id)),
    besides: there.filter((id) => !offered.includes(id) && !picks.includes(id)),
  };
}
