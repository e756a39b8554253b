import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notSure } from '$lib/answers/answers';
import { jobText, parseJob, readJobBlob, readJobText, writeJob } from '$lib/keep/job-file';
import { currentVersion } from '$lib/keep/job-shape';
import { atPresentVersion } from '$lib/keep/versions';
import { problemSentence } from '$words/keep';
import { anyJob } from '../helpers/any-job';
import { onTrial, rounds } from '../helpers/rounds';

const folder = new URL('job-files/', import.meta.url);
const kept = (name: string) => readFileSync(new URL(name, folder), 'utf8');

type Loose = Record<string, unknown> & {
  site: Record<string, unknown>;
  zones: Record<string, unknown>[];
};
const good = (): Loose => JSON.parse(kept('version-1.json')) as Loose;

/** The sentence about a good file after one change. */
function after(change: (file: Loose) => void): string {
  const file = good();
  change(file);
  const read = parseJob(file);
  return read.ok ? 'accepted' : problemSentence(read.problem);
}
const zone = (file: Loose) => file.zones[0] as Record<string, unknown>;

describe('the job file', () => {
  it('comes back exactly, through values and through text', async () => {
    await fc.assert(
      fc.asyncProperty(anyJob(), async (job) => {
        expect(parseJob(writeJob(job))).toEqual({ ok: true, value: job });
        expect(await readJobText(jobText(job))).toEqual({ ok: true, value: job });
      }),
      { numRuns: onTrial(rounds(125, 500), 20) },
    );
  });

  it('is written the same way twice', () => {
    fc.assert(
      fc.property(anyJob(), (job) => {
        const read = parseJob(writeJob(job));
        expect(read.ok && writeJob(read.value)).toEqual(writeJob(job));
      }),
    );
  });

  it('keeps apart not answered, not sure, and sure', () => {
    const read = parseJob(good());
    if (!read.ok) throw new Error(problemSentence(read.problem));
    const [a, b, c] = read.value.zones;
    expect(a?.answers.looseness).toEqual(['fractured']);
    expect(b?.answers.looseness).toEqual(notSure('looseness'));
    expect(c?.answers).not.toHaveProperty('looseness');
    expect(a?.answers.contamination).toEqual({ yes: [], maybe: [] });
    expect(b?.answers.contamination).toEqual(notSure('contamination'));
    expect(c?.answers.contamination).toEqual({ yes: [], maybe: ['oil'] });
    expect(a?.answers.depth).toBe(5);
    expect(b?.answers.depth).toEqual(['3-to-6', '6-to-20']);
    expect([b?.answers.area, b?.answers.crackLength]).toEqual(['unknown', 'unknown']);
    expect(a?.answers).not.toHaveProperty('barLoss');
  });

  it('does not care in which order choices are written', () => {
    const one = parseJob({ ...good(), zones: [{ id: 'a', cracks: ['open', 'hairline'] }] });
    const other = parseJob({ ...good(), zones: [{ id: 'a', cracks: ['hairline', 'open'] }] });
    expect(one).toEqual(other);
  });

  it('migrates step by step from whatever version the file has', () => {
    const steps = [
      (file: object) => ({ ...file, version: 2, first: true }),
      (file: object) => ({ ...file, version: 3, second: true }),
    ];
    const at = (version: unknown) =>
      atPresentVersion({ format: 'down-to-sound.job', version }, steps);
    expect(at(1)).toMatchObject({ ok: true, value: { first: true, second: true, version: 3 } });
    expect(at(2)).toMatchObject({ ok: true, value: { second: true } });
    expect(at(2)).not.toHaveProperty('value.first');
    for (const wrong of [0, 4, 1.5, '1', null, undefined, [1]])
      expect(at(wrong)).toMatchObject({ ok: false, problem: { path: 'version' } });
  });
});

