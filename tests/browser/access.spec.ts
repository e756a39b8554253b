import { expect, test } from '@playwright/test';
import { questionIds } from '../../src/lib/answers/questions';
import { firstMet, journeys } from './journeys';
import { answerAll, noContrastFaults, noFaults, noSideways, withAxe } from './page-checks';

test('between them the journeys meet every question', () => {
  const met = Object.keys(journeys).flatMap((name) => [...firstMet(name)]);
  expect(met.toSorted()).toEqual(questionIds.toSorted());
});

test('no question is too pale in the dark, nor wider than 1280 px @nightly', async ({ page }) => {
  test.setTimeout(180_000);
  await withAxe(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 1280, height: 800 });
  for (const question of questionIds) {
    await page.goto(`/assess/${question}/`);
    await expect(page.getByRole('button', { name: 'Continue' })).toBeEnabled();
    await noContrastFaults(page, question);
    await noSideways(page, question);
  }
});

test('a stop is told in words and shape, and has no fault @nightly', async ({ page }) => {
  await page.goto('/assess/element/');
  await answerAll(page, {
    element: 'slab',
    setting: 'open',
    salts: 'none',
    freezeThaw: 'some',
    thickness: 'unsure',
    warnings: 'fire-or-chemical',
    area: 'unsure',
  });
  await expect(page.locator('h1')).toHaveText('Stop');
  await expect(page.locator('main')).toContainText('a licensed structural engineer');
  await expect(page.getByText('An engineer comes first.').first()).toBeAttached();
  await noFaults(page, 'advice that stops');
});
