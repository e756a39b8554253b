import { readFileSync } from 'node:fs';
import { test, type Page } from '@playwright/test';
import { leaveRoom, nameField, openJob, savedMark } from '../helpers/faults';
import { expect, kept, names, withJob } from '../helpers/jobs-page';
import { journeys } from './journeys';

/**
 * Faults tried on the built site. Acknowledged is what the page has called "Saved"; the page goes
 * on to the next question when an answer is saved. Nothing acknowledged may be lost.
 */
const notice = (page: Page) => page.locator('.notice');
const walk = Object.entries(
  journeys['a scaled driveway in a frost climate with crumbling cracks']?.answers ?? {},
);

/** Gives an answer as in a journey: a choice, or `#` and a number. Ends at the next question. */
async function answer(page: Page, question: string, given: string): Promise<void> {
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  if (given.startsWith('#')) await page.locator(`#${question}-number`).fill(given.slice(1));
  else await page.locator(`input[name="${question}"][value="${given}"]`).check();
  await page.getByRole('button', { name: 'Continue' }).click();
  await page.waitForURL((url) => !url.pathname.includes(`/${question}/`));
}

test.describe('with the worker of the site', () => {
  test.use({ serviceWorkers: 'allow' });

  test('a reload at every question loses no answer, with the network off from the middle on @nightly', async ({
    page,
    context,
  }) => {
    test.setTimeout(180_000);
    await page.goto(`/assess/${walk[0]?.[0]}/`);
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    let given = 0;
    for (const [question, choice] of walk) {
      await answer(page, question, choice);
      given += 1;
      await page.reload();
      if (given < walk.length)
        await expect(page.getByText(`Answers so far (${given})`)).toBeVisible();
      if (given === Math.ceil(walk.length / 2)) await context.setOffline(true);
    }
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Prepare it: Shotblasting/);
    const [record] = (await kept(page)) as unknown as {
      file: { site: object; zones: object[] };
    }[];
    const there = { ...record?.file.site, ...record?.file.zones[0] };
    expect(Object.keys(there)).toEqual(expect.arrayContaining(walk.map(([question]) => question)));
    console.log(`${given} reloads, half of them offline: ${given} answers given, 0 lost`);
  });
});

test('storage cleared under the page: it is told, and the work goes back on the device @nightly', async ({
  page,
  context,
  baseURL,
}) => {
  await withJob(page);
  await openJob(page);
  const control = await context.newCDPSession(page);
  await control.send('Storage.clearDataForOrigin', {
    origin: baseURL ?? '',
    storageTypes: 'indexeddb,local_storage',
  });
  await nameField(page).fill('After the clearing (invented)');
  await expect(notice(page)).toContainText('no longer kept on this device');
  await expect(savedMark(page)).toBeHidden();
  await notice(page).getByRole('button', { name: 'Keep it as a job' }).click();
  await expect(savedMark(page)).toBeVisible();
  expect(await names(page)).toEqual(['After the clearing (invented)']);
  await page.reload();
  await expect(nameField(page)).toHaveValue('After the clearing (invented)');
});

test('no room left: it is told at once, the work can be had as a file, and is saved later', async ({
  page,
  context,
  baseURL,
}) => {
  await page.goto('/assess/element/');
  const control = await context.newCDPSession(page);
  await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
  // Before the first write: the browser looks at the room only now and then.
  await leaveRoom(control, baseURL ?? '', 1);
  await answer(page, 'element', 'slab');
  await expect(notice(page)).toContainText('this device has no room left');
  await expect(savedMark(page)).toBeHidden();
  await answer(page, 'setting', 'open');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    notice(page).getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  const { site } = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(site).toMatchObject({ element: 'slab', setting: 'open' });
  expect(await kept(page)).toEqual([]);

  await leaveRoom(control, baseURL ?? '');
  await notice(page).getByRole('button', { name: 'Try again' }).click();
  await expect(savedMark(page)).toBeVisible();
  await expect(notice(page)).toBeHidden();
  expect((await kept(page))[0]?.file.site).toEqual(site);
});

test('storage that will not open is told on the first question, and the work goes into a file @nightly', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('not in this window', 'SecurityError');
    };
  });
  await page.goto('/assess/element/');
  await expect(notice(page)).toContainText('Your work stays in this tab only.');
  await answer(page, 'element', 'steps');
  await answer(page, 'setting', 'open');
  await expect(savedMark(page)).toBeHidden();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    notice(page).getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  const { site } = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(site).toMatchObject({ element: 'steps', setting: 'open' });
});

test('two tabs writing to one job at once: what either called saved is there @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  const other = await context.newPage();
  await Promise.all([openJob(page), openJob(other)]);
  for (const tab of [page, other])
    await tab.evaluate(() => {
      for (const part of document.querySelectorAll('details')) part.open = true;
    });
  const hours = other.locator('#crew-hours');
  const rounds = 15;
  let [both, refused] = [0, 0];
  for (let round = 1; round <= rounds; round += 1) {
    const wanted = { name: `Ramp ${round} (invented)`, hours: 4 + round / 4 };
    await Promise.all([nameField(page).fill(wanted.name), hours.fill(String(wanted.hours))]);
    const told = async (tab: Page) => {
      await expect(savedMark(tab).or(notice(tab))).toBeVisible();
      return (await notice(tab).count()) === 0;
    };
    const [first, second] = await Promise.all([told(page), told(other)]);
    const [record] = (await kept(page)) as unknown as {
      file: { site: { name: string; hoursPerDay?: number } };
    }[];
    expect(first || second, 'one of the two is saved').toBe(true);
    if (first) expect(record?.file.site.name).toBe(wanted.name);
    if (second) expect(record?.file.site.hoursPerDay).toBe(wanted.hours);
    if (first && second) both += 1;
    for (const [tab, saved] of [
      [page, first],
      [other, second],
    ] as const) {
      if (saved) continue;
      refused += 1;
      // What it has is still in front of the reader, who chooses.
      if (tab === page) await expect(nameField(page)).toHaveValue(wanted.name);
      else await expect(hours).toHaveValue(String(wanted.hours));
      await notice(tab).getByRole('button', { name: 'Take the other tab’s' }).click();
    }
    for (const tab of [page, other]) await expect(notice(tab)).toHaveCount(0);
  }
  console.log(
    `${rounds} times two tabs wrote at once: ${both} both saved, ${refused} refused and told, 0 lost`,
  );
});
