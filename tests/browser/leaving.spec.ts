import { test, type Page } from '@playwright/test';
import { expect, withJob } from '../helpers/jobs-page';

/** Leaving asks when something would be lost, and only then. */
const closing = async (page: Page): Promise<boolean> => {
  let asked = false;
  page.once('dialog', (dialog) => {
    asked = dialog.type() === 'beforeunload';
    void dialog.accept();
  });
  await page.close({ runBeforeUnload: true });
  await expect.poll(() => page.isClosed()).toBe(true);
  return asked;
};
const live = (page: Page) => expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
const noStorage = (page: Page) =>
  page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not in this window', 'SecurityError');
    };
  });

test('closing the tab asks while something is ticked and not given, and not otherwise @nightly', async ({
  page,
  context,
}) => {
  await page.goto('/assess/element/');
  await live(page);
  await page.locator('input[value="slab"]').check();
  const other = await context.newPage();
  await other.goto('/assess/element/');
  await live(other);
  await other.locator('h1').click();
  expect(await closing(other)).toBe(false);
  const third = await context.newPage();
  await third.goto('/assess/element/');
  await live(third);
  await third.locator('input[value="wall"]').check();
  await third.getByRole('button', { name: 'Continue' }).click();
  await third.waitForURL(/setting/);
  await live(third);
  expect(await closing(third)).toBe(false);
  expect(await closing(page)).toBe(true);
});

test('closing the tab asks while the job is in this tab only @nightly', async ({ page }) => {
  await noStorage(page);
  await page.goto('/assess/element/');
  await live(page);
  await page.locator('input[value="slab"]').check();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL(/setting/);
  expect(await closing(page)).toBe(true);
});

test('a link to a page that loads anew asks where the job would be lost by it, and only there @nightly', async ({
  page,
}) => {
  await noStorage(page);
  await page.goto('/assess/element/');
  await live(page);
  await page.locator('input[value="slab"]').check();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL(/setting/);
  // From page to page within the tab nothing is lost.
  await page.locator('header').getByRole('link', { name: 'Job', exact: true }).click();
  await page.waitForURL(/\/job\//);
  const learn = page.locator('header').getByRole('link', { name: 'Learn' });
  await learn.click();
  const ask = page.getByRole('dialog', { name: 'This would be lost' });
  await expect(ask).toBeVisible();
  await ask.getByRole('button', { name: 'Stay here' }).click();
  await expect(ask).toBeHidden();
  await expect(learn).toBeFocused();
  expect(page.url()).toContain('/job/');
  await learn.click();
  await ask.getByRole('button', { name: 'Leave all the same' }).click();
  await page.waitForURL(/\/learn\//);
});

test('what is ticked goes along within the tab without asking, each question’s own @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.goto('/assess/freezeThaw/');
  await live(page);
  await page.locator('input[value="often"]').check();
  await page.locator('form').getByRole('link', { name: 'Back' }).click();
  await page.waitForURL(/salts/);
  await page.locator('input[value="sea-or-pool"]').check();
  await page.locator('header').getByRole('link', { name: 'Learn' }).click();
  await page.waitForURL(/\/learn\//);
  await page.goBack();
  await expect(page.locator('input[value="sea-or-pool"]')).toBeChecked();
  await page.goto('/assess/freezeThaw/');
  await expect(page.locator('input[value="often"]')).toBeChecked();
});

test('where a tab can keep nothing, leaving what is ticked asks @nightly', async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.goto('/assess/element/');
  await live(page);
  await page.locator('input[value="slab"]').check();
  await page.locator('header').getByRole('link', { name: 'Job', exact: true }).click();
  const ask = page.getByRole('dialog', { name: 'This would be lost' });
  await ask.getByRole('button', { name: 'Stay here' }).click();
  await expect(page.locator('input[value="slab"]')).toBeChecked();
  await page.locator('header').getByRole('link', { name: 'Job', exact: true }).click();
  await ask.getByRole('button', { name: 'Leave all the same' }).click();
  await page.waitForURL(/\/job\//);
});
