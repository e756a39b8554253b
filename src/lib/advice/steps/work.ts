import type { Demands } from '$lib/advice/demands';
import type { Reason, SettledSite, SettledZone } from '$lib/advice/types';
import type { MethodId, StepId } from '$shared/methods';

/** What the rules about steps look at. */
export interface Situation {
  readonly site: SettledSite;
  readonly zone: SettledZone;
  readonly demands: Demands;
  readonly method: MethodId;
  /** What the zone needs beside its bars; the method itself where no bar leads. */
  readonly rest: MethodId;
}

/** The steps gathered so far: each with the reasons that called for it. */
export type Work = Partial<Record<StepId, Reason[]>>;

/** Calls for a step, or gives one already called for another reason. */
export function call(work: Work, id: StepId, ...reasons: Reason[]): void {
  (work[id] ??= []).push(...reasons);
}

/** The wash that comes last: under pressure where the method is that, else a rinse. */
export const washOf = (work: Work): StepId =>
  work['pressure-wash'] ? 'pressure-wash' : 'final-wash';

/**
 * The order of work in one zone. What goes on decides the end: what wants it damp is washed,
 * checked, wetted and looked at once more; what wants it dry is checked, dried, measured and
 * vacuumed once more. A levelling fill comes before both, with a cure of its own. A crack is routed
 * when the surface is clean and has dried, and sealed on the same day.
 * Source: common practice, no published source.
 */
export const workOrder: readonly StepId[] = [
  'make-safe',
  'degrease',
  'strip-growth',
  'strip-coating',
  'sound-and-mark',
  'tap-crack',
  'saw-cut',
  'break-out',
  'water-jet',
  'chase-crack',
  'free-bar',
  're-sound',
  'scarify',
  'grind',
  'needle-scale',
  'edge-work',
  'shotblast',
  'abrasive-blast',
  'blast-clean',
  'clean-bar',
  'vacuum',
  'pressure-wash',
  'route-crack',
  'final-wash',
  'check-ready',
  'fill-level',
  'fill-cure',
  'wet-or-dry',
  'moisture-test',
  'last-clean',
  'cover',
  'cure',
];
