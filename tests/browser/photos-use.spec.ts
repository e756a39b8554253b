import { readFileSync } from 'node:fs';
import { test } from '@playwright/test';
import { expect, kept, list, more, name, openJobs, saveToFile } from '../helpers/jobs-page';
import { addPhotos, asFile, cards, openPhotos, photosKept, picture } from '../helpers/photos-page';
import { reach } from './keyboard';
import { noFaultsInBoth, noSideways } from './page-checks';

/** What becomes of photos beside their page: sheets, files, an area, and what is told about privacy. */
test.use({ viewport: { width: 320, height: 640 } });

test('no link carries a photo, a file only where it is ticked, and another device gets it from there @nightly', async ({
  page,
  browser,
}) => {
  await openPhotos(page);
  const linkNow = async () => {
    await openJobs(page);
    const row = await more(page);
    await row.getByRole('button', { name: 'Share a link' }).click();
    return row.getByLabel(/^Link to/).inputValue();
  };
  const before = await linkNow();
  const plain = await (async () => {
    await openJobs(page);
    return saveToFile(page);
  })();
  await page.goto('/photos/?zone=a');
  await addPhotos(page, asFile('1.jpg', await picture(page, 400, 300)), 1);
  await cards(page).first().getByLabel('Caption').fill('By the gate');
  await cards(page).first().getByLabel('Caption').blur();
  await expect(page.getByText('The caption is changed.')).toBeVisible();
  expect(await linkNow()).toBe(before);

  await openJobs(page);
  const save = async (along: boolean) => {
    const row = list(page);
    if (!(await row.getByRole('button', { name: 'Save to a file' }).isVisible())) await more(page);
    await row.getByRole('button', { name: 'Save to a file' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      row.getByRole('button', { name: along ? /With its photo/ : 'Without photos' }).click(),
    ]);
    return readFileSync(await download.path(), 'utf8');
  };
  expect(await save(false)).toBe(plain);
  const whole = await save(true);
  expect(Object.keys(JSON.parse(whole) as object).at(-1)).toBe('photos');

  const other = await (await browser.newContext()).newPage();
  await other.goto('/jobs/');
  await other
    .locator('#job-file')
    .setInputFiles(asFile('job.json', Buffer.from(whole), 'application/json'));
  await expect(other.getByText('is in your list as a new job.')).toBeVisible();
  await other.goto('/photos/?zone=a');
  await expect(cards(other).getByLabel('Caption')).toHaveValue('By the gate');
  await other.context().close();

  // The job takes its photos along when it goes, and they come back with it.
  await openJobs(page);
  const row = await more(page);
  await row.getByRole('button', { name: 'Delete' }).click();
  await expect(page.getByText(`“${name}” is deleted.`)).toBeVisible();
  expect(await photosKept(page)).toEqual([]);
  await page.getByRole('button', { name: 'Undo: delete' }).click();
  await expect.poll(async () => (await photosKept(page)).length).toBe(1);
});

test('chosen photos stand before and after, side by side, on the owner’s sheet and on paper @nightly', async ({
  page,
}) => {
  await openPhotos(page);
  const jpeg = await picture(page, 400, 300);
  await addPhotos(page, [asFile('1.jpg', jpeg), asFile('2.jpg', jpeg), asFile('3.jpg', jpeg)], 3);
  await cards(page).nth(1).getByRole('radio', { name: 'After' }).check();
  for (const place of [0, 1])
    for (const where of ['On the owner’s sheet', 'On the job page and printed sheets'])
      await cards(page).nth(place).getByRole('checkbox', { name: where }).check();
  await expect(page.getByText('What it stands on is changed.')).toBeVisible();
  await expect.poll(async () => (await photosKept(page)).length).toBe(3);

  await page.goto('/job/');
  await expect(
    page.getByRole('link', { name: 'Photos of By the gate' }).locator('img'),
  ).toHaveCount(2);
  for (const [path, paper] of [
    ['/owner/', false],
    ['/advice/?zone=a', true],
  ] as const) {
    await page.goto(path);
    const figures = page.locator('section.photos figure');
    await expect(figures).toHaveCount(2);
    await expect(figures.first()).toBeVisible({ visible: !paper });
    await page.emulateMedia({ media: 'print' });
    await expect(figures.first()).toBeVisible();
    await expect(figures.nth(0)).toContainText('Before');
    await expect(figures.nth(1)).toContainText('After');
    const [one, other] = [await figures.nth(0).boundingBox(), await figures.nth(1).boundingBox()];
    expect(other?.y).toBe(one?.y);
    expect(other?.x).toBeGreaterThan(one?.x ?? 0);
    await page.emulateMedia({ media: 'screen' });
  }
  // A zone that is taken out takes its photos along; undone, they are back.
  await page.goto('/job/');
  await page.locator('#zone-a summary').click();
  await page.getByRole('button', { name: 'Delete By the gate' }).click();
  await expect.poll(async () => (await photosKept(page)).length).toBe(0);
  await page.locator('#undo-zone').click();
  await expect.poll(async () => (await photosKept(page)).length).toBe(3);
});

