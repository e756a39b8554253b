import { expect, test } from '@playwright/test';
import { journeys } from './journeys';
import { answerAll } from './page-checks';

/**
 * What a screen reader meets, in its order: the accessibility tree of the main journeys, held to
 * trees kept beside this file. Make new ones, after reading them:
 * NIGHTLY=1 npm run browser -- reading-order --update-snapshots
 */
const kept = ['element', 'thickness', 'contamination'];

test('a driveway from the first question to the advice @nightly', async ({ page }) => {
  test.setTimeout(120_000);
  const journey = journeys['a scaled driveway in a frost climate with crumbling cracks'];
  await page.goto('/assess/element/');
  await answerAll(page, journey?.answers ?? {}, async (question) => {
    // Later questions are reached with focus on their heading.
    if (question !== 'element') await expect(page.locator('h1')).toHaveCount(1);
    if (!kept.includes(question)) return;
    await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
    await expect(page.locator('main form')).toMatchAriaSnapshot({ name: `${question}.aria.yml` });
  });
  await expect(page.locator('h1')).toBeFocused();
  await expect(page.getByRole('heading', { name: 'What would change it' })).toBeVisible();
  await expect(page.locator('main')).toMatchAriaSnapshot({ name: 'advice.aria.yml' });
});

test('a wrong number is tied to its field, and focus goes there @nightly', async ({ page }) => {
  await page.goto('/assess/thickness/');
  const field = page.locator('#thickness-number');
  await field.fill('-3');
  await page.getByRole('button', { name: 'Continue' }).click();
  await expect(field).toBeFocused();
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(field).toHaveAccessibleDescription(/less than zero/);
  await expect(page.locator('main form')).toMatchAriaSnapshot({ name: 'wrong-number.aria.yml' });
});
