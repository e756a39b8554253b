import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { sure } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { bounds } from '$lib/keep/bounds';
import { parseJob } from '$lib/keep/job-file';
import { carriesJob, readShareLink, shareLink } from '$lib/keep/share-link';
import { anyJob } from '../helpers/any-job';
import { onTrial, rounds } from '../helpers/rounds';

const page = 'https://a-site-of-usual-length.example/down-to-sound/job/';
const fragmentOf = (link: string) => link.slice(link.indexOf('#'));
const kept = JSON.parse(
  readFileSync(new URL('job-files/link-1.json', import.meta.url), 'utf8'),
) as { job: unknown; link: string };

/** The places of a school, invented, named as a crew would; every answer given. */
function realisticJob(zones: number): Job {
  const places = ['Front steps', 'Ramp', 'Forecourt', 'Boat-shed floor', 'Kerb by the gate'];
  const pick = <T>(list: readonly T[], index: number) => list[index % list.length] as T;
  return {
    name: 'Tidewell community hall (invented)',
    site: {
      element: sure('element', 'slab'),
      setting: sure('setting', 'open'),
      salts: sure('salts', 'de-icing'),
      freezeThaw: sure('freezeThaw', 'often'),
      thickness: 100,
      warnings: { yes: [], maybe: ['map-cracking'] },
    },
    machines: ['grind', 'scarify', 'shotblast'],
    crew: 3,
    zones: Array.from({ length: zones }, (_, index) => ({
      id: `z${index + 1}`,
      name: `${pick(places, index)}, bay ${index + 1}`,
      answers: {
        depth: index % 3 === 0 ? 4 + index : [pick(choicesOf('depth'), index * 5)],
        looseness: [pick(choicesOf('looseness'), index * 7)],
        contamination: { yes: index % 2 ? ['oil'] : [], maybe: index % 4 ? [] : ['growth'] },
        texture: [pick(choicesOf('texture'), index)],
        cracks: [pick(choicesOf('cracks'), index * 3)],
        crackLength: Math.round(index * 13.7) / 10,
        steel: index % 5 ? ['none-seen'] : ['rust-stain', 'exposed'],
        finish: [pick(choicesOf('finish'), index)],
        area: Math.round((index + 1) * 73.3) / 10,
      },
    })),
  };
}

describe('a share link', () => {
  it('gives any job back exactly', async () => {
    await fc.assert(
      fc.asyncProperty(anyJob(), async (job) => {
        const made = await shareLink(job, '');
        if (!made.ok) return;
        expect(await readShareLink(made.link)).toEqual({ ok: true, value: job });
      }),
      { numRuns: onTrial(rounds(100, 400), 20) },
    );
  });

  it('carries a full job of 20 zones in under 2,000 characters', async () => {
    const made = await shareLink(realisticJob(20), page);
    if (!made.ok) throw new Error(`took ${made.length}`);
    console.log(`20 zones, every question answered: ${made.link.length} characters`);
    expect(made.link.length).toBeLessThan(2000);
    expect(await readShareLink(fragmentOf(made.link))).toEqual({
      ok: true,
      value: realisticJob(20),
    });
  });

  it('says how long a job too long for a link would be', async () => {
    expect(await shareLink(realisticJob(200), page)).toMatchObject({
      ok: false,
      most: bounds.linkOffered,
      length: expect.toSatisfy((length: number) => length > bounds.linkOffered),
    });
  });

  it('reads a link sent long ago: every choice of every question, in the order of that day', async () => {
    expect(await readShareLink(fragmentOf(kept.link))).toEqual(parseJob(kept.job));
  });

  it('with any one character changed gives the same job or none', async () => {
    const fragment = fragmentOf(kept.link);
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    const same = JSON.stringify(await readShareLink(fragment));
    const step = onTrial(1, 11);
    let refused = 0;
    for (let index = '#job1.'.length; index < fragment.length; index += step)
      for (const shift of [1, 17, 32]) {
        const other = letters[(letters.indexOf(fragment[index] ?? '') + shift) % 64];
        const read = await readShareLink(
          fragment.slice(0, index) + other + fragment.slice(index + 1),
        );
        if (read.ok) expect(JSON.stringify(read)).toBe(same);
        else refused += 1;
      }
    expect(refused).toBeGreaterThan((fragment.length / step) * 2);
  });

  it('says as a whole what is wrong with it', async () => {
    const problem = async (fragment: string) => {
      const read = await readShareLink(fragment);
      return read.ok ? null : read.problem;
    };
    const whole = { path: '', expected: { id: 'whole-link' }, found: { id: 'broken' } };
    for (const packed of ['!!', '', 'AAAA'])
      expect(await problem(`#job2.${packed}`)).toEqual(whole);
    expect(await problem('#job9.x')).toMatchObject({
      path: '',
      expected: { id: 'link-version' },
      found: { id: 'text', text: '9' },
    });
    for (const other of ['#my-job2.abc', '##job2.abc', '#job2'])
      expect(await problem(other)).toMatchObject({ path: '', expected: { id: 'link' } });
    expect(await problem('x'.repeat(100_001))).toEqual({
      path: '',
      expected: { id: 'smaller', limit: 100_000 },
      found: { id: 'long-text', length: 100_001 },
    });
  });

  it('refuses a cut link, a changed link, a later version and no link at all', async () => {
    const cut = await readShareLink(fragmentOf(kept.link).slice(0, -12));
    expect(cut).toMatchObject({ ok: false, problem: { expected: { id: 'whole-link' } } });
    expect(await readShareLink('#job1.!!')).toMatchObject({
      problem: { expected: { id: 'whole-link' } },
    });
    expect(await readShareLink(fragmentOf(kept.link).replace('job1', 'job9'))).toMatchObject({
      problem: { expected: { id: 'link-version' }, found: { text: '9' } },
    });
    expect(await readShareLink('#top')).toMatchObject({ problem: { expected: { id: 'link' } } });
    expect(carriesJob('#top')).toBe(false);
    expect(carriesJob(fragmentOf(kept.link))).toBe(true);
  });
});
