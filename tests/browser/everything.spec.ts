import { readFileSync } from 'node:fs';
import { test } from '@playwright/test';
import { noFaultsInBoth } from './page-checks';
import { expect, file, kept, list, name, openFile, openJobs, withJob } from '../helpers/jobs-page';

/** Reaches past the page into the jobs on the device. */
const put = (record: object) =>
  new Promise<void>((resolve, reject) => {
    const request = indexedDB.open('down-to-sound');
    request.onerror = () => reject(new Error('closed'));
    request.onsuccess = () => {
      const transaction = request.result.transaction('jobs', 'readwrite');
      transaction.objectStore('jobs').put(record);
      transaction.oncomplete = () => {
        request.result.close();
        resolve();
      };
    };
  });

test('one record with nonsense in it: the rest is shown, the bad one can be taken away and deleted @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.evaluate(put, {
    id: 'when',
    file: { ...file, site: { name: 'Another time' } },
    changedAt: 1e300,
    revision: 1,
  });
  await page.evaluate(put, {
    id: 'bad',
    file: { ...file, zones: 'none' },
    changedAt: 5,
    revision: 1,
  });
  for (const address of ['/', '/jobs/']) {
    await page.goto(address);
    await expect(page.getByText(name).first()).toBeVisible();
    await expect(page.getByText('nobody knows when it was changed')).toBeVisible();
  }
  const bad = list(page).getByRole('listitem').filter({ hasText: 'A job that cannot be read' });
  await expect(bad).toContainText('zones: expected a list');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    bad.getByRole('button', { name: 'Save what is there to a file' }).click(),
  ]);
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toMatchObject({ zones: 'none' });
  await bad.getByRole('button', { name: 'Delete for good' }).click();
  await bad.getByRole('button', { name: 'Yes, delete it' }).click();
  await expect(bad).toBeHidden();
  expect((await kept(page)).map(({ id }) => id)).toContain('when');
});

test('storage deleted under the page is told, and the page goes on @nightly', async ({ page }) => {
  await withJob(page);
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        indexedDB.deleteDatabase('down-to-sound').onsuccess = resolve;
      }),
  );
  await expect(page.getByText('were deleted while this page was open')).toBeVisible();
  await expect(list(page).getByText(name, { exact: true })).toBeHidden();
  await openFile(page, file);
  await expect(list(page).getByText(name, { exact: true })).toBeVisible();
});

test.describe('everything deleted', () => {
  test.use({ serviceWorkers: 'allow' });

  test('what will go is listed, asked once, gone with the keyboard alone; the other tab is told', async ({
    page,
    context,
  }) => {
    await withJob(page);
    await expect
      .poll(() => page.evaluate(async () => (await caches.keys()).length), { timeout: 60_000 })
      .toBeGreaterThan(0);
    const other = await context.newPage();
    await openJobs(other);

    await page.getByRole('button', { name: 'Delete everything …' }).focus();
    await page.keyboard.press('Enter');
    const part = page.getByRole('region', { name: 'Delete everything' });
    await expect(part.getByRole('heading', { name: 'This will go:' })).toBeFocused();
    await expect(part.getByRole('listitem')).toHaveText([
      '1 job',
      '0 photos',
      '0 results of your practice',
      '0 results of learners',
      /^\d+ settings? (and notes|or note) of this browser$/,
      /^the copy for work without a network: \d+ files$/,
    ]);
    await noFaultsInBoth(page, 'delete everything');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('button', { name: 'Delete everything …' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(part.getByRole('heading', { name: 'This will go:' })).toBeFocused();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(part.getByText('All of it is deleted.')).toBeFocused();

    await expect(other.getByText('Everything this site kept on this device')).toBeVisible();
    await expect(list(other).getByText(name, { exact: true })).toBeHidden();
    expect(await kept(page)).toEqual([]);
    const left = await page.evaluate(async () => [
      await caches.keys(),
      Object.keys(localStorage),
      Object.keys(sessionStorage).filter((key) => key.startsWith('down-to-sound')),
    ]);
    expect(left).toEqual([[], [], []]);
  });
});
