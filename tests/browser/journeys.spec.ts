import { expect, test } from '@playwright/test';
import { firstMet, journeys } from './journeys';
import { pick, press, reach } from './keyboard';
import { listen, noFaults, noFaultsInBoth, noSideways } from './page-checks';
import { nightUnless } from '../helpers/rounds';

for (const [name, { answers, verdict, says }] of Object.entries(journeys))
  test(`${name}, by keyboard alone, at 320 px, with no fault that axe finds${nightUnless(name === 'a sound dirty walkway')}`, async ({
    page,
    baseURL,
  }) => {
    test.setTimeout(240_000);
    const { elsewhere, errors } = listen(page, baseURL ?? '');
    await page.setViewportSize({ width: 320, height: 720 });
    await page.goto('/');
    await noSideways(page, 'home');
    await press(page, page.locator('main .do'));
    const news = firstMet(name);
    for (const [question, answer] of Object.entries(answers)) {
      await page.waitForURL(new RegExp(`/assess/${question}/`));
      await expect(page.locator('h1')).toBeFocused();
      await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
      const choice = page.locator(`input[name="${question}"][value="${answer}"]`);
      if (answer.startsWith('#')) {
        await reach(page, page.locator(`#${question}-number`));
        await page.keyboard.type(answer.slice(1));
      } else if (question === 'warnings' || question === 'contamination') {
        await press(page, choice, 'Space');
      } else await pick(page, page.locator('main fieldset, main form').first(), choice);
      await noSideways(page, question);
      if (news.has(question)) await noFaults(page, question);
      await press(page, page.locator('main button.do'));
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
