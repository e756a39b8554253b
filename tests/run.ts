/**
 * All the tests, in one command: facts, format, lint, types, unit and published checks,
 * every route, hostile input, the built site in Chromium. Ends with "N passed, N failed".
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { belowPath } from './helpers/below';
import { findChromium } from './helpers/chromium';

const results = 'test-results';
const below = resolve(`${results}/below`);
const unitResults = `${results}/unit.json`;
const browserResults = `${results}/browser.json`;

interface Stage {
  readonly name: string;
  readonly command: string;
  readonly env?: Record<string, string>;
}

function run({ name, command, env }: Stage): Promise<{ name: string; ok: boolean }> {
  const started = Date.now();
  return new Promise((resolve) => {
    const child = spawn(command, {
      shell: true,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...env },
    });
    child.on('close', (code) => {
      const seconds = ((Date.now() - started) / 1000).toFixed(0);
      console.log(`${code === 0 ? 'ok  ' : 'FAIL'} ${name} (${seconds} s)`);
      resolve({ name, ok: code === 0 });
    });
  });
}

/** Counts passed and failed tests from the two reports; a missing report counts as one failure. */
function count(): { passed: number; failed: number } {
  let passed = 0;
  let failed = 0;
  if (existsSync(unitResults)) {
    const report = JSON.parse(readFileSync(unitResults, 'utf8'));
    passed += report.numPassedTests;
    failed += report.numFailedTests + report.numFailedTestSuites;
  } else failed += 1;
  if (existsSync(browserResults)) {
    const { stats } = JSON.parse(readFileSync(browserResults, 'utf8'));
    passed += stats.expected + stats.flaky;
    failed += stats.unexpected;
    if (stats.flaky) console.log(`${stats.flaky} passed only at a second try`);
  } else failed += 1;
  return { passed, failed };
}

rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
const { path, how } = findChromium();
console.log(`Chromium: ${path} (${how})`);

const outcomes: { name: string; ok: boolean }[] = [];
// Beside each other where neither needs what the other makes.
for (const stages of [
  [{ name: 'facts', command: 'npm run -s facts' }],
  [
    { name: 'lint', command: 'npm run -s lint' },
    { name: 'types', command: 'npm run -s types' },
  ],
  [{ name: 'build', command: 'npm run -s build -- --logLevel warn' }],
  [
    {
      name: 'build below a path',
      command: 'npm run -s build -- --logLevel warn',
      env: { BASE_PATH: belowPath, BUILD_FOLDER: below },
    },
  ],
  [
    {
      name: 'unit, published, every route, hostile, components',
      command: `npm run -s unit -- --reporter=dot --reporter=json --outputFile.json=${unitResults}`,
    },
  ],
  [
    {
      name: 'the built site in Chromium',
      command: 'npm run -s browser',
      env: { CHROMIUM_PATH: path, SITE_BELOW: below },
    },
  ],
] satisfies Stage[][])
  outcomes.push(...(await Promise.all(stages.map(run))));

const { passed, failed } = count();
const broken = outcomes.filter(({ ok }) => !ok);
if (broken.length) console.log(`Not well: ${broken.map(({ name }) => name).join('; ')}`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(broken.length || failed ? 1 : 0);
