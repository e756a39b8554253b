import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { slowness } from '../helpers/slowness';

/** How long the command line takes, as a reader waits for it. Here, where nothing runs beside it. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const alone = ['node', 'src/cli/bundled.js', 'advise'];
const byNpm = ['npm', 'run', '-s', 'advise', '--'];

/** One zone with nothing left open. */
const settled = {
  format: 'down-to-sound.job',
  version: 1,
  site: {
    name: 'Sluice (invented)',
    element: 'slab',
    setting: 'open',
    salts: 'none',
    freezeThaw: 'rare',
    thickness: 150,
    warnings: [],
  },
  zones: [
    {
      id: 'a',
      name: 'Forecourt',
      area: 12.5,
      crackLength: 0,
      depth: 5,
      looseness: 'fractured',
      contamination: [],
      texture: 'sandy',
      cracks: 'none',
      steel: 'none-seen',
      finish: 'overlay',
    },
  ],
};
let folder: string;
test.beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'jobs-'))));
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('the advice for one settled zone is there in half a second @nightly', () => {
  const file = join(folder, 'settled.json');
  writeFileSync(file, JSON.stringify(settled));
  const [bare = 0, npm = 0] = [alone, byNpm].map(([command = '', ...args]) => {
    let best = Infinity;
    // The first puts it together where that has not been done yet.
    for (let round = 0; round < 6; round += 1) {
      const began = performance.now();
      const run = spawnSync(command, [...args, file], { cwd: root, encoding: 'utf8' });
      best = Math.min(best, performance.now() - began);
      expect([run.status, run.stderr]).toEqual([0, '']);
      expect(run.stdout).toContain('"verdict":"prepare"');
    }
    return best;
  });
  console.log(
    `one settled zone: ${bare.toFixed(0)} ms, by way of npm ${npm.toFixed(0)} ms (best of 6)`,
  );
  expect(bare).toBeLessThan(500);
});

test('a thousand different open zones are advised in a minute @nightly', async () => {
  test.setTimeout(300_000);
  const file = join(folder, 'many.json');
  // Drawn apart: the tests of the engine and this runner read modules in their own ways.
  const draw =
    "import { openJobFile } from './tests/helpers/open-job.ts'; process.stdout.write(openJobFile(1000))";
  const drawn = spawnSync('node', ['--import', 'tsx', '--input-type=module', '-e', draw], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64e6,
  });
  expect(drawn.stderr).toBe('');
  writeFileSync(file, drawn.stdout);
  const began = performance.now();
  const run = spawn('npm', ['run', '-s', 'advise', '--', file], { cwd: root });
  let [out, told] = ['', ''];
  run.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
  run.stderr.on('data', (chunk: Buffer) => (told += chunk.toString()));
  expect(await new Promise((ended) => run.on('close', ended))).toBe(0);
  const seconds = (performance.now() - began) / 1000;
  const { heldUp } = JSON.parse(out) as { heldUp: { zones: number; of: number } };
  const lines = told.split('\n').length - 1;
  console.log(
    `1,000 open zones: ${seconds.toFixed(1)} s, ${heldUp.zones} held up, ${lines} lines of progress, ${(out.length / 1e6).toFixed(1)} MB`,
  );
  expect(heldUp.of).toBe(1000);
  expect(seconds).toBeLessThan(60 * slowness());
});
