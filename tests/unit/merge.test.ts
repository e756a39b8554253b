import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Job } from '$lib/answers/job';
import { begunApart, besideHere, fieldsOf, keyOf, mergeJobs } from '$lib/keep/merge';
import { anyJob } from '../helpers/any-job';

/** A value as text, whatever order its fields stand in. */
const sorted = (value: unknown): string =>
  Array.isArray(value)
    ? `[${value.map(sorted).join()}]`
    : typeof value === 'object' && value !== null
      ? `{${Object.entries(value)
          .map(([name, each]) => `${name}:${sorted(each)}`)
          .sort()
          .join()}}`
      : JSON.stringify(value);
const values = (job: Job) =>
  new Map([...fieldsOf(job)].map(([key, { value }]) => [key, sorted(value)]));
const merged = (here: Job, brought: Job, chosen?: ReadonlySet<string>) => {
  const read = mergeJobs(here, brought, chosen);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
};
/** Any two jobs: of one origin, each changed for itself, and of none. */
const two = fc.tuple(anyJob(), anyJob());

const job = (more: object, answers: object = {}): Job =>
  ({
    name: 'Sluice (invented)',
    site: { element: ['slab'] },
    zones: [{ id: 'a', name: 'Ramp', answers: { area: 12, ...answers } }],
    ...more,
  }) as unknown as Job;

describe('a job brought back', () => {
  test('what only one of them says comes along, and nothing else changes', () => {
    const {
      job: both,
      taken,
      differing,
    } = merged(job({ crew: 3 }, { looseness: ['hollow'] }), job({ hoursPerDay: 7 }, { depth: 40 }));
    expect(taken.map(({ place }) => place)).toEqual([
      ['hoursPerDay'],
      ['zones', 'a', 'answers', 'depth'],
    ]);
    expect(differing).toEqual([]);
    expect(both).toMatchObject({ crew: 3, hoursPerDay: 7 });
    expect(both.zones[0]?.answers).toEqual({ area: 12, looseness: ['hollow'], depth: 40 });
  });

  test('what differs stands as it is here until the reader chooses', () => {
    const [here, brought] = [job({}, { depth: 20 }), job({}, { depth: 40 })];
    const place = ['zones', 'a', 'answers', 'depth'];
    expect(merged(here, brought)).toMatchObject({
      differing: [{ place, here: 20, brought: 40 }],
      job: here,
    });
    expect(merged(here, brought, new Set([keyOf(place)])).job).toEqual(brought);
  });

  test('zones of one letter that were begun apart come beside each other', () => {
    const here = job({});
    const brought = job({
      zones: [{ id: 'a', name: 'Kerb', answers: { depth: 30 } }],
      rest: 'a',
      totalArea: 50,
    });
    const apart = begunApart(here, brought);
    expect(apart).toEqual(['a']);
    const { job: both } = merged(here, besideHere(here, brought, apart));
    expect(both.zones.map(({ id, name }) => [id, name])).toEqual([
      ['a', 'Ramp'],
      ['a2', 'Kerb'],
    ]);
    expect(both.rest).toBe('a2');
  });

  test('a job brought into itself is itself', () => {
    fc.assert(
      fc.property(anyJob(), (each) => {
        const { job: both, taken, differing } = merged(each, each);
        expect(values(both)).toEqual(values(each));
        expect([taken, differing]).toEqual([[], []]);
      }),
    );
  });

  test('nothing is lost, and nothing here is overwritten unasked', () => {
    fc.assert(
      fc.property(two, ([here, brought]) => {
        const read = mergeJobs(here, brought);
        fc.pre(read.ok);
        const { job: both, taken, differing } = read.value;
        const after = values(both);
        for (const [key, value] of values(here)) expect(after.get(key), key).toBe(value);
        const told = new Set([...taken, ...differing].map(({ place }) => keyOf(place)));
        for (const [key, value] of values(brought))
          expect(after.get(key) === value || told.has(key), key).toBe(true);
      }),
    );
  });

  test('where fields differ in name, the order of bringing changes nothing', () => {
    fc.assert(
      fc.property(two, ([one, other]) => {
        const [to, fro] = [mergeJobs(one, other), mergeJobs(other, one)];
        fc.pre(to.ok && fro.ok);
        const differing = new Set(to.value.differing.map(({ place }) => keyOf(place)));
        expect(new Set(fro.value.differing.map(({ place }) => keyOf(place)))).toEqual(differing);
        const [left, right] = [values(to.value.job), values(fro.value.job)];
        expect(new Set(left.keys())).toEqual(new Set(right.keys()));
        for (const [key, value] of left)
          if (!differing.has(key)) expect(right.get(key)).toBe(value);
      }),
    );
  });

  test('every difference chosen, it says of them what the brought one says', () => {
    fc.assert(
      fc.property(two, ([here, brought]) => {
        const first = mergeJobs(here, brought);
        fc.pre(first.ok);
        const chosen = new Set(first.value.differing.map(({ place }) => keyOf(place)));
        const read = mergeJobs(here, brought, chosen);
        fc.pre(read.ok);
        const after = values(read.value.job);
        for (const [key, value] of values(brought)) expect(after.get(key), key).toBe(value);
      }),
    );
  });
});
