import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { siteListener } from '../../src/cli/site-server';
import { pageKinds } from './page-kinds';
import { sampled } from '../helpers/rounds';

/** The built site served from a folder that can be changed to a new version in the middle. */
const build = fileURLToPath(new URL('../../build', import.meta.url));
/**
 * Orders to the host; the worker itself and its version, which the browser asks for by itself; the
 * file in which all others come.
 */
const notKept = [
  '_headers',
  'service-worker.js',
  'version.json',
  'whole-site.txt',
  'job.schema.json',
  '__data.json',
  'icon-512.png',
];
test.use({ serviceWorkers: 'allow' });

let folder: string;
let server: Server;
let site: string;
/** What was asked for, in order; and what is refused for now, as by a host in trouble. */
const log: string[] = [];
const refused = new Set<string>();
const asked = (path: string) => log.filter((each) => each === path).length;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'site-'));
  // Without the packed copies: what is changed below would not be in them.
  cpSync(build, folder, { recursive: true, filter: (path) => !/\.(br|gz)$/.test(path) });
  const hand = siteListener(folder);
  log.length = 0;
  refused.clear();
  server = createServer((request, response) => {
    log.push(request.url ?? '');
    if (!refused.has(request.url ?? '')) return hand(request, response);
    response.statusCode = 503;
    response.end('not now');
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  site = `http://127.0.0.1:${(server.address() as { port: number }).port}`;
});
test.afterEach(async () => {
  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
  rmSync(folder, { recursive: true, force: true });
});

/** Puts another version of the site in place of the one that is served. */
function publish(version: string): void {
  const change = (name: string, edit: (text: string) => string) =>
    writeFileSync(join(folder, name), edit(readFileSync(join(folder, name), 'utf8')));
  const now = (
    JSON.parse(readFileSync(join(folder, '_app/version.json'), 'utf8')) as { version: string }
  ).version;
  change('service-worker.js', (text) => text.replaceAll(now, version));
  change('_app/version.json', (text) => text.replace(now, version));
  change('index.html', (text) =>
    text.replace('<head>', `<head><meta name="edition" content="${version}">`),
  );
}

/** Waits until the whole site is on the device and this page is served from there. */
const kept = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated', undefined, {
    timeout: 60_000,
  });
/** What the workers are at: the one that installs, the one that waits, the one that runs. */
const states = (page: Page) =>
  page.evaluate(async () => {
    const { installing, waiting, active } = await navigator.serviceWorker.ready;
    return [installing, waiting, active].map((worker) => worker?.state ?? null);
  });
const slowly = { timeout: 60_000 };
const edition = (page: Page) =>
  page.evaluate(
    () => document.querySelector('meta[name=edition]')?.getAttribute('content') ?? null,
  );
const caches = (page: Page) => page.evaluate(() => globalThis.caches.keys());

