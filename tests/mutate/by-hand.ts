/**
 * Whether a verdict of `npm run mutate` can be trusted: changes drawn by lot from the report of a
 * whole run, half of them noticed, are written into the source one by one, the room's tests run as
 * `npm test` runs them, and the verdicts are compared.
 * `npx tsx tests/mutate/by-hand.ts ROOM [HOW MANY] [SEED]`
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { rooms, testsOf } from './rooms';

interface Place {
  readonly line: number;
  readonly column: number;
}
interface Mutant {
  readonly location: { readonly start: Place; readonly end: Place };
  readonly replacement: string;
  readonly status: string;
  readonly killedBy?: readonly string[];
}
interface Report {
  readonly files: Readonly<Record<string, { source: string; mutants: readonly Mutant[] }>>;
}

const [name = '', many = '20', seed = '1'] = process.argv.slice(2);
const room = rooms.find((one) => one.name === name);
if (!room) throw new Error(`expected a room: ${rooms.map((one) => one.name).join(', ')}`);
const path = `test-results/mutate/${name.replaceAll('/', '-')}/report.json`;
const { files } = JSON.parse(readFileSync(path, 'utf8')) as Report;
const all = Object.entries(files).flatMap(([file, { source, mutants }]) =>
  mutants.map((mutant) => ({ file, source, ...mutant })),
);

/** A sequence that is the same for a seed (Park and Miller, 1988). */
let state = Number(seed);
const drawn = <T>(list: readonly T[], count: number): T[] => {
  const left = [...list];
  return Array.from({ length: Math.min(count, left.length) }, () => {
    state = (state * 48271) % 2147483647;
    return left.splice(state % left.length, 1)[0] as T;
  });
};
const half = Math.ceil(Number(many) / 2);
const lot = ['Killed', 'Survived'].flatMap((status) =>
  drawn(
    all.filter((mutant) => mutant.status === status),
    half,
  ),
);

const at = (text: string, { line, column }: Place) =>
  text
    .split('\n')
    .slice(0, line - 1)
    .join('\n').length +
  (line > 1 ? 1 : 0) +
  column -
  1;

let agreed = 0;
for (const { file, source, location, replacement, status } of lot) {
  const changed =
    source.slice(0, at(source, location.start)) +
    replacement +
    source.slice(at(source, location.end));
  if (readFileSync(file, 'utf8') !== source) throw new Error(`${file} is not as the run had it`);
  let seen = 'Survived';
  writeFileSync(file, changed);
  try {
    execFileSync('npx', ['vitest', 'run', '--bail=1', '--project=engine', ...testsOf(room)], {
      stdio: 'ignore',
      env: { ...process.env, MUTATE_ROOM: name },
    });
  } catch {
    seen = 'Killed';
  } finally {
    writeFileSync(file, source);
  }
  if (seen === status) agreed += 1;
  console.log(
    `${seen === status ? 'same' : 'OTHER'} tool ${status}, by hand ${seen}: ${file}:${location.start.line} ${replacement}`,
  );
}
console.log(`${agreed} of ${lot.length} alike`);
