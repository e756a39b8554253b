import { expect, test, type Page } from '@playwright/test';
import { unfold } from './folds';
import { noFaultsInBoth, noSideways, onOneSheet } from './page-checks';

/** Puts a day together by hand: breaking out for two and a half hours. */
async function mix(page: Page) {
  await page.goto('/crew/');
  await page.getByRole('button', { name: 'Add a task' }).click();
  await page.getByLabel('Minutes running').fill('150');
  await expect(page.getByRole('heading', { name: 'Steps of the day' })).toBeVisible();
}

test('a day put together by hand stays after a reload @nightly', async ({ page }) => {
  await mix(page);
  await unfold(page, 'How this is reckoned');
  await page.getByLabel('United States').check();
  await unfold(page, 'Tool by tool');
  await expect(page.locator('[id^="step-break-out"]')).toContainText('row (x)');
  // Saved at every change; the notice bar stays silent while that works.
  await page.waitForTimeout(500);
  await page.reload();
  await expect(page.getByLabel('Minutes running')).toHaveValue('150');
  await unfold(page, 'How this is reckoned');
  await expect(page.getByLabel('United States')).toBeChecked();
});

test('a bad number is told at its field, and the result stands @nightly', async ({ page }) => {
  await mix(page);
  await unfold(page, 'Limits and sums');
  const before = await page.locator('.pictures').innerText();
  await page.getByLabel('Minutes running').fill('1500');
  await expect(page.getByRole('alert')).toContainText('A day has 24 hours');
  expect(await page.locator('.pictures').innerText()).toBe(before);
});

test('nothing for axe to find, and no sideways scrolling @nightly', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 800 });
  await mix(page);
  for (const title of ['Tool by tool', 'Limits and sums', 'The briefing'])
    await unfold(page, title);
  await noFaultsInBoth(page, 'crew');
  await noSideways(page, 'crew');
});

// Its first day ends where blasting has to wait for the saw's water to dry: the rest is another day's.
test('the day of the plan with the most steps prints on one page @nightly', async ({ page }) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: 'Boat-shed floor' }).click();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.goto('/crew/');
  await page.getByRole('button', { name: 'Read it here' }).click();
  await expect(page.getByRole('rowheader')).toHaveCount(9);
  // Eight lines to follow, and rows to sign.
  await expect(page.locator('.lines li')).toHaveCount(8);
  const sign = page.getByRole('table', { name: 'Heard and understood' });
  await expect(sign).toBeVisible();
  // Two places a row: eight at least, whoever joins counted in.
  expect(await sign.locator('tbody td').count()).toBeGreaterThanOrEqual(16);
  await onOneSheet(page);
});

test('prints the sheet to read aloud and nothing else, on one page', async ({ page }) => {
  await mix(page);
  await page.emulateMedia({ media: 'print' });
  await expect(
    page.getByRole('heading', { name: 'To read aloud before work starts' }),
  ).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Steps of the day' })).toBeHidden();
  // Common practice, no source: what is read aloud on site is set in 10 point or more.
  const least = await page
    .locator('.sheet :is(td, th, li, p, dt, caption):visible')
    .evaluateAll((all) =>
      Math.min(...all.map((one) => parseFloat(getComputedStyle(one).fontSize))),
    );
  expect(least).toBeGreaterThanOrEqual((10 * 96) / 72 - 0.01);
  await onOneSheet(page);
});

test('a step that is ticked off stays so after a reload, on its own day @nightly', async ({
  page,
}) => {
  await mix(page);
  const tick = page.getByRole('checkbox', { name: /^Break out/ });
  await tick.check();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.reload();
  await expect(tick).toBeChecked();
});
