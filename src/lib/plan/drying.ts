import type { FigureId } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { needsDry, wets } from './precedence';

/** What a step waits for in its zone until it is dry, and how long that takes. */
export interface Drying {
  /** The step that wetted it last. */
  readonly after: StepId;
  readonly figure: FigureId;
}

/**
 * Whether a step of a zone has to wait until what was wetted there has dried: dry tools, a sealant in
 * a crack, checks by drop and tape, which a washed surface passes only once it is dry again, and a
 * finish that wants it dry. Where nothing was wetted since it was last dry, nothing waits.
 * Source: common practice, no published source.
 * @param before the steps of the same zone that come first, in order
 */
export function dryingBefore(
  step: StepId,
  before: readonly StepId[],
  dryFinish: boolean,
): Drying | undefined {
  const finish = step === 'wet-or-dry' && dryFinish;
  if (!finish && step !== 'check-ready' && !needsDry.includes(step)) return undefined;
  const since = before.slice(before.findLastIndex((each) => needsDry.includes(each)) + 1);
  const after = since.findLast((each) => wets.includes(each));
  // A crack holds water as long as the slab under a coating does.
  const slow = finish || step === 'route-crack';
  return after && { after, figure: slow ? 'dry.before-coating' : 'dry.before-blasting' };
}
