import { readdirSync, readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { unfold } from './folds';
import { listen, noFaults, noSideways, sheetsOf } from './page-checks';
import { nightUnless } from '../helpers/rounds';

/** Opens one of the invented example jobs. */
async function example(page: Page, name: string) {
  await page.goto('/job/');
  await page.getByRole('button', { name }).click();
  await expect(page.getByLabel('Name of the job')).toHaveValue(name);
  await expect(page.locator('header .kept')).toBeVisible();
}
/** The names of the invented example jobs. */
const folder = new URL('../../src/lib/keep/demos/', import.meta.url);
const demos = readdirSync(folder).map((file) => {
  const { site } = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as {
    site: { name: string };
  };
  return site.name;
});
const driveway = demos.find((name) => name.startsWith('9 Larch Row')) ?? '';

test('an owner reads what to leave to others, what to ask, and the sheet', async ({
  page,
  baseURL,
}) => {
  const { elsewhere, errors } = listen(page, baseURL ?? '');
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('/');
  await page.getByLabel('I own it').check();
  await example(page, driveway);
  await page
    .getByRole('link', { name: /^Advice/ })
    .first()
    .click();
  await expect(page.getByRole('radio', { name: 'I own it' })).toBeChecked();
  const said = await page.locator('h1').textContent();
  for (const heading of [
    'What you may do yourself',
    'What not to do yourself here',
    'Ask a contractor',
    'What a sound offer contains',
  ])
    await expect(page.getByRole('heading', { name: heading })).toBeVisible();
  await noFaults(page, 'advice for an owner');
  await noSideways(page, 'advice for an owner');

  await page.getByLabel('I explain it').check();
  await expect(page.getByText('Same advice; reasons first.')).toBeVisible();
  await expect(page.locator('.body h2').first()).toHaveText('Restore or replace');
  await expect(page.locator('h1')).toHaveText(said ?? '');
  await noFaults(page, 'advice for one who explains');
  await page.getByRole('link', { name: 'To the owner’s sheet' }).click();
  // What nothing above has said stands open; all of both sides is below, where there is anything.
  await expect(page.locator('dl.short').first()).toBeVisible();
  for (const side of ['For', 'Against'])
    await expect(
      page.locator('.sides dl:not(.short)').getByText(side, { exact: true }).first(),
    ).toBeAttached();
  await expect(page.getByRole('img', { name: /^The area by condition/ })).toBeVisible();
  // A word of the trade on the sheet is explained on it.
  await unfold(page, 'Words on this sheet');
  const words = page.locator('.terms');
  await expect(words.getByText('sound concrete:')).toBeVisible();
  await noFaults(page, 'owner’s sheet');
  await noSideways(page, 'owner’s sheet');
  expect(elsewhere).toEqual([]);
  expect(errors).toEqual([]);
});

test('the sheet opens from a share link, for somebody who has none of it @nightly', async ({
  page,
  browser,
}) => {
  await example(page, driveway);
  await page.goto('/jobs/');
  await page
    .getByText(/^Rename, save, share, delete/)
    .first()
    .click();
  await page.getByRole('button', { name: 'Share a link' }).click();
  const link = await page.getByLabel(/^Link to/).inputValue();
  const context = await browser.newContext();
  const other = await context.newPage();
  await other.goto(link);
  await other.getByRole('button', { name: 'Add it' }).click();
  await expect(other.getByText(driveway).first()).toBeVisible();
  await expect(other.getByRole('button', { name: 'Add it' })).toBeHidden();
  await other.goto('/owner/');
  await expect(other.locator('.head')).toContainText(driveway);
  await expect(other.getByRole('heading', { name: 'What each option takes' })).toBeVisible();
  await context.close();
});

for (const name of demos)
  test(`${name} prints on one page in letters that can be read, A4 and Letter${nightUnless(name === driveway)}`, async ({
    page,
  }) => {
    await example(page, name);
    await page.goto('/owner/');
    await expect(page.getByRole('heading', { name: 'What each option takes' })).toBeVisible();
    for (const format of ['A4', 'Letter'] as const)
      expect(await sheetsOf(page, format), format).toBe(1);
  });
