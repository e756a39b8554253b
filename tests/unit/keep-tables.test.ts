import { describe, expect, it } from 'vitest';
import { choicesOf, questionIds, questions } from '$lib/answers/questions';
import { compact, spread } from '$lib/keep/compact';
import { parseJob } from '$lib/keep/job-file';
import { pack } from '$lib/keep/packing';
import { readShareLink } from '$lib/keep/share-link';
import { rowsOf, type Table } from '$lib/keep/tables/table';
import { newest, newestVersion, nothingChanged, tables } from '$lib/keep/tables/tables';
import { version1 } from '$lib/keep/tables/version-1';
import { version2 } from '$lib/keep/tables/version-2';
import { problemSentence } from '$words/keep';

/** What a question means, wherever it stands and in whatever order its choices are shown. */
const meaning = ({ scope, kind, unit = '', choices = [] }: Omit<Table[number], 'id'>) =>
  `${scope} ${kind} ${unit} ${[...choices].sort().join(' ')}`;
const linkOf = async (version: number, content: unknown) =>
  readShareLink(`#job${version}.${await pack(JSON.stringify(content))}`);

describe('the table of the newest version', () => {
  it('says of every question what the interview says; a change needs a new version', () => {
    const frozen = Object.fromEntries((newest as Table).map((row) => [row.id, meaning(row)]));
    const live = Object.fromEntries(
      questionIds.map((id) => [id, meaning(questions[id] as Omit<Table[number], 'id'>)]),
    );
    expect(live).toEqual(frozen);
    expect(nothingChanged).toBe(true);
  });

  it('has room for every choice in a number a link can carry', () => {
    for (const table of tables as readonly Table[])
      for (const { kind, choices = [] } of table)
        expect(choices.length * (kind === 'many' ? 2 : 1)).toBeLessThanOrEqual(52);
  });

  it('keeps every question and every choice of the version before', () => {
    for (const row of version1 as Table) {
      const next = (version2 as Table).find(({ id }) => id === row.id);
      expect(next).toMatchObject({ scope: row.scope, kind: row.kind });
      expect(next?.choices ?? []).toEqual(expect.arrayContaining([...(row.choices ?? [])]));
    }
  });
});

describe('a link of a version', () => {
  const empty = (table: Table): unknown[] => [
    '',
    rowsOf(table, 'site').map(() => null),
    ['a'],
    [''],
    rowsOf(table, 'zone').map(() => [null]),
    0,
    0,
    0,
  ];
  const twoVersions = [version1, version2] as readonly Table[];

  it('counts choices by its own table: the second version has steps in two kinds', () => {
    const site = (table: Table, code: number) => {
      const whole = empty(table);
      whole[1] = rowsOf(table, 'site').map(({ id }) => (id === 'element' ? code : null));
      const read = spread(whole, twoVersions.indexOf(table) + 1, twoVersions);
      return read.ok && (read.value.site as Record<string, unknown>).element;
    };
    // The sixth power of two is no choice of the first version.
    expect(site(version1, 0b00100)).toEqual(['suspended-slab']);
    expect(site(version2, 0b00100)).toEqual(['suspended-steps']);
    expect(site(version2, 0b01000)).toEqual(['suspended-slab']);
    expect(site(version1, 0b100000)).toBe(false);
    expect(site(version2, 0b100000)).toEqual(['soffit']);
  });

  it('is refused whole when it is not built as its version builds it', async () => {
    const good = empty(newest);
    expect(await linkOf(newestVersion, good)).toMatchObject({ ok: true });
    const wrong: [string, (link: unknown[]) => unknown][] = [
      ['a part too many', (link) => [...link, 0]],
      ['a part too few', (link) => link.slice(0, 7)],
      ['a question too many', (link) => link.with(1, [...(link[1] as []), null])],
      ['a column too few', (link) => link.with(4, (link[4] as []).slice(1))],
      [
        'a column too long',
        (link) =>
          link.with(
            4,
            (link[4] as []).map(() => [null, null]),
          ),
      ],
      ['a name too few', (link) => link.with(3, [])],
      ['an id in place of a code', (link) => link.with(1, ['slab', ...(link[1] as []).slice(1)])],
      [
        '"not-sure" in place of a code',
        (link) => link.with(1, ['not-sure', ...(link[1] as []).slice(1)]),
      ],
      ['an answer among the named parts', (link) => link.with(5, { element: 'slab' })],
      ['zones among the named parts', (link) => link.with(7, { zones: [] })],
      ['an answer among the parts of a zone', (link) => link.with(6, [{ depth: 5 }])],
      ['a text for named parts', (link) => link.with(7, 'prices')],
      ['no list', () => ({ job: good })],
    ];
    for (const [what, change] of wrong)
      expect([what, await linkOf(newestVersion, change([...good]))]).toMatchObject([
        what,
        { ok: false, problem: { expected: { id: 'whole-link' } } },
      ]);
  });

  it('is refused by name when it carries a part that this copy of the site does not know', async () => {
    const read = await linkOf(newestVersion, empty(newest).with(7, { ['a-part-of-tomorrow']: {} }));
    expect(read.ok ? 'taken' : problemSentence(read.problem)).toMatch(
      /^a-part-of-tomorrow: expected a field that is known here: .*prices.*found "a-part-of-tomorrow"$/,
    );
  });

  it('is never made of a choice that has no place in it', () => {
    const job = { name: '', site: { element: ['raft'] }, zones: [] };
    expect(() => compact(job as never)).toThrow('element: "raft" has no place in a link.');
  });
});

describe('a file of an older version', () => {
  it('may hold what came later, and leaves open only what it knew', () => {
    for (const [index, table] of (tables as readonly Table[]).entries()) {
      const site = Object.fromEntries(
        rowsOf(table, 'site').map(({ id, kind }) => [
          id,
          kind === 'number' ? 'unknown' : 'not-sure',
        ]),
      );
      const read = parseJob({ format: 'down-to-sound.job', version: index + 1, site, zones: [] });
      if (!read.ok) throw new Error(problemSentence(read.problem));
      const { choices = [] } = table[0] as Table[number];
      expect(new Set(read.value.site.element)).toEqual(new Set(choices));
    }
    const later = {
      id: 'a',
      ...Object.fromEntries(
        questionIds.filter((id) => questions[id].scope === 'zone').map((id) => [id, 'not-sure']),
      ),
    };
    expect(
      parseJob({
        format: 'down-to-sound.job',
        version: 1,
        site: { element: choicesOf('element') },
        zones: [later],
      }),
    ).toMatchObject({ ok: true });
  });
});
