import type { Job, Prices } from '$lib/answers/job';
import type { OwnFigures } from '$shared/figures';
import type { ConditionId, Conditions } from './conditions';
import { replacingParts, restoring, type OwnerOption } from './options';
import type { Plan } from './plan';

const zonesIn = (job: Job, { of }: Pick<Conditions, 'of'>, ...ids: readonly ConditionId[]) =>
  job.zones.map(({ id }) => id).filter((id) => ids.some((condition) => condition === of[id]));

/** What restoring takes; null where nothing can be, or a part has to be made new: then the rest alone is no option for all of it. */
export const restoreOption = (
  plan: Plan,
  conditions: Pick<Conditions, 'of'>,
  prices?: Prices,
  own?: OwnFigures,
): OwnerOption | null =>
  zonesIn(plan.drawn, conditions, 'replace').length
    ? null
    : restoring(plan, plan.drawn, prices, own);

/** What replacing takes what is broken out or gone, and restoring the rest; null where there is no such part. */
export const partsOption = (
  plan: Plan,
  conditions: Pick<Conditions, 'of'>,
  prices?: Prices,
  own?: OwnFigures,
): OwnerOption | null => {
  const parts = zonesIn(plan.drawn, conditions, 'break-out', 'replace');
  return replacingParts(plan, plan.drawn, parts, prices, own);
};

/** The option that a number told by itself is of: restoring, or where a part has to be made new, making it so. */
export const mainOption = (
  plan: Plan,
  conditions: Pick<Conditions, 'of'>,
  own?: OwnFigures,
): OwnerOption | null =>
  restoreOption(plan, conditions, {}, own) ?? partsOption(plan, conditions, {}, own);
