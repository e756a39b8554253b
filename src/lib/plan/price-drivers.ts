import { isMadeNew } from '$lib/advice/made-new';
import { isFloor } from '$lib/advice/place';
import type { Element, Setting } from '$lib/answers/questions';
import { spanOf } from './days';
import { isKnown, sum, type Amount, type Span } from './amount';
import { goneArea } from './damaged';
import { fullDepth } from './full-depth';
import type { OwnerOption } from './options';
import type { Plan } from './plan';
import type { QuantityId } from './quantities';

/** What a contractor's price for this job goes up and down with. */
export type PriceDriver =
  | { readonly id: 'depth-open'; readonly zones: readonly string[] }
  | {
      readonly id: 'made-new' | 'break-out' | 'saw-cut' | 'bars' | 'cracks' | 'debris' | 'water';
      readonly amount: Amount;
    }
  | { readonly id: 'machines'; readonly machineDays: Span }
  /** `open`: the hours of some of the work are not known. */
  | {
      readonly id: 'days';
      readonly days: Span;
      readonly people: number;
      readonly open: boolean;
    }
  | { readonly id: 'indoors' | 'by-hand' };

/** Amounts that cost by their size, dearest first. Source: common practice, no published source. */
const amounts: readonly (readonly [Extract<PriceDriver, { amount: Amount }>['id'], QuantityId])[] =
  [
    ['break-out', 'patch-area'],
    ['bars', 'bars-freed'],
    ['cracks', 'crack-chased'],
    ['saw-cut', 'saw-cut'],
    ['debris', 'debris-mass'],
    ['water', 'wash-water'],
  ];

/** Parts made new through their full depth, as concrete; none where their size is not known. */
function madeNew(plan: Plan): PriceDriver[] {
  const parts = plan.held.filter(({ holds }) => isMadeNew(holds));
  if (!parts.length) return [];
  const ground = parts.map(({ id }) => goneArea(plan, plan.drawn, id));
  const amount = fullDepth(sum('m2', ground), plan.drawn);
  return isKnown(amount) ? [{ id: 'made-new', amount }] : [];
}

/**
 * What drives the price of this job: what nobody has measured first, then how much of everything, then
 * machines, days and the place. Only what this job has.
 * @param taken what the option takes that the sheet is about: hauling and hire are as told there
 */
export function priceDrivers(plan: Plan, taken: OwnerOption | null = null): PriceDriver[] {
  const { site } = plan.drawn;
  const places: readonly Element[] = site.element ?? [];
  const settings: readonly Setting[] = site.setting ?? [];
  const deep = plan.drawn.zones.filter(
    ({ answers: { depth } }) =>
      depth === undefined || (typeof depth === 'object' && depth.length > 1),
  );
  const { schedule } = plan;
  // What the plan leaves out takes days of its own.
  const open = plan.held.length > 0 || plan.tasks.some(({ labour }) => labour && !isKnown(labour));
  const hire = taken?.['hire-days'];
  const hired = hire && isKnown(hire) ? hire.span : spanOf(schedule.tally, 'hired');
  return [
    ...(deep.length ? [{ id: 'depth-open' as const, zones: deep.map(({ id }) => id) }] : []),
    ...madeNew(plan),
    ...amounts.flatMap(([id, quantity]) => {
      const amount = quantity === 'debris-mass' && taken ? taken.debris : plan.totals[quantity];
      return amount && isKnown(amount) && amount.span[1] > 0 ? [{ id, amount }] : [];
    }),
    ...(hired[1] > 0 ? [{ id: 'machines' as const, machineDays: hired }] : []),
    ...(schedule.days.length
      ? [{ id: 'days' as const, days: schedule.count, people: schedule.crew, open }]
      : []),
    ...(settings.includes('indoors') ? [{ id: 'indoors' as const }] : []),
    ...(places.length && !places.some(isFloor) ? [{ id: 'by-hand' as const }] : []),
  ];
}
