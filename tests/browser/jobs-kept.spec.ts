import { readFileSync } from 'node:fs';
import { test, type Page } from '@playwright/test';
import { noFaultsInBoth } from './page-checks';
import {
  expect,
  file,
  kept,
  list,
  more,
  name,
  names,
  openFile,
  openJobs,
  other,
  withJob,
} from '../helpers/jobs-page';

test('a deleted job can be brought back, and a copy and a new name are kept', async ({ page }) => {
  await withJob(page);
  const before = await kept(page);
  const row = await more(page);
  await row.getByRole('button', { name: 'Delete' }).click();
  await expect.poll(() => kept(page)).toEqual([]);
  const undo = page.getByRole('button', { name: `Undo: delete ${name}` });
  await expect(undo).toBeFocused();
  await undo.click();
  await expect.poll(() => kept(page)).toEqual(before);
  await expect(list(page).getByText('open now')).toBeVisible();

  const again = await more(page);
  await again.getByRole('button', { name: 'Make a copy' }).click();
  await expect.poll(() => names(page)).toEqual([name, `${name} (copy)`]);
  const copied = await more(page, `${name} (copy)`);
  await copied.getByRole('button', { name: 'Rename' }).click();
  const field = page.getByLabel('Name of the job');
  await field.fill('Turned \u202e round');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect(page.getByText('The name was not changed.')).toContainText('turn the writing');
  await field.fill('Second look (invented)');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect.poll(() => names(page)).toEqual([name, 'Second look (invented)']);
});

test('two tabs on one job: neither is overwritten', async ({ page, context }) => {
  await withJob(page);
  const rename = async (tab: Page, from: string, to: string) => {
    const row = await more(tab, from);
    await row.getByRole('button', { name: 'Rename' }).click();
    await tab.getByLabel('Name of the job').fill(to);
    await tab.getByRole('button', { name: 'Keep this name' }).click();
  };
  // A tab that does not hear of the others: the hardest case.
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await openJobs(deaf);
  await expect(list(deaf).getByText('open now')).toBeVisible();

  await rename(page, name, 'From the first tab');
  await expect.poll(() => names(page)).toEqual(['From the first tab']);
  await rename(deaf, name, 'From the second tab');
  await expect(deaf.getByText('This job was changed in another tab')).toBeVisible();
  expect(await names(page)).toEqual(['From the first tab']);

  // What is not saved is not put aside without asking.
  await deaf.getByRole('button', { name: 'Start a new job' }).click();
  await deaf
    .getByRole('dialog', { name: 'Your open job is not saved' })
    .getByRole('button', { name: 'Stay with it' })
    .click();
  await deaf.getByRole('button', { name: 'Keep mine as a copy' }).click();
  await expect
    .poll(() => names(page))
    .toEqual(['From the first tab', 'From the second tab (copy)']);
  await expect(deaf.getByText('This job was changed in another tab')).toBeHidden();
});

test('a tab takes what another saved when the reader says so @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await deaf.goto('/assess/depth/');
  await expect(deaf.locator('header .job')).toHaveText(name);
  const row = await more(page);
  await row.getByRole('button', { name: 'Rename' }).click();
  await page.getByLabel('Name of the job').fill('From the first tab');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect.poll(() => names(page)).toEqual(['From the first tab']);
  await deaf.getByRole('button', { name: 'Continue' }).click();
  await deaf.getByRole('button', { name: 'Take the other tab’s' }).click();
  await expect(deaf.locator('header .job')).toHaveText('From the first tab');
  expect(await names(page)).toEqual(['From the first tab']);
});

test('where nothing can be kept it is said at once, and the job goes into a file @nightly', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
  });
  await openJobs(page);
  await expect(page.getByText('Your work stays in this tab only.')).toBeVisible();
  await openFile(page, file);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.notice').getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(saved.site).toEqual(file.site);
});

test('a record that cannot be read is said, and can be saved as it is @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('down-to-sound');
        request.onsuccess = () => {
          const writing = request.result.transaction('jobs', 'readwrite');
          writing.objectStore('jobs').put({ id: 'spoiled', file: { format: 'nonsense' } });
          writing.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  await expect(list(page).getByText('A job that cannot be read')).toBeVisible();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save what is there to a file' }).click(),
  ]);
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual({ format: 'nonsense' });
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByRole('button', { name: 'Yes, delete it' }).click();
  await expect.poll(() => names(page)).toEqual([name]);
});

test('fits 320 px, has targets for gloves, and passes axe in both colours @nightly', async ({
  page,
}) => {
  await withJob(page);
  await openFile(page, other);
  await expect.poll(async () => (await names(page)).length).toBe(2);
  const row = await more(page);
  await row.getByRole('button', { name: 'Share a link' }).click();
  await expect(row.getByRole('button', { name: 'Copy the link' })).toBeVisible();
  const second = await more(page, other.site.name);
  await second.getByRole('button', { name: 'Rename' }).click();
  await openFile(page, 'not a job', 'notes.json');
  await expect(page.getByRole('alert').filter({ hasText: 'notes.json' })).toBeVisible();
  await page.setViewportSize({ width: 320, height: 700 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('main :is(button, .button, summary, input[type=text])')]
      .filter((each) => each.getClientRects().length)
      .filter((each) => each.getBoundingClientRect().height < 48)
      .map((each) => each.outerHTML.slice(0, 80)),
  );
  expect(small).toEqual([]);
  await noFaultsInBoth(page, 'jobs');
});
