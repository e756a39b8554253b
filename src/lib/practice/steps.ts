import type { Contaminant } from '$lib/answers/questions';
import { demandsOf } from '$lib/advice/demands';
import { hammers } from '$lib/advice/steps/after';
import { workOrder } from '$lib/advice/steps/work';
import type { Advice, Step } from '$lib/advice/types';
import type { StepId } from '$shared/methods';
import type { Case } from './case';
import { diceFrom, seedOf } from './dice';

/** Work around the main method that a learner decides on; what every job has is left out. */
export const decided = [
  'degrease',
  'strip-growth',
  'strip-coating',
  'sound-and-mark',
  'tap-crack',
  'saw-cut',
  'chase-crack',
  'route-crack',
  'free-bar',
  're-sound',
  'edge-work',
  'blast-clean',
  'clean-bar',
  'vacuum',
  'final-wash',
  'fill-level',
  'fill-cure',
  'moisture-test',
] as const satisfies readonly StepId[];
export type DecidedStep = (typeof decided)[number];

/** Why a step is not called for. */
export const spareRules = [
  'no-oil',
  'no-growth',
  'wash-takes-growth',
  'no-heavy-coating',
  'machine-lifts-coating',
  'nothing-to-sound',
  'no-fine-crack-in-frost',
  'nothing-broken-out',
  'no-crack',
  'crack-not-chased',
  'crack-not-routed',
  'no-bar-shows',
  'no-floor-machine',
  'nothing-upright',
  'hardly-bruises',
  'sealer-forgives',
  'wash-will-do',
  'wash-is-enough',
  'no-wash-under-dry',
  'damp-finish',
  'not-too-rough',
] as const;
export type SpareRule = (typeof spareRules)[number];

/** How many steps are offered that are not called for, at least; and how many steps at least in all. */
const strangers = 3;
const least = 6;

const isDecided = (step: StepId): step is DecidedStep =>
  (decided as readonly StepId[]).includes(step);

/** The steps of the advice a learner decides on. */
export const calledFor = (advice: Advice): readonly Step[] =>
  advice.steps.filter(({ id }) => isDecided(id));

/** The steps offered for a case, in the order of work: those called for, and some that are not. */
export function stepsOffered(one: Case, advice: Advice): readonly DecidedStep[] {
  const called = calledFor(advice).map(({ id }) => id);
  const others = diceFrom(seedOf(`${one.id} steps`)).shuffle(
    decided.filter((id) => !called.includes(id)),
  );
  const offered: StepId[] = [
    ...called,
    ...others.slice(0, Math.max(strangers, least - called.length)),
  ];
  return workOrder.filter((id): id is DecidedStep => isDecided(id) && offered.includes(id));
}

/** A learner's steps beside those of the advice. */
export interface StepsGrade {
  readonly found: readonly StepId[];
  /** Called for and not picked, with the engine's reasons for each. */
  readonly missed: readonly Step[];
  /** Picked and not called for. */
  readonly spare: readonly { readonly step: DecidedStep; readonly rule: SpareRule }[];
}

/** Compares the picked steps with those the advice calls for; the advice has a method. */
export function gradeSteps(picks: readonly DecidedStep[], one: Case, advice: Advice): StepsGrade {
  const called = calledFor(advice);
  const ids = called.map(({ id }) => id);
  if (!advice.method) throw new Error('Steps are graded where there is a method.');
  return {
    found: ids.filter((id) => isDecided(id) && picks.includes(id)),
    missed: called.filter(({ id }) => isDecided(id) && !picks.includes(id)),
    spare: decided
      .filter((step) => picks.includes(step) && !ids.includes(step))
      .map((step) => ({ step, rule: whySpare(step, one, advice) })),
  };
}

const floorMachines = ['grind', 'scarify', 'shotblast'] as const satisfies readonly StepId[];

/** Why a step is not among those called for. The mirror of `advice/steps`. */
function whySpare(step: DecidedStep, { site, zone }: Case, advice: Advice): SpareRule {
  const called = (id: StepId) => advice.steps.some((each) => each.id === id);
  const has = (contaminant: Contaminant) => zone.contamination.includes(contaminant);
  switch (step) {
    case 'degrease':
      return 'no-oil';
    case 'strip-growth':
      return has('growth') ? 'wash-takes-growth' : 'no-growth';
    case 'strip-coating':
      return has('thick-coating') || has('rubbery-coating')
        ? 'machine-lifts-coating'
        : 'no-heavy-coating';
    case 'sound-and-mark':
      return 'nothing-to-sound';
    case 'tap-crack':
      return 'no-fine-crack-in-frost';
    case 'saw-cut':
    case 're-sound':
      return 'nothing-broken-out';
    case 'chase-crack':
      return zone.cracks === 'none' ? 'no-crack' : 'crack-not-chased';
    case 'route-crack':
      return zone.cracks === 'none' ? 'no-crack' : 'crack-not-routed';
    case 'free-bar':
    case 'clean-bar':
      return 'no-bar-shows';
    case 'edge-work':
      return floorMachines.some(called) && demandsOf(site, zone).place === 'floor'
        ? 'nothing-upright'
        : 'no-floor-machine';
    case 'blast-clean':
      if (!hammers.some(called)) return 'hardly-bruises';
      return zone.finish === 'sealer' ? 'sealer-forgives' : 'wash-will-do';
    case 'vacuum':
    case 'final-wash':
      // Where it is not vacuumed it is washed; where it is washed under pressure anyway, nobody washes twice.
      return called('vacuum') && !called('pressure-wash') ? 'no-wash-under-dry' : 'wash-is-enough';
    case 'fill-level':
    case 'fill-cure':
      return 'not-too-rough';
    case 'moisture-test':
      return 'damp-finish';
  }
}
