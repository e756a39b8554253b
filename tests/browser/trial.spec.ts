import { expect, test } from '@playwright/test';
import { openSix, standingOpen } from '../helpers/open-six';

/** A square metre tried on a phone: by keys alone, read at once, kept, and on the plan. */
test.use({ viewport: { width: 390, height: 844 } });

test('a square is typed and ticked by keys, answered at once, and still there after a reload', async ({
  page,
}) => {
  await openSix(page, 'mossy patio', 'work');
  await page.goto('/trial/');
  const minutes = page.locator('#trial-minutes');
  await expect(minutes).toBeVisible();
  await minutes.focus();
  await page.keyboard.type('6');
  for (let place = 0; place < 5; place += 1) {
    while (
      !(await page.evaluate((id) => document.activeElement?.id === id, `trial-depth-${place}`))
    )
      await page.keyboard.press('Tab');
    await page.keyboard.type('1');
  }
  // To the first choice of each group of ticks, and on.
  for (const name of ['stones', 'left', 'bar', 'sound']) {
    while (
      !(await page.evaluate(
        (wanted) => document.activeElement?.getAttribute('name') === wanted,
        `trial-${name}`,
      ))
    )
      await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
  }
  await expect(page.locator('#next-step')).toBeVisible();
  const said = await page.locator('#next-step').innerText();
  const { words, screens } = await standingOpen(page);
  console.log(`a square read: ${String(words)} words, ${String(screens)} screens`);
  expect(screens).toBeLessThanOrEqual(5);
  await expect(page.getByText('Saved')).toBeVisible();
  await page.reload();
  await expect(page.locator('#next-step')).toHaveText(said);
});

test('two squares and what they come to are read in under 350 words', async ({ page }) => {
  await openSix(page, 'mossy patio', 'work');
  await page.goto('/trial/');
  const square = async (left: string) => {
    await page.locator('#trial-minutes').fill('6');
    for (let place = 0; place < 5; place += 1)
      await page.locator(`#trial-depth-${place}`).fill('0');
    for (const [name, id] of [
      ['stones', 'none-seen'],
      ['left', left],
      ['bar', 'no'],
      ['sound', 'clear'],
    ] as const)
      await page.locator(`[name=trial-${name}][value=${id}]`).check();
  };
  await square('more');
  await expect(page.locator('#next-step')).toHaveText(/one notch harder/i);
  await page.getByRole('button', { name: 'Try the next square' }).click();
  await square('nothing');
  await expect(page.locator('#next-step')).toHaveText(/continue as set/i);
  const { words } = await standingOpen(page);
  expect(words).toBeLessThan(350);
});
