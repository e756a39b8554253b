import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test, type Page } from '@playwright/test';
import { openSix } from '../helpers/open-six';
import { file, list, openFile, openJobs, withJob } from '../helpers/jobs-page';
import { noFaults, noSideways } from './page-checks';
import { nightUnless } from '../helpers/rounds';

const reader = readFileSync(createRequire(import.meta.url).resolve('jsqr/dist/jsQR.js'), 'utf8');
const dpi = 150;

/** Reads the code on a picture by a library that has nothing to do with the one that drew it. */
async function decode(page: Page, picture: Buffer): Promise<string | undefined> {
  const blank = await page.context().newPage();
  await blank.goto('about:blank');
  await blank.evaluate(reader);
  const text = await blank.evaluate(
    async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [image.width, image.height];
      const drawn = canvas.getContext('2d') as CanvasRenderingContext2D;
      drawn.drawImage(image, 0, 0);
      const { data } = drawn.getImageData(0, 0, image.width, image.height);
      const { jsQR } = globalThis as unknown as {
        jsQR: (data: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
      };
      return jsQR(data, image.width, image.height)?.data;
    },
    `data:image/png;base64,${picture.toString('base64')}`,
  );
  await blank.close();
  return text;
}

test.describe('on paper', () => {
  // A4 in CSS pixels within its margins, drawn at 150 dots an inch.
  test.use({ viewport: { width: 703, height: 1032 }, deviceScaleFactor: dpi / 96 });
  const sheets = {
    plan: '/job/plan/',
    'crew’s day': '/crew/',
    'owner’s sheet': '/owner/',
    readiness: '/ready/',
    advice: '/advice/',
    survey: '/survey/',
  };
  for (const [name, path] of Object.entries(sheets))
    test(`${name}: the code is 40 mm wide, is read at ${dpi} dpi, and opens the same job${nightUnless(path === '/advice/')}`, async ({
      page,
    }) => {
      await openSix(page, 'painted garage', 'work');
      await page.goto(path);
      const code = page.getByRole('img', { name: 'Code that opens this job', includeHidden: true });
      await expect(code.first()).toBeAttached();
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      await expect(code.first()).toBeVisible();
      const { whole, modules } = await code.first().evaluate((svg: SVGSVGElement) => ({
        whole: svg.getBoundingClientRect().width,
        modules: svg.viewBox.baseVal.width,
      }));
      // Without the four light modules on either side.
      expect((whole * (modules - 8)) / modules / (96 / 25.4)).toBeGreaterThanOrEqual(40);
      const link = await decode(page, await code.first().screenshot());
      expect(link).toMatch(/\/jobs\/\?units=(us|metric)#job/);
      await page.emulateMedia({ media: 'screen' });
      await page.goto(link ?? '');
      await expect(page.getByRole('heading', { name: 'A shared job' })).toBeVisible();
      await expect(page.getByText(/carries the job “painted garage/)).toBeVisible();
    });

  test('a job too large for a code names the file to take @nightly', async ({ page }) => {
    await openJobs(page);
    const zones = Array.from({ length: 60 }, (_, index) => ({
      ...file.zones[0],
      id: `z${String(index)}`,
      name: `Zone by the wall number ${String(index)} ${(index * 7919).toString(36)}`,
    }));
    await openFile(page, { ...file, zones });
    await expect(list(page).getByText('open now')).toBeVisible();
    await page.goto('/owner/');
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByText('driveway-9-larch-row-invented.down-to-sound.json')).toBeVisible();
  });
});

test.describe('back to the desk', () => {
  test.use({ viewport: { width: 320, height: 720 } });
  test('by keyboard: what differs stands side by side, and nothing is overwritten unasked @nightly', async ({
    page,
  }) => {
    await withJob(page);
    const yard = {
      ...file,
      zones: [
        { ...file.zones[0], depth: 12, looseness: 'hollow' },
        file.zones[1],
        { id: 'c', name: 'Gutter', area: 2 },
      ],
    };
    await openFile(page, yard);
    const rows = list(page).getByRole('listitem');
    await expect(rows).toHaveCount(2);
    const row = rows.filter({ hasText: '3 zones' });
    await row.locator('summary').press('Enter');
    await row.getByRole('button', { name: 'Bring into another job' }).press('Enter');
    await expect(page.getByRole('heading', { name: /^Bring “/ })).toBeFocused();
    await noFaults(page, 'bring');
    await noSideways(page, 'bring');
    // Nothing is brought into itself: the one other job is left.
    await expect(page.getByLabel('Into which job?').locator('option')).toHaveCount(1);
    await expect(page.getByText('3 entries come along.')).toBeVisible();
    await expect(page.getByRole('group', { name: 'By the gate: Depth' })).toBeVisible();
    await expect(page.getByLabel(/Here\s+5\smm/)).toBeChecked();
    await page.getByRole('button', { name: 'Bring it in' }).press('Enter');
    await expect(page.getByText(/^Brought into “/)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Undo: as it was before' })).toBeFocused();
  });
});
