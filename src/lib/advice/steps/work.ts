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

/**
 * One reason for a step, and one thing to mind in it: told where it holds here. A step is called for
 * where any of its reasons holds. Each looks at no more than it needs, so that with answers open it
 * is known what it hangs on (`ways.ts`).
 */
export type StepReason = (situation: Situation) => Reason | false;

/** The steps that some rules call for, each with its reasons in the order in which they are told. */
export type StepReasons = Readonly<Partial<Record<StepId, readonly StepReason[]>>>;

/** The work of a zone: each step called for, with its reasons, in order. */
export type Work = readonly { readonly id: StepId; readonly why: readonly Reason[] }[];

/** Whether a method is worked with: all over, or beside the bars. */
export const uses = (
  { method, rest }: Pick<Situation, 'method' | 'rest'>,
  ...any: readonly StepId[]
): boolean => any.includes(method) || any.includes(rest);

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
