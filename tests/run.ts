/**
 * All the tests, in one command: facts, format, lint, types, unit and published checks, routes,
 * hostile input, the built site in Chromium. `npm test` takes a sample of what takes long;
 * `npm run nightly` all of it, and more. Ends with "N passed, N failed".
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { belowPath } from './helpers/below';
import { findChromium } from './helpers/chromium';
import { nightly } from './helpers/rounds';

const results = 'test-results';
const below = resolve(`${results}/below`);
const unitResults = `${results}/unit.json`;
const browserResults = `${results}/browser.json`;
const enginesResults = `${results}/engines.json`;

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

const read = (path: string) =>
  existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;

/** Counts the tests of all reports; a missing report counts as one failure. */
function count() {
  const counts = { passed: 0, failed: 0, left: 0 };
  const unit = read(unitResults);
  counts.passed += unit?.numPassedTests ?? 0;
  counts.failed += unit ? unit.numFailedTests + unit.numFailedTestSuites : 1;
  counts.left += unit?.numPendingTests ?? 0;
  const browser = read(browserResults)?.stats;
  counts.passed += browser ? browser.expected + browser.flaky : 0;
  counts.failed += browser ? browser.unexpected : 1;
  counts.left += browser?.skipped ?? 0;
  if (browser?.flaky) console.log(`${browser.flaky} passed only at a second try`);
  if (nightly) {
    const engines = read(enginesResults);
    counts.passed += engines?.passed ?? 0;
    counts.failed += engines ? engines.failed : 1;
    counts.left += engines?.left ?? 0;
  }
  return counts;
}

// What a mutation run has found out stays (tests/mutate/known.js).
for (const old of [below, unitResults, browserResults, enginesResults])
  rmSync(old, { recursive: true, force: true });
mkdirSync(results, { recursive: true });
const { path, how } = findChromium();
console.log(`Chromium: ${path} (${how})`);

const build = 'npx vite build --logLevel warn';
const stage = {
  facts: { name: 'facts', command: 'npm run -s facts' },
  lint: { name: 'lint', command: 'npm run -s lint' },
  types: { name: 'types', command: 'npm run -s types' },
  build: { name: 'build', command: build },
  unit: {
    name: 'unit, published, routes, hostile, components',
    command: `npm run -s unit -- --reporter=dot --reporter=json --outputFile.json=${unitResults}`,
  },
  below: {
    name: 'build below a path',
    command: build,
    env: { BASE_PATH: belowPath, BUILD_FOLDER: below },
  },
  browser: {
    name: 'the built site in Chromium',
    command: 'npm run -s browser',
    env: { CHROMIUM_PATH: path, SITE_BELOW: below },
  },
  engines: {
    name: 'the built site in other engines',
    command: `npm run -s engines -- --report=${enginesResults}`,
  },
} satisfies Record<string, Stage>;
/**
 * Lanes beside each other, each in its order, one group of lanes after the other. The tests in the
 * browser wait as much as they work, and nothing that the day runs is held to a time.
 */
const lanes: readonly (readonly (readonly Stage[])[])[] = nightly
  ? [
      [[stage.facts, stage.lint], [stage.types]],
      [[stage.build]],
      [[stage.unit]],
      [[stage.below]],
      [[stage.browser]],
      [[stage.engines]],
    ]
  : [
      [[stage.facts, stage.build], [stage.types]],
      [[stage.browser], [stage.lint, stage.unit]],
    ];
const outcomes: { name: string; ok: boolean }[] = [];
const inOrder = async (lane: readonly Stage[]) => {
  for (const each of lane) outcomes.push(await run(each));
};
for (const beside of lanes) await Promise.all(beside.map(inOrder));

const { passed, failed, left } = count();
const broken = outcomes.filter(({ ok }) => !ok);
if (broken.length) console.log(`Not well: ${broken.map(({ name }) => name).join('; ')}`);
if (left) console.log(`${left} not run${nightly ? '' : ' (npm run nightly)'}`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(broken.length || failed ? 1 : 0);
