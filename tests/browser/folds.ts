import type { Page } from '@playwright/test';

/** A part of a page that opens on a tap, by the words on it. */
export const fold = (page: Page, title: string) =>
  page.locator('main details').filter({ has: page.locator('summary h2', { hasText: title }) });

/** Opens it as a reader does. */
export const unfold = (page: Page, title: string) =>
  fold(page, title).locator('> summary').first().click();
