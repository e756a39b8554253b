import { deflateRawSync, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { bounds } from '$lib/keep/bounds';
import { compact } from '$lib/keep/compact';
import { parseJob, readJobBlob, readJobText, writeJob, type Checked } from '$lib/keep/job-file';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { newestVersion } from '$lib/keep/tables/tables';
import type { Job } from '$lib/answers/job';
import { problemSentence } from '$words/keep';
import { anyJob } from '../helpers/any-job';
import { nasty, spoil } from '../helpers/spoil';
import { mauler, pick } from '../helpers/maul';
import { rounds, sampled } from '../helpers/rounds';

/**
 * Files and links made to break the reading of them. Whatever comes: a job or a clear problem,
 * never an exception, never a long wait, nothing left behind on any object.
 * The numbers are generated from a fixed seed, so that a failure can be had again.
 */
const seed = 20_240_521;
const began = performance.now();
const counts: Record<string, { tried: number; taken: number; slowest: number }> = {};

/** Printable, short, in one line: what may stand on a terminal or a page. */
const clear = /^[^\p{Cc}\u2028-\u202e\u2066-\u2069\ud800-\udfff]{10,2000}$/u;

async function judge(kind: string, read: () => Promise<Checked<Job>>): Promise<void> {
  const count = (counts[kind] ??= { tried: 0, taken: 0, slowest: 0 });
  const start = performance.now();
  const result = await read();
  count.slowest = Math.max(count.slowest, performance.now() - start);
  count.tried += 1;
  if (result.ok) {
    count.taken += 1;
    // What was taken is a job like any other: it comes back exactly.
    const again = parseJob(writeJob(result.value));
    if (!again.ok) throw new Error(`taken, but not again: ${JSON.stringify(result.value)}`);
    if (count.taken % 16 === 1) expect(again.value).toEqual(result.value);
  } else {
    const sentence = problemSentence(result.problem);
    if (!clear.test(sentence)) throw new Error(`not a clear sentence: ${JSON.stringify(sentence)}`);
  }
}

const jobs = fc.sample(anyJob(3), { seed, numRuns: rounds(120, 250) });
const texts = jobs.map((job) => JSON.stringify(writeJob(job)));
const { dice, next, maul } = mauler(seed);

const link = (content: string | Uint8Array, level = 1): string =>
  `#job${newestVersion}.${deflateSync(content, { level }).toString('base64url')}`;

afterAll(() => {
  const all = Object.values(counts);
  const tried = all.reduce((sum, count) => sum + count.tried, 0);
  const seconds = (performance.now() - began) / 1000;
  for (const [kind, { tried, taken, slowest }] of Object.entries(counts))
    console.log(`${kind}: ${tried} tried, ${taken} taken, slowest ${slowest.toFixed(0)} ms`);
  console.log(`hostile input: ${tried} files and links in ${seconds.toFixed(0)} s`);
  expect(tried).toBeGreaterThanOrEqual(rounds(4500, 100_000));
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
});

describe('hostile input', () => {
  it('files with spoilt values', async () => {
    for (let round = 0; round < rounds(1000, 40_000); round += 1) {
      const file = spoil(JSON.parse(pick(texts, round)), dice);
      await judge('values', async () => parseJob(file));
    }
  });

  it('files with spoilt text', async () => {
    for (let round = 0; round < rounds(1000, 25_000); round += 1) {
      const text = maul(pick(texts, round));
      await judge('text', () => readJobText(text));
    }
  });

  it('files of any JSON and of any text', async () => {
    for (const value of fc.sample(fc.jsonValue({ maxDepth: 6 }), {
      seed,
      numRuns: rounds(300, 4000),
    }))
      await judge('any JSON', async () => parseJob(value));
    for (const text of fc.sample(fc.string({ unit: 'binary', maxLength: 80 }), {
      seed,
      numRuns: rounds(300, 4000),
    }))
      await judge('any text', () => readJobText(text));
  });

  it('files with something nasty in each place', async () => {
    const [text] = texts.sort((one, other) => other.length - one.length) as [string];
    const walk = (value: unknown, put: (nasty: unknown) => unknown): (() => unknown)[] => [
      ...nasty.map((bad) => () => put(structuredClone(bad))),
      ...(typeof value === 'object' && value !== null
        ? Object.entries(value).flatMap(([key, inside]) =>
            walk(inside, (bad) =>
              put(Array.isArray(value) ? value.with(Number(key), bad) : { ...value, [key]: bad }),
            ),
          )
        : []),
    ];
    for (const make of sampled(
      walk(JSON.parse(text), (bad) => bad),
      7,
    )) {
      const file = make();
      await judge('nasty places', async () => parseJob(file));
    }
  });

  it('links with spoilt content', async () => {
    const folded = jobs.map((job) => JSON.stringify(compact(job)));
    for (let round = 0; round < rounds(400, 14_000); round += 1) {
      const content = JSON.stringify(spoil(JSON.parse(pick(folded, round)), dice));
      await judge('link values', () => readShareLink(link(content)));
    }
    for (let round = 0; round < rounds(200, 6000); round += 1)
      await judge('link text', () => readShareLink(link(maul(pick(folded, round)))));
  });

  it('links with spoilt letters and spoilt compression', async () => {
    const links: string[] = [];
    for (const job of jobs.slice(0, 100)) {
      const made = await shareLink(job, '');
      if (made.ok) links.push(made.link);
    }
    for (let round = 0; round < rounds(500, 9000); round += 1)
      await judge('link letters', () => readShareLink(maul(pick(links, round))));
    for (let round = 0; round < rounds(300, 2000); round += 1) {
      const bytes = deflateSync(pick(texts, round));
      for (let hit = 1 + next(4); hit > 0; hit -= 1) bytes[next(bytes.length)] = next(256);
      await judge('link bytes', () =>
        readShareLink(`#job${newestVersion}.${bytes.toString('base64url')}`),
      );
    }
    for (const fragment of [
      '',
      '#',
      '#job1.',
      '#job.',
      '#job1.%00',
      `#job${newestVersion}.${'A'.repeat(99_000)}`,
    ])
      await judge('odd links', () => readShareLink(fragment));
    await judge('odd links', () =>
      readShareLink(`#job${newestVersion}.${deflateRawSync('[]').toString('base64url')}`),
    );
    await judge('odd links', () => readShareLink(link(new Uint8Array([0xff, 0xfe, 0xfd]))));
    await judge('odd links', () => readShareLink(`#job${newestVersion}.${'A'.repeat(1_000_000)}`));
  });
});

describe('work that could grow without end is cut off', () => {
  const within = (kind: string, most: number, read: () => Promise<Checked<Job>>) => async () => {
    // The processor's time, not the clock's: what else the machine is doing is no fault of ours.
    const start = process.cpuUsage();
    await judge(kind, async () => {
      const result = await read();
      expect(result.ok).toBe(false);
      return result;
    });
    const { user, system } = process.cpuUsage(start);
    expect((user + system) / 1000).toBeLessThan(most);
  };
  /** As many zeros as fit the longest link that is read, packed about a thousandfold. */
  const bomb = link('0'.repeat(70_000_000), 9);

  it('a link that unfolds to 70 MB', async () => {
    expect(bomb.length).toBeLessThan(bounds.linkLength);
    await within('bombs', 2000, () => readShareLink(bomb))();
    const nested = link('['.repeat(900_000));
    await within('bombs', 2000, () => readShareLink(nested))();
  });
  it('a file of 50 MB', async () => {
    const large = new Blob([new Uint8Array(50_000_000).fill(91)]);
    await within('large files', 2000, async () => {
      const read = await readJobBlob(large);
      return read.ok ? { ok: true, value: read.value.job } : read;
    })();
    const text = '['.repeat(50_000_000);
    await within('large files', 2000, () => readJobText(text))();
  });
  const head = '{"format":"down-to-sound.job","version":1,"site":{},"zones":';
  it.each([
    ['brackets without end', '['.repeat(3_900_000)],
    ['objects in objects', '{"a":'.repeat(700_000)],
    ['a million zones', `${head}[${'0,'.repeat(1_000_000)}0]}`],
    ['a million choices', `${head}[{"id":"a","cracks":[${'"open",'.repeat(500_000)}"open"]}]}`],
    ['a name of three million letters', `${head}[{"id":"a","name":"${'n'.repeat(3_000_000)}"}]}`],
    ['an id of three million letters', `${head}[{"id":"${'n'.repeat(3_000_000)}"}]}`],
    ['a field name of three million letters', `${head}[{"${'n'.repeat(3_000_000)}":1}]}`],
    [
      'three hundred thousand fields',
      `${head}[{${Array.from({ length: 300_000 }, (_, index) => `"${index}":1`).join()}}]}`,
    ],
    ['a number of three million digits', `${head}[{"id":"a","area":${'9'.repeat(3_000_000)}}]}`],
    ['an open string', `${head}"${'\\"'.repeat(1_900_000)}`],
    ['a million line ends before the slip', `${'\n'.repeat(3_000_000)}{,}`],
    ['a million errors', '1 '.repeat(1_900_000)],
  ])('%s', async (_name, text) => {
    await within('growing files', 3000, () => readJobText(text))();
  });
});
