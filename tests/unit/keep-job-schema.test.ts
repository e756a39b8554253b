import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseJob, writeJob } from '$lib/keep/job-file';
import { currentVersion } from '$lib/keep/job-shape';
import { jobSchema } from '$lib/keep/job-schema';
import { anyJob } from '../helpers/any-job';
import { spoil } from '../helpers/spoil';
import { onTrial, rounds } from '../helpers/rounds';

/** The reference is a validator from outside the project, on the schema as it is published. */
const published = JSON.parse(JSON.stringify(jobSchema())) as object;
const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(published);
const kept = JSON.parse(
  readFileSync(new URL('job-files/version-1.json', import.meta.url), 'utf8'),
) as Record<string, unknown>;

/** Refusals that a JSON Schema has no words for. */
const untold = (id: string) => id === 'unique-id' || id === 'unique';

describe('the published schema of the job file', () => {
  it('takes the kept file and every job that is written', () => {
    expect(valid(kept)).toBe(true);
    fc.assert(
      fc.property(anyJob(), (job) => {
        const file = JSON.parse(JSON.stringify(writeJob(job))) as unknown;
        expect(valid(file), JSON.stringify(valid.errors)).toBe(true);
      }),
    );
  });

  it('agrees with the parser on spoilt files, either way', () => {
    const count = { both: 0, neither: 0, untold: 0 };
    fc.assert(
      fc.property(anyJob(3), fc.infiniteStream(fc.nat()), (job, dice) => {
        const file = spoil(JSON.parse(JSON.stringify(writeJob(job))), dice);
        const read = parseJob(file);
        if (!read.ok && untold(read.problem.expected.id)) {
          count.untold += 1;
          return;
        }
        expect(valid(file), JSON.stringify([read, valid.errors])).toBe(read.ok);
        count[read.ok ? 'both' : 'neither'] += 1;
      }),
      { numRuns: onTrial(rounds(300, 4000), 30) },
    );
    console.log(`schema and parser: ${count.both} taken, ${count.neither} refused by both`);
    expect(count.neither).toBeGreaterThan(onTrial(rounds(60, 1000), 5));
    expect(count.both).toBeGreaterThan(onTrial(rounds(5, 100), 0));
  });

  it('takes photos, and refuses half a one', () => {
    const photo = {
      zone: 'a',
      stage: 'after',
      caption: 'By the gate',
      marks: [{ kind: 'label', at: [0.3, 0.3], text: 'hollow' }],
      sheet: true,
      owner: false,
      addedAt: 5,
      picture: '/9j/',
    };
    expect(valid({ ...kept, photos: [photo] }), JSON.stringify(valid.errors)).toBe(true);
    expect(valid({ ...kept, photos: [{ zone: 'a' }] })).toBe(false);
  });

  it('refuses what the parser refuses in the plain cases', () => {
    const [zone] = kept.zones as object[];
    for (const wrong of [
      { ...kept, version: currentVersion + 1 },
      { ...kept, version: 0 },
      { ...kept, extra: 1 },
      { ...kept, zones: [{ ...zone, dept: 3 }] },
      { ...kept, zones: [{ ...zone, depth: -1 }] },
      { ...kept, zones: [{ ...zone, cracks: [] }] },
      { ...kept, zones: [{ ...zone, cracks: ['open', 'open'] }] },
      { ...kept, zones: [{ ...zone, name: 'a\u202eb' }] },
    ])
      expect(valid(wrong)).toBe(false);
  });
});
