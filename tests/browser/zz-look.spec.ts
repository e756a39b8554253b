import { test } from '@playwright/test';
import { openSix } from '../helpers/open-six';
const out = process.env.OUT ?? '/tmp/look';
const width = Number(process.env.W ?? 360);
const pages = (process.env.PAGES ?? 'advice,job,job/plan,crew,owner,ready,survey').split(',');
const job = (process.env.JOB ?? 'salted scaled driveway') as never;
const reader = (process.env.READER ?? 'work') as never;
test.use({ viewport: { width, height: 844 }, colorScheme: (process.env.SCHEME ?? 'light') as never, ...(process.env.FORCED && { contextOptions: { forcedColors: 'active' } }) });
test('look', async ({ page }) => {
  test.setTimeout(600_000);
  await openSix(page, job, reader, !!process.env.OPEN);
  for (const path of pages) {
    await page.goto(`/${path}/`);
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(700);
    if (process.env.PRINT) { await page.pdf({ path: `${out}/${path.replaceAll('/', '-')}.pdf`, format: process.env.PRINT as never }); continue; }
    await page.screenshot({ path: `${out}/${path.replaceAll('/', '-')}.png`, fullPage: true });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wide > 0) console.log(path, 'scrolls sideways by', wide);
  }
});
