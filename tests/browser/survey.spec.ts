import { readFileSync } from 'node:fs';
import { test } from '@playwright/test';
import { unfold } from './folds';
import { noFaultsInBoth, noSideways, sheetsOf } from './page-checks';
import { board, choose, expect, layOut, marks, onScreen, results } from './survey-steps';

test.setTimeout(240_000);

test.describe('on a phone', () => {
  test.use({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });

  test('a slab is drawn by touch, kept, and free of faults', async ({ page }) => {
    await layOut(page);
    await board(page).scrollIntoViewIfNeeded();
    const at = await onScreen(page, 3000, 2000);
    await page.touchscreen.tap(at.x, at.y);
    await expect(marks(page)).toContainText('Spot 1: 300 mm x 300 mm');
    await page.getByLabel('Depth', { exact: true }).fill('40');
    await expect(marks(page)).toContainText('40 mm deep');

    // A finger drawn along the slab: a crack from end to end of the way.
    await choose(page, 'Crack');
    const [from, to] = [await onScreen(page, 1000, 1000), await onScreen(page, 4000, 1000)];
    const touch = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number, y?: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: x === undefined || y === undefined ? [] : [{ x, y }],
      });
    await finger('touchStart', from.x, from.y);
    await finger('touchMove', (from.x + to.x) / 2, from.y);
    await finger('touchMove', to.x, to.y);
    await finger('touchEnd');
    await expect(marks(page)).toContainText('Crack 1: 3 m long');

    await choose(page, 'Wall');
    const edge = await onScreen(page, 3000, 4000);
    await page.touchscreen.tap(edge.x, edge.y);
    await expect(marks(page)).toContainText('Wall 1: 6 m long');

    await choose(page, 'Tap');
    await page.getByText('A chain', { exact: true }).tap();
    await page.getByRole('button', { name: 'I dragged the chain over all of it' }).tap();
    await expect(results(page)).toContainText('in lanes of 450 mm');

    await noSideways(page, 'survey at 320 px');
    await noFaultsInBoth(page, 'survey on a phone');
    const small = await page.locator('main :is(button, select, summary, .tools label)').evaluateAll(
      (all) =>
        all
          .filter((each) => each.checkVisibility())
          .map((each) => each.getBoundingClientRect())
          .filter(({ width, height }) => width < 47.5 || height < 47.5).length,
    );
    expect(small, 'targets under 48 px').toBe(0);

    await expect(page.locator('header .kept')).toBeVisible();
    await page.reload();
    await expect(marks(page)).toContainText('Spot 1: 300 mm x 300 mm');
    await expect(marks(page)).toContainText('Wall 1');
    await page.goto('/job/');
    await unfold(page, 'The whole surface');
    await expect(page.getByRole('img', { name: /The slab seen from above/ })).toBeVisible();
  });

  test('the page to begin on is free of faults @nightly', async ({ page }) => {
    await page.goto('/survey/');
    await page.getByText('Corners, by side and turn').tap();
    await expect(page.getByRole('group', { name: 'Side 4' })).toBeVisible();
    await noSideways(page, 'start at 320 px');
    await noFaultsInBoth(page, 'start of the survey');
  });
});

test('the example: two sheets on paper with the sheet to chalk by, and pictures to keep @nightly', async ({
  page,
}) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: '9 Larch Row' }).click();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.goto('/survey/');
  await expect(page.getByRole('region', { name: 'What it comes to' })).toContainText('30 m²');
  await noFaultsInBoth(page, 'survey of the example');
  const [svg] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /\.svg/ }).click(),
  ]);
  const text = readFileSync(await svg.path(), 'utf8');
  expect(text).toMatch(/^<svg[^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  expect(text).not.toContain('var(');
  const [png] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /\.png/ }).click(),
  ]);
  expect(
    readFileSync(await png.path())
      .subarray(1, 4)
      .toString(),
  ).toBe('PNG');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('region', { name: 'Sheet to chalk by' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden();
  expect(await page.getByRole('row').count()).toBe(6);
  for (const format of ['A4', 'Letter'] as const)
    expect(await sheetsOf(page, format), format).toBeLessThanOrEqual(2);
});

test('the page weighs at most 60 kB more than the job page', async ({ page }) => {
  const weight = async (path: string) => {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    return page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .filter(({ name }) => /\.(js|css)$/.test(name) && !name.endsWith('service-worker.js'))
        .reduce((sum, each) => sum + (each as PerformanceResourceTiming).encodedBodySize, 0),
    );
  };
  const [job, survey] = [await weight('/job/'), await weight('/survey/')];
  console.log(
    `packed: job page ${(job / 1000).toFixed(1)} kB, survey page ${(survey / 1000).toFixed(1)} kB`,
  );
  expect(survey).toBeGreaterThan(10_000);
  expect(survey - job).toBeLessThanOrEqual(60_000);
});
