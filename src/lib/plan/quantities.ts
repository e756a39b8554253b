import { rangeOfBand } from '$lib/answers/depth';
import type { Zone } from '$lib/answers/job';
import type { DepthBand, FreezeThaw } from '$lib/answers/questions';
import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { MethodId, StepId } from '$shared/methods';
import { squarePatch, type Patch } from '$lib/survey/patches';
import { isKnown, product, sum, type Amount, type Span, type Term } from './amount';

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
  'wash-water',
] as const;
export type QuantityId = (typeof quantityIds)[number];
export type Quantities = Readonly<Record<QuantityId, Amount | null>>;

/** What a zone's quantities are worked out from. */
export interface ZoneWork {
  readonly zone: Zone;
  readonly method: MethodId;
  readonly steps: readonly StepId[];
  readonly thickness: number | 'unknown';
  readonly frost: FreezeThaw;
  /** Whether anything is loose: a firm hollow is filled, not broken out. */
  readonly tight: boolean;
  /** The patches laid over its damage; null where only its area is known. */
  readonly patches: readonly Patch[] | null;
}

const exact = (value: number): Span => [value, value];
const figureTerm = (
  what: Term['what'],
  id: FigureId,
  unit: Term['unit'],
  own?: OwnFigures,
  by?: 'over',
): Term => ({
  what,
  span: rangeOf(id, own),
  unit,
  figure: id,
  ...(by && { by }),
});

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
  const square = squarePatch(area, work.frost, own);
  return {
    area: product('m2', [{ what: 'patch-area', span: square.area, unit: 'm2' }]),
    perimeter: product('m', [{ what: 'perimeter', span: square.perimeter, unit: 'm' }]),
  };
}

/** Multiplies an amount on, from what it comes to; what is missing stays missing. */
export function times(unit: Amount['unit'], amount: Amount, ...terms: Term[]): Amount {
  if (!isKnown(amount)) return { missing: amount.missing, unit };
  const factor = product(unit, terms);
  if (!isKnown(factor)) return factor;
  return {
    span: [amount.span[0] * factor.span[0], amount.span[1] * factor.span[1]],
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

  const removed: Amount | null =
    breaks && ground
      ? intoSound
        ? times('m3', ground.area, intoSound)
        : noDepth('m3', ground.area)
      : work.tight || work.method === 'pressure-wash'
        ? null
        : hollow
          ? times('m3', area, { ...hollow, what: 'depth' })
          : noDepth('m3', area);
  const fillable = breaks
    ? removed
    : work.tight && answers.depth !== undefined && !onlyFilm(answers.depth)
      ? hollow
        ? times('m3', area, hollow)
        : noDepth('m3', area)
      : null;
  const waste = rangeOf('fill.waste', own);
  const fill =
    fillable &&
    times('m3', fillable, {
      what: 'waste',
      span: [1 + waste[0], 1 + waste[1]],
      unit: 'ratio',
      figure: 'fill.waste',
    });
  const mass =
    removed && times('kg', removed, figureTerm('density', 'concrete.density', 'kg/m3', own));
  const loose =
    removed && times('m3', removed, figureTerm('bulking', 'concrete.bulking', 'ratio', own));
  const crack: Amount =
    answers.crackLength === undefined || answers.crackLength === 'unknown'
      ? { missing: ['crackLength'], unit: 'm' }
      : product('m', [{ what: 'crack-length', span: exact(answers.crackLength), unit: 'm' }]);
  const washes = has('pressure-wash') || has('final-wash');
  return {
    area,
    'patch-area': ground && ground.area,
    removed,
    'debris-mass': mass,
    'debris-loose': loose,
    skips: loose && times('count', loose, figureTerm('skip', 'skip.volume', 'm3', own, 'over')),
    'rubble-bags':
      mass && times('count', mass, figureTerm('bag', 'rubble-bag.mass', 'kg', own, 'over')),
    fill,
    'fill-bags': fill && times('count', fill, figureTerm('yield', 'bag.yield', 'm3', own, 'over')),
    'saw-cut': has('saw-cut') && ground ? ground.perimeter : null,
    'crack-chased': has('chase-crack') ? crack : null,
    'crack-routed': has('route-crack') ? crack : null,
    'wash-water': washes ? times('L', area, figureTerm('water', 'wash.water', 'L/m2', own)) : null,
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
