import type { Page } from '@playwright/test';
import { expect, list, openFile, openJobs } from './jobs-page';
import { sixFile, type SixName } from './six-jobs';

export const readers = ['work', 'own', 'explain'] as const;
export type Reader = (typeof readers)[number];

/** Opens one of the six jobs on this device, for this reader, in metres. */
export async function openSix(page: Page, name: SixName, reader: Reader, open = false) {
  await page.addInitScript(
    (kept) => {
      const key = 'down-to-sound.preferences';
      if (!localStorage.getItem(key)) localStorage.setItem(key, JSON.stringify(kept));
    },
    { units: 'metric', reader },
  );
  await openJobs(page);
  await openFile(page, sixFile(name, open));
  await expect(list(page).getByText('open now')).toBeVisible();
}

/** Words that stand open in the page's own part, and the page's height in screens of 844 px. */
export const standingOpen = (page: Page) =>
  page.evaluate(() => {
    const text = document.querySelector('main')?.innerText ?? '';
    return {
      words: text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length,
      screens: Math.round((document.documentElement.scrollHeight / 844) * 10) / 10,
    };
  });
