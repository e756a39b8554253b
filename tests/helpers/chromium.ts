import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** The lighter build without a window first: on two cores it saves a tenth. */
export const usual: readonly string[] = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];
const packages = ['chromium-headless-shell', 'chromium'];

const runs = (path: string): boolean => spawnSync(path, ['--version']).status === 0;

/**
 * A Chromium for the browser tests, and how it was come by: named by CHROMIUM_PATH, on the
 * system, the test library's own, or installed now (the test library's, else the system's package).
 * @throws Error saying what to do when none can be had.
 */
export function findChromium(): { path: string; how: string } {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (runs(named)) return { path: named, how: 'named by CHROMIUM_PATH' };
    throw new Error(`CHROMIUM_PATH names ${named}, which does not run.`);
  }
  const system = usual.find((path) => existsSync(path) && runs(path));
  if (system) return { path: system, how: 'found on the system' };
  const own = chromium.executablePath();
  if (existsSync(own) && runs(own)) return { path: own, how: "the test library's own" };

  spawnSync('npx', ['playwright', 'install', 'chromium'], { stdio: 'ignore', timeout: 300_000 });
  if (existsSync(own) && runs(own)) return { path: own, how: 'installed by the test library' };
  if (process.getuid?.() === 0) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    execFileSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env });
    for (const name of packages) {
      spawnSync('apt-get', ['install', '-y', '-qq', name], { stdio: 'ignore', env });
      const path = usual.find((each) => existsSync(each) && runs(each));
      if (path) return { path, how: "installed from the system's packages" };
    }
  }
  throw new Error('No Chromium found. Install one, or set CHROMIUM_PATH to it.');
}
