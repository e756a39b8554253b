import type { Zone } from '$lib/answers/job';
import { valueOf, type OwnFigures } from '$shared/figures';
import { patchVolume } from '$lib/survey/removal';
import type { StepId } from '$shared/methods';
import {
  asFactor,
  figureTerm,
  isKnown,
  product,
  sum,
  times,
  together,
  wasteTerm,
  wholePieces,
  type Amount,
  type Span,
  type Term,
} from './amount';
import { barsOf, holeTerm, undercutOf } from './bars';
import { groundOf, surfaceOf, rimOf } from './ground';
import { depthSpan, type ZoneWork } from './zone-work';

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

const exact = (value: number): Span => [value, value];

/** No depth, and what else is missing. */
const noDepth = (unit: Amount['unit'], also: Amount): Amount => ({
  missing: ['depth', ...(isKnown(also) ? [] : also.missing)],
  unit,
});

/**
 * What a break-out takes: patch by patch where the drawing knows how deep each goes, as it is reckoned
 * there; all others to the depth of the zone.
 */
function brokenOut(
  { patches }: ZoneWork,
  area: Amount,
  intoSound: Term | null,
  own?: OwnFigures,
): Amount {
  const toZone = (ground: Amount) =>
    intoSound ? times('m3', ground, intoSound) : noDepth('m3', ground);
  const deep = patches?.filter((patch) => patch.depth !== undefined) ?? [];
  if (!patches || !deep.length) return toZone(area);
  const areaOf = (some: typeof deep) => some.reduce((total, patch) => total + patch.area, 0);
  const laid = (some: typeof deep, ...terms: Term[]) =>
    product(terms.length ? 'm3' : 'm2', [
      { what: 'patches', span: exact(areaOf(some)), unit: 'm2' },
      ...terms,
    ]);
  const volume = deep.reduce((total, patch) => total + (patchVolume(patch, own) ?? 0), 0);
  const drawn = laid(deep, { what: 'drawn-depth', span: exact(volume / areaOf(deep)), unit: 'm' });
  const others = patches.filter((patch) => patch.depth === undefined);
  return others.length ? sum('m3', [drawn, toZone(laid(others))]) : drawn;
}

/** Every quantity of one zone; null where it does not arise, missing where an answer is missing. */
export function quantitiesOf(work: ZoneWork, own?: OwnFigures): Quantities {
  const { answers } = work.zone;
  const has = (id: StepId) => work.steps.includes(id);
  const area: Amount =
    answers.area === undefined || answers.area === 'unknown'
      ? { missing: ['area'], unit: 'm2' }
      : product('m2', [{ what: 'area', span: exact(answers.area), unit: 'm2' }]);
  const { breaks } = work;
  const ground = breaks ? groundOf(work, own) : null;
  const depth = depthSpan(work);
  const deep = (what: Term['what'], add = 0): Term | null =>
    depth && { what, span: [depth[0] + add, depth[1] + add], unit: 'm' };
  const intoSound = deep('depth-into-sound', valueOf('patch.into-sound', own) / 1000);
  const hollow = deep('hollow-depth');

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

  // A firm hollow is sawn square: what the cut takes in beside it comes out, and is filled.
  const ring = !breaks && work.tight && has('saw-cut') ? rimOf(work, area, own) : null;
  const rim = ring && (hollow ? times('m3', ring, hollow) : noDepth('m3', ring));

  const taken: Amount | null =
    breaks && ground
      ? work.alongBars
        ? undercut && times('m3', ground.area, holeTerm(work, own))
        : brokenOut(work, ground.area, intoSound, own)
      : work.tight
        ? rim
        : work.method === 'pressure-wash'
          ? null
          : hollow
            ? times('m3', area, { ...hollow, what: 'depth' })
            : noDepth('m3', area);
  const removed = leading(
    'removed',
    together('m3', [taken, work.alongBars ? null : undercut, chased, routed]),
  );
  const hole = breaks
    ? taken
    : work.tight && answers.depth !== undefined && !onlyFilm(answers.depth)
      ? hollow
        ? together('m3', [times('m3', area, hollow), rim])
        : noDepth('m3', area)
      : null;
  const fillable = leading(
    'hole',
    together('m3', [hole, work.alongBars ? null : undercut, chased]),
  );
  const withWaste = wasteTerm('fill.waste', own);
  const fill = fillable && times('m3', fillable, withWaste);
  const mass = removed && times('kg', removed, figureTerm('density', 'concrete.density', own));
  const loose = removed && times('m3', removed, figureTerm('bulking', 'concrete.bulking', own));
  const around = { area, 'patch-area': ground && ground.area };
  const perimeter = has('saw-cut') ? (ground ?? groundOf(work, own)).perimeter : null;
  return {
    ...around,
    removed,
    'debris-mass': mass,
    'debris-loose': loose,
    skips:
      loose &&
      times('count', asFactor('loose', loose), figureTerm('skip', 'skip.volume', own, 'over')),
    'rubble-bags':
      mass && wholePieces(times('count', mass, figureTerm('bag', 'rubble-bag.mass', own, 'over'))),
    fill,
    'fill-bags':
      fill && wholePieces(times('count', fill, figureTerm('yield', 'bag.yield', own, 'over'))),
    // A firm hollow that is filled is sawn square too, though nothing is broken out.
    'saw-cut': perimeter,
    'crack-chased': has('chase-crack') ? crack : null,
    'crack-routed': has('route-crack') ? crack : null,
    'bars-freed': has('free-bar') ? barsOf(work, own) : null,
    'crack-filler':
      routed && times('L', routed, withWaste, { what: 'unit', span: exact(1000), unit: 'ratio' }),
    'wash-water': waterOf(work, around, perimeter, own),
  };
}

