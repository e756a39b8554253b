/**
 * What takes too long for every run: once a night, on a machine with nothing else to do.
 * Ends with 1 when something of it is red.
 */
import { spawnSync } from 'node:child_process';
import { findChromium } from './helpers/chromium';

const { path } = findChromium();
const run = (command: string): boolean =>
  spawnSync(command, {
    shell: true,
    stdio: 'inherit',
    env: { ...process.env, NIGHTLY: '1', CHROMIUM_PATH: path },
  }).status === 0;

const built = run('npm run -s build -- --logLevel warn');
// A hundred tabs killed while they save, where `npm test` kills twenty-five.
const kills = built && run('npm run -s browser -- --project=site kills');
process.exit(kills ? 0 : 1);
