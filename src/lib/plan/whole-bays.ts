import type { SurveyResult } from '$lib/survey/survey';
import { isKnown, product, times, wasteTerm, wholePieces, figureTerm, type Amount } from './amount';
import type { PlannedZone } from './plan';
import type { OwnFigures } from '$shared/figures';

/** A bay of which more than half would be patched, with what it takes patched and treated whole. */
export interface WholeBay {
  readonly id: string;
  readonly patched: BayAmounts;
  readonly whole: BayAmounts;
}

export interface BayAmounts {
  readonly area: Amount;
  /** m3 that come off. */
  readonly removed: Amount;
  readonly bags: Amount;
}

const exact = (value: number): readonly [number, number] => [value, value];

/**
 * Both amounts of every bay that is offered to be treated whole (figure `patch.whole-bay`): to the
 * same depth as the patches of its zones, over what is patched or over all of it. Bays whose patches
 * have no depth yet say what is missing.
 */
export function wholeBays(
  survey: SurveyResult | null,
  zones: readonly PlannedZone[],
  own?: OwnFigures,
): WholeBay[] {
  return (survey?.bays ?? []).flatMap((bay) => {
    if (!bay.whole) return [];
    const here = survey?.patches.filter((patch) => patch.bay === bay.id) ?? [];
    const ids = new Set(here.map(({ zone }) => zone));
    const depths = zones
      .filter(({ id }) => ids.has(id))
      .map(({ quantities }) => depthOf(quantities));
    const depth = deepest(depths);
    const over = (area: number): BayAmounts => {
      const ground = product('m2', [{ what: 'area', span: exact(area), unit: 'm2' }]);
      const removed: Amount = depth
        ? times('m3', ground, { what: 'depth', span: depth, unit: 'm' })
        : { missing: ['depth'], unit: 'm3' };
      const fill = times('m3', removed, wasteTerm('fill.waste', own));
      return {
        area: ground,
        removed,
        bags: wholePieces(times('count', fill, figureTerm('yield', 'bag.yield', own, 'over'))),
      };
    };
    return [{ id: bay.id, patched: over(bay.patched), whole: over(bay.area) }];
  });
}

/** Mean depth that comes off a patch, m. */
function depthOf(quantities: PlannedZone['quantities']): readonly [number, number] | null {
  const [ground, removed] = [quantities['patch-area'], quantities.removed];
  if (!ground || !removed || !isKnown(ground) || !isKnown(removed)) return null;
  return [removed.span[0] / ground.span[0], removed.span[1] / ground.span[1]];
}

const deepest = (
  depths: readonly (readonly [number, number] | null)[],
): readonly [number, number] | null => {
  const known = depths.flatMap((depth) => (depth ? [depth] : []));
  return known.length && known.length === depths.length
    ? [Math.min(...known.map(([low]) => low)), Math.max(...known.map(([, high]) => high))]
    : null;
};
