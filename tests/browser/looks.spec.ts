import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { noSideways } from './page-checks';

/**
 * How the main screens look, held to pictures kept beside this file; and that every one of them
 * stands in forced colours and with text twice as large. Make new pictures, after looking at them:
 * NIGHTLY=1 npm run browser -- looks --update-snapshots
 */
const driveway = '9 Larch Row, driveway (invented example)';
const screens: Readonly<Record<string, string>> = {
  home: '/',
  question: '/assess/looseness/',
  number: '/assess/thickness/',
  advice: '/advice/',
  job: '/job/',
  plan: '/job/plan/',
  crew: '/crew/',
  ready: '/ready/',
  owner: '/owner/',
  jobs: '/jobs/',
  weather: '/weather/',
  learn: '/learn/',
  explainer: '/learn/sounding/',
  chart: '/learn/chart/',
  map: '/learn/interview-map/',
  practice: '/learn/practice/',
};
const pictured = ['home', 'question', 'advice', 'job', 'plan', 'ready', 'owner', 'chart'];
const looks = [
  { name: 'phone', viewport: { width: 360, height: 780 }, colorScheme: 'light' },
  { name: 'wide', viewport: { width: 1280, height: 900 }, colorScheme: 'light' },
  { name: 'night', viewport: { width: 768, height: 900 }, colorScheme: 'dark' },
] as const;

/** Opens the invented example job, so that every screen has something to show. */
async function withExample(page: Page): Promise<void> {
  // The date stands on some of the screens.
  await page.clock.setFixedTime(new Date('2026-11-25T10:00:00'));
  await page.goto('/job/');
  await page.getByRole('button', { name: driveway }).click();
  await expect(page.getByLabel('Name of the job')).toHaveValue(driveway);
  await expect(page.locator('header .kept')).toBeVisible();
}

/** The screen once it stands: whatever is worked out after the first paint has come. */
async function settled(page: Page, path: string): Promise<void> {
  await page.goto(path, { waitUntil: 'networkidle' });
  await expect(page.locator('h1').first()).toBeVisible();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  // With the clock standing still, the router takes each page for the one before, and its place in it.
  await page.evaluate(() => scrollTo(0, 0));
}

/** What pictures depend on beside the site: the letters of this machine and how it draws them. */
async function machine(page: Page): Promise<string> {
  const width = await page.evaluate(() => {
    const pen = document.createElement('canvas').getContext('2d');
    if (!pen) return 0;
    pen.font = '100px system-ui';
    return pen.measureText('Sound concrete rings, hollow concrete answers').width;
  });
  const [major] = page.context().browser()?.version().split('.') ?? [];
  return `Chromium ${major}, sample ${width.toFixed(1)} px`;
}
const madeWith = new URL('./looks/made-with.txt', import.meta.url);

for (const { name, viewport, colorScheme } of looks)
  test(`the main screens look as they did, ${name} @nightly`, async ({ page }, { config }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize(viewport);
    await withExample(page);
    const here = await machine(page);
    const update = config.updateSnapshots === 'all' || config.updateSnapshots === 'changed';
    if (update) writeFileSync(madeWith, `${here}\n`);
    const there = existsSync(madeWith) ? readFileSync(madeWith, 'utf8').trim() : '';
    // Other letters make other pictures: on such a machine only that each screen stands is tried.
    const comparable = here === there;
    if (!comparable) console.log(`pictures not compared: made with ${there}, here ${here}`);
    for (const screen of pictured) {
      await settled(page, screens[screen] ?? '/');
      if (comparable)
        await expect
          .soft(page)
          .toHaveScreenshot(`${screen}-${name}.png`, { maxDiffPixelRatio: 0.005 });
    }
  });

test('every screen stands in forced colours and with text twice as large @nightly', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.setViewportSize({ width: 1280, height: 900 });
  await withExample(page);
  await page.emulateMedia({ forcedColors: 'active' });
  for (const [screen, path] of Object.entries(screens)) {
    await settled(page, path);
    await noSideways(page, `${screen}, forced colours`);
    // What is ticked must differ from what is not without any colour of ours.
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    // On a phone too, where little room is left for letters as large as that.
    await page.setViewportSize({ width: 360, height: 780 });
    await noSideways(page, `${screen}, 200 % on a phone`);
    await page.setViewportSize({ width: 1280, height: 900 });
    await noSideways(page, `${screen}, 200 %`);
    const clipped = await page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          'main h1, main h2, main p, main button, main label',
        ),
      ]
        .filter(({ clientWidth, scrollWidth, className, children }) => {
          const unseen = className.includes?.('unseen');
          return !unseen && !children.length && clientWidth > 0 && scrollWidth > clientWidth + 2;
        })
        .map(({ textContent }) => textContent),
    );
    expect(clipped, `${screen}: text that is cut off`).toEqual([]);
  }
});
