import { expect as plain, test, type Page } from '@playwright/test';
import { noFaultsInBoth, onOneSheet } from './page-checks';

// A busy machine may take its time; what is waited for is the same.
const expect = plain.configure({ timeout: 20_000 });

// All invented: the boat-shed floor of Marrow Quay.
const file = {
  format: 'down-to-sound.job',
  version: 1,
  site: {
    name: 'Boat shed, Marrow Quay (invented)',
    element: 'slab',
    setting: 'indoors',
    salts: 'none',
    freezeThaw: 'rare',
    thickness: 150,
    warnings: [],
  },
  zones: [
    {
      id: 'a',
      name: 'By the slipway door',
      area: 24,
      depth: 5,
      looseness: 'fractured',
      contamination: [],
      texture: 'sandy',
      cracks: 'none',
      steel: 'none-seen',
      finish: 'overlay',
    },
  ],
};

/** Puts the job on the device as the site itself keeps it, and opens the page of its zone. */
async function openReady(page: Page): Promise<void> {
  await page.goto('/');
  await expect
    .poll(() =>
      page.evaluate(async () => {
        const all = await indexedDB.databases();
        return all.some(({ name }) => name === 'down-to-sound');
      }),
    )
    .toBe(true);
  await page.evaluate(async (job) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('down-to-sound');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    await new Promise((resolve) => {
      const writing = database.transaction('jobs', 'readwrite');
      const record = { id: 'test', file: job, createdAt: 1, changedAt: 1, revision: 1 };
      writing.objectStore('jobs').put(record);
      writing.oncomplete = resolve;
    });
    database.close();
    const kept = { units: 'metric', reader: 'work', job: 'test' };
    localStorage.setItem('down-to-sound.preferences', JSON.stringify(kept));
  }, file);
  await page.goto('/ready/?zone=a');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('By the slipway door');
}

/** Waits until what was entered is on the device. */
const saved = (page: Page, part: string) =>
  expect
    .poll(() =>
      page.evaluate(
        () =>
          new Promise<string>((resolve) => {
            const request = indexedDB.open('down-to-sound');
            request.onsuccess = () => {
              const found = request.result.transaction('jobs').objectStore('jobs').get('test');
              found.onsuccess = () => {
                request.result.close();
                resolve(JSON.stringify(found.result));
              };
            };
          }),
      ),
    )
    .toContain(part);

const card = (page: Page, id: string) => page.locator(`details.card#${id}`);
async function openCard(page: Page, id: string) {
  await card(page, id).locator('> summary').click();
  return card(page, id);
}

async function pullOff(page: Page, stresses: readonly number[]) {
  const found = await openCard(page, 'pull-off');
  await found.getByText('Overlay on a deck').click();
  for (const [index, stress] of stresses.entries()) {
    const row = found.getByRole('group', { name: `Test ${index + 1}`, exact: true });
    await row.getByLabel('Stress, MPa').fill(String(stress));
    await row.getByLabel('Where it broke').selectOption('base');
  }
  return found;
}

