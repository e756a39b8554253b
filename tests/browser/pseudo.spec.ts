import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { siteListener } from '../../src/cli/site-server';
import { pseudo } from '../pseudo/rule';
import { englishIn } from '../pseudo/english';
import { sixFile } from '../helpers/six-jobs';
import { pageKinds } from './page-kinds';

/**
 * The site in a language made from English by rule: what is still English is not in words, what
 * sticks out would in any longer language. Builds a site of its own, so it runs with `npm run nightly`.
 */
const root = fileURLToPath(new URL('../..', import.meta.url));
test.skip(!process.env.NIGHTLY && !process.env.SITE_PSEUDO, 'builds a site: runs nightly');
test.describe.configure({ mode: 'default' });

let folder = process.env.SITE_PSEUDO ?? '';
let own: string | undefined;
let server: Server;
let site: string;

test.beforeAll(async () => {
  test.setTimeout(900_000);
  if (!folder) {
    own = mkdtempSync(join(tmpdir(), 'pseudo-'));
    folder = join(own, 'site');
    // Inside the project, where the build finds what the words import.
    const texts = join('test-results', 'pseudo');
    const run = (...command: string[]) =>
      execFileSync('npx', command, {
        cwd: root,
        env: {
          ...process.env,
          SITE_LANGUAGE: 'pseudo',
          SITE_TEXTS: texts,
          BUILD_FOLDER: relative(root, folder),
        },
        stdio: 'pipe',
      });
    run('tsx', 'tests/pseudo/write.ts', texts);
    run('vite', 'build', '--logLevel', 'warn');
  }
  server = createServer(siteListener(folder));
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  site = `http://127.0.0.1:${(server.address() as { port: number }).port}`;
});
test.afterAll(async () => {
  if (server) {
    server.closeAllConnections();
    await new Promise((closed) => server.close(closed));
  }
  if (own) rmSync(own, { recursive: true, force: true });
});

/** Every text of the page, also what is folded, and what is spoken instead of shown. */
const textsOf = (page: Page) =>
  page.evaluate(() => {
    const texts: string[] = [document.title];
    const left = 'script, style, noscript, code';
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode())
      if (!walk.currentNode.parentElement?.closest(left))
        texts.push(walk.currentNode.textContent ?? '');
    for (const name of ['aria-label', 'aria-description', 'title', 'alt', 'placeholder', 'content'])
      for (const each of document.querySelectorAll(
        name === 'content' ? 'meta[name="description"]' : `[${name}]`,
      ))
        texts.push(each.getAttribute(name) ?? '');
    return texts.filter((text) => text.trim());
  });

/** What is English on a page, each word with the text it stands in. */
async function english(page: Page): Promise<string[]> {
  const found = new Set<string>();
  for (const text of await textsOf(page)) {
    const words = englishIn(text);
    if (words.length) found.add(`${words.join(' ')} | ${text.trim().slice(0, 160)}`);
  }
  return [...found];
}
/** By how much the page sticks out, and which word sticks out of its drawing; empty where all fits. */
const sticksOut = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const out = scrollWidth > clientWidth ? [`the page, by ${scrollWidth - clientWidth} px`] : [];
    for (const text of document.querySelectorAll('svg text')) {
      const own = text.getBoundingClientRect();
      const frame = text.closest('svg')?.getBoundingClientRect() ?? own;
      if (own.width && (own.right > frame.right + 2 || own.left < frame.left - 2))
        out.push(`“${text.textContent}” of its drawing`);
    }
    return out;
  });

/** Licences are printed as their makers wrote them. */
const asWritten = '/learn/licences/';
const pages = () =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('index.html'))
    .map((path) => `/${path.replace(/index\.html$/, '')}`)
    .sort();

async function walk(page: Page, paths: readonly string[]) {
  const faults: string[] = [];
  for (const path of paths) {
    await page.goto(site + path);
    await expect(page.locator('h1').first()).toBeAttached();
    if (path !== asWritten)
      faults.push(...(await english(page)).map((fault) => `${path}: ${fault}`));
    faults.push(...(await sticksOut(page)).map((what) => `${path}: sticks out: ${what}`));
  }
  return [...new Set(faults)];
}

test.use({ viewport: { width: 320, height: 700 } });

test('no page says anything in English, and none sticks out', async ({ page }) => {
  test.setTimeout(600_000);
  const all = pages();
  expect(all.length).toBeGreaterThan(100);
  expect(await walk(page, all)).toEqual([]);
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
});

/** A job as a reader of that language would name it and its zones. */
const named = (file: object) =>
  JSON.stringify(file, (key, value: unknown) =>
    key === 'name' && typeof value === 'string' ? pseudo(value) : value,
  );

for (const [units, reader, name] of [
  ['metric', 'work', 'salted scaled driveway'],
  ['us', 'own', 'steps with a rusty bar'],
  ['us', 'explain', 'hollow balcony'],
] as const)
  test(`neither do the pages of a job, ${units}, for those who ${reader}`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.addInitScript(
      (kept) => localStorage.setItem('down-to-sound.preferences', JSON.stringify(kept)),
      { units, reader },
    );
    await page.goto(`${site}/jobs/`);
    await page.locator('#job-file').setInputFiles({
      name: 'job.json',
      mimeType: 'application/json',
      buffer: Buffer.from(named(sixFile(name, reader === 'explain'))),
    });
    await expect(page.locator('main li').first()).toBeVisible();
    expect(await walk(page, pageKinds)).toEqual([]);
  });
