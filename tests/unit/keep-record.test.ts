import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { asRecord, nextRecord, readRecord, recordOf, summaryOf, textOf } from '$lib/keep/record';

const file = (more: object) => ({
  format: 'down-to-sound.job',
  version: 1,
  site: {},
  zones: [],
  ...more,
});
const record = (raw: object) => asRecord('a', { createdAt: 5, changedAt: 6, revision: 7, ...raw });
const line = { id: 'a', createdAt: 5, changedAt: 6, revision: 7 };

describe('a job as the device has it', () => {
  const job: Job = { name: 'Ramp', site: {}, zones: [] };
  it('comes back with its times and its revision', () => {
    const stored = { id: 'a', job, createdAt: 5, changedAt: 6, revision: 7 };
    expect(readRecord(recordOf(stored))).toEqual({ ok: true, value: stored });
  });

  it('keeps from when it is, tells when it changed, and counts on', () => {
    const before = record({ file: file({}) });
    expect(nextRecord('a', job, 90, before)).toMatchObject({
      createdAt: 5,
      changedAt: 90,
      revision: 8,
    });
    const [one, other] = [nextRecord('b', job, 90, undefined), nextRecord('b', job, 90, undefined)];
    expect(one).toMatchObject({ id: 'b', createdAt: 90, changedAt: 90 });
    // Drawn by lot: a job written anew is not taken for the one that was deleted.
    expect(one.revision).not.toBe(other.revision);
    expect(Math.min(one.revision, other.revision)).toBeGreaterThan(0);
  });

  it.each([
    [8.64e15, 8.64e15],
    [8.64e15 + 2, 0],
    [-5, 0],
    ['5', 0],
    [NaN, 0],
    [undefined, 0],
  ])('with the time %s counts as of %s', (time, taken) => {
    expect(asRecord('a', { createdAt: time, changedAt: time })).toMatchObject({
      createdAt: taken,
      changedAt: taken,
    });
  });

  it.each([
    [3, 3],
    [0, 0],
    [-1, 0],
    [1.5, 0],
    ['3', 0],
    [2 ** 53, 0],
  ])('with the revision %s counts as revision %s', (revision, taken) => {
    expect(asRecord('a', { revision }).revision).toBe(taken);
  });

  it('is nothing where no record stands', () => {
    for (const raw of [null, 'soup', 5, undefined])
      expect(asRecord('a', raw)).toEqual({
        id: 'a',
        file: undefined,
        createdAt: 0,
        changedAt: 0,
        revision: 0,
      });
  });
});

describe('a line in the list of jobs', () => {
  it('has the name, how many zones, and what tells it from others', () => {
    const zones = [
      { id: 'a', name: ' Ramp ' },
      { id: 'b' },
      { id: 'c', name: '  ' },
      { id: 'd', name: 'Kerb' },
    ];
    expect(
      summaryOf(record({ file: file({ site: { name: 'Quay', element: 'steps' }, zones }) })),
    ).toEqual({
      ...line,
      name: 'Quay',
      zones: 4,
      about: { element: 'steps', zones: ['Ramp', 'Kerb'] },
    });
  });

  it.each([
    ['nobody said', undefined],
    ['two are possible', ['steps', 'slab']],
    ['nobody is sure', 'not-sure'],
  ])('names no kind of surface where %s', (_what, element) => {
    const site = element === undefined ? {} : { element };
    expect(summaryOf(record({ file: file({ site }) })).about).toEqual({ element: null, zones: [] });
  });

  it('tells what is wrong where there is no job to read', () => {
    expect(summaryOf(record({ file: file({ zones: 5 }) }))).toMatchObject({
      ...line,
      name: '',
      zones: 0,
      damaged: { path: 'zones' },
    });
  });

  it('has names that cannot be seen left empty, whatever else is wrong beside them', () => {
    const unseen = { site: { name: '\u200b' }, zones: [{ id: 'a', name: '\u3164', trial: null }] };
    expect(summaryOf(record({ file: file(unseen) }))).toMatchObject({
      damaged: { path: 'zones[0].trial' },
    });
    const tidy = { site: { name: '\u200b' }, zones: [{ id: 'a', name: 'Ramp', cracks: ['open'] }] };
    expect(readRecord(record({ file: file(tidy) }))).toMatchObject({
      value: { job: { name: '', zones: [{ name: 'Ramp', answers: { cracks: ['open'] } }] } },
    });
  });
});

describe('whatever stands in a record, as text to take away', () => {
  const read = (value: unknown) => JSON.parse(textOf(value)) as unknown;

  it('is JSON, one field a line', () => {
    expect(textOf({ a: 1, b: [null, 'x'] })).toBe(
      '{\n  "a": 1,\n  "b": [\n    null,\n    "x"\n  ]\n}',
    );
    expect(read({ a: null, b: [null, null] })).toEqual({ a: null, b: [null, null] });
  });

  it('says in words what JSON cannot hold', () => {
    expect(read({ big: 10n, map: new Map([['a', 1]]), set: new Set(['b']) })).toEqual({
      big: '10',
      map: [['a', 1]],
      set: ['b'],
    });
    expect(textOf(undefined)).toBe('undefined');
  });

  it('tells where something holds itself, and not where it merely stands twice', () => {
    const shared = { a: 1 };
    expect(read({ one: shared, two: shared, list: [shared, shared] })).toEqual({
      one: shared,
      two: shared,
      list: [shared, shared],
    });
    const loop: Record<string, unknown> = { a: 1, inner: { deep: {} }, after: shared };
    (loop.inner as Record<string, unknown>).self = loop;
    loop.self = loop;
    expect(read(loop)).toEqual({
      a: 1,
      inner: { deep: {}, self: '(itself)' },
      after: shared,
      self: '(itself)',
    });
  });

  it('is never a fault', () => {
    const spoilt = {
      toJSON: () => {
        throw new Error('no');
      },
    };
    expect(textOf(spoilt)).toBe('[object Object]');
  });
});