test('an area between four chalk marks is a range; taken over only when pressed @nightly', async ({
  page,
}) => {
  await openPhotos(page);
  await addPhotos(page, asFile('1.jpg', await picture(page, 1600, 1200)), 1);
  const card = cards(page).first();
  await card.getByText('Measure an area').click();
  const board = card.getByRole('application');
  await card.getByRole('button', { name: 'Larger' }).click();
  await reach(page, board);
  // The marks by keys, in steps of a fortieth of the width; the outline too.
  const go = async (key: string, times: number) => {
    for (let step = 0; step < times; step += 1) await page.keyboard.press(key);
    await page.keyboard.press('Enter');
  };
  // From the middle to the first mark, then round: 20 steps across by 12 down.
  for (let step = 0; step < 10; step += 1) await page.keyboard.press('ArrowLeft');
  await go('ArrowUp', 6);
  await go('ArrowRight', 20);
  await go('ArrowDown', 12);
  await go('ArrowLeft', 20);
  await expect(card.getByText('Tap the corners of the area')).toBeVisible();
  await go('ArrowRight', 4);
  await go('ArrowUp', 8);
  await go('ArrowRight', 12);
  await go('ArrowDown', 8);
  // One step is 100 mm on a picture from straight above: 12 by 8 steps are 0.96 m2.
  const tape = async (texts: readonly string[]) => {
    for (const [index, text] of texts.entries())
      await card.locator(`[id^=tape-][id$="-${index}"]`).fill(text);
  };
  await tape(['2000', '1200', '2000', '1200', '2332', '2500']);
  await expect(card.getByText('The second diagonal does not go with the rest')).toBeVisible();
  await tape(['2000', '1200', '2000', '1200', '2332', '2332']);
  await expect(card.getByText(/^Between .* and .*$/)).toBeVisible();
  const [, low, high] =
    /Between ([\d.]+)\s*m.* and ([\d.]+)\s*m/.exec(await card.getByText(/^Between/).innerText()) ??
    [];
  expect(Number(low)).toBeLessThan(0.96);
  expect(Number(high)).toBeGreaterThan(0.96);
  await noFaultsInBoth(page, 'measuring');
  await noSideways(page, 'measuring at 320 px');
  const areas = async () =>
    (await kept(page)).map(
      ({ file }) => (file as { zones?: { area?: number }[] }).zones?.[0]?.area,
    );
  expect(await areas()).toEqual([undefined]);
  await card.getByRole('button', { name: /^Take .* over as the area of the zone$/ }).click();
  await expect(card.getByText(/^The area of the zone is/)).toBeVisible();
  await expect.poll(areas).toEqual([0.96]);
  await page.locator('#undo-zone').click();
  await expect.poll(areas).toEqual([undefined]);
});

test('the page on privacy is read without a script, and leads to deleting', async ({ page }) => {
  await page.goto('/');
  await page.locator('footer').getByRole('link', { name: 'Privacy' }).click();
  await expect(page.getByRole('heading', { name: 'Privacy', level: 1 })).toBeVisible();
  for (const what of ['Jobs', 'Photos', 'Practice', 'Settings'])
    await expect(page.getByRole('term').filter({ hasText: what })).toBeVisible();
  await noFaultsInBoth(page, 'privacy');
  await noSideways(page, 'privacy at 320 px');
  await page.getByRole('link', { name: 'To “Delete everything”' }).click();
  await expect(page.getByRole('heading', { name: 'Delete everything' })).toBeVisible();
});
