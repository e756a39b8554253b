import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { Survey } from '$lib/answers/survey';
import { compact, spread } from '$lib/keep/compact';
import { foldTaps, unfoldTaps } from '$lib/keep/compact-taps';
import { unpack } from '$lib/keep/packing';
import { carriesJob, readShareLink } from '$lib/keep/share-link';
import { rowsOf } from '$lib/keep/tables/table';
import { newest, newestVersion, tables } from '$lib/keep/tables/tables';

/** A job of one zone and no answer, as a link has it, with one question answered by a code. */
const empty = (): unknown[] => [
  '',
  rowsOf(newest, 'site').map(() => null),
  ['a'],
  [''],
  rowsOf(newest, 'zone').map(() => [null]),
  0,
  0,
  0,
];
const withCode = (id: string, code: unknown): unknown[] =>
  empty()
    .with(
      1,
      rowsOf(newest, 'site').map((row) => (row.id === id ? code : null)),
    )
    .with(
      4,
      rowsOf(newest, 'zone').map((row) => [row.id === id ? code : null]),
    );
const read = (link: unknown) => spread(link, newestVersion, tables);
const broken = {
  ok: false,
  problem: { path: '', expected: { id: 'whole-link' }, found: { id: 'broken' } },
};
const answered = (id: string, code: unknown): unknown => {
  const file = read(withCode(id, code));
  if (!file.ok) throw new Error('not read');
  const { site, zones } = file.value as Record<string, Record<string, unknown>>;
  return { ...site, ...(zones as unknown as Record<string, unknown>[])[0] }[id];
};

describe('a job in few characters', () => {
  it('says in one sign that there is nothing more: machines, patches, drawing', () => {
    const job = { name: '', site: {}, zones: [{ id: 'a', name: '', answers: {} }] };
    expect(compact(job).slice(5)).toEqual([0, 0, 0]);
    expect(compact({ ...job, crew: 3 }).slice(5)).toEqual([{ crew: 3 }, 0, 0]);
    const log = { grind: { note: 'dusty' } };
    const two = [...job.zones, { id: 'b', name: '', answers: {}, log }];
    expect(compact({ ...job, zones: two } as never)[6]).toEqual([0, { log }]);
  });

  it.each([
    ['thickness', 120, 120],
    ['thickness', '?', 'unknown'],
    ['depth', 4, 4],
    ['depth', -0b101, ['film', '3-to-6']],
    ['cracks', 0b10, ['hairline']],
    ['contamination', 0b1 + 2 ** 6 * 0b10, { yes: ['oil'], maybe: ['thin-coating'] }],
    ['makerProfile', 3, 3],
    ['makerProfile', 0, 'no-sheet'],
    ['makerMoisture', 0, 'no-sheet'],
  ])('means by %s %j what a file says with %j', (id, code, means) => {
    expect(answered(id, code)).toEqual(means);
  });

  it.each([
    ['thickness', 'thick'],
    ['thickness', true],
    ['depth', '5'],
    ['depth', -(2 ** 7)],
    ['depth', -1.5],
    ['cracks', -1],
    ['cracks', 1.5],
    ['cracks', 2 ** 5],
    ['contamination', -1],
    ['contamination', 2 ** 12],
    ['makerProfile', 99],
    ['makerProfile', -1],
    ['makerProfile', '1'],
    ['makerMoisture', 9],
  ])('is refused whole where the code of %s is %j', (id, code) => {
    expect(read(withCode(id, code))).toEqual(broken);
  });

  const wrong: [string, unknown[]][] = [
    ['is of no version', []],
    ['has a column too many', empty().with(4, [...(empty()[4] as unknown[]), [null]])],
    ['has one column too long', empty().with(4, (empty()[4] as unknown[]).with(2, [null, null]))],
    ['has a name too many', empty().with(3, ['', ''])],
    ['has parts for no zone', empty().with(6, [0, 0])],
    ['has nothing where the parts of zones stand', empty().with(6, null)],
    ['has a list in place of named parts', empty().with(5, [])],
    ['has nothing in place of named parts', empty().with(5, null)],
    ['has the name of the job twice', empty().with(5, { name: 'Ramp' })],
    ['has the id of a zone twice', empty().with(6, [{ id: 'b' }])],
    ['has the name of a zone twice', empty().with(6, [{ name: 'Kerb' }])],
    ...['format', 'version', 'site', 'zones'].map((field): [string, unknown[]] => [
      `says its own ${field}`,
      empty().with(7, { [field]: 1 }),
    ]),
  ];
  it.each(wrong)('is refused whole where it %s', (_what, link) => {
    expect(read(link)).toEqual(broken);
  });

  it('is read with the table of its version, and refused where there is none', () => {
    expect(read(empty())).toMatchObject({ ok: true });
    for (const version of [0, newestVersion + 1])
      expect(spread(empty(), version, tables)).toEqual(broken);
  });
});

