import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { parseJob } from '$lib/keep/job-file';
import { adviceDocument } from '../../src/cli/advice-document';
import { adviseAll } from '../../src/cli/advice-pool';
import { adviseCommand } from '../../src/cli/advise-command';
import { methodIds } from '$shared/methods';
import { openJobFile } from '../helpers/open-job';

const jobFile = fileURLToPath(new URL('job-files/version-1.json', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));
const jobContent = readFileSync(jobFile, 'utf8');

/** Runs the command as a reader does. */
function advise(args: readonly string[], input?: string | Buffer) {
  const run = spawnSync('npm', ['run', '-s', 'advise', '--', ...args], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64e6,
    ...(input !== undefined && { input }),
  });
  return { code: run.status, out: run.stdout, error: run.stderr };
}

interface Printed {
  format: string;
  version: number;
  zones: Record<string, unknown>[];
  plan: {
    steps: { id: string; zones: string[] }[];
    quantities: object;
    days: object[];
    held: { id: string }[];
  };
  heldUp: {
    zones: number;
    of: number;
    stop: string[];
    findOutFirst: string[];
    holds: { rule: string; zones: string[] }[];
    open: { question: string; zones: string[] }[];
  };
}

describe('advice on the command line', () => {
  it('prints one JSON object for a file, with every promised field, and ends with 0', () => {
    const { code, out, error } = advise([jobFile]);
    expect([code, error]).toEqual([0, '']);
    const printed = JSON.parse(out) as Printed;
    expect(printed).toMatchObject({ format: 'down-to-sound.advice', version: 1 });
    expect(printed.zones.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
    for (const zone of printed.zones) {
      expect(zone.verdict).toMatch(/^(prepare|find-out-first|stop)$/);
      expect(methodIds).toEqual(expect.arrayContaining(zone.methods as string[]));
      expect(zone.method === null).toBe(zone.verdict !== 'prepare');
      for (const list of ['steps', 'reasons', 'rejections', 'cautions', 'margins', 'findOut'])
        expect(zone[list]).toBeInstanceOf(Array);
      for (const test of zone.findOut as object[])
        expect(Object.keys(test)).toEqual(expect.arrayContaining(['question', 'test', 'settles']));
      expect(zone.target).toHaveProperty('profile');
    }
    const { steps, quantities, days, held } = printed.plan;
    expect(steps.flatMap(({ zones }) => zones)).toContain('a');
    for (const { id, zones } of steps)
      expect([typeof id, zones.length > 0]).toEqual(['string', true]);
    expect(Object.keys(quantities).length).toBeGreaterThan(0);
    expect(days.length).toBeGreaterThan(0);
    expect(held.map(({ id }) => id)).toEqual(['b', 'c']);
  });

  it('says the same from standard input, and the same as the engine in the site', async () => {
    const { code, out } = advise(['-'], jobContent);
    expect(code).toBe(0);
    expect(out).toBe(advise([jobFile]).out);
    const job = parseJob(JSON.parse(jobContent));
    if (!job.ok) throw new Error('the kept file is refused');
    const [zone] = job.value.zones;
    const direct = adviseZone(job.value.site, zone?.answers ?? {});
    const [printed] = (JSON.parse(out) as Printed).zones;
    expect(printed).toMatchObject(
      JSON.parse(JSON.stringify({ ...direct, outcomes: [{}], findOut: [{}] })) as object,
    );
    const document = adviceDocument(job.value, await adviseAll(job.value));
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(document)));
  });

  it('gathers what holds zones up: which, why, and which answers decide', () => {
    const { zones, heldUp, plan } = JSON.parse(advise([jobFile]).out) as Printed;
    expect([heldUp.zones, heldUp.of]).toEqual([2, 3]);
    const held = plan.held.map(({ id }) => id);
    expect([...heldUp.stop, ...heldUp.findOutFirst].sort()).toEqual(held);
    // Whether zone b's concrete is loose or sound is said nowhere; of c hardly anything is.
    expect(heldUp.open[0]).toEqual({ question: 'looseness', zones: ['b', 'c'] });
    // The site may hide services: that holds up what is to be cut.
    expect(heldUp.holds.find(({ rule }) => rule === 'buried-services')?.zones).toEqual(['b']);
    const sizes = heldUp.open.map(({ zones }) => zones.length);
    expect(sizes).toEqual(sizes.toSorted((one, other) => other - one));
    // Every hold of a zone left out is told, and none that no zone has.
    for (const { rule, zones: ids } of heldUp.holds)
      for (const id of ids)
        expect(zones.find((zone) => zone.id === id)?.holds).toContainEqual(
          expect.objectContaining({ rule }),
        );
  });

  it('says how far it is while a job takes long, and comes to the same on all cores', async () => {
    const content = openJobFile(40);
    const lines: string[] = [];
    const alone = await adviseCommand(['-'], Readable.from([Buffer.from(content)]), {
      tell: (line) => lines.push(line),
      quiet: 20,
    });
    const counts = lines.map((line) => Number(/^(\d+) of 40 zones advised\n$/.exec(line)?.[1]));
    expect(counts.length).toBeGreaterThan(1);
    expect(counts.every((count, at) => count > (counts[at - 1] ?? 0) && count < 40)).toBe(true);
    const { code, out } = advise(['-'], content);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(alone.out));
  });

  const bad: [string, string[], string | Buffer | undefined, RegExp][] = [
    [
      'a slip in a field',
      ['-'],
      jobContent.replace('"looseness"', '"loosness"'),
      /^zones\[0\]\.loosness: expected .*looseness/,
    ],
    [
      'a wrong id',
      ['-'],
      jobContent.replace('"sandy"', '"sand"'),
      /^zones\[0\]\.texture: expected one of "smooth".*found "sand"\n$/,
    ],
    ['an empty input', ['-'], '', /^expected a job file/],
    ['text that is not JSON', ['-'], '{\n  oops', /^line 2, column 3: expected JSON/],
    ['bytes that are not text', ['-'], Buffer.from([0xff, 0xfe, 0x00]), /^expected text in UTF-8/],
    ['13 MB', ['-'], Buffer.alloc(13_000_000, 32), /^expected no more than 4,000,000 characters/],
    [
      'a file that is not there',
      ['no/such/file.json'],
      undefined,
      /^no\/such\/file\.json: cannot be read \(ENOENT\)\n$/,
    ],
    ['a folder', [root], undefined, /cannot be read \(EISDIR\)\n$/],
    ['no argument', [], undefined, /^expected one argument/],
    ['two arguments', [jobFile, jobFile], undefined, /^expected one argument/],
  ];
  it.each(bad)('answers %s with one line and 2', async (_name, args, input, line) => {
    const { code, out, error } = await adviseCommand(
      args,
      Readable.from([Buffer.from(input ?? '')]),
    );
    expect([code, out]).toEqual([2, '']);
    expect(error).toMatch(line);
    expect(error.match(/\n/g)).toHaveLength(1);
  });

  it('ends with 2 and prints nothing when run on a bad file', () => {
    const { code, out, error } = advise(['-'], '{"format": "other"}');
    expect([code, out]).toEqual([2, '']);
    expect(error).toBe('format: expected "down-to-sound.job"; found "other"\n');
  });
});
