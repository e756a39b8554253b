import { spawnSync } from 'node:child_process';
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
const rounds = 6;

/** Milliseconds that the command line takes over one settled zone, best of some; the first puts it together. */
export function commandTime(): number {
  let best = Infinity;
  for (let round = 0; round < rounds; round += 1) {
    const began = performance.now();
    const { status, stderr } = spawnSync('node', ['src/cli/bundled.js', 'advise', '-'], {
      cwd: root,
      encoding: 'utf8',
      input: job,
    });
    if (status !== 0) throw new Error(`advise ended with ${String(status)}: ${stderr}`);
    best = Math.min(best, performance.now() - began);
  }
  return best;
}
