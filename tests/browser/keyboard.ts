import { expect, type Page } from '@playwright/test';

/** What has the focus answers to the selector. */
const focused = (page: Page, selector: string) =>
  page.evaluate((it) => document.activeElement?.matches(it) ?? false, selector);

/** Moves focus with Tab only until it is on the element. */
export async function tabTo(page: Page, selector: string, most = 60) {
  for (let presses = 0; presses < most; presses += 1) {
    if (await focused(page, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${selector}`);
}

/** Chooses in a group of radios as a keyboard does: Tab into the group, arrows within. */
export async function pickRadio(page: Page, group: string, value: string) {
  await tabTo(page, `input[name="${group}"]`);
  const now = () => page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.value);
  if ((await now()) === value) await page.keyboard.press('Space');
  for (let presses = 0; (await now()) !== value; presses += 1) {
    expect(presses, `arrows never reached ${value}`).toBeLessThan(12);
    await page.keyboard.press('ArrowDown');
  }
}
