import type {
  CheckId,
  CheckResult,
  ClockRecord,
  Entry,
  GivenId,
  PullOffRecord,
  Reading,
  ReadinessRecord,
  Spoiler,
} from '$lib/answers/readiness-record';

/** Changes to a record, each giving a new one. */

/** A record with nothing in it yet. The seed is short, to be read aloud; a million are enough. */
export const newRecord = (): ReadinessRecord => ({
  seed: (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0) % 1_000_000,
  results: {},
});

const withoutTail = (readings: readonly Reading[]): readonly Reading[] => {
  const last = readings.findLastIndex((reading) => reading !== '');
  return readings.slice(0, last + 1);
};

function withResult(record: ReadinessRecord, check: CheckId, result: CheckResult): ReadinessRecord {
  return { ...record, results: { ...record.results, [check]: result } };
}

/** Puts readings in from one place on; empty ones at the end fall away. */
export function withReadings(
  record: ReadinessRecord,
  check: CheckId,
  from: number,
  typed: readonly Reading[],
): ReadinessRecord {
  const result = record.results[check] ?? { readings: [] };
  const readings = [...result.readings];
  while (readings.length < from) readings.push('');
  readings.splice(from, typed.length, ...typed);
  return withResult(record, check, { ...result, readings: withoutTail(readings) });
}

export function withGiven(
  record: ReadinessRecord,
  check: CheckId,
  id: GivenId,
  entry: Entry,
): ReadinessRecord {
  const result = record.results[check] ?? { readings: [] };
  return withResult(record, check, { ...result, given: { ...result.given, [id]: entry } });
}

export const withCount = (
  record: ReadinessRecord,
  check: CheckId,
  entry: Entry,
): ReadinessRecord => ({ ...record, counts: { ...record.counts, [check]: entry } });

export function withAsked(
  record: ReadinessRecord,
  check: CheckId,
  isAsked: boolean,
): ReadinessRecord {
  const others = (record.asked ?? []).filter((id) => id !== check);
  return { ...record, asked: isAsked ? [...others, check] : others };
}

export const withPullOff = (
  record: ReadinessRecord,
  change: (pullOff: PullOffRecord) => PullOffRecord,
): ReadinessRecord => ({ ...record, pullOff: change(record.pullOff ?? { tests: [] }) });

export const withClock = (record: ReadinessRecord, clock: ClockRecord): ReadinessRecord => ({
  ...record,
  clock,
});

export const spoiledAt = (
  clock: ClockRecord | undefined,
  by: Spoiler,
  at: string,
): ClockRecord => ({
  ...clock,
  spoiled: [...(clock?.spoiled ?? []), { by, at }],
});
