import { isKnown, type Amount } from './amount';
import {
  ownerOptionIds,
  measureIds,
  type OwnerOption,
  type OwnerOptionId,
  type OwnerOptions,
  type MeasureId,
} from './options';

export type Lighter = 'first' | 'second' | 'alike' | 'not-known';

/** Which of two options takes less, measure by measure. Ranges that overlap are alike: no thumb on the scale. */
export function compareOptions(
  first: OwnerOption | null,
  second: OwnerOption | null,
): Readonly<Record<MeasureId, Lighter>> {
  const lighter = (one: Amount | null, other: Amount | null): Lighter => {
    if (!one || !other || !isKnown(one) || !isKnown(other)) return 'not-known';
    if (one.span[1] < other.span[0]) return 'first';
    return other.span[1] < one.span[0] ? 'second' : 'alike';
  };
  return Object.fromEntries(
    measureIds.map((id) => [id, lighter(first?.[id] ?? null, second?.[id] ?? null)]),
  ) as Record<MeasureId, Lighter>;
}

/** OwnerOptions whose ranges cross, measure by measure: of these none is said to take less. */
export function overlapsOf(
  options: OwnerOptions,
): Readonly<Record<MeasureId, readonly (readonly [OwnerOptionId, OwnerOptionId])[]>> {
  const pairs = ownerOptionIds.flatMap((one, place) =>
    ownerOptionIds.slice(place + 1).map((other) => [one, other] as const),
  );
  return Object.fromEntries(
    measureIds.map((id) => [
      id,
      pairs.filter(([one, other]) => compareOptions(options[one], options[other])[id] === 'alike'),
    ]),
  ) as Record<MeasureId, (readonly [OwnerOptionId, OwnerOptionId])[]>;
}
