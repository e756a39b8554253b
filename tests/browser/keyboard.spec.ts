import { expect, test, type Locator, type Page } from '@playwright/test';
import { pick, press, reach } from './keyboard';
import { fold } from './folds';
import { listen } from './page-checks';

const pickNamed = (page: Page, group: Locator, name: string) =>
  pick(page, group, group.getByRole('radio', { name }));
const region = (page: Page) => page.getByRole('group', { name: 'Whose rules first' });
const inHead = (page: Page, name: string) => page.locator('header').getByRole('link', { name });

test('the job, its plan, the crew’s day and the record, by keyboard alone @nightly', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(180_000);
  const { errors } = listen(page, baseURL ?? '');
  await page.addInitScript(() => (globalThis.print = () => document.body.classList.add('printed')));
  await page.goto('/job/');
  await press(page, page.getByRole('button', { name: '9 Larch Row' }));
  const name = page.getByLabel('Name of the job');
  await expect(name).toHaveValue(/^9 Larch Row/);
  await reach(page, name);
  await page.keyboard.press('End');
  await page.keyboard.type(' again');
  await press(page, page.getByRole('link', { name: 'To the plan' }));

  await expect(page.locator('h1[tabindex]')).toBeFocused();
  const bags = page.locator('.quantity').filter({ hasText: 'Bags of repair material' }).first();
  await press(page, fold(page, 'Amounts, zone by zone').locator('> summary'));
  await press(page, bags.getByText('How this was worked out'));
  await reach(page, bags.getByLabel('Your own value: Yield of one bag'));
  await page.keyboard.type('7');
  await expect(bags).toContainText('your own value');
  await press(page, page.getByRole('button', { name: 'Print the plan' }));
  await expect(page.locator('body')).toHaveClass(/printed/);

  await press(page, inHead(page, 'Crew’s day'));
  await expect(page.locator('h1[tabindex]')).toBeFocused();
  await press(page, fold(page, 'How this is reckoned').locator('> summary'));
  await pickNamed(page, region(page), 'United States');
  await press(page, fold(page, 'Tool by tool').locator('> summary'));
  await expect(page.locator('article').filter({ hasText: 'row (' }).first()).toBeVisible();
  const card = page.locator('article').filter({ hasText: 'Your own tool' }).first();
  await press(page, card.locator('summary').filter({ hasText: 'Your own tool' }));
  const level = await reach(page, card.getByLabel('Level at the ear'));
  await page.keyboard.type('999');
  await expect(card.getByRole('alert')).toBeVisible();
  await level.press('Control+a');
  await page.keyboard.type('101');
  await expect(card.getByRole('alert')).toHaveCount(0);

  await press(page, inHead(page, 'Ready?'));
  await expect(page.locator('h1[tabindex]')).toBeFocused();
  const sounding = page.locator('details.card#sounding');
  await press(page, sounding.locator('> summary'));
  await pickNamed(page, sounding, 'Rings clear everywhere');
  await expect(sounding.locator('> summary')).toContainText('Ready');
  expect(errors).toEqual([]);
});

test('reading, sharing and asking for the owner’s sheet, by keyboard alone @nightly', async ({
  page,
}) => {
  await page.goto('/job/');
  await press(page, page.getByRole('button', { name: '9 Larch Row' }));
  await expect(page.getByLabel('Name of the job')).toHaveValue(/^9 Larch Row/);
  await press(page, page.getByRole('link', { name: /^Advice/ }));
  await pickNamed(page, page.getByRole('group', { name: 'How you read it' }), 'I explain it');
  await press(page, page.getByRole('link', { name: 'To the owner’s sheet' }));
  await expect(page.locator('h1[tabindex]')).toBeFocused();
  await press(page, inHead(page, 'Your jobs'));
  await press(page, page.locator('summary').filter({ hasText: 'Rename, save, share' }));
  await press(page, page.getByRole('button', { name: 'Share a link' }));
  await expect(page.getByRole('button', { name: 'Copy the link' })).toBeVisible();
});
