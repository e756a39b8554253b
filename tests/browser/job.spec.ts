import { slowness } from '../helpers/slowness';
import { readFileSync } from 'node:fs';
import { expect as plain, test, type Page } from '@playwright/test';
import Papa from 'papaparse';
import { unfold } from './folds';
import { noFaultsInBoth, noSideways, sheetsOf } from './page-checks';

// A busy machine may take its time; what is waited for is the same.
const expect = plain.configure({ timeout: 20_000 });
test.setTimeout(240_000);

const zones = (page: Page) => page.locator('ol.rows > li');
const openAnswers = (page: Page, at: number) =>
  page.locator(`ol.rows > li:nth-child(${at + 1}) summary`).click();

/** Answers the question on the page by its choices, or by a number, and goes on. */
async function answer(page: Page, given: string | number): Promise<void> {
  const before = page.url();
  if (typeof given === 'number')
    await page
      .getByLabel(/./)
      .getByRole('textbox')
      .or(page.locator('input[type=text]'))
      .first()
      .fill(String(given));
  else await page.locator(`input[value="${given}"]`).first().check({ force: true });
  await page.getByRole('button', { name: 'Continue' }).click();
  await expect.poll(() => page.url()).not.toBe(before);
}

/** What these jobs say nothing of. */
const besides: Readonly<Record<string, string | number>> = {
  makerProfile: 'no-sheet',
  borderLength: 0,
  barCover: 30,
  barDiameter: 12,
  barSpacing: 150,
  barLength: 2,
};

