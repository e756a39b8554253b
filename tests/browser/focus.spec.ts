import { test, type Page } from '@playwright/test';
import {
  expect,
  file,
  list,
  more,
  name,
  openFile,
  openJobs,
  other,
  withJob,
} from '../helpers/jobs-page';
import { fold } from './folds';
import { press } from './keyboard';

/**
 * After anything is deleted, added, moved, undone, opened or closed, the focus stands where the
 * reader is: WCAG 2.2, 2.4.3 (Focus order) and its understanding document. Keyboard alone.
 */
const rows = (page: Page) => page.locator('ol.rows > li');
const row = (page: Page, zone: string) => rows(page).filter({ hasText: zone });
const button = (page: Page, label: string) =>
  page.getByRole('button', { name: label, exact: true });
async function openTools(page: Page, zone: string) {
  await press(
    page,
    row(page, zone)
      .locator('summary')
      .filter({ hasText: /^Answers/ }),
  );
}
/** The first thing of a row that can be used. */
const first = (page: Page, zone: string) => row(page, zone).locator('summary').first();
/** What has the focus: never the page as a whole. */
const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.tagName.toLowerCase() ?? 'none');
const somewhere = (page: Page) => expect.poll(() => focused(page)).not.toBe('body');

test('zones of a job: delete, undo, copy, move, add, make of the rest @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.goto('/job/');
  await openTools(page, 'By the gate');
  await press(page, button(page, 'Delete By the gate'));
  await expect(button(page, 'Undo: bring By the gate back')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(first(page, 'By the gate')).toBeFocused();

  await press(page, button(page, 'Copy By the gate'));
  await expect(first(page, 'By the gate 2')).toBeFocused();
  await press(page, button(page, 'Move down: By the gate 2'));
  // At the end of the list the button can do no more; the focus stays in the row.
  await expect(rows(page).nth(2)).toContainText('By the gate 2');
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('li')?.id))
    .toBe('zone-c');
  await press(page, button(page, 'Delete By the gate 2'));
  await expect(button(page, 'Undo: bring By the gate 2 back')).toBeFocused();
  await openTools(page, 'Under the carport');
  await press(page, button(page, 'Delete Under the carport'));
  await expect(button(page, 'Undo: bring Under the carport back')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(first(page, 'Under the carport')).toBeFocused();

  await press(page, button(page, 'Add a zone'));
  await page.waitForURL(/assess/);
  await expect(page.locator('h1')).toBeFocused();
});

test('the rest of a surface: the button that made it goes, and the focus stands at what it made @nightly', async ({
  page,
}) => {
  await openJobs(page);
  const zones = file.zones.map((zone) => ({ ...zone, area: 10 }));
  await openFile(page, { ...file, site: { ...file.site, totalArea: 40 }, zones });
  await expect(list(page).getByText('open now')).toBeVisible();
  await page.goto('/job/');
  await press(page, fold(page, 'The whole surface').locator('> summary'));
  await press(page, button(page, 'Make a zone of the rest'));
  await expect(rows(page)).toHaveCount(3);
  await expect(first(page, 'The rest of it')).toBeFocused();
});

test('damaged spots of a zone: add, and remove the last of them @nightly', async ({ page }) => {
  await openJobs(page);
  const zones = [
    {
      ...file.zones[0],
      depth: 40,
      looseness: 'hollow',
      contamination: [],
      cracks: 'none',
      finish: 'rebuild',
      area: 4,
    },
  ];
  await openFile(page, { ...file, zones });
  await expect(list(page).getByText('open now')).toBeVisible();
  await page.goto('/job/plan/');
  await press(page, fold(page, 'Amounts, zone by zone').locator('> summary'));
  await press(page, button(page, 'Add a spot'));
  await expect(page.getByLabel('Along').first()).toBeFocused();
  await press(page, button(page, 'Take spot 1 out'));
  await expect(button(page, 'Add a spot')).toBeFocused();
});

test('jobs: delete, undo, copy, rename, share, open a file @nightly', async ({ page }) => {
  await withJob(page);
  await more(page);
  await press(page, list(page).getByRole('button', { name: 'Rename' }));
  await expect(page.getByLabel('Name of the job')).toBeFocused();
  await press(page, page.getByRole('button', { name: 'Cancel' }));
  await expect(list(page).getByRole('button', { name: 'Rename' })).toBeFocused();
  await press(page, list(page).getByRole('button', { name: 'Share a link' }));
  await press(page, list(page).getByRole('button', { name: 'Close' }));
  await expect(list(page).getByRole('button', { name: 'Share a link' })).toBeFocused();

  await press(page, list(page).getByRole('button', { name: 'Delete' }));
  const undo = button(page, `Undo: delete ${name}`);
  await expect(undo).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(undo).toBeHidden();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('li')?.textContent))
    .toContain(name);

  // From the middle of a longer list.
  await openFile(page, other);
  await expect(list(page).getByText('Boat shed (invented)')).toBeVisible();
  await more(page);
  await press(page, list(page).getByRole('button', { name: 'Delete' }));
  await expect(undo).toBeFocused();
});

test('a question about the job in hand: what the reader chooses leaves the focus on the page @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await deaf.goto('/assess/depth/');
  await expect(deaf.locator('header .job')).toHaveText(name);
  await page.goto('/job/');
  await page.getByLabel('Name of the job').fill('From the first tab');
  await expect(page.locator('header .kept')).toBeVisible();
  await press(deaf, deaf.getByRole('button', { name: 'Continue' }));
  await press(deaf, button(deaf, 'Take the other tab’s'));
  await expect(deaf.locator('.notice')).toBeHidden();
  await expect(deaf.locator('h1')).toBeFocused();
});

test('a question: one or several, Continue, Back, and a change of an earlier answer @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.goto('/assess/texture/?zone=b');
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  await press(page, button(page, 'Several possible'));
  await expect(button(page, 'I know which one it is')).toBeFocused();
  await press(page, page.locator('input[value="pitted"]'), 'Space');
  await press(page, button(page, 'Continue'));
  await page.waitForURL(/freezeThaw/);
  await expect(page.locator('h1')).toBeFocused();
  await press(page, page.locator('form').getByRole('link', { name: 'Back' }));
  await page.waitForURL(/salts/);
  await expect(page.locator('h1')).toBeFocused();
  await press(page, page.locator('summary').filter({ hasText: 'Answers so far' }));
  await press(page, page.getByRole('link', { name: /^Change: / }).first());
  await expect(page.locator('h1')).toBeFocused();
});

test('practice: forget and undo, leave a set, copy its link @nightly', async ({ page }) => {
  await page.goto('/learn/practice/');
  await expect(page.locator('#case')).toBeVisible();
  await press(page, page.locator('input[name="call"]').first(), 'Space');
  await press(page, button(page, 'Check it'));
  await expect(page.locator('#result')).toBeFocused();
  await press(page, page.locator('summary', { hasText: 'Your progress' }), 'Space');
  await press(page, button(page, 'Forget my progress'));
  await expect(button(page, 'Undo')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(button(page, 'Undo')).toBeHidden();
  await expect(
    page.getByRole('heading', { name: /./ }).and(page.locator('#progress')),
  ).toBeFocused();
});

test('the crew’s day put together by hand: add and remove @nightly', async ({ page }) => {
  await page.goto('/crew/');
  const add = page.getByRole('button', { name: 'Add a task' }).first();
  await press(page, add);
  await somewhere(page);
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('fieldset')?.textContent))
    .toContain('1');
  await press(page, page.getByRole('button', { name: /^Take out/ }).first());
  await expect(add).toBeFocused();
});
