import { expect, test, type Page } from '@playwright/test';
import { noFaultsInBoth, noSideways } from './page-checks';

test.use({ viewport: { width: 320, height: 720 } });

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const saved = (page: Page) => expect(page.locator('header .kept')).toBeVisible();
const later = (page: Page, minutes: number) => page.clock.fastForward(minutes * 60_000);

/** The invented boat shed on the morning its work begins. */
async function open(page: Page) {
  await page.clock.install({ time: new Date('2026-05-04T07:00:00') });
  await page.goto('/job/');
  await page.getByRole('button', { name: 'Boat-shed floor' }).click();
  await saved(page);
  await page.goto('/crew/');
  await expect(button(page, 'Start: Make safe')).toBeVisible();
}

test('a day is ticked off by keys, is there after a reload, feeds the plan, and prints', async ({
  page,
}) => {
  await open(page);
  await button(page, 'Start: Make safe').press('Enter');
  await expect(button(page, 'Stop: Make safe')).toBeFocused();
  await later(page, 30);
  await button(page, 'Done: Make safe').press('Enter');
  await expect(button(page, 'Done: Make safe')).toBeFocused();
  await expect(button(page, 'Done: Make safe')).toHaveAttribute('aria-pressed', 'true');
  await button(page, 'Start: Saw the edge').press('Enter');
  await later(page, 240);
  await button(page, 'Stop: Saw the edge').press('Enter');
  await later(page, 30);
  // The list stands still: what was pressed is where it was.
  const top = async () => (await button(page, 'Done: Saw the edge').boundingBox())?.y ?? NaN;
  const place = await top();
  await button(page, 'Done: Saw the edge').press('Enter');
  expect(Math.abs((await top()) - place)).toBeLessThan(2);
  await page.getByRole('button', { name: /^Saw the edge Walk-behind saw/ }).press('Enter');
  await page.getByRole('textbox', { name: 'Note' }).fill('Blade worn after two bays');
  await page.getByRole('textbox', { name: 'Note' }).press('Enter');
  await noFaultsInBoth(page, 'day log');
  await noSideways(page, 'day log');
  await saved(page);

  await page.reload();
  await expect(button(page, 'Done: Saw the edge')).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByText(/done, 4\shours/)).toBeVisible();
  await expect(page.getByText('Blade worn after two bays').first()).toBeVisible();

  // Its own button prints the log, and nothing but the log.
  await page.evaluate(() => (window.print = () => undefined));
  await page.locator('summary', { hasText: 'Log' }).first().press('Enter');
  await button(page, 'Print the log').press('Enter');
  await page.emulateMedia({ media: 'print' });
  const sheet = page.getByRole('region', { name: 'Log of the work' });
  await expect(sheet.getByRole('row', { name: /Mon 4 May.*Saw the edge/ })).toContainText(
    'Blade worn after two bays',
  );
  await expect(sheet.getByRole('table', { name: 'Read and right' })).toBeVisible();
  await expect(
    page.getByRole('heading', { name: 'To read aloud before work starts' }),
  ).toBeHidden();
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(
    page.getByRole('heading', { name: 'To read aloud before work starts' }),
  ).toBeVisible();
  await expect(sheet).toBeHidden();
  await page.emulateMedia({ media: 'screen' });

  await page.goto('/job/plan/');
  const said = page.getByText(/times as long as reckoned so far/);
  await expect(said).toHaveCount(1);
  await expect(said).toContainText(
    /^2 of \d+ tasks done\. Left: .* hours of work, .* working days\./,
  );
});

test('what one tab ticks stands in the other @nightly', async ({ page, context }) => {
  await open(page);
  const other = await context.newPage();
  await other.goto('/crew/');
  await button(page, 'Start: Saw the edge').click();
  await saved(page);
  await expect(button(other, 'Stop: Saw the edge')).toBeVisible();
  await button(other, 'Stop: Saw the edge').click();
  await expect(button(page, 'Start: Saw the edge')).toBeVisible();
});

test('its buttons are large enough for a glove @nightly', async ({ page }) => {
  await open(page);
  const least = await page
    .locator('#day-log .go')
    .evaluateAll((all) =>
      all.map((each) => each.getBoundingClientRect()).map(({ width, height }) => [width, height]),
    );
  // Common practice, no source: a gloved fingertip wants half as much again as the 44 px of WCAG 2.5.5 in one direction.
  for (const [width, height] of least) {
    expect(width).toBeGreaterThanOrEqual(66);
    expect(height).toBeGreaterThanOrEqual(55);
  }
});