describe('a refusal names the place and what was expected', () => {
  const cases: [string, (file: Loose) => void, RegExp][] = [
    ['a typing slip in a field', (f) => (zone(f).dept = 3), /^zones\[0\]\.dept: .*id, name, depth/],
    [
      'an unknown id',
      (f) => (zone(f).depth = 'deep'),
      /^zones\[0\]\.depth: .*0 to 1000.*"film".*"deep"$/,
    ],
    ['a number past its limit', (f) => (zone(f).depth = 3000), /^zones\[0\]\.depth: .*found 3000$/],
    [
      'an infinite number',
      (f) => (zone(f).area = Infinity),
      /^zones\[0\]\.area: .*found Infinity$/,
    ],
    ['nothing possible', (f) => (zone(f).steel = []), /^zones\[0\]\.steel: .*empty list$/],
    [
      'one wrong among several',
      (f) => (zone(f).contamination = ['oil', 'tar']),
      /^zones\[0\]\.contamination\[1\]: .*"tar"$/,
    ],
    [
      'an id twice',
      (f) => (zone(f).contamination = ['oil', 'oil']),
      /^zones\[0\]\.contamination: .*twice/,
    ],
    [
      'both yes and maybe',
      (f) => (zone(f).contamination = { yes: ['oil'], maybe: ['oil'] }),
      /^zones\[0\]\.contamination: .*twice/,
    ],
    [
      'a slip in maybe',
      (f) => (zone(f).contamination = { yes: [], mabe: [] }),
      /contamination\.mabe: .*yes, maybe/,
    ],
    [
      'a wrong id in maybe',
      (f) => (zone(f).contamination = { maybe: ['tar'] }),
      /contamination\.maybe\[0\]: .*"tar"/,
    ],
    ['a list for the site', (f) => (f.site = [] as never), /^site: expected an object/],
    ['no site', (f) => delete (f as Partial<Loose>).site, /^site: expected a field "site"/],
    ['no id', (f) => delete zone(f).id, /^zones\[0\]\.id: expected a field "id"/],
    ['one id for two zones', (f) => (zone(f).id = 'b'), /^zones\[1\]\.id: .*"b"$/],
    ['an id that every object has', (f) => (zone(f).id = 'constructor'), /^zones\[0\]\.id: /],
    [
      'text turned round',
      (f) => (zone(f).name = 'a\u202etxt'),
      /^zones\[0\]\.name: .*"a\\u202etxt"$/,
    ],
    ['half a character', (f) => (zone(f).name = '\ud800'), /^zones\[0\]\.name: /],
    ['a long name', (f) => (f.site.name = 'x'.repeat(121)), /^site\.name: .*120 characters/],
    [
      'half a worker',
      (f) => (f.site.crew = 2.5),
      /^site\.crew: .*whole number from 1 to 50; found 2\.5$/,
    ],
    [
      'an unknown machine',
      (f) => (f.site.machines = ['spoon']),
      /^site\.machines\[0\]: .*"spoon"$/,
    ],
    [
      'a limit overruled',
      (f) => (f.own = { 'limit.depth': 3 }),
      /^own\["limit\.depth"\]: .*id of a figure/,
    ],
    [
      'a figure below nothing',
      (f) => (f.own = { 'patch.merge': -1 }),
      /^own\["patch\.merge"\]: .*greater than 0/,
    ],
    [
      'a later version',
      (f) => (f.version = currentVersion + 1),
      new RegExp(`^version: .*\\(1.*\\).*found ${currentVersion + 1}$`),
    ],
    [
      'another format',
      (f) => (f.format = 'other'),
      /^format: expected "down-to-sound\.job"; found "other"$/,
    ],
    [
      'a thousand and one zones',
      (f) => (f.zones = Array.from({ length: 1001 }, () => ({}))),
      /^zones: .*1,000; found a list of 1001$/,
    ],
    [
      'a way into the prototype',
      (f) => Object.defineProperty(zone(f), '__proto__', { value: { depth: 1 }, enumerable: true }),
      /^zones\[0\]\.__proto__: /,
    ],
  ];
  it.each(cases)('%s', (_name, change, sentence) => {
    expect(after(change)).toMatch(sentence);
    expect(after(change)).not.toContain('\n');
  });

  const texts: [string, string, RegExp][] = [
    [
      'a field twice, deep inside',
      '{ "format": "down-to-sound.job", "version": 1, "site": {},\n  "zones": [{ "id": "a" }, { "id": "b", "depth": 5,\n    "depth": 60 }] }',
      /^zones\[1\]\.depth: expected each field once; found "depth" again at line 3, column 5$/,
    ],
    [
      'a field twice at the top',
      '{ "format": "down-to-sound.job", "version": 1, "site": {}, "zones": [], "site": {} }',
      /^site: expected each field once; found "site" again at line 1, column 73$/,
    ],
    [
      'a field twice, once spelled with an escape',
      '{ "format": "down-to-sound.job", "version": 1, "site": { "name": "a", "n\\u0061me": "b" }, "zones": [] }',
      /^site\.name: expected each field once; found "name" again/,
    ],
    [
      'a field twice of the kind every object has',
      '{ "format": "down-to-sound.job", "version": 1, "site": { "__proto__": 1, "__proto__": 2 }, "zones": [] }',
      /^site\.__proto__: expected each field once/,
    ],
    [
      'a name that cannot be seen',
      '{ "format": "down-to-sound.job", "version": 1, "site": {}, "zones": [{ "id": "a", "name": "\u200b \ufeff" }] }',
      /^zones\[0\]\.name: expected an empty text or one with something in it that can be seen; found "\\u200b \\ufeff"$/,
    ],
    ['an empty file', ' \n', /^expected a job file/],
    ['a trailing comma', '{\n  "a": 1,\n}', /^line 3, column 1: expected JSON/],
    ['a cut file', '{"format": "down-to', /^line 1, column 12: expected JSON/],
    ['not JSON at all', 'hello', /^line 1, column 1: expected JSON/],
    ['deep nesting', '['.repeat(100_000), /^expected lists and objects nested no deeper than 32/],
    [
      'a number too large for a number',
      jobText({ name: '', site: {}, zones: [] }).replace(
        '"site": {',
        '"site": { "thickness": 1e999,',
      ),
      /^site\.thickness: .*Infinity/,
    ],
    [
      'five million characters',
      ' '.repeat(5_000_000),
      /^expected no more than 4,000,000 characters/,
    ],
  ];
  it.each(texts)('%s', async (_name, text, sentence) => {
    const read = await readJobText(text);
    expect(read.ok ? 'accepted' : problemSentence(read.problem)).toMatch(sentence);
  });

  it('bytes that are not UTF-8, and a file of 50 MB, before it is read', async () => {
    const utf16 = await readJobBlob(new Blob([new Uint8Array([0xff, 0xfe, 0x7b, 0])]));
    expect(utf16).toMatchObject({ problem: { expected: { id: 'utf-8' } } });
    const large = Object.defineProperty(new Blob(), 'size', { value: 50_000_000 });
    large.arrayBuffer = () => Promise.reject(new Error('was read'));
    expect(await readJobBlob(large)).toMatchObject({ problem: { expected: { id: 'smaller' } } });
  });

  it('takes a file with a byte order mark', async () => {
    const text = `\ufeff${kept('version-1.json')}`;
    expect(await readJobBlob(new Blob([text]))).toMatchObject({ ok: true });
    expect(await readJobText(text)).toMatchObject({ ok: true });
  });
});
