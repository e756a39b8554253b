import { expect, test } from '@playwright/test';
import { list, openFile, openJobs } from '../helpers/jobs-page';
import { Counted } from '../helpers/keystroke-level';
import { openSix, standingOpen } from '../helpers/open-six';
import { trialFile, triedMethods } from '../helpers/trial-jobs';

/** A square metre tried on a phone: by keys alone, read at once, kept, and on the plan. */
test.use({ viewport: { width: 390, height: 844 } });

test('a square is typed and ticked by keys, answered at once, and still there after a reload', async ({
  page,
}) => {
  await openSix(page, 'mossy patio', 'work');
  await page.goto('/trial/');
  const minutes = page.locator('#trial-minutes');
  await expect(minutes).toBeVisible();
  await minutes.focus();
  await page.keyboard.type('6');
  for (let place = 0; place < 5; place += 1) {
    while (
      !(await page.evaluate((id) => document.activeElement?.id === id, `trial-depth-${place}`))
    )
      await page.keyboard.press('Tab');
    await page.keyboard.type('1');
  }
  // To the first choice of each group of ticks, and on.
  for (const name of ['stones', 'left', 'bar', 'sound']) {
    while (
      !(await page.evaluate(
        (wanted) => document.activeElement?.getAttribute('name') === wanted,
        `trial-${name}`,
      ))
    )
      await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
  }
  await expect(page.locator('#next-step')).toBeVisible();
  const said = await page.locator('#next-step').innerText();
  const { words, screens } = await standingOpen(page);
  console.log(`a square read: ${String(words)} words, ${String(screens)} screens`);
  expect(screens).toBeLessThanOrEqual(5);
  await expect(page.getByText('Saved')).toBeVisible();
  await page.reload();
  await expect(page.locator('#next-step')).toHaveText(said);
});

test('two squares and what they come to are read in under 350 words @nightly', async ({ page }) => {
  await openSix(page, 'mossy patio', 'work');
  await page.goto('/trial/');
  const square = async (left: string) => {
    await page.locator('#trial-minutes').fill('6');
    for (let place = 0; place < 5; place += 1)
      await page.locator(`#trial-depth-${place}`).fill('0');
    for (const [name, id] of [
      ['stones', 'none-seen'],
      ['left', left],
      ['bar', 'no'],
      ['sound', 'clear'],
    ] as const)
      await page.locator(`[name=trial-${name}][value=${id}]`).check();
  };
  await square('more');
  await expect(page.locator('#next-step')).toHaveText(/one notch harder/i);
  await page.getByRole('button', { name: 'Try the next square' }).click();
  await square('nothing');
  await expect(page.locator('#next-step')).toHaveText(/continue as set/i);
  const { words } = await standingOpen(page);
  expect(words).toBeLessThan(350);
});

for (const method of triedMethods)
  test(`${method}: what was found is typed and ticked in under a minute, and the form is one page @nightly`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 780 });
    await openJobs(page);
    await openFile(page, trialFile(method));
    await expect(list(page).getByText('open now')).toBeVisible();
    await page.goto('/trial/');
    await expect(page.locator('.where').first()).toContainText(method);
    const crew = new Counted(page);
    await crew.tap('a[href="#found"]');
    await crew.tap('#trial-minutes');
    await crew.type('12');
    // What an ordinary square has: two digits at each of the five places.
    for (const depth of ['35', '40', '40', '45', '40'])
      await crew.type(method === 'Breaking out' ? depth : depth.replace(/^(.)/, '$1.'));
    for (const [name, id] of [
      ['stones', 'cut'],
      ['left', 'nothing'],
      ['bar', 'no'],
      ['sound', 'clear'],
    ] as const)
      await crew.tap(`label:has([name=trial-${name}][value=${id}])`);
    const chip = page.locator('label.pick:has-text("Chip") select');
    if (await chip.count()) await crew.pick('label.pick:has-text("Chip") select', { index: 6 });
    await expect(page.locator('#next-step')).toBeVisible();
    const { keys, taps } = crew.counts;
    console.log(`${method}: ${keys} keys, ${taps} taps, ${crew.time.toFixed(0)} s`);
    expect(crew.time).toBeLessThan(60);

    await page.evaluate(() => (window.print = () => undefined));
    await page.getByRole('button', { name: 'Print a blank form' }).click();
    for (const format of ['A4', 'Letter']) {
      const margin = { top: '10mm', bottom: '10mm', left: '10mm', right: '10mm' };
      const pdf = (await page.pdf({ format, margin })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
    }
  });

test('where no setting will do, advice and plan follow, and come back with the square @nightly', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 780 });
  await openJobs(page);
  await openFile(page, trialFile('Scarifying'));
  await expect(list(page).getByText('open now')).toBeVisible();
  await page.goto('/trial/');
  const torn = async () => {
    await page.locator('#trial-depth-0').fill('4');
    for (const [name, id] of [
      ['stones', 'torn'],
      ['left', 'nothing'],
      ['bar', 'no'],
      ['sound', 'clear'],
    ] as const)
      await page.locator(`[name=trial-${name}][value=${id}]`).check();
  };
  await torn();
  await page.getByRole('button', { name: 'Try the next square' }).click();
  await torn();
  await expect(page.locator('#next-step')).toHaveText(/another method/i);
  await page.getByRole('button', { name: 'Try shotblasting on a square' }).click();
  await expect(page.getByText('S390').first()).toBeVisible();
  await expect(page.getByText('Saved')).toBeVisible();
  await page.goto('/advice/');
  await expect(page.getByRole('heading', { name: /shotblast/i }).first()).toBeVisible();
  await expect(page.getByText(/scarifying failed on your test square/i).first()).toBeAttached();
  await page.goto('/job/plan/');
  await expect(page.getByText(/shotblasting/i).first()).toBeAttached();
  await expect(page.getByText(/scarifying/i)).toHaveCount(0);
  await page.goto('/trial/');
  await page.getByRole('button', { name: 'Delete: Square 2' }).click();
  await page.goto('/job/plan/');
  await expect(page.getByText(/scarifying/i).first()).toBeAttached();
});

test('plan, crew’s day, owner’s sheet and record name the test patch @nightly', async ({
  page,
}) => {
  await openJobs(page);
  const file = trialFile('Shotblasting') as { zones: object[] };
  const square = {
    method: 'shotblast',
    notch: 1,
    passes: 2,
    minutes: 10,
    depths: [4, 4, 4, 4, 4],
    profile: 6,
    stones: 'cut',
    left: 'nothing',
    bar: 'no',
    sound: 'clear',
  };
  await openFile(page, {
    ...file,
    zones: file.zones.map((zone) => ({ ...zone, trial: [square] })),
  });
  await expect(list(page).getByText('open now')).toBeVisible();
  for (const path of ['/job/plan/', '/crew/', '/owner/']) {
    await page.goto(path);
    await expect(
      page.getByText(/a pass, 2 to 4.* passes for shotblasting, from your test square/i).first(),
    ).toBeVisible();
  }
  await page.goto('/ready/');
  await expect(page.getByText(/1 square tried; the last: S390/).first()).toBeAttached();
});
