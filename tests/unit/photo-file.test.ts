import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { bounds } from '$lib/keep/bounds';
import {
  jobText,
  jobTextWith,
  parseJob,
  readJobBlob,
  readJobText,
  writeJob,
} from '$lib/keep/job-file';
import { shareLink } from '$lib/keep/share-link';
import type { Photo, WholePhoto } from '$lib/answers/photo';
import { problemSentence } from '$words/keep';
import { asTaken, tinyJpeg } from '../helpers/jpeg';

const job: Job = {
  name: 'Driveway (invented)',
  site: {},
  zones: [
    { id: 'a', name: '', answers: {} },
    { id: 'b', name: '', answers: {} },
  ],
};
const whole = (more: Partial<Photo> = {}, bytes = tinyJpeg()): WholePhoto => ({
  photo: {
    id: 'p',
    job: 'j',
    zone: 'a',
    place: 0,
    stage: 'after',
    caption: 'By the gate',
    marks: [
      { kind: 'arrow', from: [0.1, 0.2], to: [0.5, 0.5] },
      { kind: 'ring', from: [0, 0], to: [1, 1] },
      { kind: 'label', at: [0.3, 0.3], text: 'hollow' },
    ],
    sheet: true,
    owner: false,
    width: 16,
    height: 8,
    addedAt: 5,
    ...more,
  },
  picture: new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' }),
});
const blob = (text: string) => new Blob([text]);
type Loose = Record<string, unknown> & { photos: Record<string, unknown>[] };
const loose = async () => JSON.parse(await jobTextWith(job, [whole()])) as Loose;
const refused = async (change: (file: Loose) => void): Promise<string> => {
  const file = await loose();
  change(file);
  const read = await readJobBlob(blob(JSON.stringify(file)));
  return read.ok ? 'taken' : problemSentence(read.problem);
};

