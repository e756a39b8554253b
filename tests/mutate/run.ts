/**
 * Changes the rules of a room one at a time and counts which changes no test notices:
 * `npm run mutate -- ROOM [FILE...]`. What is known already is not tried again (test-results/mutate).
 * --quick leaves out tables that are read once, when a module loads: each needs all tests of the room.
 * --share=10 tries every tenth block of four lines, to see how a room stands.
 */
import { Stryker } from '@stryker-mutator/core';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { rooms, testsOf } from './rooms';

const given = process.argv.slice(2);
const [name, ...only] = given.filter((word) => !word.startsWith('--'));
const quick = given.includes('--quick');
const share = Number(given.find((word) => word.startsWith('--share='))?.slice(8) ?? 1);
const room = rooms.find((one) => one.name === name);
if (!room || !(share >= 1)) {
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
  inProcess: { tests: testsOf(room) },
  warnings: {
    unknownOptions: false,
    preprocessorErrors: true,
    unserializableOptions: true,
    slow: true,
  },
  coverageAnalysis: 'perTest',
  ignoreStatic: quick,
  concurrency: 1,
  incremental: share === 1,
  incrementalFile: `${folder}/incremental.json`,
  plugins: ['./tests/mutate/in-process.js', './tests/mutate/survivors.js'],
  reporters: ['survivors', 'progress-append-only', 'json'],
  jsonReporter: { fileName: `${folder}/report.json` },
  ignorePatterns: ['build', 'test-results', 'static', 'tests/browser', '.svelte-kit/output'],
  tempDirName: `${folder}/sandbox`,
  checkers: [],
  timeoutMS: 120_000,
}).runMutationTest();

const count = (status: string): number => results.filter((one) => one.status === status).length;
const [killed, survived, slow] = [count('Killed'), count('Survived'), count('Timeout')];
const [missed, left] = [count('NoCoverage'), count('Ignored')];
const all = killed + survived + missed + slow;
const score = (((killed + slow) / all) * 100).toFixed(1);
const minutes = ((Date.now() - started) / 60_000).toFixed(1);
console.log('| room | mutants | killed | survived | no coverage | timeout | score | minutes |');
console.log('| ---- | ------- | ------ | -------- | ----------- | ------- | ----- | ------- |');
console.log(
  `| ${room.name} | ${all} | ${killed} | ${survived} | ${missed} | ${slow} | ${score} % | ${minutes} |`,
);
if (left) console.log(`${left} left out: tables (--quick), or equivalent by a note in the source`);
process.exit(0);
