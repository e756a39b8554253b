import { describe, expect, test } from 'vitest';
import type { Job } from '$lib/answers/job';
import { begunApart, besideHere, fieldsOf, keyOf, mergeJobs } from '$lib/keep/merge';

type Loose = Record<string, unknown>;
const zone = (id: string, name = '', more: Loose = {}) => ({ id, name, answers: {}, ...more });
const job = (zones: readonly Loose[], more: Loose = {}): Job =>
  ({ name: 'Sluice (invented)', site: {}, zones, ...more }) as unknown as Job;
const merged = (here: Job, brought: Job) => {
  const read = mergeJobs(here, brought);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
};

describe('the fields of a job', () => {
  test('are those a reader changes one by one: an answer, a price, a tool, a go of the crew', () => {
    const go = { people: 2, to: '2026-05-04T09:30:00+02:00' };
    const log = { grind: { spells: { '2026-05-04T07:30:00+02:00': go }, note: 'dusty' } };
    const all = job(
      [
        zone('a', 'Ramp', {
          answers: { depth: 5, contamination: { yes: ['oil'], maybe: [] } },
          readiness: { seed: 1, results: { sound: { readings: [1] } } },
          patches: [{ x: 1, y: 2, length: 3, width: 4 }],
          log,
        }),
      ],
      {
        site: { salts: ['none'] },
        calendar: { start: '2026-05-04' },
        prices: { perHour: 50 },
        own: { 'rate.grind': 3 },
        toolLevels: { grinder: { noise: 100, vibration: 5 } },
        crewDay: { region: 'eu' },
        survey: { slab: { length: 4000, width: 3000 } },
        log,
      },
    );
    const goAt = ['log', 'grind', 'spells', '2026-05-04T07:30:00+02:00'];
    expect([...fieldsOf(all).values()].map(({ place }) => place)).toEqual([
      ['name'],
      ['site', 'salts'],
      ['calendar', 'start'],
      ['prices', 'perHour'],
      ['own', 'rate.grind'],
      ['toolLevels', 'grinder'],
      ['crewDay', 'region'],
      ['survey'],
      [...goAt, 'people'],
      [...goAt, 'to'],
      ['log', 'grind', 'note'],
      ['zones', 'a', 'name'],
      ['zones', 'a', 'answers', 'depth'],
      ['zones', 'a', 'answers', 'contamination'],
      ['zones', 'a', 'readiness', 'seed'],
      ['zones', 'a', 'readiness', 'results'],
      ['zones', 'a', 'patches'],
      ['zones', 'a', ...goAt, 'people'],
      ['zones', 'a', ...goAt, 'to'],
      ['zones', 'a', 'log', 'grind', 'note'],
    ]);
    expect(fieldsOf(all).get(keyOf(['zones', 'a', 'answers', 'depth']))?.value).toBe(5);
  });

  test('are none where nothing stands', () => {
    const bare = job([], { crew: undefined });
    expect([...fieldsOf(bare).values()].map(({ place }) => place)).toEqual([['name']]);
    expect(merged(job([]), bare).taken).toEqual([]);
  });
});

describe('a job brought back', () => {
  test('differs in nothing where the same stands in another order', () => {
    const patch = (names: readonly string[]) =>
      Object.fromEntries(
        names.map((name) => [name, { x: 1, y: 2, length: 300, width: 400 }[name]]),
      );
    const orders = [
      ['x', 'y', 'length', 'width'],
      ['width', 'length', 'y', 'x'],
      ['y', 'width', 'x', 'length'],
    ].map((names) => job([zone('a', 'Ramp', { patches: [patch(names)] })]));
    for (const here of orders)
      for (const brought of orders) expect(merged(here, brought).differing).toEqual([]);
    const [here] = orders as [Job];
    const wider = job([zone('a', 'Ramp', { patches: [{ x: 1, y: 2, length: 300, width: 401 }] })]);
    expect(merged(here, wider).differing).toMatchObject([{ place: ['zones', 'a', 'patches'] }]);
  });

  test('comes together also where nothing is known of the site, and keeps the order here', () => {
    const { job: both } = merged(job([zone('b'), zone('a')]), job([zone('c'), zone('a')]));
    expect(both.site).toEqual({});
    expect(both.zones.map(({ id }) => id)).toEqual(['b', 'a', 'c']);
  });

  test('is refused where what comes of it is no job', () => {
    const one = job([zone('a', 'turned \u202e round')]);
    expect(mergeJobs(job([]), one)).toMatchObject({
      ok: false,
      problem: { path: 'zones[0].name' },
    });
  });
});

describe('zones of one letter', () => {
  test('were begun apart where both have a name, and not the same', () => {
    const here = job([
      zone('a', 'Ramp'),
      zone('b', 'Kerb'),
      zone('c', ''),
      zone('d', 'Steps'),
      zone('e', 'Wall'),
      zone('f', ''),
    ]);
    const brought = job([
      zone('d', 'Steps'),
      zone('c', 'Landing'),
      zone('b', ''),
      zone('a', 'Floor'),
      zone('f', ''),
    ]);
    expect(begunApart(here, brought)).toEqual(['a']);
    expect(begunApart(brought, here)).toEqual(['a']);
  });

  test('come beside each other under ids that neither has', () => {
    const here = job([zone('a', 'Ramp'), zone('b', 'Kerb'), zone('a2', 'Wall')]);
    const brought = job([zone('a', 'Floor'), zone('b', 'Steps'), zone('a3'), zone('c')], {
      rest: 'c',
    });
    const beside = besideHere(here, brought, ['a', 'b']);
    expect(beside.zones.map(({ id, name }) => [id, name])).toEqual([
      ['a4', 'Floor'],
      ['b2', 'Steps'],
      ['a3', ''],
      ['c', ''],
    ]);
    expect(beside.rest).toBe('c');
  });

  test('get ids of their own also where one new id is like the next', () => {
    // With a2 to a21 there, both "a" and "a2" would next become "a22".
    const here = job([zone('a', 'Ramp'), zone('a2', 'Kerb')]);
    const many = Array.from({ length: 20 }, (_, at) => zone(`a${String(at + 2)}`, `Bay ${at}`));
    const beside = besideHere(here, job([zone('a', 'Floor'), ...many]), ['a', 'a2']);
    expect(beside.zones.slice(0, 2).map(({ id }) => id)).toEqual(['a22', 'a23']);
  });

  test('stay where none was begun apart, and nothing is put where no rest was named', () => {
    const brought = job([zone('a', 'Ramp')]);
    expect(besideHere(job([]), brought, [])).toStrictEqual(brought);
  });
});