const leading = (what: Term['what'], amount: Amount | null): Amount | null =>
  amount && asFactor(what, amount);

/** Water that has to be caught: of every wash, of the rinse after degreasing, and of the saw. */
function waterOf(
  work: ZoneWork,
  around: Pick<Quantities, 'area' | 'patch-area'>,
  perimeter: Amount | null,
  own?: OwnFigures,
): Amount | null {
  const has = (id: StepId) => work.steps.includes(id);
  const water = figureTerm('water', 'wash.water', own);
  return together('L', [
    has('pressure-wash') || has('final-wash') ? times('L', surfaceOf(work, around), water) : null,
    has('degrease') ? times('L', around.area ?? { missing: ['area'], unit: 'm2' }, water) : null,
    perimeter && times('L', perimeter, figureTerm('water', 'saw.water', own)),
  ]);
}

/** Millimetres times millimetres, to metres: nothing a reader multiplies by. */
const squareMillimetres: Term = { what: 'unit', span: exact(1e-6), unit: 'ratio' };

/** A film is not a hollow to fill. */
function onlyFilm(depth: NonNullable<Zone['answers']['depth']>): boolean {
  return typeof depth === 'number'
    ? depth < valueOf('depth.thin')
    : depth.every((band) => band === 'film' || band === 'under-3');
}

/** Of the whole job: one container takes what several zones leave. */
export const jobOnly: readonly QuantityId[] = ['skips'];

/**
 * The sums over zones; a quantity that arises nowhere stays null. Bags are whole by zone, so that
 * their sum is the sum of what is shown; skips are whole once, for the job, and a few bags take none.
 */
export function totalsOf(zones: readonly Quantities[], own?: OwnFigures): Quantities {
  const totals = Object.fromEntries(
    quantityIds.map((id) => {
      const amounts = zones.flatMap((each) => each[id] ?? []);
      const total = amounts.length ? sum((amounts[0] as Amount).unit, amounts) : null;
      return [id, total && jobOnly.includes(id) ? wholePieces(total) : total];
    }),
  ) as Quantities;
  const loose = totals['debris-loose'];
  const few = loose && isKnown(loose) && loose.span[1] < valueOf('skip.least', own);
  return few ? { ...totals, skips: null } : totals;
}

/** What is shown of one zone. */
export const zoneQuantityIds: readonly QuantityId[] = quantityIds.filter(
  (id) => !jobOnly.includes(id),
);
