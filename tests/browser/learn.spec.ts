import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { noContrastFaults, noFaults, noSideways, onOneSheet, withAxe } from './page-checks';

/** The library, and whatever else is a page without an answer in it: looked at whole. */
const build = fileURLToPath(new URL('../../build', import.meta.url));
const library = readdirSync(build, { recursive: true, encoding: 'utf8' })
  .filter((path) => /^learn\/.*index\.html$/.test(path))
  .map((path) => `/${path.replace(/index\.html$/, '')}`)
  .sort();
const parts = 2;

test.beforeEach(({ page }) => withAxe(page));

for (let part = 0; part < parts; part += 1)
  test(`axe finds nothing on the pages to learn from, part ${part + 1} of ${parts} @nightly`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.setViewportSize({ width: 320, height: 800 });
    const mine = library.filter((_, index) => index % parts === part);
    expect(mine.length).toBeGreaterThan(25);
    for (const path of mine) {
      await page.goto(path);
      await noFaults(page, path);
      await noSideways(page, path);
    }
  });

test('home, an address that is nowhere, and pages with no job yet have no fault', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 800 });
  for (const path of [
    '/',
    '/no/such/page/',
    '/job/plan/',
    '/crew/',
    '/ready/',
    '/owner/',
    '/jobs/',
    '/weather/',
  ]) {
    await page.goto(path);
    await expect(page.locator('h1').first()).toBeVisible();
    await noFaults(page, path);
    await noSideways(page, path);
  }
});

test('the field chart prints on one sheet, and no name in it is cut', async ({ page }) => {
  await page.goto('/learn/chart/');
  await onOneSheet(page);
  // As wide as the sheet is inside its margins of 7 mm: A4, and the shorter Letter.
  await page.emulateMedia({ media: 'print' });
  for (const mm of [297 - 14, 279.4 - 14]) {
    await page.setViewportSize({ width: Math.floor((mm / 25.4) * 96), height: 700 });
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.wide, .wide td, .wide th')]
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)
        .map(({ className, textContent }) => `${className}: ${textContent?.trim().slice(0, 40)}`),
    );
    expect(cut).toEqual([]);
  }
});

test('the library in the dark: nothing too pale on a page of each kind @nightly', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  for (const path of [
    '/',
    '/learn/',
    '/learn/profile/',
    '/learn/silica-dust/',
    '/learn/damage-depth/',
    '/learn/chart/',
    '/learn/interview-map/',
    '/learn/glossary/',
    '/learn/sources/',
    '/learn/search/',
    '/learn/practice/',
  ]) {
    await page.goto(path);
    await noContrastFaults(page, path);
  }
});
