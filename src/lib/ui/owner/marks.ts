import type { Verdict } from '$lib/advice/types';
import type { ConclusionId } from '$lib/plan/conclusion';

/** The shape beside the conclusion: go on, find out, or stop. */
export const marks: Readonly<Record<ConclusionId, Verdict>> = {
  restore: 'prepare',
  'parts-only': 'find-out-first',
  doubtful: 'find-out-first',
  'part-doubtful': 'prepare',
  'restore-part': 'prepare',
  replace: 'stop',
  'laboratory-first': 'find-out-first',
  'engineer-first': 'stop',
  'not-known-yet': 'find-out-first',
};
