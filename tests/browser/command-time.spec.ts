import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { adviseLines, commandTime } from '../helpers/command-time';
import { slowness } from '../helpers/slowness';

/** How long the command line takes, as a reader waits for it. Here, where nothing runs beside it. */
const root = fileURLToPath(new URL('../..', import.meta.url));

let folder: string;
test.beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'jobs-'))));
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('the advice for one settled zone is there in half a second @nightly', () => {
  const [bare = 0, npm = 0] = [adviseLines.alone, adviseLines.byNpm].map((line) => {
    const { best, runs } = commandTime(line);
    for (const run of runs) {
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
