import { expect as plain, type Page } from '@playwright/test';

// A busy machine may take its time; what is waited for is the same.
export const expect = plain.configure({ timeout: 20_000 });

export const board = (page: Page) => page.getByRole('application', { name: 'Drawing of the slab' });
export const results = (page: Page) => page.getByRole('region', { name: 'What it comes to' });
export const marks = (page: Page) => page.getByRole('region', { name: 'Marks' });

/** A slab of 6 m by 4 m in numbers. */
export async function layOut(page: Page): Promise<void> {
  await page.goto('/survey/');
  await page.getByLabel('Length (along)').fill('6000');
  await page.getByLabel('Width (across)').fill('4000');
  await page.keyboard.press('Enter');
  await expect(board(page)).toBeVisible();
}
/** Where a place of that slab lies on the screen: it fills the board across, 14 px off its sides. */
export async function onScreen(page: Page, x: number, y: number) {
  const box = await board(page).locator('path.heavy').first().boundingBox();
  if (!box) throw new Error('no outline');
  return { x: box.x + (x / 6000) * box.width, y: box.y + box.height - (y / 4000) * box.height };
}

/** Takes a tool in hand and has the whole board in sight. */
export async function choose(page: Page, tool: string): Promise<void> {
  // On a busy machine a tap can take so long that the browser takes it for a press that is held.
  await expect(async () => {
    await page.getByText(tool, { exact: true }).tap();
    await expect(page.getByRole('radio', { name: tool, exact: true })).toBeChecked({
      timeout: 2000,
    });
  }).toPass();
  // The fields of the mark before go, and the page with them: measured only then.
  await expect(page.locator('#editor')).toHaveCount(0);
  await board(page).evaluate((each) => each.scrollIntoView({ block: 'center' }));
}
