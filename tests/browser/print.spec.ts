import { expect, test, type Page } from '@playwright/test';
import { unfold } from './folds';
import { nightUnless } from '../helpers/rounds';
import { sheetsOf, smallestPrinted } from './page-checks';

/** Common practice, no source: what is read on a slab at arm's length is set in 9 points or more. */
const least = 9;
async function canBeRead(page: Page, what: string, width?: number) {
  const { points, text } = await smallestPrinted(page, width);
  expect.soft(points, `${what}: “${text}”`).toBeGreaterThanOrEqual(least - 0.01);
}

/** Examples with a drawn slab, with typed patches, and with the longest chart of days; one by day. */
const examples = ['9 Larch Row', 'ramp and forecourt', 'Boat-shed floor', 'front steps'];
async function example(page: Page, name: string) {
  await page.goto('/job/');
  await page.getByRole('button', { name }).click();
  await expect(page.locator('header .kept')).toBeVisible();
}

/** What is looked at before a page is printed: whatever comes after its first paint has come. */
async function stands(page: Page, path: string) {
  await page.goto(path);
  await expect(page.locator('main h1:visible').first()).toBeVisible();
  await page.waitForLoadState('networkidle');
  await expect(page.getByText('Working out')).toHaveCount(0);
}
/** A step that goes on over the next column or sheet is read by two people as two. */
async function stepsStandWhole(page: Page, what: string) {
  await page.emulateMedia({ media: 'print' });
  const cut = await page.evaluate(() => {
    const steps = [...document.querySelectorAll('.sheet.plan ol > li')];
    if (!steps.length) throw new Error('No steps on the plan.');
    return steps
      .filter(
        (step) =>
          step.getClientRects().length > 1 || getComputedStyle(step).breakInside !== 'avoid',
      )
      .map((step) => step.textContent?.slice(0, 40));
  });
  await page.emulateMedia({ media: null });
  expect.soft(cut, what).toEqual([]);
}
const ofJob = ['/advice/', '/job/', '/crew/', '/ready/', '/trial/', '/owner/', '/survey/'];
for (const name of examples)
  test(`${name}: every page prints in letters that can be read${nightUnless(name === '9 Larch Row')}`, async ({
    page,
  }) => {
    await example(page, name);
    for (const path of ofJob) {
      await stands(page, path);
      await canBeRead(page, path);
    }
  });

test('every page to learn from prints in letters that can be read', async ({ page }) => {
  for (const path of ['/learn/sounding/', '/learn/scarifying/', '/learn/glossary/']) {
    await page.goto(path);
    await canBeRead(page, path);
  }
  // Sideways, in margins of its own; Letter is the narrower.
  await page.goto('/learn/chart/');
  await canBeRead(page, 'chart', 279.4 - 14);
});

for (const name of examples)
  test(`${name}: each part of the plan prints on its own in letters that can be read, the plan on one leaf @nightly`, async ({
    page,
  }) => {
    await example(page, name);
    await stands(page, '/job/plan/');
    await canBeRead(page, 'the whole');
    await stepsStandWhole(page, name);
    await unfold(page, 'Print or take along');
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    for (const part of ['the plan', 'zone sheets', 'the quantities', 'the cautions']) {
      const press = () => page.getByRole('button', { name: `Print ${part}` }).click();
      await press();
      await canBeRead(page, part);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      for (const format of ['A4', 'Letter'] as const) {
        await press();
        const sheets = await sheetsOf(page, format);
        await page.evaluate(() => dispatchEvent(new Event('afterprint')));
        if (part !== 'zone sheets')
          expect.soft(sheets, `${part}, ${format}`).toBeLessThanOrEqual(2);
      }
    }
  });
