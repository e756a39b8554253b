/**
 * Changes the rules of a room one at a time and counts which changes no test notices:
 * `npm run mutate -- ROOM [FILE...]`. What is known already is not tried again (test-results/mutate).
 * --share=10 tries every tenth block of four lines, to see how a room stands.
 * --without=plan,limits asks no test with such a name: sooner done, and the score rather too low.
 * --patience=30 ends after so many seconds what does not come back, where the machine is quiet.
 * A score is whole when neither files nor a share were given.
 */
import { Stryker } from '@stryker-mutator/core';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { judged, tableOf } from './count';
import { rooms, testsOf } from './rooms';

const given = process.argv.slice(2);
const [name, ...only] = given.filter((word) => !word.startsWith('--'));
const without =
  given
    .find((word) => word.startsWith('--without='))
    ?.slice(10)
    .split(',') ?? [];
const share = Number(given.find((word) => word.startsWith('--share='))?.slice(8) ?? 1);
const patience = Number(given.find((word) => word.startsWith('--patience='))?.slice(11) ?? 90);
const room = rooms.find((one) => one.name === name);
if (!room || !(share >= 1) || !(patience > 0)) {
  console.error(`expected a room: ${rooms.map((one) => one.name).join(', ')}`);
  process.exit(2);
}

/** The files of the room, or blocks of their lines. */
function toMutate(): string[] {
  const root = `src/lib/${name}`;
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && (!only.length || only.includes(file)))
    .map((file) => join(root, file));
  if (share === 1) return files;
  const block = 4;
  let at = 0;
  return files.flatMap((file) => {
    const lines = readFileSync(file, 'utf8').split('\n').length;
    const starts = Array.from(
      { length: Math.ceil(lines / block) },
      (_, place) => place * block + 1,
    );
    return starts
      .filter(() => at++ % share === 0)
      .map((start) => `${file}:${start}-${start + block - 1}`);
  });
}

const folder = `test-results/mutate/${room.name.replaceAll('/', '-')}`;
mkdirSync(folder, { recursive: true });
// Tests of how long something takes look for it: what is counted on the way takes time, too.
process.env.MUTATE_ROOM = room.name;
const started = Date.now();
const results = await new Stryker({
  mutate: toMutate(),
  testRunner: 'in-process',
  inProcess: {
    tests: testsOf(room).filter((test) => !without.some((part) => test.includes(part))),
    room: `src/lib/${room.name}`,
    known: resolve(folder, 'known.jsonl'),
    longest: 2000,
  },
  warnings: {
    unknownOptions: false,
    preprocessorErrors: true,
    unserializableOptions: true,
    slow: true,
  },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  plugins: ['./tests/mutate/in-process.js', './tests/mutate/endless.js'],
  reporters: ['endless', 'progress-append-only', 'json'],
  jsonReporter: { fileName: `${folder}/report.json` },
  ignorePatterns: ['build', 'test-results', 'static', 'tests/browser', '.svelte-kit/output'],
  tempDirName: `${folder}/sandbox`,
  checkers: [],
  // Endless loops are known by how often they come by; on a busy machine all tests of a room take minutes.
  timeoutMS: patience * 1000,
  dryRunTimeoutMinutes: 30,
}).runMutationTest();

const changes = judged(results);
for (const { status, place, line, of, to } of changes)
  if (status === 'survived' || status === 'no coverage')
    console.log(`${status} ${place} | ${line} | ${of} → ${to}`);
console.log(tableOf(room.name, changes));
console.log(
  `${share > 1 || only.length ? 'a part' : 'whole'}, ${((Date.now() - started) / 60_000).toFixed(1)} minutes`,
);
process.exit(0);
