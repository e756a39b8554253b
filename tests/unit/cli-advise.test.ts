import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { Plan } from '$lib/plan/plan';
import { parseJob } from '$lib/keep/job-file';
import { adviceDocument } from '../../src/cli/advice-document';
import { adviseAll } from '../../src/cli/advice-pool';
import { heldUp } from '../../src/cli/held-up';
import { adviseCommand } from '../../src/cli/advise-command';
import { methodIds } from '$shared/methods';
import { openJobFile } from '../helpers/open-job';
import { nightly } from '../helpers/rounds';

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
  // On a machine that is busy even a short job is a long one.
  const error = run.stderr.replace(/^\d+ of \d+ zones advised\n/gm, '');
  return { code: run.status, out: run.stdout, error };
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
  };
}

describe('advice on the command line', () => {
  it('tells how it is used, examples first, and refuses nothing by it', () => {
    for (const asked of ['--help', '-h']) {
      const { code, out, error } = advise([asked]);
      expect([code, error]).toEqual([0, '']);
      const parts = ['Examples', 'What it reads', 'What it prints', 'How it ends'];
      const places = parts.map((part) => out.indexOf(`\n${part}`));
      expect(places).toEqual(places.toSorted((one, other) => one - other));
      expect(Math.min(...places)).toBeGreaterThan(0);
      for (const taken of ['FILE', '-  ', '-h, --help']) expect(out).toContain(`\n  ${taken}`);
      expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    }
    expect(advise([])).toMatchObject({ code: 2, out: '' });
    expect(advise([jobFile, '--help']).code).toBe(2);
  });

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
    const { heldUp: printed, plan } = JSON.parse(advise([jobFile]).out) as Printed;
    expect([printed.zones, printed.of]).toEqual([plan.held.length, 3]);
    expect([...printed.stop, ...printed.findOutFirst].sort()).toEqual(
      plan.held.map(({ id }) => id),
    );

    const said = (rule: string) => ({ rule });
    const plain = { possibleHolds: [], open: [] };
    const gathered = heldUp({
      zones: [{ id: 'a' }],
      held: [
        { ...plain, id: 'b', verdict: 'stop', holds: [said('bar-section-loss')] },
        { ...plain, id: 'c', verdict: 'find-out-first', holds: [], open: ['depth', 'steel'] },
        {
          id: 'd',
          verdict: 'find-out-first',
          // One reason that holds twice over is told once; the reason of more zones stands first.
          holds: [said('map-cracking'), said('buried-services'), said('buried-services')],
          possibleHolds: [said('bar-section-loss')],
          open: ['steel'],
        },
        { ...plain, id: 'e', verdict: 'stop', holds: [said('buried-services')] },
      ],
    } as unknown as Plan);
    expect(gathered).toEqual({
      zones: 4,
      of: 5,
      stop: ['b', 'e'],
      findOutFirst: ['c', 'd'],
      holds: [
        { rule: 'buried-services', zones: ['d', 'e'] },
        { rule: 'bar-section-loss', zones: ['b'] },
        { rule: 'map-cracking', zones: ['d'] },
      ],
      possibleHolds: [{ rule: 'bar-section-loss', zones: ['d'] }],
      open: [
        { question: 'steel', zones: ['c', 'd'] },
        { question: 'depth', zones: ['c'] },
      ],
    });
  });

  it.runIf(nightly)(
    'says how far it is while a job takes long, and comes to the same on all cores',
    async () => {
      const content = openJobFile(20);
      const lines: string[] = [];
      const alone = await adviseCommand(['-'], Readable.from([Buffer.from(content)]), {
        tell: (line) => lines.push(line),
        quiet: 20,
      });
      const counts = lines.map((line) => Number(/^(\d+) of 20 zones advised\n$/.exec(line)?.[1]));
      expect(counts.length).toBeGreaterThan(1);
      expect(counts.every((count, at) => count > (counts[at - 1] ?? 0) && count < 20)).toBe(true);
      const { code, out } = advise(['-'], content);
      expect(code).toBe(0);
      expect(JSON.parse(out)).toEqual(JSON.parse(alone.out));
    },
  );

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

  it('says nothing when the reader has had enough', () => {
    const file = 'src/lib/keep/demos/larch-row.json';
    const run = spawnSync('sh', ['-c', `node src/cli/bundled.js advise ${file} | head -c 9`], {
      cwd: root,
      encoding: 'utf8',
    });
    expect([run.stdout, run.stderr]).toEqual(['{"format"', '']);
  });
});