describe('photos in a job file', () => {
  it('are in it only where they were ticked, and a record or a link takes none', async () => {
    expect(await jobTextWith(job, [])).toBe(jobText(job));
    expect(jobText(job)).not.toContain('photos');
    expect(parseJob({ ...writeJob(job), photos: [] })).toMatchObject({
      problem: { path: 'photos', expected: { id: 'known-field' } },
    });
    // Whatever rides along with the job.
    const link = (of: object) => shareLink(of as Job, 'https://host.test/jobs/');
    expect(await link({ ...job, photos: [whole()] })).toEqual(await link(job));
  });

  it('come back as they were, with a place of their own', async () => {
    const text = await jobTextWith(job, [whole(), whole({ zone: 'b', stage: 'before' })]);
    const read = await readJobBlob(blob(text));
    if (!read.ok) throw new Error(problemSentence(read.problem));
    expect(read.value.job).toEqual(job);
    const said = { ...whole().photo, id: undefined, job: undefined };
    expect(read.value.photos.map(({ photo }) => photo)).toEqual([
      said,
      { ...said, zone: 'b', stage: 'before', place: 1 },
    ]);
    const bytes = new Uint8Array(await (read.value.photos[0]?.picture as Blob).arrayBuffer());
    expect(bytes).toEqual(tinyJpeg());
    expect(read.value.photos[0]?.picture.type).toBe('image/jpeg');
    // Who wants the job alone, as the command line does, gets it.
    expect(await readJobText(text)).toEqual({ ok: true, value: job });
  });

  it('that say where they were taken are refused, and so is any other file', async () => {
    const taken = async (bytes: Uint8Array) => jobTextWith(job, [whole({}, bytes)]);
    for (const bytes of [
      asTaken(tinyJpeg()),
      new Uint8Array(Buffer.from('<svg onload="x"/>')),
      tinyJpeg().subarray(0, 200),
      new Uint8Array(),
    ]) {
      const read = await readJobBlob(blob(await taken(bytes)));
      expect(read).toMatchObject({
        ok: false,
        problem: { path: 'photos[0].picture', expected: { id: 'plain-jpeg' } },
      });
    }
    const wide = (side: number) => {
      const bytes = tinyJpeg();
      const frame = Buffer.from(bytes).indexOf(Buffer.from([0xff, 0xc0]));
      bytes.set([side >> 8, side & 255], frame + 7);
      return taken(bytes);
    };
    expect(await readJobBlob(blob(await wide(bounds.photoSide)))).toMatchObject({ ok: true });
    expect(await readJobBlob(blob(await wide(bounds.photoSide + 1)))).toMatchObject({
      problem: { path: 'photos[0].picture' },
    });
  });

  it('are read strictly, and the place is named', async () => {
    const first = ({ photos }: Loose) => photos[0] as Record<string, unknown>;
    expect(await refused((file) => (first(file).picture = '***'))).toMatch(
      /^photos\[0\]\.picture: /,
    );
    expect(await refused((file) => (first(file).place = 1))).toMatch(/^photos\[0\]\.place: /);
    expect(await refused((file) => (first(file).zone = 'z'))).toMatch(
      /^photos\[0\]\.zone: .*"a", "b"/,
    );
    expect(
      await refused((file) => (first(file).marks = [{ kind: 'arrow', from: [0, 2], to: [0, 0] }])),
    ).toMatch(/^photos\[0\]\.marks\[0\]\.from\[1\]: /);
    expect(
      await refused((file) => (first(file).marks = [{ kind: 'ring', from: [0], to: [0, 0] }])),
    ).toMatch(/^photos\[0\]\.marks\[0\]\.from: expected two numbers/);
    expect(
      await refused((file) => (file.photos = Array(7).fill(first(file)) as Loose['photos'])),
    ).toMatch(/^photos\[6\]: expected a list of at most 6/);
    expect(await refused((file) => (first(file).sheet = 'yes'))).toBe(
      'photos[0].sheet: expected true or false; found "yes"',
    );
    expect(await refused((file) => (first(file).stage = 'later'))).toMatch(
      /^photos\[0\]\.stage: expected one of "before".*; found "later"$/,
    );
    expect(await refused((file) => (first(file).marks = [{ kind: 'star' }]))).toBe(
      'photos[0].marks[0].kind: expected one of "arrow", "ring", "label"; found "star"',
    );
    const ring = (from: unknown) => [{ kind: 'ring', from, to: [1, 1] }];
    expect(await refused((file) => (first(file).marks = ring([0, 1.5])))).toBe(
      'photos[0].marks[0].from[1]: expected a number of ratio from 0 to 1; found 1.5',
    );
    expect(await refused((file) => (first(file).marks = ring([0])))).toMatch(
      /^photos\[0\]\.marks\[0\]\.from: expected two numbers from 0 to 1/,
    );
    expect(await refused((file) => (first(file).picture = 5))).toMatch(
      /^photos\[0\]\.picture: expected a JPEG as base64.*found 5$/,
    );
    expect(await refused((file) => (first(file).picture = 'A'.repeat(1_333_340)))).toMatch(
      /^photos\[0\]\.picture: expected a JPEG as base64.*found 1,333,340 characters$/,
    );
    expect(await refused((file) => (first(file).addedAt = Date.UTC(2100, 0) + 1))).toMatch(
      /^photos\[0\]\.addedAt: expected a whole number from 0 to /,
    );
    const label = (text: string) => [{ kind: 'label', at: [0, 1], text }];
    expect(await refused((file) => (first(file).marks = label('x'.repeat(20))))).toBe('taken');
    expect(await refused((file) => (first(file).marks = label('x'.repeat(21))))).toMatch(
      /^photos\[0\]\.marks\[0\]\.text: expected a text of at most 20 characters/,
    );
    expect(await refused((file) => (first(file).caption = 'x'.repeat(121)))).toMatch(
      /^photos\[0\]\.caption: expected a text of at most 120 characters/,
    );
    expect(await refused((file) => (file.photos = {} as never))).toMatch(
      /^photos: expected a list/,
    );
    expect(await refused(() => undefined)).toBe('taken');
  });

  it('may make a file longer than a job may be, and only so much longer', async () => {
    const photos = `"photos":["${'A'.repeat(bounds.fileLength)}"]`;
    const long = await readJobText(
      `{"format":"down-to-sound.job","version":1,"site":{},"zones":[],${photos}}`,
    );
    expect(long).toMatchObject({ problem: { path: 'photos[0]' } });
    for (const text of [
      `{${' '.repeat(bounds.fileLength)}${photos}}`,
      `{"photos":["${'A'.repeat(2 * bounds.photosInFile)}"]}`,
    ])
      expect(await readJobText(text)).toMatchObject({ problem: { expected: { id: 'smaller' } } });
  });
});
