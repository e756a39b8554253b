import { figures, rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { product, type Amount, type Term } from './amount';
import { groundOf, times, type Quantities, type ZoneWork } from './quantities';

/** How a step's hours follow from what there is to do. */
type Rate =
  | {
      readonly per: 'area' | 'ground' | 'perimeter' | 'crack' | 'zone' | 'job';
      readonly figure: FigureId;
    }
  | { readonly per: 'volume' };

/** Rates by step; null where the step takes no working time of its own. Source: figures `rate.*`. */
const rates: Readonly<Record<StepId, Rate | null>> = {
  'pressure-wash': { per: 'area', figure: 'rate.pressure-wash' },
  grind: { per: 'area', figure: 'rate.grind' },
  'abrasive-blast': { per: 'area', figure: 'rate.abrasive-blast' },
  scarify: { per: 'area', figure: 'rate.scarify' },
  shotblast: { per: 'area', figure: 'rate.shotblast' },
  'needle-scale': { per: 'area', figure: 'rate.needle-scale' },
  'break-out': { per: 'volume' },
  'water-jet': null,
  'make-safe': { per: 'job', figure: 'rate.make-safe' },
  degrease: { per: 'area', figure: 'rate.degrease' },
  'strip-growth': { per: 'area', figure: 'rate.strip-growth' },
  'strip-coating': { per: 'area', figure: 'rate.strip-coating' },
  'sound-and-mark': { per: 'area', figure: 'rate.sound' },
  'tap-crack': { per: 'crack', figure: 'rate.tap-crack' },
  'saw-cut': { per: 'perimeter', figure: 'rate.saw-cut' },
  'chase-crack': { per: 'crack', figure: 'rate.chase-crack' },
  'route-crack': { per: 'crack', figure: 'rate.route-crack' },
  'free-bar': { per: 'zone', figure: 'rate.free-bar' },
  're-sound': { per: 'area', figure: 'rate.sound' },
  'edge-work': { per: 'perimeter', figure: 'rate.edge-work' },
  'blast-clean': { per: 'ground', figure: 'rate.blast-clean' },
  'clean-bar': { per: 'zone', figure: 'rate.clean-bar' },
  vacuum: { per: 'area', figure: 'rate.vacuum' },
  'final-wash': { per: 'area', figure: 'rate.final-wash' },
  'fill-level': { per: 'area', figure: 'rate.fill-level' },
  'check-ready': { per: 'zone', figure: 'rate.check' },
  'wet-or-dry': { per: 'zone', figure: 'rate.damp' },
  'moisture-test': { per: 'zone', figure: 'rate.moisture-test' },
  'last-clean': { per: 'area', figure: 'rate.last-clean' },
  // The reader's own: nobody knows how the repair is placed but whoever places it.
  'fill-cure': null,
  cover: null,
  cure: null,
};

/** Whether a step is done once for the whole job, whatever its zones. */
export const oncePerJob = (step: StepId): boolean => rates[step]?.per === 'job';

/** The figure a reader can put their own rate over; null where a step has none, or has two. */
export const rateFigureOf = (step: StepId): FigureId | null => {
  const rate = rates[step];
  return rate && 'figure' in rate ? rate.figure : null;
};

/**
 * Hands-on hours of one step in one zone, for one machine or one pair of hands.
 * @returns null where the step takes no time of its own (or a specialist's)
 */
export function hoursOf(
  step: StepId,
  work: ZoneWork,
  quantities: Quantities,
  own?: OwnFigures,
): Amount | null {
  const rate = rates[step];
  if (!rate) return null;
  if (rate.per === 'volume') return breakingHours(work, quantities, own);
  const speed = term(rate.figure, own);
  if (rate.per === 'zone' || rate.per === 'job') return product('h', [speed]);
  const over: Term = { ...speed, by: 'over' };
  if (rate.per === 'crack') {
    const length = quantities['crack-chased'] ?? quantities['crack-routed'];
    return length ? times('h', length, over) : crackHours(work, over);
  }
  if (rate.per === 'area') return quantities.area && times('h', quantities.area, over);
  const ground = groundOf(work, own);
  if (rate.per === 'perimeter') return times('h', ground.perimeter, over);
  return times('h', quantities['patch-area'] ?? quantities.area ?? ground.area, over);
}

function crackHours({ zone }: ZoneWork, over: Term): Amount {
  const { crackLength } = zone.answers;
  return crackLength === undefined || crackLength === 'unknown'
    ? { missing: ['crackLength'], unit: 'h' }
    : product('h', [{ what: 'crack-length', span: [crackLength, crackLength], unit: 'm' }, over]);
}

/** Breaking out goes by volume, more slowly with bars, and never quicker than the least for a patch. */
function breakingHours(work: ZoneWork, quantities: Quantities, own?: OwnFigures): Amount | null {
  const bars = work.steps.includes('free-bar');
  const figure = bars ? 'rate.break-out-reinforced' : 'rate.break-out';
  const { removed } = quantities;
  if (!removed) return null;
  const byVolume = times('h', removed, term(figure, own));
  const [least, most] = rangeOf('rate.break-out-least', own);
  if (!('span' in byVolume)) return byVolume;
  const [low, high] = byVolume.span;
  const small: Term = term('rate.break-out-least', own);
  if (low >= least && high >= most) return byVolume;
  return {
    span: [Math.max(low, least), Math.max(high, most)],
    unit: 'h',
    working: [...byVolume.working, small],
  };
}

const term = (figure: FigureId, own?: OwnFigures): Term => ({
  what: 'rate',
  span: rangeOf(figure, own),
  unit: figures[figure].unit,
  figure,
});
