import type { FigureId, OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { goesByPasses, rateLearnt } from '$lib/trial/zone-trial';
import { figureTerm, isKnown, product, times, typicalOf, type Amount, type Term } from './amount';
import { barsOf } from './bars';
import { groundOf } from './ground';
import { passesTerm } from './passes';
import type { Quantities } from './quantities';
import type { ZoneWork } from './zone-work';

/** How a step's hours follow from what there is to do. */
type Rate =
  | {
      readonly per: 'area' | 'ground' | 'perimeter' | 'border' | 'crack' | 'bar' | 'zone' | 'job';
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
  'free-bar': { per: 'bar', figure: 'rate.free-bar-length' },
  're-sound': { per: 'area', figure: 'rate.sound' },
  'edge-work': { per: 'border', figure: 'rate.edge-work' },
  'blast-clean': { per: 'ground', figure: 'rate.blast-clean' },
  'clean-bar': { per: 'bar', figure: 'rate.clean-bar-length' },
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
  const { tool } = work.tools.get(step) ?? {};
  const slow = tool && slower[step]?.[tool];
  const figure = slow ?? rate.figure;
  const speed = rateTerm(step, figure, work, own);
  if (rate.per === 'zone' || rate.per === 'job') return product('h', [speed]);
  const over: Term = { ...speed, by: 'over' };
  if (rate.per === 'crack') {
    const length = quantities['crack-chased'] ?? quantities['crack-routed'];
    return length ? times('h', length, over) : crackHours(work, over);
  }
  if (rate.per === 'bar') return times('h', quantities['bars-freed'] ?? barsOf(work, own), over);
  if (rate.per === 'area') {
    // The reader's own rate is that of the whole work.
    const passes =
      step === work.method && own?.[figure] === undefined ? passesTerm(work, own) : null;
    return quantities.area && times('h', quantities.area, ...(passes ? [passes] : []), over);
  }
  if (rate.per === 'border') return borderHours(work, over);
  const ground = groundOf(work, own);
  if (rate.per === 'perimeter') return times('h', ground.perimeter, over);
  return times('h', quantities['patch-area'] ?? quantities.area ?? ground.area, over);
}

/**
 * The rate of a step in a zone: the main method's as the zone's own test patches have it, laid over
 * the figure; the reader's own value lies over both.
 */
function rateTerm(step: StepId, figure: FigureId, work: ZoneWork, own?: OwnFigures): Term {
  const table = figureTerm('rate', figure, own);
  const learnt =
    step === work.method ? rateLearnt(work.tried, figure, own, goesByPasses(work.method)) : null;
  if (!learnt) return table;
  const { low, typical, high } = learnt;
  return { ...table, span: [low, high], typical, fromPatch: true };
}

/** Rates of a step with another tool than the usual one. */
const slower: Readonly<Partial<Record<StepId, Readonly<Partial<Record<ToolId, FigureId>>>>>> = {
  grind: { 'hand-grinder': 'rate.grind-hand' },
};

/** What a floor machine leaves, where the reader or the drawing has said how long it is. */
function borderHours({ zone }: ZoneWork, over: Term): Amount {
  const { borderLength } = zone.answers;
  return borderLength === undefined || borderLength === 'unknown'
    ? { missing: ['borderLength'], unit: 'h' }
    : product('h', [
        { what: 'border-length', span: [borderLength, borderLength], unit: 'm' },
        over,
      ]);
}

/** What of a zone a step goes by: m2, m or m3; null where it goes by the zone or the job. */
export function amountOf(
  step: StepId,
  work: ZoneWork,
  quantities: Quantities,
  own?: OwnFigures,
): Amount | null {
  switch (rates[step]?.per) {
    case 'area':
      return quantities.area;
    case 'ground':
      return quantities['patch-area'] ?? quantities.area;
    case 'perimeter':
      return groundOf(work, own).perimeter;
    case 'border':
      return metres('border-length', 'borderLength', work.zone.answers.borderLength);
    case 'crack':
      return metres('crack-length', 'crackLength', work.zone.answers.crackLength);
    case 'bar':
      return quantities['bars-freed'];
    case 'volume':
      return quantities.removed;
    default:
      return null;
  }
}

const metres = (
  what: Term['what'],
  question: 'crackLength' | 'borderLength',
  value: number | 'unknown' | undefined,
): Amount =>
  value === undefined || value === 'unknown'
    ? { missing: [question], unit: 'm' }
    : product('m', [{ what, span: [value, value], unit: 'm' }]);

function crackHours({ zone }: ZoneWork, over: Term): Amount {
  const { crackLength } = zone.answers;
  return crackLength === undefined || crackLength === 'unknown'
    ? { missing: ['crackLength'], unit: 'h' }
    : product('h', [{ what: 'crack-length', span: [crackLength, crackLength], unit: 'm' }, over]);
}

/**
 * Breaking out goes by volume: light hammers in patches at their own rate, heavier ones more slowly
 * with bars; and never quicker than the least for each patch.
 */
function breakingHours(work: ZoneWork, quantities: Quantities, own?: OwnFigures): Amount | null {
  const light = work.tools.get('break-out')?.tool !== 'jackhammer';
  const bars = work.steps.includes('free-bar');
  const figure = light
    ? 'rate.break-out-light'
    : bars
      ? 'rate.break-out-reinforced'
      : 'rate.break-out';
  const { removed } = quantities;
  if (!removed) return null;
  const byVolume = times('h', removed, rateTerm('break-out', figure, work, own));
  if (!isKnown(byVolume)) return byVolume;
  const small = figureTerm('rate', 'rate.break-out-least', own);
  const patches = Math.max(1, work.patches?.length ?? 1);
  const [least, most] = small.span;
  const [low, high] = byVolume.span;
  if (low >= least * patches && high >= most * patches) return byVolume;
  return {
    span: [Math.max(low, least * patches), Math.max(high, most * patches)],
    typical: Math.max(typicalOf(byVolume), typicalOf(small) * patches),
    unit: 'h',
    working: [...byVolume.working, small],
  };
}
