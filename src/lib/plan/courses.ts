import type { Job, Prices } from '$lib/answers/job';
import type { QuestionId } from '$lib/answers/questions';
import { rangeOf, valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { figureTerm, isKnown, product, sum, type Amount, type Span, type Term } from './amount';
import type { Plan } from './plan';
import { times } from './quantities';

/** What a course of action takes. The two courses are measured by the same list. */
export const measureIds = [
  'debris',
  'material',
  'water',
  'hours',
  'days-closed',
  'carbon',
  'cost',
] as const;
export type MeasureId = (typeof measureIds)[number];
export type Course = Readonly<Record<MeasureId, Amount | null>>;

const exact = (value: number): Span => [value, value];
const kgPerTonne = 1000;

/** Carbon of hauling a mass one way, kgCO2e. */
const haulage = (mass: Amount, own?: OwnFigures): Amount =>
  times(
    'kg',
    mass,
    { what: 'mass', span: exact(1 / kgPerTonne), unit: 'ratio' },
    figureTerm('rate', 'carbon.haulage', own),
    figureTerm('rate', 'haul.distance', own),
  );

/**
 * What restoring takes, from the plan. Zones the plan had to leave out are not in it; where it had
 * to leave out all, nothing of it is known.
 */
export function restoring(plan: Plan, prices: Prices = {}, own?: OwnFigures): Course {
  if (!plan.zones.length)
    return Object.fromEntries(measureIds.map((id) => [id, null])) as Record<MeasureId, null>;
  const { totals, steps, schedule, trafficDays } = plan;
  const none = (unit: Amount['unit']): Amount => ({ span: [0, 0], unit, working: [] });
  const debris = totals['debris-mass'] ?? none('kg');
  const material = totals.fill ?? none('m3');
  const mortar = times('kg', material, figureTerm('density', 'mortar.density', own));
  const hours = sum(
    'h',
    steps.flatMap((step) => step.hours ?? []),
  );
  return {
    debris,
    material,
    water: totals['wash-water'] ?? none('L'),
    hours,
    'days-closed': {
      span: [schedule.count[0] + trafficDays.cars[0], schedule.count[1] + trafficDays.cars[1]],
      unit: 'd',
      working: [],
    },
    carbon: sum('kg', [
      times('kg', mortar, figureTerm('rate', 'carbon.repair-mortar', own)),
      haulage(debris, own),
      haulage(mortar, own),
    ]),
    cost: costOf([
      [hours, prices.perHour],
      [totals['fill-bags'] ?? none('count'), prices.perBag],
      [
        times('t', debris, { what: 'mass', span: exact(1 / kgPerTonne), unit: 'ratio' }),
        prices.perTonne,
      ],
    ]),
  };
}

/** What replacing the whole of the area takes: break it all out, haul it, pour it again. */
export function replacing(job: Job, prices: Prices = {}, own?: OwnFigures): Course {
  const missing: QuestionId[] = [];
  const { thickness } = job.site;
  if (thickness === undefined || thickness === 'unknown') missing.push('thickness');
  const areas = job.zones.map(({ answers }) => answers.area);
  if (areas.some((area) => area === undefined || area === 'unknown') || !areas.length)
    missing.push('area');
  const area = areas.reduce<number>(
    (total, each) => total + (typeof each === 'number' ? each : 0),
    0,
  );
  const removed: Amount = missing.length
    ? { missing, unit: 'm3' }
    : product('m3', [
        { what: 'area', span: exact(area), unit: 'm2' },
        { what: 'depth', span: exact(Number(thickness) / 1000), unit: 'm' },
      ]);
  const debris = times('kg', removed, figureTerm('density', 'concrete.density', own));
  const waste = rangeOf('replace.waste', own);
  const material = times('m3', removed, {
    what: 'waste',
    span: [1 + waste[0], 1 + waste[1]],
    unit: 'ratio',
    figure: 'replace.waste',
  });
  const fresh = times('kg', material, figureTerm('density', 'concrete.density', own));
  const hours = sum('h', [
    times('h', removed, figureTerm('rate', 'rate.demolish', own)),
    times('h', material, figureTerm('rate', 'rate.place', own)),
  ]);
  const people = job.crew ?? valueOf('crew.size', own);
  const day = job.hoursPerDay ?? valueOf('crew.day', own);
  const opening = rangeOf('replace.opening', own);
  return {
    debris,
    material,
    water: null,
    hours,
    'days-closed': isKnown(hours)
      ? {
          span: [
            Math.ceil(hours.span[0] / people / day) + opening[0],
            Math.ceil(hours.span[1] / people / day) + opening[1],
          ],
          unit: 'd',
          working: [],
        }
      : { missing: hours.missing, unit: 'd' },
    carbon: sum('kg', [
      times('kg', material, figureTerm('rate', 'carbon.ready-mix', own)),
      haulage(debris, own),
      haulage(fresh, own),
    ]),
    cost: costOf([
      [hours, prices.perHour],
      [material, prices.perConcrete],
      [
        times('t', debris, { what: 'mass', span: exact(1 / kgPerTonne), unit: 'ratio' }),
        prices.perTonne,
      ],
    ]),
  };
}

/** Cost from the reader's own prices; null while one that is needed is missing. */
function costOf(parts: readonly (readonly [Amount, number | undefined])[]): Amount | null {
  const priced: Amount[] = [];
  for (const [amount, price] of parts) {
    const nothing = isKnown(amount) && amount.span[1] === 0;
    if (nothing) continue;
    if (price === undefined) return null;
    priced.push(times('count', amount, { what: 'rate', span: exact(price), unit: 'ratio' }));
  }
  return sum('count', priced);
}

export type Lighter = 'first' | 'second' | 'alike' | 'not-known';

/** Which of two courses takes less, measure by measure. Ranges that overlap are alike: no thumb on the scale. */
export function compareCourses(
  first: Course,
  second: Course,
): Readonly<Record<MeasureId, Lighter>> {
  const lighter = (one: Amount | null, other: Amount | null): Lighter => {
    if (!one || !other || !isKnown(one) || !isKnown(other)) return 'not-known';
    if (one.span[1] < other.span[0]) return 'first';
    return other.span[1] < one.span[0] ? 'second' : 'alike';
  };
  return Object.fromEntries(measureIds.map((id) => [id, lighter(first[id], second[id])])) as Record<
    MeasureId,
    Lighter
  >;
}
