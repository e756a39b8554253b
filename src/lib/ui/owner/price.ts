import type { Prices } from '$lib/answers/job';
import { showNumber } from '$lib/answers/parse-number';
import { usPricedUnit, type UnitSystem } from '$lib/answers/units';
import { plainField, type PlainField } from '$lib/ui/job/take-number';
import { rangeOf } from '$shared/figures';

/** The prices a reader can type, in order. */
export const priceNames = [
  'perHour',
  'perBag',
  'perConcrete',
  'perTonne',
] as const satisfies readonly (keyof Prices)[];

/** What a price is typed for, of what it is kept for: a cubic yard of a m3, a short ton of a tonne. */
const perUs: Readonly<Record<keyof Prices, number>> = {
  perHour: 1,
  perBag: 1,
  perConcrete: usPricedUnit.m3,
  perTonne: usPricedUnit.t,
};

/** What the field of a price takes, in the reader's units. */
export function priceField(name: keyof Prices, units: UnitSystem): PlainField {
  const [least, most] = rangeOf('limit.price');
  return { least, most, factor: units === 'us' ? perUs[name] : 1 };
}

/** A price as it stands in its field. */
export const priceShown = (name: keyof Prices, value: number, units: UnitSystem): string =>
  showNumber(value, plainField(priceField(name, units)));
