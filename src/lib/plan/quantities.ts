import { rangeOfBand } from '$lib/answers/depth';
import type { Zone } from '$lib/answers/job';
import type { DepthBand, FreezeThaw } from '$lib/answers/questions';
import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { MethodId, StepId } from '$shared/methods';
import { squarePatch, type Patch } from '$lib/survey/patches';
import type { Tooling } from './tools';
import {
  figureTerm,
  isKnown,
  product,
  sum,
  typicalOf,
  type Amount,
  type Span,
  type Term,
} from './amount';
import { barsOf, holeTerm, stripOf, undercutOf } from './bars';

export const quantityIds = [
  'area',
  'patch-area',
  'removed',
  'debris-mass',
  'debris-loose',
  'skips',
  'rubble-bags',
  'fill',
  'fill-bags',
  'saw-cut',
  'crack-chased',
  'crack-routed',
  'bars-freed',
  'crack-filler',
  'wash-water',
] as const;
export type QuantityId = (typeof quantityIds)[number];
export type Quantities = Readonly<Record<QuantityId, Amount | null>>;

/** What a zone's quantities are worked out from. */
export interface ZoneWork {
  readonly zone: Zone;
  readonly method: MethodId;
  readonly steps: readonly StepId[];
  /** The tool of each step. */
  readonly tools: ReadonlyMap<StepId, Tooling>;
  readonly thickness: number | 'unknown';
  readonly frost: FreezeThaw;
  /** Whether anything is loose: a firm hollow is filled, not broken out. */
  readonly tight: boolean;
  /** What is broken out lies along the bars only; the rest of the zone has a method of its own. */
  readonly alongBars: boolean;
  /** The whole surface, m2; absent where nobody has said. */
  readonly whole?: number;
  /** The patches laid over its damage; null where only its area is known. */
  readonly patches: readonly Patch[] | null;
}

const exact = (value: number): Span => [value, value];

/** The damaged depth of a zone in m, least to most; null while it is open-ended or not known. */
export function depthSpan({ zone, thickness }: Pick<ZoneWork, 'zone' | 'thickness'>): Span | null {
  const { depth } = zone.answers;
  if (depth === undefined) return null;
  if (typeof depth === 'number') return exact(depth / 1000);
  const ranges = depth.map((band: DepthBand) => rangeOfBand(band, thickness));
  const low = Math.min(...ranges.map(([least]) => least));
  const high = Math.max(...ranges.map(([, most]) => most));
  return Number.isFinite(high) ? [low / 1000, high / 1000] : null;
}

/** The ground to saw and break out, from the patches laid or from the area alone. */
export function groundOf(work: ZoneWork, own?: OwnFigures): { area: Amount; perimeter: Amount } {
  const { patches } = work;
  const strip = work.alongBars ? stripOf(work, own) : null;
  if (strip) return strip;
  if (patches) {
    const area = patches.reduce((total, patch) => total + patch.area, 0);
    const saw = patches.reduce((total, patch) => total + patch.saw, 0);
    return {
      area: product('m2', [{ what: 'patches', span: exact(area), unit: 'm2' }]),
      perimeter: product('m', [{ what: 'perimeter', span: exact(saw), unit: 'm' }]),
    };
  }
  const { area } = work.zone.answers;
  if (area === undefined || area === 'unknown')
    return { area: { missing: ['area'], unit: 'm2' }, perimeter: { missing: ['area'], unit: 'm' } };
  return groundFromArea(area, work, own);
}

/**
 * The ground where only the area is known. The least is one square taken past the damage. The most
 * is the same area in many spots, each taken past its own damage (figures `patch.scattered`,
 * `patch.scattered-spot`), but no more than the whole surface. Drawing the spots narrows it.
 * Between the two the typical value is the geometric mean. Source: common practice for that.
 */
function groundFromArea(area: number, { frost, whole }: ZoneWork, own?: OwnFigures) {
  const square = squarePatch(area, frost, own);
  const side = rangeOf('patch.scattered-spot', own)[1];
  const spots = Math.max(1, area / side ** 2);
  const spot = squarePatch(Math.min(area, side ** 2), frost, own);
  const scattered = area * rangeOf('patch.scattered', own)[1];
  const most = Math.min(Math.max(square.area[1], scattered), Math.max(whole ?? Infinity, area));
  const round = Math.max(square.perimeter[1], spots * spot.perimeter[1]);
  return {
    area: scatteredAmount(
      'm2',
      [Math.min(square.area[0], most), most],
      ['patch.scattered', 'patch-area'],
    ),
    perimeter: scatteredAmount(
      'm',
      [square.perimeter[0], round],
      ['patch.scattered-spot', 'perimeter'],
    ),
  };
}

const scatteredAmount = (
  unit: 'm' | 'm2',
  span: Span,
  [figure, what]: [FigureId, Term['what']],
): Amount => product(unit, [{ what, span, typical: Math.sqrt(span[0] * span[1]), unit, figure }]);

/** Multiplies an amount on, from what it comes to; what is missing stays missing. */
export function times(unit: Amount['unit'], amount: Amount, ...terms: Term[]): Amount {
  if (!isKnown(amount)) return { missing: amount.missing, unit };
  const factor = product(unit, terms);
  if (!isKnown(factor)) return factor;
  return {
    span: [amount.span[0] * factor.span[0], amount.span[1] * factor.span[1]],
    typical: typicalOf(amount) * typicalOf(factor),
    unit,
    working: [...amount.working, ...terms],
  };
}

