import { expect, test, type Browser, type Locator, type Page } from '@playwright/test';
import { openSix } from '../helpers/open-six';
import { workedAt, type Worked } from '../helpers/page-thread';
import { slowness } from '../helpers/slowness';

/**
 * How long the page's own thread is busy at once on a phone 4 times slower, and how much it works
 * between a tap and its paint: nowhere may it feel stuck. Wanted are 200 ms at a load, 50 ms after a
 * tap and 100 ms to the paint; the limits below are what is reached, with room for noise.
 */
test.use({ viewport: { width: 390, height: 844 } });

/** Milliseconds in which what follows a paint has been done. */
const settles = 700;
/** Of a page with more to tap, so many spread over it. */
const mostTaps = 12;

interface Place {
  readonly path: string;
  /** What is tapped, one after the other; the folds where it is not said. */
  readonly taps?: string;
  /** In ms of the slower processor, at a second load: the code of a first one is not compiled yet. */
  readonly limits: { readonly load: number; readonly task: number; readonly paint: number };
}

const load = (browser: Browser, page: Page, path: string): Promise<Worked> =>
  workedAt(browser, page, async () => {
    await page.goto(path);
    await expect(page.locator('main h1').first()).toBeVisible();
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(2 * settles);
  });

async function tap(browser: Browser, page: Page, at: Locator): Promise<Worked> {
  await at.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await at.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  await page.waitForTimeout(200);
  return workedAt(browser, page, async () => {
    await page.mouse.click(x + Math.min(width / 2, 40), y + height / 2);
    await page.waitForTimeout(settles);
  });
}

/** Loads a page three times and taps what is there to tap. */
async function hold(browser: Browser, page: Page, { path, taps = 'main summary', limits }: Place) {
  const slow = slowness();
  const first = await load(browser, page, path);
  const again = [await load(browser, page, path), await load(browser, page, path)];
  const loaded = Math.min(...again.map(({ longest }) => longest)) / slow;
  const seen: Locator[] = [];
  for (const each of await page.locator(taps).all()) if (await each.isVisible()) seen.push(each);
  const every = Math.max(1, Math.ceil(seen.length / mostTaps));
  const found: (Worked & { readonly name: string })[] = [];
  for (const each of seen.filter((_, at) => at % every === 0)) {
    // A fold inside one that a tap has closed is gone.
    if (!(await each.isVisible())) continue;
    const text = (await each.textContent()) || (await each.getAttribute('value')) || '';
    const name = text.replace(/\s+/g, ' ').trim().slice(0, 30);
    const { longest, toPaint } = await tap(browser, page, each);
    found.push({ name, longest: longest / slow, toPaint: toPaint / slow });
  }
  const [slowest] = found.toSorted((one, other) => other.longest - one.longest);
  const [latest] = found.toSorted((one, other) => other.toPaint - one.toPaint);
  console.log(
    `${path}: longest task at the first load ${(first.longest / slow).toFixed(0)}, again ${loaded.toFixed(0)} ms; ` +
      `after ${found.length} taps ${slowest?.longest.toFixed(0)} ms (${slowest?.name}), ` +
      `to the paint ${latest?.toPaint.toFixed(0)} ms (${latest?.name})`,
  );
  expect(loaded).toBeGreaterThan(0);
  expect(found.length).toBeGreaterThan(0);
  expect.soft(loaded, 'longest task at a load').toBeLessThan(limits.load);
  expect.soft(slowest?.longest, 'longest task after a tap').toBeLessThan(limits.task);
  expect.soft(latest?.toPaint, 'work from tap to paint').toBeLessThan(limits.paint);
}

const limits = { load: 200, task: 100, paint: 120 };
const nothingKnown: readonly Place[] = [
  { path: '/assess/element/', taps: 'main form input', limits },
  // Its pictures are drawn anew when the page is taken over: 224 ms.
  { path: '/assess/looseness/', taps: 'main form input', limits: { ...limits, load: 340 } },
  { path: '/advice/', limits },
  // A case is drawn, and asked about, at once: 262 ms.
  {
    path: '/learn/practice/',
    taps: 'main .decide input, main summary',
    limits: { ...limits, load: 390 },
  },
];
const driveway: readonly Place[] = [
  { path: '/advice/', limits: { ...limits, load: 220 } },
  { path: '/job/', limits },
  { path: '/job/plan/', limits: { ...limits, paint: 140 } },
  { path: '/crew/', limits },
  // The day is reckoned anew with what is told, after the paint: 116 ms.
  { path: '/crew/', taps: 'main section button', limits: { ...limits, task: 180 } },
  { path: '/ready/', limits },
  { path: '/owner/', limits },
];

for (const place of nothingKnown)
  test(`no tap waits where nothing is known: ${place.path} @nightly`, async ({ browser, page }) => {
    test.setTimeout(240_000);
    await hold(browser, page, place);
  });
for (const place of driveway)
  test(`no tap waits on the driveway: ${place.path}, ${place.taps ?? 'folds'} @nightly`, async ({
    browser,
    page,
  }) => {
    test.setTimeout(240_000);
    await openSix(page, 'salted scaled driveway', 'work');
    await hold(browser, page, place);
  });