describe('the taps of a drawing in a link', () => {
  const slab = { length: 4000, width: 3000 };
  const tap = (x: number, y: number, rings: boolean, again?: boolean) => ({
    kind: 'tap' as const,
    at: [x, y] as const,
    rings,
    ...(again !== undefined && { again }),
  });
  const crack = {
    kind: 'crack' as const,
    line: [
      [0, 0],
      [5, 5],
    ],
  };

  it('stand as steps from one to the next, each with how it sounded, and come back', () => {
    const marks = [
      tap(100, 200, true),
      tap(600, 200, false),
      tap(600, 700, true, true),
      tap(100, 700, false, true),
      tap(100, 100, true, false),
      tap(0, 0, false, false),
    ];
    const folded = foldTaps({ slab, marks });
    expect(folded).toEqual({
      slab,
      marks: [[100, 200, 1, 500, 0, 0, 0, 500, 3, -500, 0, 2, 0, -600, 5, -100, -100, 4]],
    });
    expect(unfoldTaps(folded)).toEqual({ slab, marks });
  });

  it('keep their place among the other marks, and begin anew behind one', () => {
    const marks = [tap(100, 100, true), crack, tap(150, 100, true), tap(1.5, 2, false)];
    const folded = foldTaps({ slab, marks } as unknown as Survey);
    expect(folded).toEqual({ slab, marks: [[100, 100, 1], crack, [150, 100, 1], marks[3]] });
    expect(unfoldTaps(folded)).toEqual({ slab, marks });
  });

  it('may be none', () => {
    expect(foldTaps({ slab })).toEqual({ slab });
    expect(foldTaps({ slab, marks: [] })).toEqual({ slab, marks: [] });
  });

  it.each([
    [null],
    [5],
    ['marks'],
    [{ slab }],
    [{ slab, marks: 'many' }],
    [{ slab, marks: [[1, 2]] }],
    [{ slab, marks: [[1, 2, 6]] }],
    [{ slab, marks: [[1, 2, -1]] }],
    [{ slab, marks: [[1.5, 2, 0]] }],
    [{ slab, marks: [['1', 2, 0]] }],
    [{ slab, marks: [crack, null] }],
  ])('that are none are left for the parser: %j', (survey) => {
    expect(unfoldTaps(survey)).toEqual(survey);
  });
});

describe('a text packed into a link', () => {
  const packed = (bytes: Uint8Array) => deflateSync(bytes).toString('base64url');

  it('is what another program packs by the same standard (zlib, RFC 1950; base64url, RFC 4648)', async () => {
    for (const text of ['', 'Ramp', 'é – 漢 🧱', '???>>>~~~'.repeat(50)])
      expect(await unpack(packed(Buffer.from(text)), 10_000)).toEqual({ text });
  });

  it('is taken up to so many bytes and no further', async () => {
    const five = packed(Buffer.from('abcde'));
    expect(await unpack(five, 5)).toEqual({ text: 'abcde' });
    expect(await unpack(five, 4)).toBe('too-large');
  });

  it('is broken where it is no UTF-8, no base64url, or cut', async () => {
    const good = packed(Buffer.from('Ramp'));
    const not = packed(new Uint8Array([0xff, 0xfe]));
    for (const bad of [not, '', 'a', `${good}=`, `${good}.AAA`, `.AAA${good}`])
      expect([bad, await unpack(bad, 100)]).toEqual([bad, 'broken']);
    expect(await unpack(good.slice(0, -4), 100)).toBe('broken');
    expect(await unpack(`AAAA${good}`, 100)).toBe('broken');
  });
});

describe('what stands behind # in an address', () => {
  it.each([
    ['#job2.abc', true],
    ['job2.abc', true],
    ['#job.abc', true],
    ['#jobs/2.abc', false],
    ['#my-job2.abc', false],
    ['#job2', false],
    ['', false],
  ])('%j carries a job: %s', (fragment, carries) => {
    expect(carriesJob(fragment)).toBe(carries);
  });

  it('is refused where it is longer than any link, before it is looked at', async () => {
    const link = (length: number) => `#job${newestVersion}.${'a'.repeat(length - 6)}`;
    expect(await readShareLink(link(100_001))).toMatchObject({
      problem: { expected: { id: 'smaller', limit: 100_000 }, found: { length: 100_001 } },
    });
    expect(await readShareLink(link(100_000))).toMatchObject({
      problem: { expected: { id: 'whole-link' } },
    });
  });

  it('is refused where it unfolds to more than any job', async () => {
    const bomb = deflateSync(Buffer.alloc(1_000_001, ' ')).toString('base64url');
    expect(await readShareLink(`#job${newestVersion}.${bomb}`)).toMatchObject({
      problem: { path: '', expected: { id: 'smaller', limit: 1_000_000 }, found: { id: 'broken' } },
    });
  });

  it('is refused where it is packed well and holds no job', async () => {
    const link = (text: string) =>
      `#job${newestVersion}.${deflateSync(Buffer.from(text)).toString('base64url')}`;
    for (const text of ['{', '[]', '{}'])
      expect(await readShareLink(link(text))).toEqual({
        ok: false,
        problem: { path: '', expected: { id: 'whole-link' }, found: { id: 'broken' } },
      });
    expect(await readShareLink('#job.x')).toMatchObject({
      problem: {
        expected: { id: 'link-version', known: tables.map((_, at) => String(at + 1)) },
        found: { text: '' },
      },
    });
    expect(await readShareLink('#top')).toEqual({
      ok: false,
      problem: { path: '', expected: { id: 'link' }, found: { id: 'text', text: '#top' } },
    });
  });
});
