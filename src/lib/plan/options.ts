import { isFloor } from '$lib/advice/place';
import type { Job, Prices } from '$lib/answers/job';
import type { FigureId, OwnFigures } from '$shared/figures';
import {
  figureTerm,
  isKnown,
  product,
  sum,
  times,
  wasteTerm,
  wholePieces,
  type Amount,
  type Span,
  type Term,
} from './amount';
import { calendarOf } from './calendar';
import { layDays, spanOf } from './days';
import { damagedArea } from './damaged';
import { fullDepth, nothing } from './full-depth';
import { cutThrough, longest, some, stepsKept } from './option-parts';
import type { Plan } from './plan';
import { totalsOf } from './quantities';

/** What an option of action takes. All options are measured by the same list. */
export const measureIds = [
  'debris',
  'material',
  'water',
  'hours',
  'days-closed',
  'noise-days',
  'dust-days',
  'hire-days',
  'carbon',
  'cost',
] as const;
export type MeasureId = (typeof measureIds)[number];
export const ownerOptionIds = ['restore', 'parts', 'replace'] as const;
export type OwnerOptionId = (typeof ownerOptionIds)[number];
export type OwnerOption = Readonly<Record<MeasureId, Amount | null>>;

/** The options side by side; null where there is none of that kind. */
export interface OwnerOptions {
  readonly restore: OwnerOption | null;
  readonly parts: OwnerOption | null;
  readonly replace: OwnerOption;
}

const exact = (value: number): Span => [value, value];
const kgPerTonne = 1000;
const tonnes: Term = { what: 'mass', span: exact(1 / kgPerTonne), unit: 'ratio' };
const rate = (id: FigureId, own?: OwnFigures, by?: 'over'): Term => figureTerm('rate', id, own, by);
/** Hours by those of a day. */
const ofDay = (hours: number): Term => ({
  what: 'rate',
  span: exact(hours),
  unit: 'h',
  by: 'over',
});

/** Carbon of hauling a mass one way, kgCO2e. */
const haulage = (mass: Amount, own?: OwnFigures): Amount =>
  times('kg', mass, tonnes, rate('carbon.haulage', own), rate('haul.distance', own));

/** Zones by what an option does with them. */
export interface Parts {
  /** Zones restored by the plan. */
  readonly restored: readonly string[];
  /** Zones of which parts are cut out and made new: found and sawn round as for a patch. */
  readonly cutOut?: readonly string[];
  /** m3 that are broken out through the full depth and poured anew; missing says what to ask for. */
  readonly replaced: Amount;
}

/**
 * What an option takes, line by line the same for all: breaking, hauling, placing and curing are in
 * every one, the same crew works the same hours, and nothing that goes on top is in any.
 */
