import { readFileSync } from 'node:fs';
import { expect as plain, test, type Page } from '@playwright/test';
import { press } from './keyboard';
import { unfold } from './folds';
import { noFaultsInBoth, noSideways } from './page-checks';

// A busy machine may take its time; what is waited for is the same.
const expect = plain.configure({ timeout: 20_000 });
test.setTimeout(240_000);
test.use({ viewport: { width: 320, height: 700 } });

const zones = (page: Page) => page.locator('ol.rows > li');

async function example(page: Page, name: string): Promise<void> {
  await page.goto('/job/');
  await page.getByRole('button', { name }).click();
  await expect(page.getByLabel('Name of the job')).toHaveValue(new RegExp(name.slice(0, 10)));
  await expect(page.locator('header .kept')).toBeVisible();
}

test('an answer is changed in place and undone by keyboard alone, at 320 px @nightly', async ({
  page,
}) => {
  await example(page, 'Boat-shed floor');
  const row = zones(page).filter({ hasText: 'Bars showing at the slip' });
  await expect(row).toContainText('Depth: 60 mm · Hollow');
  await press(page, row.getByText(/^Answers \(/));
  const change = page.getByRole('button', { name: 'Change: Depth of Bars showing at the slip' });
  await press(page, change);
  // The focus is in the question; the number is the next field but one.
  await expect(page.locator('input[name=depth]:checked')).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.locator('#depth-number')).toBeFocused();
  await noFaultsInBoth(page, 'an answer open');
  await noSideways(page, 'an answer open');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('45');
  await page.keyboard.press('Enter');
  await expect(row).toContainText('Depth: 45 mm · Hollow');
  await expect(change).toBeFocused();
  await page.reload();
  await expect(row).toContainText('Depth: 45 mm · Hollow');
});

test('undo puts an answer back, and the focus where it was changed @nightly', async ({ page }) => {
  await example(page, 'Boat-shed floor');
  const row = zones(page).filter({ hasText: 'Worn walkway' });
  const before = await row.locator('.glance').textContent();
  await row.getByText(/^Answers \(/).click();
  await page.getByRole('button', { name: 'Change: Looseness of Worn walkway' }).click();
  await page.locator('input[value=rotten]').check();
  await page.getByRole('button', { name: 'Save', exact: true }).press('Enter');
  await expect(row.locator('.glance')).toContainText('Rotten');
  const undo = page.getByRole('button', { name: 'Undo: Looseness of Worn walkway' });
  await expect(undo).toBeVisible();
  // A second question open in place: what is tapped where its Save stands is its Save, wherever it is scrolled to.
  await page.getByRole('button', { name: 'Change: Depth of Worn walkway' }).click();
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await save.evaluate((element) => element.scrollIntoView({ block: 'end' }));
  const box = await save.boundingBox();
  expect(
    await page.evaluate(
      ({ x, y, width, height }) =>
        document.elementFromPoint(x + width / 2, y + height - 4)?.textContent?.trim(),
      box ?? { x: 0, y: 0, width: 0, height: 0 },
    ),
  ).toBe('Save');
  await page.getByRole('button', { name: 'Leave it as it was' }).click();
  await undo.press('Enter');
  await expect(row.locator('.glance')).toHaveText(before ?? '');
  await expect(
    page.getByRole('button', { name: 'Change: Looseness of Worn walkway' }),
  ).toBeFocused();
});

test('zones go out as a table and come back from it; what is wrong is named', async ({ page }) => {
  await example(page, 'Boat-shed floor');
  const count = await zones(page).count();
  await page.getByText('Zones from a table').click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the zones as a table (CSV)' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/\.zones\.csv$/);
  const table = readFileSync(await file.path(), 'utf8');
  const box = page.getByLabel('Your table');
  await box.fill(table.replace(/Hollow/, 'soft'));
  await expect(page.locator('#zones-read')).toContainText(
    /Row \d, Looseness: “soft” cannot be read/,
  );
  await noFaultsInBoth(page, 'a table with a slip');
  await noSideways(page, 'a table with a slip');
  await expect(page.getByRole('button', { name: /^Add these/ })).toHaveCount(0);
  await page.locator('#zones-file').setInputFiles({
    name: 'zones.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(table),
  });
  await expect(box).toHaveValue(/Bars showing at the slip/);
  await noFaultsInBoth(page, 'a table read');
  await page.getByRole('button', { name: `Add these ${count} zones` }).press('Enter');
  await expect(zones(page)).toHaveCount(2 * count);
  const glances = await zones(page).locator('.glance').allTextContents();
  expect(glances.slice(count)).toEqual(glances.slice(0, count));
  await page.getByRole('button', { name: 'Undo: take the added zones out' }).press('Enter');
  await expect(zones(page)).toHaveCount(count);
});

test('a price that can be read in two ways is asked @nightly', async ({ page }) => {
  await example(page, 'Boat-shed floor');
  await page.goto('/owner/');
  await unfold(page, 'Your own prices');
  const field = page.locator('#price-perBag');
  await field.fill('1,250');
  const way = page.getByRole('button', { name: '1250 (one thousand two hundred and fifty)' });
  await expect(way).toBeVisible();
  await noFaultsInBoth(page, 'two readings');
  await noSideways(page, 'two readings');
  await way.press('Enter');
  await expect(field).toBeFocused();
  await page.reload();
  await expect(field).toHaveValue('1250');
});
