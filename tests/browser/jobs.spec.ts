import { test } from '@playwright/test';
import {
  expect,
  file,
  kept,
  more,
  name,
  names,
  openFile,
  openJobs,
  saveToFile,
  withJob,
} from '../helpers/jobs-page';

test('a job saved to a file and opened again is the same job, beside the first', async ({
  page,
}) => {
  await withJob(page);
  const text = await saveToFile(page);
  await openFile(page, text);
  await expect.poll(() => names(page)).toEqual([name, name]);
  const [first, second] = await kept(page);
  expect(second?.id).not.toBe(first?.id);
  expect(second?.file).toEqual(first?.file);
  expect(JSON.parse(text)).toEqual(first?.file);
});

test('a broken file leaves the jobs as they are, and its place is named', async ({ page }) => {
  await withJob(page);
  const before = await kept(page);
  const alert = page.getByRole('alert').filter({ hasText: 'was not opened' });
  const zones = [file.zones[0], { ...file.zones[1], depth: 'deep' }];
  await openFile(page, { ...file, zones }, 'wrong-depth.json');
  await expect(alert).toContainText('“wrong-depth.json” was not opened');
  await expect(alert).toContainText('zones[1].depth: expected a number of mm');
  await expect(alert).toContainText('found "deep"');
  await openFile(page, JSON.stringify(file).slice(0, 90), 'cut-off.json');
  await expect(alert).toContainText('“cut-off.json” was not opened');
  await expect(alert).toContainText('line 1, column');
  expect(await kept(page)).toEqual(before);
  await expect(page.locator('header .job')).toHaveText(name);
});

test('a link carries the job to another device, which is asked first @nightly', async ({
  page,
  browser,
}) => {
  await withJob(page);
  const row = await more(page);
  await row.getByRole('button', { name: 'Share a link' }).click();
  const link = await row.getByLabel(`Link to “${name}”`).inputValue();
  expect(link.length).toBeLessThan(2_000);
  expect(new URL(link).pathname).toBe('/jobs/');

  const device = await browser.newContext();
  const there = await device.newPage();
  // Another page of the site shows a job in its address just as well.
  await there.goto(`/advice/${new URL(link).hash}`);
  const shared = there.getByRole('region', { name: 'A shared job' });
  await expect(shared).toContainText(name);
  await expect(shared).toContainText('By the gate, Under the carport');
  expect(await kept(there)).toEqual([]);
  // Nothing is kept there that it could be brought into.
  await expect(shared.getByRole('button', { name: 'Bring it into a job here' })).toHaveCount(0);
  await shared.getByRole('button', { name: 'Add it', exact: true }).click();
  await expect(there).toHaveURL(/\/jobs\/$/);
  await expect.poll(() => names(there)).toEqual([name]);
  const [sent] = await kept(page);
  const [come] = await kept(there);
  expect(come?.file).toEqual(sent?.file);
  await expect(there.getByRole('link', { name: 'See the job' })).toBeFocused();

  await there.goto(link.slice(0, -20));
  await there.reload();
  await expect(shared).toContainText('The link carries a job that cannot be read');
  await shared.getByRole('button', { name: 'Close' }).click();
  expect(new URL(there.url()).hash).toBe('');
  expect(await names(there)).toEqual([name]);
  await device.close();
});

test('the link is copied, or marked where the browser will not copy @nightly', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await withJob(page);
  const row = await more(page);
  await row.getByRole('button', { name: 'Share a link' }).click();
  const field = row.getByLabel(`Link to “${name}”`);
  await row.getByRole('button', { name: 'Copy the link' }).click();
  await expect(row.getByText('The link is copied.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await field.inputValue());
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('not allowed'));
  });
  await row.getByRole('button', { name: 'Copy the link' }).click();
  await expect(row.getByText('The browser would not copy it.')).toBeVisible();
  const marked = await field.evaluate((input: HTMLInputElement) =>
    input.value.slice(input.selectionStart ?? 0, input.selectionEnd ?? 0),
  );
  expect(marked).toBe(await field.inputValue());
});

test('a job too large for a link is offered as a file @nightly', async ({ page }) => {
  await openJobs(page);
  // Names without a pattern, so that nothing is left to compress: a plain congruential generator.
  let state = 1;
  const letter = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return String.fromCharCode(97 + ((state >>> 16) % 26));
  };
  const letters = () => Array.from({ length: 60 }, letter).join('');
  const zones = Array.from({ length: 120 }, (_, at) => ({ id: `z${at}`, name: letters() }));
  await openFile(page, { ...file, zones });
  const row = await more(page);
  await row.getByRole('button', { name: 'Share a link' }).click();
  await expect(row.getByText('This job is too large for a link')).toBeVisible();
  await expect(row.getByRole('button', { name: 'Save to a file' })).toHaveCount(2);
});

test('job files dropped anywhere on the page are opened beside the jobs that are there', async ({
  page,
}) => {
  await withJob(page);
  const before = await kept(page);
  const drop = async (content: unknown, fileName: string) => {
    const data = await page.evaluateHandle(
      ([text, called]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], called, { type: 'application/json' }));
        return transfer;
      },
      [JSON.stringify(content), fileName] as const,
    );
    const heading = page.getByRole('heading', { level: 1 });
    for (const type of ['dragenter', 'dragover', 'drop'])
      await heading.dispatchEvent(type, { dataTransfer: data });
  };
  await drop({ ...file, version: 99 }, 'from-the-future.json');
  await expect(page.getByRole('alert')).toContainText('“from-the-future.json” was not opened');
  expect(await kept(page)).toEqual(before);
  await drop({ ...file, zones: [] }, 'same-name.json');
  await expect.poll(() => names(page)).toEqual([name, name]);
  expect(await kept(page)).toEqual(expect.arrayContaining(before));
});
