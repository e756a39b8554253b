import type { FigureId, OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { goesByPasses, rateLearnt } from '$lib/trial/zone-trial';
import { figureTerm, isKnown, product, times, typicalOf, type Amount, type Term } from './amount';
import { barsOf } from './bars';
import { groundOf, surfaceOf } from './ground';
import { passesTerm } from './passes';
import type { Quantities } from './quantities';
import { metres, struckHours, struckOf } from './struck';
import type { ZoneWork } from './zone-work';

/** How a step's hours follow from what there is to do. */
type Rate = {
  readonly per:
    | 'area'
    | 'surface'
    | 'struck'
    | 'perimeter'
    | 'border'
    | 'crack'
    | 'bar'
    | 'fill'
    | 'zone'
    | 'job'
    | 'volume';
  readonly figure: FigureId;
};

/** Rates by step; null where the step takes no working time of its own. Source: figures `rate.*`. */
const rates: Readonly<Record<StepId, Rate | null>> = {
  'pressure-wash': { per: 'surface', figure: 'rate.pressure-wash' },
  grind: { per: 'area', figure: 'rate.grind' },
  'abrasive-blast': { per: 'area', figure: 'rate.abrasive-blast' },
  scarify: { per: 'area', figure: 'rate.scarify' },
  shotblast: { per: 'area', figure: 'rate.shotblast' },
  'needle-scale': { per: 'area', figure: 'rate.needle-scale' },
  'break-out': { per: 'volume', figure: 'rate.break-out-light' },
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
  're-sound': { per: 'struck', figure: 'rate.sound' },
  'edge-work': { per: 'border', figure: 'rate.edge-work' },
  'blast-clean': { per: 'struck', figure: 'rate.blast-clean' },
  'clean-bar': { per: 'bar', figure: 'rate.clean-bar-length' },
  vacuum: { per: 'surface', figure: 'rate.vacuum' },
  'final-wash': { per: 'surface', figure: 'rate.final-wash' },
  'fill-level': { per: 'fill', figure: 'rate.fill-level' },
  'check-ready': { per: 'zone', figure: 'rate.check' },
  'wet-or-dry': { per: 'zone', figure: 'rate.damp' },
  'moisture-test': { per: 'zone', figure: 'rate.moisture-test' },
  'last-clean': { per: 'surface', figure: 'rate.last-clean' },
  // The reader's own: nobody knows how the repair is placed but whoever places it.
  'fill-cure': null,
  cover: null,
  cure: null,
};

/** Whether a step is done once for the whole job, whatever its zones. */
export const oncePerJob = (step: StepId): boolean => rates[step]?.per === 'job';

/** The figure a reader can put their own rate over; null where a step has none. */
export const rateFigureOf = (step: StepId): FigureId | null => {
  return rates[step]?.figure ?? null;
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
  if (rate.per === 'surface') return times('h', surfaceOf(work, quantities), over);
  if (rate.per === 'struck') return struckHours(step, work, quantities, over, own);
  if (rate.per === 'fill') return fillHours(quantities, over, own);
  if (rate.per === 'border') return borderHours(work, over);
  return times('h', groundOf(work, own).perimeter, over);
}

/** A hole is filled by what goes into it; where only a rough surface is levelled, by its area. */
function fillHours(quantities: Quantities, over: Term, own?: OwnFigures): Amount | null {
  const { fill, area } = quantities;
  if (fill) return times('h', fill, figureTerm('rate', 'rate.place-mortar', own));
  return area && times('h', area, over);
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
    case 'surface':
      return surfaceOf(work, quantities);
    case 'struck': {
      const { ground, lengths } = struckOf(step, work, quantities);
      return ground ?? lengths[0] ?? null;
    }
    case 'fill':
      return quantities.fill ?? quantities.area;
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

function crackHours({ zone }: ZoneWork, over: Term): Amount {
  const { crackLength } = zone.answers;
  return crackLength === undefined || crackLength === 'unknown'
    ? { missing: ['crackLength'], unit: 'h' }
    : product('h', [{ what: 'crack-length', span: [crackLength, crackLength], unit: 'm' }, over]);
}

/**
 * Breaking out goes by volume, with the light hammers of patch work, and is never quicker than the
 * least for each patch. Source: figures `rate.break-out-light`, `rate.break-out-least`.
 */
function breakingHours(work: ZoneWork, quantities: Quantities, own?: OwnFigures): Amount | null {
  const { removed } = quantities;
  if (!removed) return null;
  const byVolume = times('h', removed, rateTerm('break-out', 'rate.break-out-light', work, own));
  if (!isKnown(byVolume)) return byVolume;
  const patches = Math.max(1, work.patches?.length ?? 1);
  const byPatch = product('h', [
    { what: 'patches', span: [patches, patches], unit: 'count' },
    figureTerm('rate', 'rate.break-out-least', own),
  ]);
  return longest(byVolume, byPatch);
}

/** The longer of two, end by end; it has a working where one of them is the longer at both ends. */
function longest(one: Amount, other: Amount): Amount {
  if (!isKnown(one)) return one;
  if (!isKnown(other)) return other;
  const reach = (amount: typeof one) => [amount.span[0], typicalOf(amount), amount.span[1]];
  const [mine, theirs] = [reach(one), reach(other)];
  if (mine.every((value, end) => value >= (theirs[end] ?? 0))) return one;
  if (theirs.every((value, end) => value >= (mine[end] ?? 0))) return other;
  const [low = 0, typical = 0, high = 0] = mine.map((value, end) =>
    Math.max(value, theirs[end] ?? 0),
  );
  return { span: [low, high], typical, unit: one.unit, working: [] };
}
