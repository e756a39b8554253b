import { readFileSync } from 'node:fs';
import { expect as plain, type Page } from '@playwright/test';

// A busy machine may take its time; what is waited for is the same.
export const expect = plain.configure({ timeout: 20_000 });

// All invented: a driveway in Marrow Quay.
export const name = 'Driveway, 9 Larch Row (invented)';
export const file = {
  format: 'down-to-sound.job',
  version: 1,
  site: { name, element: 'slab', setting: 'open', salts: 'none', thickness: 120, warnings: [] },
  zones: [
    { id: 'a', name: 'By the gate', depth: 5, texture: 'sandy', steel: 'none-seen' },
    { id: 'b', name: 'Under the carport', depth: 30, cracks: 'none' },
  ],
};
export const other = { ...file, site: { ...file.site, name: 'Boat shed (invented)' } };
const upload = (content: unknown, fileName = 'driveway.json') => ({
  name: fileName,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)),
});

/** What is on the device: the job file in every record, by its id. */
export const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ id: string; file: { site?: { name?: string } }; revision: number }[]>(
        (resolve) => {
          const request = indexedDB.open('down-to-sound');
          request.onsuccess = () => {
            const all = request.result.transaction('jobs').objectStore('jobs').getAll();
            all.onsuccess = () => {
              request.result.close();
              resolve(all.result);
            };
          };
        },
      ),
  );
export const names = async (page: Page) =>
  (await kept(page)).map(({ file: each }) => each.site?.name ?? '').sort();

export const list = (page: Page) => page.getByRole('region', { name: 'Jobs on this device' });
export async function openJobs(page: Page): Promise<void> {
  await page.goto('/jobs/');
  await expect(list(page)).toBeVisible();
}
export async function openFile(page: Page, content: unknown, fileName?: string): Promise<void> {
  await page.locator('#job-file').setInputFiles(upload(content, fileName));
}
export async function withJob(page: Page): Promise<void> {
  await openJobs(page);
  await openFile(page, file);
  await expect(page.getByText(`“${name}” is in your list as a new job.`)).toBeVisible();
  await expect(list(page).getByText('open now')).toBeVisible();
}
/** The row of a job with its further actions unfolded. */
export async function more(page: Page, of = name) {
  const row = list(page)
    .getByRole('listitem')
    .filter({ has: page.getByText(of, { exact: true }) });
  await row.locator('summary').click();
  return row;
}
export async function saveToFile(page: Page, of = name): Promise<string> {
  const row = await more(page, of);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    row.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^[a-z0-9-]+\.down-to-sound\.json$/);
  return readFileSync(await download.path(), 'utf8');
}
