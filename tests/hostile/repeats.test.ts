import fc from 'fast-check';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { bounds } from '$lib/keep/bounds';
import { jobText } from '$lib/keep/job-file';
import { pathOf } from '$lib/keep/problem';
import { readJson } from '$lib/keep/read-json';
import { adviseCommand } from '../../src/cli/advise-command';
import { anyJob } from '../helpers/any-job';
import { onTrial, rounds } from '../helpers/rounds';

type Keys = readonly (string | number)[];

/** The way to every field of a JSON value. */
function fields(value: unknown, at: Keys = []): Keys[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => {
    const here = [...at, Array.isArray(value) ? Number(key) : key];
    return [...(Array.isArray(value) ? [] : [here]), ...fields(inside, here)];
  });
}

/** A name spelled with escapes, as JSON allows. */
const escaped = (text: string) =>
  `"${[...Array(text.length).keys()].map((index) => `\\u${text.charCodeAt(index).toString(16).padStart(4, '0')}`).join('')}"`;

/** JSON written by hand, with one field written again at the end of its object. */
function write(value: unknown, again: Keys, name: (key: string) => string, other: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const [next, ...rest] = again;
  const inside = (key: string | number, each: unknown) =>
    write(each, key === next && rest.length ? rest : [], name, other);
  if (Array.isArray(value)) return `[${value.map((each, index) => inside(index, each)).join(',')}]`;
  const members = Object.entries(value).map(
    ([key, each]) => `${JSON.stringify(key)}: ${inside(key, each)}`,
  );
  if (again.length === 1) members.push(`${name(String(next))} : ${other}`);
  return `{ ${members.join(',\n')} }`;
}

const values = fc.oneof(
  fc.jsonValue({ maxDepth: 6 }) as fc.Arbitrary<unknown>,
  anyJob(3).map((job) => JSON.parse(jobText(job)) as unknown),
);

describe('a field that stands twice in one object', () => {
  it('is found wherever it stands and however it is spelled, and nothing else is taken for it', async () => {
    let tried = 0;
    await fc.assert(
      fc.asyncProperty(
        values,
        fc.nat(),
        fc.boolean(),
        values,
        async (value, lot, spelled, other) => {
          const text = JSON.stringify(value, null, lot % 3);
          expect(await readJson(text)).toEqual({ ok: true, value: JSON.parse(text) as unknown });
          const all = fields(value);
          const keys = all[lot % Math.max(1, all.length)];
          if (!keys) return;
          const twice = write(
            value,
            keys,
            spelled ? escaped : JSON.stringify,
            JSON.stringify(other),
          );
          const read = await readJson(twice);
          expect(read).toMatchObject({
            ok: false,
            problem: { path: pathOf(keys), expected: { id: 'once' } },
          });
          tried += 1;
        },
      ),
      { numRuns: onTrial(rounds(500, 2000), 20) },
    );
    console.log(`fields twice: ${tried} found of ${tried}`);
  });

  it('is refused in a file as large as is read, in bounded time', async () => {
    const many = Array.from(
      { length: onTrial(190_000, 2000) },
      (_, index) => `"k${index}": "${index}"`,
    ).join(',');
    const text = `{${many}, "k7": 1}`;
    expect(text.length).toBeLessThan(bounds.fileLength);
    const start = process.cpuUsage();
    expect(await readJson(text)).toMatchObject({ problem: { path: 'k7' } });
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(10_000);
  });

  it('is refused on the command line as on the site', async () => {
    const run = (text: string) => adviseCommand(['-'], Readable.from([Buffer.from(text)]));
    const head = '"format": "down-to-sound.job", "version": 1, "site": {}';
    const text = `{${head}, "zones": [{ "id": "a", "depth": 5, "depth": 60 }]}`;
    const column = text.lastIndexOf('"depth"') + 1;
    expect(await run(text)).toEqual({
      code: 2,
      out: '',
      error: `zones[0].depth: expected each field once; found "depth" again at line 1, column ${column}\n`,
    });
    expect(
      (await run(`{${head}, "zones": [{ "id": "a", "name": "\u2060\u3164" }]}`)).error,
    ).toMatch(/^zones\[0\]\.name: .*can be seen; found "\\u2060\\u3164"\n$/);
  });
});
