import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { siteListener } from '../../src/cli/site-server';
import { frameWords } from '$words/ui/frame';
import { belowPath as base } from '../helpers/below';
import { pageKinds } from './page-kinds';

/** The site below a path of a host that has another copy at its root. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const slowly = { timeout: 60_000 };
test.use({ serviceWorkers: 'allow' });
// One copy is enough; the run of all tests has built it before.
test.describe.configure({ mode: 'default' });

let below = process.env.SITE_BELOW ?? '';
let own: string | undefined;
let server: Server;
let site: string;

test.beforeAll(async () => {
  test.setTimeout(900_000);
  if (!below) {
    below = own = mkdtempSync(join(tmpdir(), 'below-'));
    execFileSync('npm', ['run', '-s', 'build', '--', '--logLevel', 'warn'], {
      cwd: root,
      env: { ...process.env, BASE_PATH: base, BUILD_FOLDER: below },
      stdio: 'pipe',
    });
  }
  const atRoot = siteListener(join(root, 'build'));
  const atPath = siteListener(below, base);
  server = createServer((request, response) =>
    (request.url?.startsWith(`${base}/`) ? atPath : atRoot)(request, response),
  );
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  site = `http://127.0.0.1:${(server.address() as { port: number }).port}`;
});
test.afterAll(async () => {
  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
  if (own) rmSync(own, { recursive: true, force: true });
});

const whole = (page: Page) =>
  expect(page.getByRole('contentinfo')).toContainText(frameWords.offline.whole, slowly);

test('every kind of page works, and none asks for anything outside the path @nightly', async ({
  page,
}) => {
  const outside: string[] = [];
  page.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (!pathname.startsWith(`${base}/`)) outside.push(pathname);
  });
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  for (const path of pageKinds) {
    const answer = await page.goto(site + base + path);
    expect(answer?.status(), path).toBe(200);
    await expect(page.getByRole('heading', { level: 1 }), path).toBeVisible();
    const links = await page
      .locator('a[href]')
      .evaluateAll((all) =>
        all.map((each) => new URL(each.getAttribute('href') ?? '', document.baseURI).href),
      );
    for (const link of links)
      if (link.startsWith(site)) expect(link, path).toContain(`${site}${base}/`);
  }
  // An answer leads on to the next question, the search finds its file.
  await page.goto(`${site}${base}/assess/element/`);
  await page.locator('input[value="slab"]').check();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL(`${site}${base}/assess/setting/`);
  await page.goto(`${site}${base}/learn/search/`);
  await page.getByRole('searchbox').fill('laitance');
  await expect(page.locator('main').getByRole('listitem').first()).toContainText(/laitance/i);
  const lost = await page.goto(`${site}${base}/no/such/page/`);
  expect(lost?.status()).toBe(404);
  await expect(page.getByRole('heading', { name: frameWords.lost.title })).toBeVisible();
  await page.getByRole('link', { name: frameWords.lost.back }).click();
  await page.waitForURL(`${site}${base}/`);
  expect(outside).toEqual([]);
  expect(complaints).toEqual([]);
});

test('every kind of page works without a network, the page for what is not there too @nightly', async ({
  page,
  context,
}) => {
  await page.goto(`${site}${base}/`);
  await whole(page);
  await context.setOffline(true);
  for (const path of pageKinds) {
    expect((await page.goto(site + base + path))?.status(), path).toBe(200);
    await expect(page.getByRole('heading', { level: 1 }), path).toBeVisible();
  }
  expect((await page.goto(`${site}${base}/no/such/page/`))?.status()).toBe(404);
  await expect(page.getByRole('heading', { name: frameWords.lost.title })).toBeVisible();
});

/** All that a site keeps on the device for this origin, by name. */
const stores = (page: Page) =>
  page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name ?? '').sort(),
    local: Object.keys(localStorage).sort(),
    session: Object.keys(sessionStorage).sort(),
    caches: (await caches.keys()).sort(),
  }));

test('two copies on one host never touch what is the other’s @nightly', async ({ page }) => {
  const answer = async (at: string, choice: string) => {
    await page.goto(`${at}/assess/element/`);
    await page.locator(`input[value="${choice}"]`).check();
    await page.getByRole('button', { name: 'Continue' }).click();
    await page.waitForURL(`${at}/assess/setting/`);
    await expect(page.getByText('Saved', { exact: true })).toBeVisible();
    await page.goto(`${at}/learn/practice/`);
    // The store of practice is opened once the page is live.
    await expect
      .poll(async () => (await stores(page)).databases.some((name) => name.endsWith('practice')))
      .toBe(true);
    await page.goto(`${at}/`);
    await whole(page);
  };
  await answer(site, 'slab');
  const before = await stores(page);
  // At the root the names are what they always were: whoever has jobs there keeps them.
  expect(before.databases).toEqual(['down-to-sound', 'down-to-sound.practice']);
  expect(before.local).toContain('down-to-sound.preferences');
  await answer(site + base, 'wall');
  const after = await stores(page);
  for (const kind of ['databases', 'local', 'session', 'caches'] as const) {
    const added = after[kind].filter((name) => !before[kind].includes(name));
    expect(after[kind], kind).toEqual(expect.arrayContaining(before[kind]));
    for (const name of added) expect(name, kind).toContain(base);
    if (kind !== 'session') expect(added.length, kind).toBeGreaterThan(0);
  }
  // Each has its own answer still, and its whole copy.
  for (const [at, choice] of [
    [site, 'slab'],
    [site + base, 'wall'],
  ] as const) {
    await page.goto(`${at}/assess/element/`);
    await expect(page.locator(`input[value="${choice}"]`)).toBeChecked();
    await whole(page);
  }
});