export function optionOf(
  plan: Plan,
  job: Job,
  { restored, cutOut = [], replaced }: Parts,
  prices: Prices = {},
  own?: OwnFigures,
): OwnerOption {
  const kept = new Map(plan.zones.map((zone) => [zone.id, stepsKept(zone)]));
  const tasks = plan.tasks
    .map((task) => ({
      ...task,
      zones: task.zones.filter(
        (id) => restored.includes(id) || (cutOut.includes(id) && kept.get(id)?.(task.step)),
      ),
    }))
    .filter(({ zones }) => zones.length);
  const quantities = totalsOf(
    plan.zones.filter(({ id }) => restored.includes(id)).map((zone) => zone.quantities),
  );
  const fill = quantities.fill ?? nothing('m3');
  const poured = times('m3', replaced, wasteTerm('replace.waste', own));
  const density = figureTerm('density', 'concrete.density', own);
  const broken = times('kg', replaced, density);
  const debris = sum('kg', [quantities['debris-mass'] ?? nothing('kg'), broken]);
  const mortar = times('kg', fill, figureTerm('density', 'mortar.density', own));
  const demolishing = times('h', replaced, rate('rate.demolish', own));
  // Whatever is broken out, the place is made safe first.
  const safe = !tasks.some(({ step }) => step === 'make-safe') && some(replaced);
  const anew = sum('h', [
    ...(safe ? [product('h', [rate('rate.make-safe', own)])] : []),
    ...cutThrough(plan, job, cutOut, own),
    demolishing,
    times('h', poured, rate('rate.place', own)),
  ]);
  // A fill that levels before a coat is among the tasks already.
  const later = totalsOf(
    plan.zones
      .filter(({ id, steps }) => restored.includes(id) && !steps.includes('fill-level'))
      .map((zone) => zone.quantities),
  ).fill;
  const filling = times('h', later ?? nothing('m3'), rate('rate.place-mortar', own));
  const hours = sum('h', [...tasks.flatMap(({ labour }) => labour ?? []), filling, anew]);
  const schedule = layDays(tasks, calendarOf(job), own);
  const people = schedule.crew * schedule.hoursPerDay;
  const more = sum('h', [filling, anew]);
  const usable = rate('crew.usable', own, 'over');
  // One breaker at a time, as the schedule has one of each machine; part of a day is a day.
  const breakerDays = wholePieces(times('d', demolishing, usable, ofDay(schedule.hoursPerDay)));
  const days = (of: 'loud' | 'dusty' | 'hired') => {
    const laid: Amount = {
      span: spanOf(schedule.tally, of),
      typical: schedule.tally.typical[of],
      unit: 'd',
      working: [],
    };
    return sum('d', [laid, breakerDays]);
  };
  // Nobody drives on a wall or a stair; and what cures is what the plan has curing there.
  const driven = (job.site.element ?? ['slab']).some(isFloor);
  const covered = (figure: FigureId) => tasks.some(({ lasting }) => lasting?.figure === figure);
  const opens = (figure: FigureId, when: boolean) =>
    when ? product('d', [rate(figure, own)]) : nothing('d');
  return {
    debris,
    material: sum('m3', [fill, poured]),
    water: some(replaced) ? null : (quantities['wash-water'] ?? nothing('L')),
    hours,
    'days-closed': sum('d', [
      { span: schedule.count, typical: schedule.typicalCount, unit: 'd', working: [] },
      times('d', more, usable, ofDay(people)),
      longest(
        'd',
        opens('traffic.cars', driven && covered('traffic.cars')),
        opens('traffic.coated', driven && covered('traffic.coated')),
        opens('replace.opening', driven && some(replaced)),
      ),
    ]),
    'noise-days': days('loud'),
    'dust-days': days('dusty'),
    'hire-days': days('hired'),
    carbon: sum('kg', [
      times('kg', mortar, rate('carbon.repair-mortar', own)),
      times('kg', poured, rate('carbon.ready-mix', own)),
      haulage(debris, own),
      haulage(mortar, own),
      haulage(times('kg', poured, density), own),
    ]),
    cost: costOf([
      [hours, prices.perHour],
      [quantities['fill-bags'] ?? nothing('count'), prices.perBag],
      [poured, prices.perConcrete],
      [times('t', debris, tonnes), prices.perTonne],
    ]),
  };
}

/** What restoring takes; null throughout where no zone can be restored. */
export function restoring(
  plan: Plan,
  job: Job,
  prices: Prices = {},
  own?: OwnFigures,
): OwnerOption | null {
  if (!plan.zones.length) return null;
  const restored = plan.zones.map(({ id }) => id);
  return optionOf(plan, job, { restored, replaced: nothing('m3') }, prices, own);
}

/** What replacing these parts and restoring the rest takes; null where there is no such part. */
export function replacingParts(
  plan: Plan,
  job: Job,
  parts: readonly string[],
  prices: Prices = {},
  own?: OwnFigures,
): OwnerOption | null {
  if (!parts.length) return null;
  const restored = plan.zones.map(({ id }) => id).filter((id) => !parts.includes(id));
  // A patch is broken out past its damage; a zone that is gone, as far as it goes.
  const grounds = parts.map((id) => damagedArea(plan, job, id));
  const replaced = fullDepth(sum('m2', grounds), job);
  return optionOf(plan, job, { restored, cutOut: parts, replaced }, prices, own);
}

/** What replacing the whole surface takes: break it all out, haul it, pour it again. */
export function replacing(
  plan: Plan,
  job: Job,
  prices: Prices = {},
  own?: OwnFigures,
): OwnerOption {
  const known = job.zones.reduce(
    (total, { answers: { area } }) => total + (typeof area === 'number' ? area : 0),
    0,
  );
  const whole: Amount =
    job.totalArea === undefined
      ? { missing: ['area'], unit: 'm2' }
      : product('m2', [{ what: 'area', span: exact(Math.max(job.totalArea, known)), unit: 'm2' }]);
  return optionOf(plan, job, { restored: [], replaced: fullDepth(whole, job) }, prices, own);
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
