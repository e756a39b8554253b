import type { Amount } from '$lib/plan/amount';
import { quantityIds, type Quantities } from '$lib/plan/quantities';
import type { ZoneWork } from '$lib/plan/zone-work';

/** A zone of 30 m2, hollow to 40 mm, that is broken out; each test says what is otherwise. Invented. */
export const workOf = (change: object = {}, answers: object = {}): ZoneWork =>
  ({
    zone: { id: 'z', name: '', answers: { area: 30, depth: 40, ...answers } },
    method: 'break-out',
    steps: [],
    tools: new Map(),
    thickness: 150,
    frost: 'rare',
    breaks: true,
    tight: false,
    alongBars: false,
    tried: [],
    patches: null,
    ...change,
  }) as unknown as ZoneWork;

/** An amount known between two ends, with its usual value. */
export const reach = (
  unit: Amount['unit'],
  [low, typical, high]: readonly [number, number, number],
): Amount => ({ span: [low, high], typical, unit, working: [] });

/** Quantities of which only the given arise. */
export const quantitiesWith = (given: Partial<Quantities>): Quantities => ({
  ...(Object.fromEntries(quantityIds.map((id) => [id, null])) as unknown as Quantities),
  ...given,
});

/** Least, usual and most of an amount. */
export const endsOf = (amount: Amount | null | undefined): readonly number[] | string => {
  if (!amount) return 'none';
  if (!('span' in amount)) return `asks for ${amount.missing.join(' and ')}`;
  const [low, high] = amount.span;
  const usual = amount.typical ?? (low + high) / 2;
  return [low, usual, high].map((value) => Math.round(value * 1e9) / 1e9);
};
