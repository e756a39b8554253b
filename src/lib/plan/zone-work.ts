import { rangeOfBand } from '$lib/answers/depth';
import type { Zone } from '$lib/answers/job';
import type { DepthBand, FreezeThaw } from '$lib/answers/questions';
import type { Patch } from '$lib/survey/patches';
import type { Found } from '$lib/trial/found';
import type { MethodId, StepId } from '$shared/methods';
import type { Span } from './amount';
import type { Tooling } from './tools';

/** What a zone's quantities are worked out from. */
export interface ZoneWork {
  readonly zone: Zone;
  readonly method: MethodId;
  readonly steps: readonly StepId[];
  /** The tool of each step. */
  readonly tools: ReadonlyMap<StepId, Tooling>;
  readonly thickness: number | 'unknown';
  readonly frost: FreezeThaw;
  /** Whether the main method makes a hole that is sawn round and filled: breaking out, or a jet in its place. */
  readonly breaks: boolean;
  /** Whether anything is loose: a firm hollow is filled, not broken out. */
  readonly tight: boolean;
  /** What is broken out lies along the bars only; the rest of the zone has a method of its own. */
  readonly alongBars: boolean;
  /** The whole surface, m2; absent where nobody has said. */
  readonly whole?: number;
  /** Square metres tried at the settings the trial ended with: the main method's rate is learnt from them. */
  readonly tried: readonly Found[];
  /** The patches laid over its damage; null where only its area is known. */
  readonly patches: readonly Patch[] | null;
}

/** The damaged depth of a zone in m, least to most; null while it is open-ended or not known. */
export function depthSpan({ zone, thickness }: Pick<ZoneWork, 'zone' | 'thickness'>): Span | null {
  const { depth } = zone.answers;
  if (depth === undefined) return null;
  if (typeof depth === 'number') return [depth / 1000, depth / 1000];
  const ranges = depth.map((band: DepthBand) => rangeOfBand(band, thickness));
  const low = Math.min(...ranges.map(([least]) => least));
  const high = Math.max(...ranges.map(([, most]) => most));
  return Number.isFinite(high) ? [low / 1000, high / 1000] : null;
}
