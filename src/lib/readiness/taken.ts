import { checkIds, type CheckId, type ReadinessRecord } from '$lib/answers/readiness-record';
import type { ZoneAnswers } from '$lib/answers/answers';
import type { MethodId } from '$shared/methods';

/** The work that results are taken after: the method, and what it had to take off. */
export type Under = readonly string[];

/** What the results of a zone are taken under now, by its answers. */
export const underNow = (
  method: MethodId | null,
  { depth, looseness }: Pick<ZoneAnswers, 'depth' | 'looseness'>,
): Under => [
  method ?? '',
  ...(depth === undefined ? [] : [depth].flat().map(String)),
  ...(looseness ?? []),
];

/** Samples of the concrete deeper in: what is prepared above it changes nothing in them. */
const deeperIn: readonly CheckId[] = ['chloride', 'carbonation', 'half-cell'];

/**
 * Whether the results of a check were taken before the work became another: what they prove is gone.
 * Results that do not say under what they were taken count as before. Source: common practice.
 */
export function takenBefore(record: ReadinessRecord, check: CheckId, now?: Under): boolean {
  const { under } = (check === 'pull-off' ? record.pullOff : record.results[check]) ?? {};
  if (!under || !now || deeperIn.includes(check)) return false;
  return under.join() !== now.join();
}

/** The record with what was typed anew marked as taken under the work of now. */
export function takenUnder(
  before: ReadinessRecord | undefined,
  after: ReadinessRecord,
  now: Under,
): ReadinessRecord {
  const anew = checkIds.flatMap((check) => {
    const result = after.results[check];
    return result && result.readings !== before?.results[check]?.readings
      ? [[check, { ...result, under: now }] as const]
      : [];
  });
  const { pullOff } = after;
  return {
    ...after,
    results: { ...after.results, ...Object.fromEntries(anew) },
    ...(pullOff &&
      pullOff.tests !== before?.pullOff?.tests && { pullOff: { ...pullOff, under: now } }),
  };
}
