import { expect, test, type Page } from '@playwright/test';
import { openSix } from '../helpers/open-six';
import { nightUnless, sampled } from '../helpers/rounds';
import { sixNames } from '../helpers/six-jobs';

/**
 * Nothing jumps while a page arrives: what is still to come has its room. Layout shift as browsers
 * count it, summed over the whole visit, on a line on which the parts of a page come one by one.
 * The budget is this project's; what is called good elsewhere is 0.1 (web.dev, Cumulative Layout Shift).
 */
const most = 0.02;
test.use({ viewport: { width: 390, height: 844 } });

async function slowLine(page: Page): Promise<void> {
  const control = await page.context().newCDPSession(page);
  await control.send('Network.enable');
  await control.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 150,
    downloadThroughput: (1.6e6 / 8) * 0.9,
    uploadThroughput: (0.75e6 / 8) * 0.9,
  });
  await page.addInitScript(`
    window.shift = { sum: 0, worst: '' };
    new PerformanceObserver((list) => {
      for (const { value, hadRecentInput, sources } of list.getEntries())
        if (!hadRecentInput) {
          shift.sum += value;
          if (value > 0.005) shift.worst += sources.map(({ node }) => node?.outerHTML?.slice(0, 80)).join(' | ');
        }
    }).observe({ type: 'layout-shift', buffered: true });
  `);
}
async function shiftOf(page: Page, path: string) {
  await page.goto(path);
  await expect(page.locator('main h1').first()).toBeVisible();
  await page.waitForLoadState('networkidle');
  // What the worker was asked comes without a request.
  await page.waitForTimeout(1000);
  return page.evaluate(
    () => (window as unknown as { shift: { sum: number; worst: string } }).shift,
  );
}
/** Visits the pages, each loaded anew. */
async function visit(page: Page, name: string, paths: readonly string[]): Promise<void> {
  await slowLine(page);
  for (const path of paths) {
    const { sum, worst } = await shiftOf(page, path);
    console.log(`${name}, ${path}: ${sum.toFixed(3)}`);
    expect.soft(sum, `${name}, ${path}: ${worst}`).toBeLessThanOrEqual(most);
  }
}
const pages = ['/advice/', '/job/', '/job/plan/', '/crew/', '/owner/', '/ready/'];

/** By day every other page of one job settled, one of another with answers open, two with every answer open. */
for (const job of sixNames) {
  test(`nothing jumps: ${job}, settled @nightly`, async ({ page }) => {
    await openSix(page, job, 'work');
    await visit(page, 'settled', sampled(pages, 2));
  });
  test(`nothing jumps: ${job}, three answers open${nightUnless(job === 'painted garage')}`, async ({
    page,
  }) => {
    await openSix(page, job, 'work', true);
    await visit(page, 'three open', sampled(['/advice/', '/job/'], 2));
  });
}
test('nothing jumps: everything open @nightly', async ({ page }) => {
  await visit(page, 'all open', sampled(pages, 3));
});
test('nothing jumps: pages that need no job @nightly', async ({ page }) => {
  await visit(
    page,
    'no job',
    sampled(
      [
        '/',
        '/assess/element/',
        '/learn/',
        '/learn/chart/',
        '/learn/search/',
        '/learn/practice/',
        '/learn/practice/#set1.cases=bakery-dust',
      ],
      2,
    ),
  );
});
