import { expect, test, type Page } from '@playwright/test';
import { give, inventFile } from '../helpers/weather-page';

const century = 36_525;
interface Marks {
  from: number;
  longest: number;
}
const marksOf = () => (window as unknown as { marks: Marks }).marks;

/** Keeps the longest pause between two frames, and the moment of the last file or click. */
async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    const marks = { from: 0, longest: 0 };
    let last = 0;
    const beat = (now: number) => {
      if (last) marks.longest = Math.max(marks.longest, now - last);
      last = now;
      requestAnimationFrame(beat);
    };
    requestAnimationFrame(beat);
    // From the moment the page has the file; before, the browser is handing it over.
    const start = () => {
      marks.from = performance.now();
      [marks.longest, last] = [0, 0];
    };
    addEventListener('change', start, true);
    addEventListener('click', start, true);
    Object.assign(window, { marks });
  });
}

/** Milliseconds until a heading stands, by the page's own clock. */
const until = (page: Page, heading: string) =>
  page.evaluate(
    (text) =>
      new Promise<number>((resolve) => {
        const look = () => {
          const { from } = (window as unknown as { marks: Marks }).marks;
          const stands = [...document.querySelectorAll('h2, h3')].some(({ textContent }) =>
            textContent.includes(text),
          );
          if (stands && from) resolve(performance.now() - from);
          else requestAnimationFrame(look);
        };
        look();
      }),
    heading,
  );

test('a hundred years of days are read and counted in under a second, and the page goes on @nightly', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const file = inventFile(century);
  const tries: { all: number; read: number; longest: number }[] = [];
  for (let round = 0; round < 3; round += 1) {
    await page.goto('/weather/');
    await expect(page.getByLabel('Choose a weather file (CSV)')).toBeAttached();
    await page.waitForLoadState('networkidle');
    await watch(page);
    await give(page, 'hundred-years.csv', file);
    const read = await until(page, 'Is this right?');
    const first = (await page.evaluate(marksOf)).longest;
    await page.getByRole('button', { name: 'Count the days' }).click();
    const counted = await until(page, 'What the file says');
    const second = (await page.evaluate(marksOf)).longest;
    tries.push({ read, all: read + counted, longest: Math.max(first, second) });
  }
  const [best] = tries.toSorted((one, other) => one.all - other.all);
  console.log(
    `100 years of days, three times: ${tries.map(({ all, read }) => `${all.toFixed(0)} ms (${read.toFixed(0)} read)`).join(', ')}; longest pause of the page ${best?.longest.toFixed(0)} ms`,
  );
  expect(best?.all).toBeLessThan(1000);
  expect(best?.longest).toBeLessThan(500);
});

test.describe('with the worker of the site', () => {
  test.use({ serviceWorkers: 'allow' });

  test('a weather file is read with the network off, once the site is on the device @nightly', async ({
    page,
    context,
  }) => {
    await page.goto('/weather/');
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    await context.setOffline(true);
    await page.reload();
    await expect(page.getByLabel('Choose a weather file (CSV)')).toBeAttached();
    await page.waitForLoadState('networkidle');
    await give(page, 'marrow-quay.csv', inventFile());
    await expect(page.getByRole('heading', { name: 'Is this right?' })).toBeVisible();
    await page.getByRole('button', { name: 'Count the days' }).click();
    await expect(page.getByRole('heading', { name: 'What the file says' })).toBeVisible();
  });
});
