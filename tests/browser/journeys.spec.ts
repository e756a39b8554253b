import { expect, test, type Page } from '@playwright/test';
import { firstMet, journeys } from './journeys';
import { listen, noFaults, noFaultsInBoth, noSideways } from './page-checks';

/** Moves focus with Tab only until it is on the element. */
async function tabTo(page: Page, selector: string) {
  for (let presses = 0; presses < 60; presses += 1) {
    if (await page.evaluate((it) => document.activeElement?.matches(it), selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${selector}`);
}

/** Chooses in a group of radios as a keyboard does: Tab into the group, arrows within. */
async function pickRadio(page: Page, group: string, value: string) {
  await tabTo(page, `input[name="${group}"]`);
  const focused = () =>
    page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.value);
  if ((await focused()) === value) await page.keyboard.press('Space');
  for (let presses = 0; (await focused()) !== value; presses += 1) {
    expect(presses, `arrows never reached ${value}`).toBeLessThan(12);
    await page.keyboard.press('ArrowDown');
  }
}

for (const [name, { answers, verdict, says }] of Object.entries(journeys))
  test(`${name}, by keyboard alone, at 320 px, with no fault that axe finds`, async ({
    page,
    baseURL,
  }) => {
    test.setTimeout(240_000);
    const { elsewhere, errors } = listen(page, baseURL ?? '');
    await page.setViewportSize({ width: 320, height: 720 });
    await page.goto('/');
    await noSideways(page, 'home');
    await tabTo(page, 'main .do');
    await page.keyboard.press('Enter');
    const news = firstMet(name);
    for (const [question, answer] of Object.entries(answers)) {
      await page.waitForURL(new RegExp(`/assess/${question}/`));
      await expect(page.locator('h1')).toBeFocused();
      await expect(page.getByRole('heading', { name: 'Methods still standing' })).toBeVisible();
      if (answer.startsWith('#')) {
        await tabTo(page, `#${question}-number`);
        await page.keyboard.type(answer.slice(1));
      } else if (question === 'warnings' || question === 'contamination') {
        await tabTo(page, `input[name="${question}"][value="${answer}"]`);
        await page.keyboard.press('Space');
      } else await pickRadio(page, question, answer);
      await noSideways(page, question);
      if (news.has(question)) await noFaults(page, question);
      await tabTo(page, 'main button.do');
      await page.keyboard.press('Enter');
    }
    await page.waitForURL(/\/advice\//);
    await expect(page.locator('h1')).toHaveText(verdict);
    for (const sentence of says) await expect(page.locator('main')).toContainText(sentence);
    await expect(page.locator('main')).toContainText('a licensed professional come first');
    await noSideways(page, 'advice');
    await noFaultsInBoth(page, 'advice');
    await page.setViewportSize({ width: 1280, height: 720 });
    await noSideways(page, 'advice at 1280 px');
    await page.reload();
    await expect(page.locator('h1')).toHaveText(verdict);
    expect(elsewhere).toEqual([]);
    expect(errors).toEqual([]);
  });
