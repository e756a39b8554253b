import { test, type Page } from '@playwright/test';
import { expect, kept, withJob } from '../helpers/jobs-page';
import { savedMark } from '../helpers/faults';
import { nightUnless } from '../helpers/rounds';

/**
 * Nothing lands in the wrong place: an address that names what is not there says so, offers what is
 * there, keeps what was ticked, and writes nothing.
 */
const gone = (page: Page) => page.getByRole('region', { name: 'not in this job' });
const proceed = (page: Page) => page.getByRole('button', { name: 'Continue' });
const tools = (page: Page, zone: string) =>
  page
    .locator('ol.rows > li')
    .filter({ hasText: zone })
    .locator('summary')
    .filter({ hasText: /^Answers/ });
const zonesKept = async (page: Page) =>
  ((await kept(page)) as unknown as { file: { zones: Record<string, unknown>[] } }[])[0]?.file
    .zones;
const before = [
  expect.objectContaining({ id: 'a', name: 'By the gate', depth: 5, texture: 'sandy' }),
];

async function tickInB(page: Page): Promise<void> {
  await page.goto('/assess/texture/?zone=b');
  await expect(page.getByText('Zone 2: Under the carport')).toBeVisible();
  await page.locator('input[value="pitted"]').check();
}
async function deleteB(page: Page): Promise<void> {
  await tools(page, 'Under the carport').click();
  await page.getByRole('button', { name: 'Delete Under the carport' }).click();
  await expect(page.locator('ol.rows > li')).toHaveCount(1);
  await expect(savedMark(page)).toBeVisible();
}
/** A reader who does not look up from the question. */
async function goOnRegardless(page: Page): Promise<void> {
  await page.waitForTimeout(500);
  if (await proceed(page).isVisible()) await proceed(page).click();
  await page.waitForTimeout(500);
}

test('a zone deleted in another tab takes no answer, and no other zone does', async ({
  page,
  context,
}) => {
  await withJob(page);
  await tickInB(page);
  const other = await context.newPage();
  await other.goto('/job/');
  await deleteB(other);
  await goOnRegardless(page);
  expect(await zonesKept(page)).toEqual(before);
  await expect(gone(page)).toBeVisible();
  await expect(gone(page).getByRole('textbox')).toHaveValue(/Pitted/i);
  await expect(gone(page).getByRole('link', { name: 'By the gate' })).toHaveAttribute(
    'href',
    /assess\/texture\/\?zone=a/,
  );

  await other.getByRole('button', { name: 'Undo: bring Under the carport back' }).click();
  await expect(page.locator('input[value="pitted"]')).toBeChecked();
  await proceed(page).click();
  await page.waitForURL(/zone=b/);
  await expect
    .poll(() => zonesKept(page))
    .toEqual([...before, expect.objectContaining({ id: 'b', texture: 'pitted' })]);
});

test('a tab that does not hear of the others writes nothing into another zone @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await tickInB(deaf);
  await page.goto('/job/');
  await deleteB(page);
  await proceed(deaf).click();
  await expect(deaf.getByText('This job was changed in another tab')).toBeVisible();
  expect(await zonesKept(page)).toEqual(before);
  await deaf.getByRole('button', { name: 'Take the other tab’s' }).click();
  await goOnRegardless(deaf);
  expect(await zonesKept(page)).toEqual(before);
  await expect(gone(deaf)).toBeVisible();
});

test('a zone deleted on the job page takes no answer after Back; after Undo it takes its own @nightly', async ({
  page,
}) => {
  await withJob(page);
  await tickInB(page);
  await page.locator('header').getByRole('link', { name: 'Job', exact: true }).click();
  await deleteB(page);
  await page.goBack();
  await goOnRegardless(page);
  expect(await zonesKept(page)).toEqual(before);
  await expect(gone(page).getByRole('textbox')).toHaveValue(/Pitted/i);
  await page.locator('header').getByRole('link', { name: 'Job', exact: true }).click();
  await page.getByRole('button', { name: 'Undo: bring Under the carport back' }).click();
  await expect(page.locator('ol.rows > li')).toHaveCount(2);
  await page.goto('/assess/texture/?zone=b');
  await expect(page.locator('input[value="pitted"]')).toBeChecked();
  await proceed(page).click();
  await expect
    .poll(() => zonesKept(page))
    .toEqual([...before, expect.objectContaining({ id: 'b', texture: 'pitted' })]);
});