/** Answers whatever is asked, by question, until the advice comes. */
async function interview(page: Page, answers: Readonly<Record<string, string | number>>) {
  for (let asked = 0; asked < 30; asked++) {
    await page.waitForURL(/\/(assess|advice)\//);
    const question = /\/assess\/([^/?]+)/.exec(page.url())?.[1];
    if (!question) return;
    const given = answers[question] ?? besides[question];
    if (given === undefined) throw new Error(`no answer for ${question}`);
    await answer(page, given);
  }
}

const site = {
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'some',
  thickness: 150,
  warnings: 'none',
};
const ramp = {
  ...site,
  depth: '3-to-6',
  looseness: 'fractured',
  contamination: 'none',
  texture: 'pitted',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  area: 18,
};
const forecourt = {
  ...ramp,
  depth: 'film',
  looseness: 'powdery',
  texture: 'sandy',
  finish: 'sealer',
  area: 90,
};

/** Opens one of the example jobs. */
async function example(page: Page, name: string): Promise<void> {
  await page.goto('/job/');
  await page.getByRole('button', { name }).click();
  await expect(page.getByLabel('Name of the job')).toHaveValue(new RegExp(name.slice(0, 10)));
  await expect(page.locator('header .kept')).toBeVisible();
}

test('builds the community hall job from nothing, reorders, deletes and undoes @nightly', async ({
  page,
}) => {
  await page.goto('/job/');
  await page.getByLabel('Name of the job').fill('Tidewell community hall (invented)');
  await page.getByRole('link', { name: /^Assess Zone 1/ }).click();
  await interview(page, ramp);
  await page.goto('/job/');
  await page.getByText(/^Answers \(/).click();
  await page.getByLabel('Name of the zone').fill('Ramp');
  await page.getByRole('button', { name: 'Add a zone' }).click();
  await interview(page, forecourt);
  await page.goto('/job/');
  await expect(zones(page)).toHaveCount(2);
  await expect(zones(page).nth(0)).toContainText('Ramp');
  await expect(zones(page).nth(0)).toContainText('Shotblasting');

  await unfold(page, 'The whole surface');
  await page.getByLabel('Total area').fill('140');
  await page.getByRole('button', { name: 'Make a zone of the rest' }).click();
  await expect(zones(page)).toHaveCount(3);
  await expect(zones(page).nth(2)).toContainText('32 m²');

  await openAnswers(page, 0);
  await page.getByRole('button', { name: 'Move down: Ramp' }).click();
  await expect(zones(page).nth(1)).toContainText('Ramp');
  await expect(page.getByRole('button', { name: 'Move down: Ramp' })).toBeFocused();

  await page.getByRole('button', { name: 'Copy Ramp' }).click();
  await expect(zones(page)).toHaveCount(4);
  // A copy has no area of its own yet, so what is left cannot be told.
  await expect(zones(page).nth(3)).toContainText('area not known');
  await page.getByRole('button', { name: 'Answer: Area of Ramp 2' }).click();
  await page.locator('#area-number').fill('18');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(zones(page).nth(3)).toContainText('14 m²');

  await openAnswers(page, 1);
  await page.getByRole('button', { name: 'Delete Ramp', exact: true }).click();
  await expect(zones(page)).toHaveCount(3);
  await page.waitForTimeout(6000);
  await page.getByRole('button', { name: 'Undo: bring Ramp back' }).click();
  await expect(zones(page)).toHaveCount(4);
  await expect(zones(page).nth(1)).toContainText('Ramp');

  // Everything is still there after a reload.
  await page.reload();
  await expect(zones(page)).toHaveCount(4);
  await page.getByRole('link', { name: 'To the plan' }).click();
  await unfold(page, 'Order of work and why');
  await expect(page.getByText('after “Shotblast”')).toHaveCount(1);
});

test('takes the reader’s own value, and gives it back @nightly', async ({ page }) => {
  await example(page, '9 Larch Row');
  await page.goto('/job/plan/');
  await unfold(page, 'Amounts, zone by zone');
  const bags = page.locator('.quantity').filter({ hasText: 'Bags of repair material' }).first();
  const before = await bags.locator('.head > b').textContent();
  await bags.getByText('How this was worked out').click();
  await bags.getByLabel('Your own value: Yield of one bag').fill('7');
  await expect(bags.locator('.head > b')).not.toHaveText(before ?? '');
  await expect(bags).toContainText('your own value');
  await page.reload();
  await unfold(page, 'What this takes for granted');
  await expect(page.getByText('Your own value: Yield of one bag, 7 L.').first()).toBeVisible();
  await unfold(page, 'Amounts, zone by zone');
  await bags.getByText('How this was worked out').click();
  await bags.getByRole('button', { name: /^Go back to the usual value/ }).click();
  await expect(bags.locator('.head > b')).toHaveText(before ?? '');
});

test('hands out the plan and the quantities as files that read back', async ({ page }) => {
  await example(page, 'ramp and forecourt');
  await page.goto('/job/plan/');
  await unfold(page, 'Print or take along');
  const save = async (name: string) => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name }).click(),
    ]);
    return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
  };
  const table = await save('Quantities as a table');
  expect(table.name).toMatch(/\.csv$/);
  const { data, errors } = Papa.parse<Record<string, string>>(table.text, {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  const total = data.find((row) => row.Zone === 'All zones' && row.Quantity === 'Area');
  expect([total?.['At least'], total?.['At most'], total?.Unit]).toEqual(['140', '140', 'm²']);
  const plan = await save('Plan as text');
  expect(plan.name).toMatch(/\.md$/);
  expect(plan.text).toMatch(/^# Plan: Tidewell community hall/);
  expect(plan.text).toContain('## Order of work');
});

test('prints each part on its own @nightly', async ({ page }) => {
  await example(page, 'Boat-shed floor');
  await page.goto('/job/plan/');
  await unfold(page, 'Print or take along');
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  const pages = async (button: string) => {
    await page.getByRole('button', { name: button }).click();
    const count = await sheetsOf(page, 'A4');
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    return count;
  };
  // In letters that can be read, with the code, whom to call, and machines beside the picture.
  expect(await pages('Print the plan')).toBe(2);
  expect(await pages('Print zone sheets')).toBe(3);
  expect(await pages('Print the quantities')).toBe(1);
  expect(await pages('Print the cautions')).toBe(2);
});

test('stays comfortable with 200 zones @nightly', async ({ page }) => {
  await example(page, 'ramp and forecourt');
  await page.goto('/job/');
  await openAnswers(page, 0);
  for (let count = 4; count < 200; count++)
    await page.evaluate(() =>
      [...document.querySelectorAll<HTMLButtonElement>('button')]
        .find((each) => each.textContent === 'Copy')
        ?.click(),
    );
  await expect(zones(page)).toHaveCount(200);
  const name = page.getByLabel('Name of the zone');
  // Time of the page's own thread: script, style and layout. A busy machine does not add to it.
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const used = async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    return (metrics.find((each) => each.name === 'TaskDuration')?.value ?? NaN) * 1000;
  };
  const edits = 10;
  const before = await used();
  for (let edit = 0; edit < edits; edit++) await name.press(String(edit));
  await expect(page.locator('ol.rows')).toContainText('0123456789');
  const each = ((await used()) - before) / edits;
  console.log(`an edit among 200 zones: ${each.toFixed(1)} ms`);
  expect(each).toBeLessThan(100 * slowness());
});

for (const path of ['/job/', '/job/plan/'])
  test(`${path} has nothing axe finds, and fits 320 px @nightly`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 700 });
    await example(page, 'front steps');
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    for (const summary of await page
      .locator('main summary')
      .all()
      .then((all) => all.slice(0, 6)))
      await summary.click();
    await noFaultsInBoth(page, path);
    await noSideways(page, path);
  });
