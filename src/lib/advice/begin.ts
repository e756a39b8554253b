import type { MethodId, StepId } from '$shared/methods';
import { mayFail } from './keep-clear';
import { methodRules } from './methods';
import { workOrder } from './steps/work';
import type { Demands } from './demands';
import type { Survey } from './survey';
import type { Hold } from './types';
import type { Beginning } from './zone-advice';

/** Steps from here on no longer get the surface clean for the work, but are the work. */
const firstOfTheWork: StepId = 'sound-and-mark';

/** What may be done before somebody has looked: it throws no dust, takes nothing off, hides nothing. */
const harmless: ReadonlySet<StepId> = new Set<StepId>([
  'make-safe',
  'degrease',
  'strip-growth',
  'sound-and-mark',
  'tap-crack',
]);

/** Cleaning that scrapes or scrubs what lies on it: an old coating may hold lead or asbestos. */
const scrubs: ReadonlySet<StepId> = new Set<StepId>(['degrease', 'strip-growth']);

/**
 * Whether a step may go ahead while these stand before the work. Source: common practice, no
 * published source.
 */
export const goesAhead = (step: StepId, holds: readonly Pick<Hold, 'rule'>[]): boolean =>
  harmless.has(step) && !(scrubs.has(step) && holds.some(({ rule }) => rule === 'old-coating'));

/**
 * The same where these surely stand: nobody goes onto what may fail to scrub it either; it is fenced
 * off and sounded from beside it. Source: common practice, no published source.
 */
export const goesAheadUnder = (
  step: StepId,
  holds: readonly Pick<Hold, 'rule' | 'who'>[],
): boolean =>
  goesAhead(step, holds) &&
  !(
    scrubs.has(step) && holds.some(({ rule, who }) => who === 'engineer' && mayFail.includes(rule))
  );

/**
 * How to begin while answers are open, so that nothing done is wrong whichever way they come out.
 * What all possibilities call for is done now, up to the place in the order where they part. After
 * that the gentlest method still possible may be tried, unless something may yet stop the work, a
 * cleaning that comes before it is not settled, or it would do harm in some possibility.
 * Source: common practice, no published source: begin with what can be taken further, never with
 * what cannot be undone.
 * @param methods those that remain possible, gentlest first
 */
export function beginningOf(survey: Survey, methods: readonly MethodId[]): Beginning {
  const before = [...survey.holds, ...survey.possibleHolds];
  const mayWait = before.length > 0;
  const common: StepId[] = [];
  let parts: StepId | undefined;
  for (const step of workOrder) {
    if (survey.commonSteps.includes(step)) common.push(step);
    else if (survey.anySteps.includes(step)) {
      parts = step;
      break;
    }
  }
  const end = mayWait ? common.findIndex((step) => !harmless.has(step)) : -1;
  const first = end < 0 ? common : common.slice(0, end);
  const now = mayWait ? first.filter((step) => goesAhead(step, before)) : first;
  const tried = methods[0];
  const why = mayWait
    ? 'may-wait'
    : !tried || (parts && workOrder.indexOf(parts) < workOrder.indexOf(firstOfTheWork))
      ? 'clean-first'
      : survey.choices.some(({ demands }) => doesHarm(tried, demands))
        ? 'may-harm'
        : null;
  return { now, tryFirst: why === null && tried ? tried : null, why };
}

/** Whether a method spoils the surface, or cannot be used there, quite apart from how much it takes off. */
function doesHarm(method: MethodId, demands: Demands): boolean {
  const shortfall = methodRules[method].shortfall({
    ...demands,
    remove: { band: 'film', looseness: 'tight' },
    belowPlane: false,
    skin: null,
    profile: null,
  });
  return shortfall !== null && shortfall.rule !== 'leaves-contaminant';
}