test('after one visit every page opens without a network', async ({ page, context }) => {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(site);
  await kept(page);
  await context.setOffline(true);
  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
  const paths = await page.evaluate(async () => {
    const [name] = await globalThis.caches.keys();
    const keys = await (await globalThis.caches.open(name ?? '')).keys();
    return keys.map(({ url }) => new URL(url).pathname).filter((path) => path.endsWith('/'));
  });
  // Every page and file of the build is among what is kept, but for orders to the host.
  const all = readdirSync(build, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !notKept.includes(entry.name))
    // Copies for hosts that hand them out packed.
    .filter(({ name }) => !/\.(gz|br)$/.test(name))
    .map((entry) => `${entry.parentPath.slice(build.length)}/${entry.name}`)
    .map((path) => path.replace(/index\.html$/, ''));
  expect(all).toContain('/learn/search.packed');
  const keptPaths = await page.evaluate(async () => {
    const [name] = await globalThis.caches.keys();
    const keys = await (await globalThis.caches.open(name ?? '')).keys();
    return keys.map(({ url }) => new URL(url).pathname);
  });
  expect(all.filter((path) => !keptPaths.includes(path))).toEqual([]);
  expect(paths.length).toBeGreaterThan(20);
  // Each is handed out whole by the worker; one of each kind is opened as well.
  const handed = await page.evaluate(
    (all) =>
      Promise.all(
        all.map(async (path) => {
          const answer = await fetch(path);
          return { path, status: answer.status, heading: /<h1/.test(await answer.text()) };
        }),
      ),
    paths,
  );
  expect(handed).toEqual(paths.map((path) => ({ path, status: 200, heading: true })));
  const opened = sampled(pageKinds, 5);
  for (const path of opened) {
    expect(paths).toContain(path);
    const answer = await page.goto(site + path);
    expect(answer?.status(), path).toBe(200);
    await expect(page.getByRole('heading', { level: 1 }), path).toBeVisible();
  }
  // The search reads a file of its own.
  await page.goto(`${site}/learn/search/`);
  await page.getByRole('searchbox').fill('laitance');
  await expect(page.locator('main').getByRole('listitem').first()).toContainText(/laitance/i);
  // A link somebody typed without the last slash, with something to say behind the question mark.
  await page.goto(`${site}/assess/depth?zone=a`);
  expect(new URL(page.url()).pathname).toBe('/assess/depth/');
  const lost = await page.goto(`${site}/no/such/page/`);
  expect(lost?.status()).toBe(404);
  expect(complaints).toEqual([]);
  console.log(`${paths.length} pages had with the network off, ${opened.length} of them opened`);
});

test('a new version is offered between answers, taken when the reader says so, and old ones go @nightly', async ({
  page,
}) => {
  const offer = page.getByText('A new version of this site is ready.');
  await page.goto(`${site}/assess/element/`);
  await kept(page);
  const [first] = await caches(page);
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  await page.locator('input[value="steps"]').check();
  publish('second-version');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await expect.poll(() => states(page), slowly).toEqual([null, 'installed', 'activated']);
  expect((await caches(page)).sort()).toEqual([first, 'down-to-sound second-version'].sort());
  // In the middle of an answer nothing is offered, and what is ticked stays.
  await expect(offer).toBeHidden();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL(/setting/);
  await expect(offer).toBeHidden();
  // It is here and it waits: going on and reloading does not start it.
  await page.goto(site);
  await expect(offer).toBeVisible();
  await page.reload();
  expect(await edition(page)).toBeNull();

  await page.getByRole('button', { name: 'Use it now' }).click();
  await expect.poll(() => edition(page).catch(() => null), slowly).toBe('second-version');
  await expect.poll(() => caches(page)).toEqual(['down-to-sound second-version']);
  await expect(offer).toBeHidden();
  await page.goto(`${site}/assess/element/`);
  await expect(page.locator('input[value="steps"]')).toBeChecked();
});

test('a version that does not arrive whole is not run; the next visit fetches the rest alone @nightly', async ({
  page,
  context,
}) => {
  await page.goto(site);
  await kept(page);
  const [whole = ''] = await caches(page);
  publish('broken-version');
  refused.add('/learn/search.packed');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update().catch(() => null));
  await expect.poll(() => asked('/learn/search.packed'), slowly).toBe(1);
  await expect.poll(() => states(page), slowly).toEqual([null, null, 'activated']);
  expect((await caches(page)).sort()).toEqual([whole, 'down-to-sound broken-version'].sort());
  await context.setOffline(true);
  await page.reload();
  expect(await edition(page)).toBeNull();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await context.setOffline(false);
  refused.clear();
  log.length = 0;
  await page.reload();
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update().catch(() => null));
  await expect(page.getByText('A new version of this site is ready.')).toBeVisible(slowly);
  expect(asked('/learn/search.packed')).toBe(1);
  expect(asked('/learn/sounding/')).toBe(0);
});
