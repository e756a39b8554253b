import { expect, test, type Page } from '@playwright/test';
import { listen, noFaultsInBoth, noSideways, withAxe } from './page-checks';

/** What a phone shows first: the start page, the ways to learn, practice and the chart. */
test.use({ viewport: { width: 390, height: 844 } });

/** It stands whole on the first screen. */
const onFirstScreen = async (page: Page, selector: string) => {
  const box = await page.locator(selector).boundingBox();
  expect(box, selector).not.toBeNull();
  expect((box?.y ?? 0) + (box?.height ?? 0), selector).toBeLessThanOrEqual(844);
};

test('the first screen asks who reads, starts, and opens an example in one tap', async ({
  page,
  baseURL,
}) => {
  const { elsewhere, errors } = listen(page, baseURL ?? '');
  await page.goto('/');
  for (const name of ['Start with your concrete', 'See an example', 'Practice', 'Field chart']) {
    const link = page.getByRole('main').getByRole('link', { name });
    const box = await link.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0), name).toBeLessThanOrEqual(844);
  }
  const reader = await page.getByLabel('I own it').boundingBox();
  const start = await page.getByRole('link', { name: 'Start with your concrete' }).boundingBox();
  expect(reader?.y ?? Infinity).toBeLessThan(start?.y ?? 0);
  await page.getByLabel('I own it').check();
  await page.getByRole('link', { name: 'See an example' }).click();
  await page.waitForURL(/\/advice\/\?zone=a/);
  await expect(page.locator('h1')).toContainText('Shotblasting');
  await expect(page.locator('main')).toContainText('(invented example)');

  // The choice holds; an example is no job of the reader's own, so the page starts afresh.
  await page.goto('/');
  await expect(page.getByLabel('I own it')).toBeChecked();
  await page.getByRole('button', { name: 'Start with your concrete' }).click();
  await page.waitForURL(/\/assess\/element\//);
  await page.goto('/');
  await expect(
    page.getByText('Tidewell community hall, ramp and forecourt (invented example)'),
  ).toBeVisible();
  expect([elsewhere, errors]).toEqual([[], []]);
});

test('the drawing on the start page speaks the reader’s units @nightly', async ({ page }) => {
  await page.goto('/');
  const figure = page.locator('main figure');
  await expect(figure).toContainText('50');
  await page.getByText('in, ft').click();
  await expect(figure).not.toContainText('50');
  await expect(figure.locator('svg')).toContainText('in');
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('every explainer can be reached from the groups', async ({ page }) => {
    await page.goto('/learn/');
    const inside = page.locator('details.group').nth(1).getByRole('link').first();
    await expect(inside).toBeHidden();
    await page.getByText('Ways to take concrete off').click();
    await inside.click();
    await expect(page.locator('h1')).toBeVisible();
  });

  test('the chart answers two taps on the first screen, with nothing to push sideways', async ({
    page,
  }) => {
    await page.goto('/learn/chart/');
    await expect(page.locator('.cells')).toBeHidden();
    for (const [loose, deep] of [
      ['tight', 'film'],
      ['flaking', 'under-3'],
      ['fractured', '20-to-50'],
      ['rotten', 'through'],
    ]) {
      await page.locator(`.taps [value="${loose}"]`).check();
      await page.locator(`.taps [value="${deep}"]`).check();
      await expect(page.locator('.answer:visible')).toHaveCount(1);
      await onFirstScreen(page, '.answers');
      await noSideways(page, `${loose} ${deep}`);
    }
    await page.getByText('show the whole chart').click();
    await expect(page.locator('.cells')).toBeVisible();
    await expect(
      page.getByRole('heading', { name: 'The stops come before the chart' }),
    ).toBeVisible();
  });
});

test('what is typed on the index of explainers is searched for @nightly', async ({ page }) => {
  await page.goto('/learn/');
  await page.getByRole('searchbox').fill('muriatic acid');
  await page.getByRole('button', { name: 'Search' }).click();
  await page.waitForURL(/\/learn\/search\/\?for=muriatic/);
  await expect(page.getByRole('link', { name: 'Why not acid?' })).toBeVisible();
});

test('no fault that axe finds, in light and dark @nightly', async ({ page }) => {
  await withAxe(page);
  for (const path of ['/', '/learn/', '/learn/chart/', '/learn/practice/']) {
    await page.goto(path);
    await expect(page.locator('main h1')).toBeVisible();
    await noFaultsInBoth(page, path);
  }
});
