import { expect, type Locator, type Page } from '@playwright/test';

/** Presses Tab until the element has the focus; nothing else moves it. */
export async function reach(page: Page, target: Locator): Promise<Locator> {
  const there = target.first();
  await expect(there).toBeVisible();
  const found = await there.elementHandle();
  for (let presses = 0; presses < 300; presses += 1) {
    if (await found?.evaluate((element) => element === document.activeElement)) return there;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${target}`);
}

/** Reaches it and presses a key on it. */
export async function press(page: Page, target: Locator, key = 'Enter'): Promise<void> {
  await reach(page, target);
  await page.keyboard.press(key);
}

/** Picks one of several as a keyboard does: Tab into the group, arrows within. */
export async function pick(page: Page, group: Locator, wanted: Locator): Promise<void> {
  const checked = group.locator('input:checked');
  await reach(page, (await checked.count()) ? checked : group.locator('input[type=radio]'));
  for (let presses = 0; presses < 12 && !(await wanted.isChecked()); presses += 1)
    await page.keyboard.press((await checked.count()) ? 'ArrowDown' : 'Space');
  await expect(wanted).toBeChecked();
}