/** Every quantity of one zone; null where it does not arise, missing where an answer is missing. */
export function quantitiesOf(work: ZoneWork, own?: OwnFigures): Quantities {
  const { answers } = work.zone;
  const has = (id: StepId) => work.steps.includes(id);
  const area: Amount =
    answers.area === undefined || answers.area === 'unknown'
      ? { missing: ['area'], unit: 'm2' }
      : product('m2', [{ what: 'area', span: exact(answers.area), unit: 'm2' }]);
  const breaks = work.method === 'break-out';
  const ground = breaks ? groundOf(work, own) : null;
  const depth = depthSpan(work);
  const deep = (what: Term['what'], add = 0): Term | null =>
    depth && { what, span: [depth[0] + add, depth[1] + add], unit: 'm' };
  const intoSound = deep('depth-into-sound', valueOf('patch.into-sound', own) / 1000);
  const hollow = deep('hollow-depth');
  const noDepth = (unit: Amount['unit'], also: Amount): Amount => ({
    missing: ['depth', ...(isKnown(also) ? [] : also.missing)],
    unit,
  });

  const crack: Amount =
    answers.crackLength === undefined || answers.crackLength === 'unknown'
      ? { missing: ['crackLength'], unit: 'm' }
      : product('m', [{ what: 'crack-length', span: exact(answers.crackLength), unit: 'm' }]);
  const chased = has('chase-crack')
    ? times(
        'm3',
        crack,
        figureTerm('groove-width', 'chase.width', own),
        figureTerm('groove-depth', 'chase.depth', own),
        squareMillimetres,
      )
    : null;
  const routed = has('route-crack')
    ? times(
        'm3',
        crack,
        figureTerm('groove-width', 'rout.width', own),
        figureTerm('groove-depth', 'rout.depth', own),
        squareMillimetres,
      )
    : null;
  const undercut = has('free-bar') ? undercutOf(work, own) : null;

  const taken: Amount | null =
    breaks && ground
      ? work.alongBars
        ? undercut && times('m3', ground.area, holeTerm(work, own))
        : intoSound
          ? times('m3', ground.area, intoSound)
          : noDepth('m3', ground.area)
      : work.tight || work.method === 'pressure-wash'
        ? null
        : hollow
          ? times('m3', area, { ...hollow, what: 'depth' })
          : noDepth('m3', area);
  const removed = together('m3', [taken, work.alongBars ? null : undercut, chased, routed]);
  const hole = breaks
    ? taken
    : work.tight && answers.depth !== undefined && !onlyFilm(answers.depth)
      ? hollow
        ? times('m3', area, hollow)
        : noDepth('m3', area)
      : null;
  const fillable = together('m3', [hole, work.alongBars ? null : undercut, chased]);
  const withWaste = wasteTerm('fill.waste', own);
  const fill = fillable && times('m3', fillable, withWaste);
  const mass = removed && times('kg', removed, figureTerm('density', 'concrete.density', own));
  const loose = removed && times('m3', removed, figureTerm('bulking', 'concrete.bulking', own));
  const washes = has('pressure-wash') || has('final-wash');
  return {
    area,
    'patch-area': ground && ground.area,
    removed,
    'debris-mass': mass,
    'debris-loose': loose,
    skips: loose && times('count', loose, figureTerm('skip', 'skip.volume', own, 'over')),
    'rubble-bags': mass && times('count', mass, figureTerm('bag', 'rubble-bag.mass', own, 'over')),
    fill,
    'fill-bags': fill && times('count', fill, figureTerm('yield', 'bag.yield', own, 'over')),
    'saw-cut': has('saw-cut') && ground ? ground.perimeter : null,
    'crack-chased': has('chase-crack') ? crack : null,
    'crack-routed': has('route-crack') ? crack : null,
    'bars-freed': has('free-bar') ? barsOf(work, own) : null,
    'crack-filler':
      routed && times('L', routed, withWaste, { what: 'volume', span: exact(1000), unit: 'ratio' }),
    'wash-water': washes ? times('L', area, figureTerm('water', 'wash.water', own)) : null,
  };
}

/** Adds what arises; null where nothing does. */
function together(unit: Amount['unit'], parts: readonly (Amount | null)[]): Amount | null {
  const there = parts.flatMap((part) => part ?? []);
  const [only] = there;
  return there.length > 1 ? sum(unit, there) : (only ?? null);
}

const squareMillimetres: Term = { what: 'volume', span: exact(1e-6), unit: 'ratio' };

/** One and the waste of a figure. */
export function wasteTerm(figure: FigureId, own?: OwnFigures): Term {
  const { span, ...term } = figureTerm('waste', figure, own);
  return {
    ...term,
    span: [1 + span[0], 1 + span[1]],
    typical: 1 + typicalOf({ span, ...term }),
    unit: 'ratio',
  };
}

/** A film is not a hollow to fill. */
function onlyFilm(depth: NonNullable<Zone['answers']['depth']>): boolean {
  return typeof depth === 'number'
    ? depth < valueOf('depth.thin')
    : depth.every((band) => band === 'film' || band === 'under-3');
}

/** The sums over zones; a quantity that arises nowhere stays null. */
export function totalsOf(zones: readonly Quantities[]): Quantities {
  return Object.fromEntries(
    quantityIds.map((id) => {
      const amounts = zones.flatMap((each) => each[id] ?? []);
      return [id, amounts.length ? sum((amounts[0] as Amount).unit, amounts) : null];
    }),
  ) as Quantities;
}
