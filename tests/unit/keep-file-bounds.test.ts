import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { jobText, mostBytes, readJobBlob, readJobBytes, readJobText } from '$lib/keep/job-file';
import { currentVersion } from '$lib/keep/job-shape';
import { jobSchema } from '$lib/keep/job-schema';
import { atPresentVersion, plain } from '$lib/keep/versions';

const job: Job = { name: 'Ramp', site: {}, zones: [] };
/** A file of so many bytes, of which nobody reads more than what a small one holds. */
const sized = (size: number) =>
  Object.defineProperty(new Blob([jobText(job)]), 'size', { value: size });

describe('a job file', () => {
  it('is one field a line, ends in a line end, and holds no photos where there are none', async () => {
    expect(jobText(job)).toBe(
      `{\n  "format": "down-to-sound.job",\n  "version": ${String(currentVersion)},\n  "site": {\n    "name": "Ramp"\n  },\n  "zones": []\n}\n`,
    );
    expect(await readJobBlob(new Blob([jobText(job)]))).toEqual({
      ok: true,
      value: { job, photos: [] },
    });
  });

  it('is read up to what a job and its photos take in UTF-8, three bytes for each letter', async () => {
    expect(mostBytes).toBe(3 * 4_000_000 + 32_000_000);
    expect(await readJobBlob(sized(mostBytes))).toMatchObject({ ok: true });
    expect(await readJobBlob(sized(mostBytes + 1))).toEqual({
      ok: false,
      problem: {
        path: '',
        expected: { id: 'smaller', limit: 4_000_000 },
        found: { id: 'long-text', length: mostBytes + 1 },
      },
    });
    const bytes = new TextEncoder().encode(jobText(job));
    expect(await readJobBytes(bytes)).toEqual({ ok: true, value: job });
    const large = Object.defineProperty(bytes.slice(), 'length', { value: mostBytes + 1 });
    expect(await readJobBytes(large)).toMatchObject({ problem: { expected: { id: 'smaller' } } });
  });

  it('is UTF-8', async () => {
    expect(await readJobBytes(new Uint8Array([0xff]))).toEqual({
      ok: false,
      problem: { path: '', expected: { id: 'utf-8' }, found: { id: 'broken' } },
    });
  });

  it.each([
    ['null', { id: 'null' }],
    ['[]', { id: 'list', length: 0 }],
    ['5', { id: 'number', text: '5' }],
    ['"job"', { id: 'text', text: 'job' }],
  ])('is an object, not %s', async (text, found) => {
    expect(await readJobText(text)).toEqual({
      ok: false,
      problem: {
        path: '',
        expected: { id: 'object', fields: ['format', 'version', 'site', 'zones'] },
        found,
      },
    });
  });

  it('says its format and its version itself, not by what every object has', () => {
    const bare = Object.create({ format: 'down-to-sound.job', version: 1 }) as object;
    expect(atPresentVersion(bare)).toMatchObject({
      problem: { path: 'format', found: { id: 'nothing' } },
    });
    const named = Object.assign(Object.create({ version: 1 }) as object, {
      format: 'down-to-sound.job',
    });
    expect(atPresentVersion(named)).toMatchObject({
      problem: { path: 'version', expected: { id: 'version' }, found: { id: 'nothing' } },
    });
  });

  it('leaves open in an older version what that version left open, and touches nothing else', () => {
    const file = {
      format: 'down-to-sound.job',
      version: 1,
      site: { name: 'not-sure', element: 'not-sure', thickness: 'not-sure', salts: 'none' },
      zones: [{ id: 'not-sure', name: 'Ramp', contamination: 'not-sure' }, 'not-sure', null],
    };
    const elements = ['slab', 'steps', 'suspended-slab', 'wall', 'soffit'];
    expect(atPresentVersion(file)).toMatchObject({
      ok: true,
      value: {
        site: { ...file.site, element: elements },
        zones: [
          {
            id: 'not-sure',
            name: 'Ramp',
            contamination: {
              yes: [],
              maybe: [
                'oil',
                'thin-coating',
                'thick-coating',
                'rubbery-coating',
                'salt-bloom',
                'growth',
              ],
            },
          },
          'not-sure',
          null,
        ],
      },
    });
  });

  it.each([
    [{ zones: 'not-sure' }],
    [{ site: 'not-sure', zones: {} }],
    [{ site: null }],
    [{ site: ['not-sure'], zones: [] }],
    [{}],
  ])('that is none is left for the parser: %j', (file) => {
    expect(plain(file)).toEqual(file);
    expect(Object.keys(plain(file))).toEqual(Object.keys(file));
  });
});

describe('the published schema', () => {
  it('says which draft it is written in, and of which file it is', () => {
    expect(jobSchema()).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $comment: `down-to-sound.job, version ${String(currentVersion)}`,
    });
  });
});