test('the first zone stays the one that was asked about when it moves down the list @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  await page.goto('/assess/texture/');
  await expect(page.getByText('Zone 1: By the gate')).toBeVisible();
  await page.locator('input[value="pitted"]').check();
  const other = await context.newPage();
  await other.goto('/job/');
  await tools(other, 'By the gate').click();
  await other.getByRole('button', { name: 'Move down: By the gate' }).click();
  await expect(savedMark(other)).toBeVisible();
  await expect(page.getByText('Zone 2: By the gate')).toBeVisible();
  await proceed(page).click();
  await expect
    .poll(() => zonesKept(page))
    .toEqual([
      expect.not.objectContaining({ texture: 'pitted' }),
      expect.objectContaining({ id: 'a', texture: 'pitted' }),
    ]);
});

for (const path of ['/assess/texture/', '/assess/element/', '/advice/', '/ready/', '/weather/'])
  test(`${path} says that the zone of its address is not there, and offers those there are${nightUnless(path === '/advice/')}`, async ({
    page,
  }) => {
    await withJob(page);
    const [{ revision } = { revision: 0 }] = await kept(page);
    await page.goto(`${path}?zone=zz`);
    await expect(gone(page)).toBeVisible();
    await expect(gone(page)).toContainText('“zz”');
    for (const [name, id] of [
      ['By the gate', 'a'],
      ['Under the carport', 'b'],
    ] as const)
      await expect(gone(page).getByRole('link', { name })).toHaveAttribute(
        'href',
        new RegExp(`${path}\\?zone=${id}`),
      );
    await expect(proceed(page)).toBeHidden();
    expect((await kept(page))[0]?.revision).toBe(revision);
  });

test('a zone that is there but not begun is not shown as another one @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.goto('/job/');
  await page.getByRole('button', { name: 'Add a zone' }).click();
  await page.waitForURL(/zone=c/);
  await page.goto('/ready/?zone=c');
  await expect(page.getByText('Nothing has been answered for Zone 3 yet.')).toBeVisible();
  await expect(page.locator('details.card')).toHaveCount(0);
});

test('a day that the plan does not have is said not to be there @nightly', async ({ page }) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: '9 Larch Row' }).click();
  await expect(savedMark(page)).toBeVisible();
  for (const day of ['99', 'soon']) {
    await page.goto(`/crew/?day=${day}`);
    await expect(page.getByText(`The plan has no day “${day}”.`)).toBeVisible();
    await expect(page.locator('article')).toHaveCount(0);
  }
  await page
    .getByRole('navigation', { name: 'Days of the plan' })
    .getByRole('link')
    .first()
    .click();
  await expect(page.locator('article').first()).toBeVisible();
});

test('a question that is not asked says why, and takes no answer @nightly', async ({ page }) => {
  await withJob(page);
  await page.goto('/assess/crackLength/?zone=b');
  await expect(page.getByText('There are no cracks.').first()).toBeVisible();
  await expect(proceed(page)).toBeHidden();
  await page.getByRole('link', { name: 'Continue with the questions' }).click();
  await page.waitForURL(/assess\/freezeThaw\/\?zone=b/);
});

test('a job that is gone from the device is said to be gone, not taken for an empty one @nightly', async ({
  page,
}) => {
  await withJob(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('down-to-sound');
        request.onsuccess = () => {
          const step = request.result.transaction('jobs', 'readwrite');
          step.objectStore('jobs').clear();
          step.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
  );
  await page.goto('/assess/element/');
  await expect(page.locator('.notice')).toContainText(
    'The job you last worked on is not on this device any more',
  );
});

test('two tabs that took the same letter for a zone: Undo gives the one that comes back its own @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  await page.goto('/job/');
  await deleteB(page);
  const other = await context.newPage();
  await other.goto('/job/');
  await other.getByRole('button', { name: 'Add a zone' }).click();
  await other.waitForURL(/zone=b/);
  await expect(page.locator('ol.rows > li')).toHaveCount(2);
  await page.getByRole('button', { name: 'Undo: bring Under the carport back' }).click();
  await expect(savedMark(page)).toBeVisible();
  const ids = (await zonesKept(page))?.map(({ id }) => id) ?? [];
  expect(ids).toHaveLength(3);
  expect(new Set(ids).size).toBe(3);
});
