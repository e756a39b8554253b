import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const site = {
  name: 'Sluice (invented)',
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'rare',
  thickness: 150,
  warnings: [],
};
const zone = {
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
};
const job = JSON.stringify({ format: 'down-to-sound.job', version: 1, site, zones: [zone] });
/** The first puts the program together where that has not been done yet. */
const rounds = 6;

/** One run of `advise` over a zone with nothing left open. */
export interface Advised {
  readonly status: number | null;
  readonly stderr: string;
  readonly stdout: string;
}

/**
 * How long the command line takes over one settled zone, as a reader waits for it.
 * @param line the command and its arguments, without the file
 * @returns milliseconds of the best of six runs, and what each run came to
 */
export function commandTime([command = '', ...args]: readonly string[]): {
  readonly best: number;
  readonly runs: readonly Advised[];
} {
  const folder = mkdtempSync(join(tmpdir(), 'jobs-'));
  const file = join(folder, 'settled.json');
  writeFileSync(file, job);
  let best = Infinity;
  const runs = Array.from({ length: rounds }, (): Advised => {
    const began = performance.now();
    const run = spawnSync(command, [...args, file], { cwd: root, encoding: 'utf8' });
    best = Math.min(best, performance.now() - began);
    return run;
  });
  rmSync(folder, { recursive: true, force: true });
  return { best, runs };
}

/** `advise` as one file, and by way of npm. */
export const adviseLines = {
  alone: ['node', 'src/cli/bundled.js', 'advise'],
  byNpm: ['npm', 'run', '-s', 'advise', '--'],
} as const;
