import { expect, test } from '@playwright/test';

test('answers outlive a reload and a closed tab', async ({ page, context }) => {
  await page.goto('/assess/element/');
  await page.getByLabel('Steps', { exact: false }).first().check();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL(/setting/);
  await page.reload();
  await expect(page.getByText('Answers so far (1)')).toBeVisible();
  await page.close();
  const again = await context.newPage();
  await again.goto('/');
  await again.getByRole('button', { name: 'Continue your job' }).click();
  await again.waitForURL(/setting/);
  await again.goBack();
  await again.goto('/assess/element/');
  await expect(again.locator('input[value="steps"]')).toBeChecked();
});

test('a typed number survives both systems of units, and a bad one is told beside its field @nightly', async ({
  page,
}) => {
  await page.goto('/assess/thickness/');
  const field = page.locator('#thickness-number');
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  const proceed = page.getByRole('button', { name: 'Continue' });
  for (const [typed, message] of [
    ['', 'Type a number'],
    ['-4', 'less than zero'],
    ['thick', 'not a number'],
    ['90000', 'very large'],
  ] as const) {
    await field.fill(typed);
    await proceed.click();
    await expect(page.locator('#thickness-error')).toContainText(message);
    await expect(field).toHaveValue(typed);
    await expect(field).toHaveAttribute('aria-describedby', /thickness-error/);
    await expect(field).toBeFocused();
  }
  await field.fill('101,6');
  await page.getByText('in, ft').click();
  await expect(field).toHaveValue('4');
  await page.getByText('mm, m', { exact: true }).click();
  await expect(field).toHaveValue('101,6');
  await page.getByText('in, ft').click();
  await proceed.click();
  await page.waitForURL(/assess\/element/);
  await page.goto('/assess/thickness/');
  await expect(field).toHaveValue('4');
  await page.getByText('mm, m', { exact: true }).click();
  await expect(field).toHaveValue('101.6');
});

test('what is ticked is still there after a look at a word of the trade, until Continue @nightly', async ({
  page,
}) => {
  await page.goto('/assess/looseness/');
  await page.locator('input[name="looseness"][value="flaking"]').check();
  // The page is live: what is ticked has been heard.
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  await page.goto('/learn/glossary/');
  await page.goBack();
  await expect(page.locator('input[name="looseness"][value="flaking"]')).toBeChecked();
  await page.reload();
  await expect(page.locator('input[name="looseness"][value="flaking"]')).toBeChecked();
  // Of another question it says nothing.
  await page.goto('/assess/texture/');
  await expect(page.locator('input[name="texture"]:checked')).toHaveCount(0);
});

test('who comes back from an explainer finds their place in the advice @nightly', async ({
  page,
}) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: '9 Larch Row' }).click();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.goto('/advice/');
  await page.locator('summary').filter({ hasText: 'Vibration' }).click();
  const link = page.getByRole('link', { name: 'Read more: Hand-arm vibration' });
  await link.scrollIntoViewIfNeeded();
  const before = await page.evaluate(() => scrollY);
  expect(before).toBeGreaterThan(300);
  await link.click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Hand-arm vibration');
  await page.goBack();
  // What was open is open again, so that the place is the same.
  await expect(link).toBeVisible();
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before - 100);
});

test('without JavaScript a question reads as a page and says what is missing', async ({
  browser,
}) => {
  const page = await browser.newPage({ javaScriptEnabled: false });
  await page.goto('/assess/looseness/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('How loose is it?');
  await expect(page.locator('.noscript')).toContainText('needs JavaScript');
  await expect(page.locator('input[name="looseness"]')).toHaveCount(7);
  await page.close();
});
