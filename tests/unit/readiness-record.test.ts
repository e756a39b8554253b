import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import {
  checkIds,
  givenIds,
  planes,
  requirementIds,
  spoilers,
  type ReadinessRecord,
} from '$lib/answers/readiness-record';
import { jobText, parseJob, readJobText, writeJob } from '$lib/keep/job-file';
import { rounds } from '../helpers/rounds';

const job = (readiness: unknown): Job =>
  ({
    name: '',
    site: {},
    zones: [{ id: 'a', name: '', answers: {}, readiness }],
  }) as unknown as Job;

const text = fc
  .string({ maxLength: 30 })
  .filter((typed) => !/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069]/u.test(typed));
const entry = fc.oneof(
  fc.double({ min: -1e9, max: 1e9, noNaN: true }).map((n) => n + 0),
  text,
);
const some = <T extends string, V>(keys: readonly T[], value: fc.Arbitrary<V>) =>
  fc.dictionary(fc.constantFrom(...keys), value);

const record = fc.record(
  {
    seed: fc.nat(),
    length: entry,
    width: entry,
    counts: some(checkIds, entry),
    asked: fc.uniqueArray(fc.constantFrom(...checkIds)),
    results: some(
      checkIds,
      fc.record(
        { readings: fc.array(entry), given: some(givenIds, entry) },
        { requiredKeys: ['readings'] },
      ),
    ),
    pullOff: fc.record(
      {
        tests: fc.array(
          fc.record(
            { stress: entry, force: entry, disc: entry, shares: some(planes, entry) },
            { requiredKeys: ['shares'] },
          ),
        ),
        requirement: fc.record(
          { id: fc.constantFrom(...requirementIds), mean: entry, least: entry },
          { requiredKeys: ['id'] },
        ),
      },
      { requiredKeys: ['tests'] },
    ),
    clock: fc.record(
      {
        prepared: text,
        spoiled: fc.array(fc.record({ by: fc.constantFrom(...spoilers), at: text })),
      },
      { requiredKeys: ['spoiled'] },
    ),
    by: text,
    at: text,
    note: text,
  },
  { requiredKeys: ['seed', 'results'] },
);

describe('the readiness record in the job file', () => {
  it('comes back as it was typed, wrong entries and all', async () => {
    await fc.assert(
      fc.asyncProperty(record, async (typed) => {
        const plain = JSON.parse(JSON.stringify(typed)) as ReadinessRecord;
        const back = await readJobText(jobText(job(plain)));
        expect(back).toEqual({ ok: true, value: job(plain) });
      }),
      { numRuns: rounds(50, 200) },
    );
  });

  const read = (readiness: unknown) => {
    const result = parseJob(writeJob(job(readiness)));
    return result.ok ? 'read' : `${result.problem.path}: ${result.problem.expected.id}`;
  };
  it.each([
    [{ seed: 7, results: {} }, 'read'],
    [{ results: {} }, 'zones[0].readiness.seed: field'],
    [{ seed: -1, results: {} }, 'zones[0].readiness.seed: count'],
    [{ seed: 1.5, results: {} }, 'zones[0].readiness.seed: count'],
    [{ seed: 1, results: { magic: {} } }, 'zones[0].readiness.results.magic: known-field'],
    [
      { seed: 1, results: { ph: { readings: [true] } } },
      'zones[0].readiness.results.ph.readings[0]: entry',
    ],
    [
      { seed: 1, results: {}, pullOff: { tests: Array(501).fill({ shares: {} }) } },
      'zones[0].readiness.pullOff.tests: list',
    ],
    [{ seed: 1, results: {}, asked: ['ph', 'ph'] }, 'zones[0].readiness.asked: unique'],
  ])('%j: %s', (readiness, expected) => {
    expect(read(readiness)).toBe(expected);
  });
});