test.describe('ready to cover', () => {
  test.use({ viewport: { width: 360, height: 780 } });
  test.slow();

  test('a zone becomes ready when every check passes, and stays so after a reload', async ({
    page,
  }) => {
    await openReady(page);
    const state = page.locator('.head');
    await expect(state).toContainText('Not yet checked');

    await (await openCard(page, 'sounding')).getByText('Rings clear everywhere').click();
    await openCard(page, 'profile');
    for (const place of [0, 1, 2]) await page.locator(`#profile-${place}`).fill('6');
    await pullOff(page, [1.9, 2.1, 1.8]);
    await openCard(page, 'dust-tape');
    for (const place of [0, 1, 2]) await page.locator(`#dust-tape-${place}`).fill('0');
    const drop = await openCard(page, 'water-drop');
    for (const place of [0, 1, 2]) await drop.getByText('Spread out').nth(place).click();
    await openCard(page, 'absorption');
    for (const place of [0, 1, 2]) await page.locator(`#absorption-${place}`).fill('0.5');
    await (await openCard(page, 'surface-damp')).getByText('Dark, no shine').click();
    await expect(state).toContainText('Not yet checked');
    await (await openCard(page, 'open-time')).getByText('It ended just now').click();
    await expect(state).toContainText('It may be covered.');

    await saved(page, '"prepared"');
    await page.reload();
    await expect(page.locator('.head')).toContainText('It may be covered.');
  });

  test('rain makes it not ready until it is cleaned again @nightly', async ({ page }) => {
    await openReady(page);
    const clock = await openCard(page, 'open-time');
    await clock.getByText('It ended just now').click();
    await clock.getByText('Rain got on it').click();
    await expect(page.locator('.head')).toContainText('Not ready');
    await clock.getByText('Cleaned again just now').click();
    await expect(page.locator('.head')).toContainText('Not yet checked');
  });

  test('a low base failure leads back into the work @nightly', async ({ page }) => {
    await openReady(page);
    const found = await pullOff(page, [1, 1.1, 0.9]);
    await expect(found.locator('> summary')).toContainText('The mean of the tests');
    await expect(found.getByRole('img', { name: /Each of the 3 tests/ })).toBeVisible();
    await found.locator('a[href*="/assess/looseness/"]').click();
    await expect(page).toHaveURL(/\/assess\/looseness\/\?zone=a/);
  });

  test('a wrong entry is named, kept, and stays after a reload @nightly', async ({ page }) => {
    await openReady(page);
    await openCard(page, 'dust-tape');
    await page.locator('#dust-tape-0').fill('clean-ish');
    await expect(card(page, 'dust-tape')).toContainText('Reading 1: “clean-ish” is not a number.');
    await saved(page, 'clean-ish');
    await page.reload();
    await openCard(page, 'dust-tape');
    await expect(page.locator('#dust-tape-0')).toHaveValue('clean-ish');
  });

  test('ten thousand pasted rows are refused and stay in the box @nightly', async ({ page }) => {
    await openReady(page);
    const found = await openCard(page, 'pull-off');
    await found.getByText('Paste a table').click();
    const text = '1.8\tbase\n'.repeat(10_000);
    // As a paste leaves it: typing ten thousand lines key by key would take the browser minutes.
    await page.locator('#paste-tests').evaluate((box: HTMLTextAreaElement, pasted) => {
      box.value = pasted;
      box.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertFromPaste' }));
    }, text);
    await found.getByRole('button', { name: 'Take these over' }).click();
    await expect(found).toContainText('too many for one zone');
    const left = await page
      .locator('#paste-tests')
      .evaluate((box: HTMLTextAreaElement) => box.value);
    expect(left.length).toBe(text.length);
  });

  test('test places are drawn once, and are the same after a reload @nightly', async ({ page }) => {
    await openReady(page);
    const places = async () => {
      const found = await openCard(page, 'pull-off');
      await found.getByText('Test places', { exact: true }).click();
    };
    await places();
    await page.getByRole('button', { name: 'Draw the test places' }).click();
    const list = card(page, 'pull-off').locator('.places li');
    await expect(list).toHaveCount(3);
    const before = await list.allTextContents();
    await saved(page, '"seed"');
    await page.reload();
    await places();
    expect(await list.allTextContents()).toEqual(before);
  });

  test('fits 320 px, has targets for gloves, and passes axe with all of it open @nightly', async ({
    page,
  }) => {
    await openReady(page);
    await pullOff(page, [1.9, 2.1, 0.9]);
    await page.locator('details.card:not([open]) > summary').evaluateAll((all) => {
      for (const each of all) (each as HTMLElement).click();
    });
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main :is(button, summary, select, input[type=text])')]
        .filter((each) => each.getClientRects().length)
        .filter((each) => each.getBoundingClientRect().height < 48)
        .map((each) => each.outerHTML.slice(0, 80)),
    );
    expect(small).toEqual([]);
    await noFaultsInBoth(page, 'ready');
  });

  test('the record prints on one sheet, A4 and Letter, with lines to sign @nightly', async ({
    page,
  }) => {
    await openReady(page);
    await pullOff(page, [1.9, 2.1, 1.8]);
    await page.getByLabel('Checked by').fill('R. Marsh (invented)');
    await onOneSheet(page);
    await page.emulateMedia({ media: 'print' });
    const sheet = page.getByRole('region', { name: 'Readiness record' });
    await expect(sheet).toContainText('R. Marsh (invented)');
    await expect(sheet).toContainText('For the owner, date');
    await expect(sheet).toContainText('Seed');
    await expect(sheet).toContainText('1.9 MPa');
  });
});
