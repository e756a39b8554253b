import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { listen, noFaultsInBoth, noSideways } from './page-checks';

test.use({ viewport: { width: 360, height: 800 } });

const heading = (page: Page, name: string) => page.getByRole('heading', { name, exact: true });
async function decide(page: Page, title: string, pick: string) {
  await expect(heading(page, title)).toBeFocused();
  await page.getByRole('radio', { name: pick, exact: true }).check();
  await page.getByRole('button', { name: 'Check it' }).click();
  await page.getByRole('button', { name: 'Next case' }).click();
}

test('a set goes to a learner and its result back to the crew lead, once @nightly', async ({
  page,
  browser,
  baseURL,
}) => {
  const { elsewhere, errors } = listen(page, baseURL ?? '');
  // The crew lead makes a set.
  await page.goto('/learn/practice/');
  await page.getByText('Make a set', { exact: true }).click();
  await page.getByRole('checkbox', { name: 'Under the car on Larch Row' }).check();
  await page.getByRole('checkbox', { name: 'A balcony at Gannet Court' }).check();
  const set = await page.getByLabel('Link to a set of 2 cases').inputValue();

  // The learner does it on a small phone, which closes the page before the result is given.
  const phone = await browser.newContext({
    viewport: { width: 320, height: 640 },
    serviceWorkers: 'block',
  });
  const learner = await phone.newPage();
  await learner.goto(set);
  await decide(learner, 'Under the car on Larch Row', 'Pressure washing');
  await learner.reload();
  await decide(learner, 'A balcony at Gannet Court', 'Breaking out');
  await expect(heading(learner, 'The set is done')).toBeFocused();
  await learner.reload();
  await expect(heading(learner, 'The set is done')).toBeFocused();
  // It stands open.
  await learner.locator('summary', { hasText: 'Give it to your crew lead' }).focus();
  await expect(learner.getByRole('img', { name: /^Code that opens your result/ })).toBeVisible();
  // From here on nothing comes from the network.
  await phone.setOffline(true);
  await learner.keyboard.press('Tab');
  await learner.keyboard.type('Mira');
  const link = learner.getByLabel('Link with your result');
  const address = await link.inputValue();
  expect(new URL(address).hash.length).toBeLessThanOrEqual(120);
  await noSideways(learner, 'the end of a set');
  await noFaultsInBoth(learner, 'the end of a set');
  await phone.close();

  // Its link opens the table of the crew lead, who has nothing to type.
  await page.goto(address);
  await expect(page.getByText('Added: 1 result (Mira).')).toBeVisible();
  expect(new URL(page.url()).hash).toBe('');
  const row = page.getByRole('row', { name: /^Mira/ });
  await expect(row).toContainText('0 of 2 right');
  await expect(
    page.getByText(/Too gentle\. Picked Pressure washing; right is Grinding\./),
  ).toBeVisible();
  await expect(
    page.getByText(/Not safe to start\. Picked Breaking out; right is Engineer first\./),
  ).toBeVisible();
  await noSideways(page, 'results');
  await noFaultsInBoth(page, 'results');

  // The same again, as a code pasted; and with a letter changed.
  const code = new URL(address).hash.slice(1);
  const field = page.getByLabel('Codes or links, one a line');
  await field.fill(`${code}\n${code.slice(0, -1)}${code.endsWith('k') ? 'm' : 'k'}`);
  await page.getByRole('button', { name: 'Add', exact: true }).press('Enter');
  await expect(page.getByText(/^Already here: Mira/)).toBeVisible();
  await expect(page.getByText(/^Line 2 was not added: expected the whole code/)).toBeVisible();
  await expect(page.getByRole('row', { name: /^Mira/ })).toHaveCount(1);

  // It is kept, saved as a table, and loses its name for good.
  await page.reload();
  await row.getByText('2 not right').click();
  await page.getByText('Print, save, names').click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a table (CSV)' }).click();
  expect(readFileSync(await (await download).path(), 'utf8')).toContain('Mira,');
  await row.getByRole('button', { name: /^Remove the name/ }).press('Enter');
  await expect(page.getByText('The name Mira is removed.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('row', { name: /^No name/ })).toBeVisible();
  await expect(page.getByText('Mira')).toHaveCount(0);

  // What to practise next opens as a set.
  await page.getByRole('link', { name: /^Pressure washing or Grinding/ }).click();
  await expect(page.getByText('Somebody chose 6 cases for you.')).toBeVisible();
  expect([elsewhere, errors]).toEqual([[], []]);
});
