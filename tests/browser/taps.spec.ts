import { expect, test, type Browser, type Locator, type Page } from '@playwright/test';
import { openSix } from '../helpers/open-six';
import { workedAt, type Worked } from '../helpers/page-thread';
import { slowness } from '../helpers/slowness';

/**
 * How long the page's own thread is busy at once on a phone 4 times slower, and how long a tap waits
 * for its paint: nowhere may it feel stuck.
 */
test.use({ viewport: { width: 390, height: 844 } });

/** Milliseconds for what comes after the first paint, or after a tap's, to have been done. */
const settles = 1500;

async function load(browser: Browser, page: Page, path: string): Promise<Worked> {
  return workedAt(browser, page, async () => {
    await page.goto(path);
    await expect(page.locator('main h1').first()).toBeVisible();
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(settles);
  });
}
async function tap(browser: Browser, page: Page, at: Locator): Promise<Worked> {
  await at.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await at.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  await page.waitForTimeout(200);
  return workedAt(browser, page, async () => {
    await page.mouse.click(x + Math.min(width / 2, 40), y + height / 2);
    await page.waitForTimeout(settles);
  });
}

/** Loads the page, then opens each fold of it: what each took, longest first. */
async function walk(browser: Browser, page: Page, path: string, tapped = 'main summary') {
  const slow = slowness();
  const loaded = await load(browser, page, path);
  const taps: (Worked & { readonly name: string })[] = [];
  const all = await page.locator(tapped).all();
  for (const each of all) {
    if (!(await each.isVisible())) continue;
    const name = ((await each.textContent()) ?? (await each.getAttribute('value')) ?? '').trim();
    taps.push({
      name: name.replace(/\s+/g, ' ').slice(0, 30),
      ...(await tap(browser, page, each)),
    });
  }
  const of = (what: keyof Worked) => Math.max(0, ...taps.map((each) => each[what]));
  console.log(
    `${path}: load ${loaded.longest.toFixed(0)}; tap ${of('longest').toFixed(0)}, to paint ${of('toPaint').toFixed(0)} (${slow.toFixed(2)})\n` +
      taps
        .map((each) => `   ${each.longest.toFixed(0)} ${each.toPaint.toFixed(0)} ${each.name}`)
        .join('\n'),
  );
  return { load: loaded.longest / slow, tap: of('longest') / slow, paint: of('toPaint') / slow };
}

for (const [path, tapped] of [
  ['/assess/element/', 'main input[value="wall"]'],
  ['/assess/looseness/', 'main input'],
  ['/advice/'],
  ['/learn/practice/', 'main .decide input, main summary'],
] as const)
  test(`nothing known: ${path}`, async ({ browser, page }) => {
    test.setTimeout(200_000);
    await walk(browser, page, path, tapped);
  });
for (const path of ['/advice/', '/job/', '/job/plan/', '/crew/', '/ready/', '/owner/'])
  test(`driveway: ${path}`, async ({ browser, page }) => {
    test.setTimeout(200_000);
    await openSix(page, 'salted scaled driveway', 'work');
    await walk(browser, page, path);
  });
