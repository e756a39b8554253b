import type { FigureId } from './figures';
import methodFacts from './methods.json';
import stepFacts from './steps.json';

/** What is true of a method whatever the zone; what it is equal to is in `advice/methods/fits.ts`. */
export interface MethodFacts {
  /** Strength: 0 washing, 1 skimming, 2 cutting, 3 breaking. */
  readonly class: 0 | 1 | 2 | 3;
  readonly floorsOnly: boolean;
  /** The figure for the profile it leaves, or the texture as it was found. */
  readonly profile: FigureId | 'as-found';
  readonly bruises: 'no' | 'hardly' | 'little' | 'yes' | 'most';
  readonly hazards: readonly HazardId[];
}

export const hazardIds = [
  'silica',
  'noise',
  'vibration',
  'eyes',
  'water-injection',
  'carbon-monoxide',
  'electric',
  'slips',
  'lifting',
  'chemicals',
  'lead-asbestos',
  'structure',
  'overhead',
  'falls',
  'wash-water',
  'weather',
] as const;
export type HazardId = (typeof hazardIds)[number];

export type MethodId = keyof typeof methodFacts;
export type StepId = MethodId | keyof typeof stepFacts;

export const methodIds = Object.keys(methodFacts) as MethodId[];
/** Whether a name is that of a method. */
export const isMethod = (id: string): id is MethodId => methodIds.includes(id as MethodId);
export const stepIds = [...methodIds, ...Object.keys(stepFacts)] as StepId[];

/** The facts of each method, by id. */
export const methods: Readonly<Record<MethodId, MethodFacts>> = methodFacts;

const aroundFacts: Readonly<
  Record<Exclude<StepId, MethodId>, { readonly hazards: readonly HazardId[] }>
> = stepFacts;

/** The hazards a step brings wherever it is done. */
export const hazardsOfStep = Object.fromEntries(
  stepIds.map((id) => [id, isMethod(id) ? methods[id].hazards : aroundFacts[id].hazards]),
) as Readonly<Record<StepId, readonly HazardId[]>>;
