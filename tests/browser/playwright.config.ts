import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';
import { usual } from '../helpers/chromium';
import { nightly, nightTag } from '../helpers/rounds';

/** The Chromium to drive: named in CHROMIUM_PATH, the system's, or Playwright's own. */
const executablePath = process.env.CHROMIUM_PATH ?? usual.find((path) => existsSync(path));
const port = Number(process.env.PORT ?? 4183);

const timed = /(speed|taps|weather-century|not-sure|command-time)\.spec\.ts$/;

/** Drives the built site as `npm start` serves it; build it first. */
export default defineConfig({
  testDir: '.',
  // A folder of its own: what is here is cleared at the start.
  outputDir: '../../test-results/browser',
  fullyParallel: true,
  // What takes long is left to the night.
  ...(!nightly && { grepInvert: new RegExp(nightTag) }),
  workers: 2,
  // What is timed runs after the rest, with nothing beside it.
  projects: [
    { name: 'site', testIgnore: timed },
    { name: 'timed', testMatch: timed, dependencies: ['site'], workers: 1 },
  ],
  timeout: 60_000,
  expect: { timeout: 20_000 },
  // Pictures and trees lie beside their tests, by name alone.
  snapshotPathTemplate: '{testDir}/looks/{arg}{ext}',
  reporter: [['list'], ['json', { outputFile: '../../test-results/browser.json' }]],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    locale: 'en-GB',
    // Each test is a new visitor: the worker would fetch the whole site beside it. Tests of the worker let it in.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath && { executablePath }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: 'node --import tsx src/cli/serve.ts',
    cwd: '../..',
    env: { PORT: String(port) },
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    timeout: 30_000,
  },
});
