import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { siteListener } from '../../src/cli/site-server';
import { frameWords } from '$words/ui/frame';

/** The copy on the device: when it is made, what becomes of a file that does not come, who is spared. */
const build = fileURLToPath(new URL('../../build', import.meta.url));
const hand = siteListener(build);
const words = frameWords.offline;
const slowly = { timeout: 60_000 };
test.use({ serviceWorkers: 'allow' });

let server: Server;
let site: string;
const log: string[] = [];
const refused = new Set<string>();
/** The whole site in one file; and after how many bytes of it the line breaks. */
const inOne = '/_app/whole-site.txt';
const whole = readFileSync(build + inOne);
let breaksAfter = Infinity;
test.beforeEach(async () => {
  log.length = 0;
  refused.clear();
  breaksAfter = Infinity;
  server = createServer((request, response) => {
    log.push(request.url ?? '');
    if (request.url === inOne && breaksAfter < Infinity) {
      response.setHeader('Content-Length', whole.length);
      // Long enough for what came to be read.
      response.write(whole.subarray(0, breaksAfter));
      setTimeout(() => response.destroy(), 5000);
      return;
    }
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
});

const footer = (page: Page) => page.getByRole('contentinfo');
/** Whether something is in the copy. */
const has = (page: Page, path: string) =>
  page.evaluate(async (path) => (await caches.match(path)) !== undefined, path);
const entries = (page: Page) =>
  page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    return (await (await caches.open(name)).keys()).length;
  });

test('one file that does not come costs that file alone, and the next visit fetches it @nightly', async ({
  page,
}) => {
  refused.add(inOne);
  refused.add('/learn/sounding/');
  await page.goto(site);
  await expect(footer(page)).toContainText(words.partly, slowly);
  expect(await has(page, '/learn/sounding/')).toBe(false);
  expect(await has(page, '/learn/glossary/')).toBe(true);
  refused.clear();
  log.length = 0;
  await page.reload();
  await expect(footer(page)).toContainText(words.whole, slowly);
  expect(await has(page, '/learn/sounding/')).toBe(true);
  // The rest is not fetched a second time.
  expect(log.filter((path) => path.startsWith('/learn/'))).toEqual(['/learn/sounding/']);
});

test('where the line breaks, what came stays, and the rest comes file by file @nightly', async ({
  page,
}) => {
  breaksAfter = whole.length / 3;
  await page.goto(site);
  await expect(footer(page)).toContainText(words.whole, slowly);
  expect(log).toContain(inOne);
  const after = log.slice(log.indexOf(inOne) + 1);
  // The many style sheets come first in the file; one or two the page itself may want meanwhile.
  expect(after.filter((path) => path.endsWith('.css')).length).toBeLessThan(5);
  expect(after).toContain('/learn/sounding/');
  expect(await has(page, '/learn/sounding/')).toBe(true);
});

test('what the browser has thrown away is fetched again at the next visit @nightly', async ({
  page,
}) => {
  await page.goto(site);
  await expect(footer(page)).toContainText(words.whole, slowly);
  const before = await entries(page);
  expect(before).toBeGreaterThan(100);
  await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    const cache = await caches.open(name);
    for (const key of (await cache.keys()).slice(0, 60)) await cache.delete(key);
  });
  expect(await entries(page)).toBe(before - 60);
  await page.reload();
  await expect.poll(() => entries(page), slowly).toBe(before);
});

test('the copy is begun when the page stands and has all it wants @nightly', async ({ page }) => {
  await page.goto(`${site}/assess/element/`);
  await expect(footer(page).getByRole('status')).toHaveText(words.whole, slowly);
  const begun = log.indexOf('/service-worker.js');
  const own = await page.evaluate(() =>
    performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname),
  );
  // The question with its drawing, machine and store came first, and no page but its own.
  const before = log.slice(0, begun);
  expect(before.filter((path) => path.endsWith('/'))).toEqual(['/assess/element/']);
  const scripts = own.filter((path) => path.endsWith('.js') && path.startsWith('/_app/'));
  expect(scripts.length).toBeGreaterThan(10);
  for (const path of scripts) expect(before, path).toContain(path);
});

test('a device that saves data is spared, told so, and asked @nightly', async ({ page }) => {
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'connection', { value: { saveData: true } }),
  );
  await page.goto(site);
  await expect(footer(page)).toContainText(words.spared, slowly);
  expect(log).not.toContain('/service-worker.js');
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(0);
  await page.getByRole('button', { name: words.keep }).click();
  await expect(footer(page).getByRole('status')).toHaveText(words.whole, slowly);
  // Next time nothing is fetched; that all is here is still told.
  log.length = 0;
  await page.reload();
  await expect(footer(page)).toContainText(words.whole, slowly);
  expect(log.filter((path) => path.startsWith('/learn/'))).toEqual([]);
});
