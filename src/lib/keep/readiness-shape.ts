import * as v from 'valibot';
import {
  checkIds,
  givenIds,
  planes,
  requirementIds,
  spoilers,
  type CheckResult,
  type PullOffTest,
  type ReadinessRecord,
  type Requirement,
} from '$lib/answers/readiness-record';
import { choicesOf } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import { entry, list, name, object, picked, unique, whole } from './shapes';

/** A seed is what a 32-bit generator takes. */
const seedRange = [0, 2 ** 32 - 1] as const;

/** The same shape under each of these fields, every one of which may be missing. */
const each = <const K extends string, T>(keys: readonly K[], shape: v.GenericSchema<T, T>) =>
  object(
    Object.fromEntries(keys.map((key) => [key, v.exactOptional(shape)])),
  ) as unknown as v.GenericSchema<Partial<Record<K, T>>, Partial<Record<K, T>>>;

const rows = rangeOf('limit.tests')[1];
const check = picked(checkIds, { id: 'names', choices: checkIds });

/** A method, and each band and kind of damage it may have had to take off. */
const under = v.exactOptional(
  list(name, 1 + choicesOf('depth').length + choicesOf('looseness').length),
);

const result: v.GenericSchema<CheckResult, CheckResult> = object({
  readings: list(entry, rows),
  given: v.exactOptional(each(givenIds, entry)),
  under,
});

const test: v.GenericSchema<PullOffTest, PullOffTest> = object({
  stress: v.exactOptional(entry),
  force: v.exactOptional(entry),
  disc: v.exactOptional(entry),
  shares: each(planes, entry),
});

const requirement: v.GenericSchema<Requirement, Requirement> = object({
  id: picked(requirementIds, { id: 'names', choices: requirementIds }),
  mean: v.exactOptional(entry),
  least: v.exactOptional(entry),
});

const clock = object({
  prepared: v.exactOptional(name),
  spoiled: list(
    object({ by: picked(spoilers, { id: 'names', choices: spoilers }), at: name }),
    rows,
  ),
});

/** What was typed while a zone was checked, as the job file has it. */
export const readinessShape: v.GenericSchema<ReadinessRecord, ReadinessRecord> = object({
  seed: whole(seedRange),
  length: v.exactOptional(entry),
  width: v.exactOptional(entry),
  counts: v.exactOptional(each(checkIds, entry)),
  asked: v.exactOptional(v.pipe(list(check, checkIds.length), unique())),
  results: each(checkIds, result),
  pullOff: v.exactOptional(
    object({ tests: list(test, rows), requirement: v.exactOptional(requirement), under }),
  ),
  clock: v.exactOptional(clock),
  by: v.exactOptional(name),
  at: v.exactOptional(name),
  note: v.exactOptional(name),
});
