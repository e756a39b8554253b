import type { Advice, Hold } from '$lib/advice/types';
import type { QuestionId } from '$lib/answers/questions';
import type { PatchLayout } from '$lib/survey/patches';
import type { MethodId, StepId } from '$shared/methods';
import type { BesideSpots } from './beside-spots';
import type { Gone } from './damaged';
import type { Quantities } from './quantities';
import type { Tooling } from './tools';

export interface PlannedZone {
  readonly id: string;
  readonly method: MethodId;
  /** The advice the zone's part of the plan follows from. */
  readonly advice: Advice;
  /** The method is what it will be once these are cleared. */
  readonly holds: readonly Hold[];
  /** What may have to be cleared as well, by answers still open. */
  readonly possibleHolds: readonly Hold[];
  readonly quantities: Quantities;
  readonly patches: PatchLayout | null;
  readonly beside: BesideSpots | null;
  /** All of its ground was heard, as the drawing has it. */
  readonly sounded: boolean;
  /** Only its spots are worked, and a loose skin beside them has no work in the plan. */
  readonly skinLeft: boolean;
  readonly steps: readonly StepId[];
  /** The tool of each step, as the advice and the place of the zone have it. */
  readonly tools: ReadonlyMap<StepId, Tooling>;
}

/** A zone the plan has to leave out, and what for. */
export interface HeldZone {
  readonly id: string;
  readonly verdict: 'stop' | 'find-out-first';
  readonly holds: readonly Hold[];
  readonly possibleHolds: readonly Hold[];
  /** Open answers that still decide. */
  readonly open: readonly QuestionId[];
  /** How many methods its answers still lead to. */
  readonly methods: number;
  /** As drawn, or round its typed spots; null where it has none. */
  readonly patches: PatchLayout | null;
  readonly beside: BesideSpots | null;
  /** All of its ground was heard, as the drawing has it. */
  readonly sounded: boolean;
  /** What of it alone is made new; null where all of it is. */
  readonly gone: Gone | null;
  /** The drawn spot, by its mark, for which all of the zone would be made new; null where it is none. */
  readonly madeNewFor: number | null;
}
