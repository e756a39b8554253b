import { writeFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { give, inventFile } from '../helpers/weather-page';
import { noFaults, noFaultsInBoth, noSideways } from './page-checks';

// A busy machine may take its time; what is shown in the end is what counts.
test.describe.configure({ timeout: 180_000 });
const soon = { timeout: 60_000 };

test.beforeEach(async ({ page, baseURL }) => {
  page.on('request', (request) => expect(request.url().startsWith(baseURL ?? '')).toBe(true));
  page.on('pageerror', (error) => expect(error).toBeUndefined());
  page.on('console', (message) => expect(message.text()).not.toContain('Content Security Policy'));
  await page.goto('/weather/');
});

test('two questions give an answer, which the frost question takes over @nightly', async ({
  page,
}) => {
  await page.getByRole('radio', { name: 'Some weeks' }).check();
  await expect(page.getByText('Answer both questions to see it.')).toBeVisible();
  await page.getByRole('radio', { name: 'It gets wet, then dries' }).check();
  await expect(page.getByText('So the answer is “Some weeks”.')).toBeVisible();
  await noFaults(page, 'weather');
  await page.getByRole('button', { name: 'Use “Some weeks” in my job' }).click();
  await expect(page).toHaveURL(/assess\/freezeThaw\/$/);
  await expect(page.getByRole('radio', { name: 'Some weeks' })).toBeChecked();
  await expect(page.getByText('From your weather.')).toBeVisible();
  // The reason stays with the answer.
  await page.reload();
  await expect(page.getByText('From your weather.')).toBeVisible(soon);
});

test('not sure keeps every answer open @nightly', async ({ page }) => {
  await page.getByRole('radio', { name: 'Most of the winter' }).check();
  await page.getByRole('radio', { name: 'Not sure' }).last().check();
  await expect(page.getByText('Still possible: Some weeks and Often.')).toBeVisible();
});

test('a file is confirmed, counted, and may be overruled', async ({ page }) => {
  await give(page, 'marrow-quay.csv', inventFile());
  await expect(page.getByRole('heading', { name: 'Is this right?' })).toBeVisible(soon);
  await expect(page.getByLabel('Lowest temperature')).toHaveValue('1');
  await noFaults(page, 'weather');
  await page.getByRole('button', { name: 'Count the days' }).click();
  await expect(page.getByRole('heading', { name: 'What the file says' })).toBeVisible(soon);
  await expect(page.getByRole('img', { name: /^Frost by month/ })).toBeVisible();
  await page.getByRole('radio', { name: 'It stays wet' }).check();
  await expect(page.getByText('So the answer is “Often”.')).toBeVisible();
  await noFaults(page, 'weather');
  await page.getByRole('radio', { name: 'A handful of days' }).check();
  await expect(page.getByText('your choice counts')).toBeVisible();
  await page.getByRole('button', { name: 'Go back to what the file says' }).click();
  await expect(page.getByRole('radio', { name: 'Most of the winter' })).toBeChecked();
});

test('a file that is no weather says so and leaves the answers alone @nightly', async ({
  page,
}) => {
  await page.getByRole('radio', { name: 'It stays wet' }).check();
  await give(page, 'photo.csv', Buffer.from([0, 1, 2, 3, 255, 216]));
  await expect(page.getByRole('alert')).toContainText('This is not a text file.', soon);
  await expect(page.getByRole('radio', { name: 'It stays wet' })).toBeChecked();
});

test('a million rows are read beside the page, which never stops @nightly', async ({
  page,
}, testInfo) => {
  const path = testInfo.outputPath('million.csv');
  writeFileSync(path, `date,tmin,tmax,prcp,snow\n${'2001-01-01,1,2,3,0\n'.repeat(1_000_000)}`);
  await page.evaluate(() => {
    const marks = { longest: 0, last: performance.now() };
    const beat = () => {
      const now = performance.now();
      marks.longest = Math.max(marks.longest, now - marks.last);
      marks.last = now;
      requestAnimationFrame(beat);
    };
    beat();
    Object.assign(window, { marks });
  });
  const worker = page.waitForEvent('worker');
  await page.getByLabel('Choose a weather file (CSV)').setInputFiles(path);
  await worker;
  await expect(page.getByRole('alert')).toContainText('Row 80,001', soon);
  const longest = await page.evaluate(
    () => (window as unknown as { marks: { longest: number } }).marks.longest,
  );
  expect(longest).toBeLessThan(2000);
});

test('reading can be stopped @nightly', async ({ page }) => {
  // The worker's code is held back, so that reading lasts as long as the test likes.
  await page.route(/workers\/.*\.js$/, () => {});
  await give(page, 'marrow-quay.csv', inventFile());
  await expect(page.getByRole('progressbar', { name: 'Reading the file' })).toBeVisible(soon);
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect(page.getByRole('progressbar')).toBeHidden();
  await expect(page.getByLabel('Choose a weather file (CSV)')).toBeAttached();
});

/** Opens the page with its code held back; the code comes when what is returned is called. */
async function beforeItsCode(page: Page): Promise<() => void> {
  let send = () => {};
  const sent = new Promise<void>((resolve) => (send = resolve));
  await page.route(/\.js$/, async (route) => {
    await sent;
    await route.continue();
  });
  await page.goto('/weather/', { waitUntil: 'commit' });
  return send;
}

test('what is ticked before the code has come is taken up when it has @nightly', async ({
  page,
}) => {
  const send = await beforeItsCode(page);
  await page.getByRole('radio', { name: 'Some weeks' }).check();
  await page.getByText('in, ft').click();
  send();
  // Taken up, not only left standing: with the other question answered, both count.
  await expect(page.getByText('Answer both questions to see it.')).toBeVisible(soon);
  await page.getByRole('radio', { name: 'It gets wet, then dries' }).check();
  await expect(page.getByText('So the answer is “Some weeks”.')).toBeVisible();
  await expect(page.getByRole('radio', { name: 'Inches and feet' })).toBeChecked();
});

test('a file picked before the code has come is read when it has @nightly', async ({ page }) => {
  const send = await beforeItsCode(page);
  await give(page, 'marrow-quay.csv', inventFile());
  send();
  await expect(page.getByRole('button', { name: 'Count the days' })).toBeVisible(soon);
});

test('nothing runs over the side, and axe finds nothing in light and dark @nightly', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 800 });
  await give(page, 'marrow-quay.csv', inventFile());
  await page.getByRole('button', { name: 'Count the days' }).click();
  await expect(page.getByRole('heading', { name: 'What the file says' })).toBeVisible(soon);
  for (const width of [1280, 360, 320]) {
    await page.setViewportSize({ width, height: 800 });
    await noSideways(page, `weather at ${width} px`);
  }
  await noFaultsInBoth(page, 'weather');
});

test('the file can be changed for another, from the keyboard @nightly', async ({ page }) => {
  await give(page, 'short.csv', Buffer.from('date,tmin,tmax\n'));
  await expect(page.getByRole('alert')).toContainText('Row 1: there are column names', soon);
  const again = page.getByLabel('Choose another file');
  await again.focus();
  await expect(again).toBeFocused();
  await again.setInputFiles({ name: 'b.csv', mimeType: 'text/csv', buffer: inventFile(400) });
  await expect(page.getByRole('button', { name: 'Count the days' })).toBeVisible(soon);
});
