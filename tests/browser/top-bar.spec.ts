import { expect, test } from '@playwright/test';

/** The narrowest phone that is sold, in CSS pixels: common practice, no source. */
test.use({ viewport: { width: 360, height: 740 } });

test('on a phone an arrow says that the row of pages goes on, and a tap on it slides the row @nightly', async ({
  page,
}) => {
  await page.goto('/');
  const row = page.getByRole('navigation').first();
  const last = row.getByRole('link').last();
  await expect(last).not.toBeInViewport();
  const { width = 0, height = 0 } = (await row.boundingBox()) ?? {};
  const arrow = { position: { x: width - 8, y: height / 2 } };
  // At the edge lies the arrow, not a link.
  const before = page.url();
  await expect(async () => {
    await row.click(arrow);
    await expect(last).toBeInViewport({ ratio: 0.95, timeout: 500 });
  }).toPass();
  expect(page.url()).toBe(before);
  // At the end of the row the last link lies over the arrow, and the other arrow leads back.
  const end = await last.evaluate((link) => {
    const box = link.getBoundingClientRect();
    return document.elementFromPoint(box.right - 4, box.top + box.height / 2) === link;
  });
  expect(end).toBe(true);
  await row.click({ position: { x: 8, y: height / 2 } });
  await expect(row.getByRole('link').nth(1)).toBeInViewport({ ratio: 0.95 });
});

test('by keyboard every page of the row comes into sight beside the arrows', async ({ page }) => {
  await page.goto('/');
  const links = page.getByRole('navigation').first().getByRole('link');
  await links.first().focus();
  for (const link of await links.all()) {
    await expect(link).toBeFocused();
    const seen = await link.evaluate((one) => {
      const { left, width, top, height } = one.getBoundingClientRect();
      return [0.1, 0.5, 0.9].every(
        (share) => document.elementFromPoint(left + share * width, top + height / 2) === one,
      );
    });
    expect(seen, (await link.textContent()) ?? '').toBe(true);
    await page.keyboard.press('Tab');
  }
});

test('where there is room for the name of the job, all of it is read @nightly', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 740 });
  await page.goto('/', { waitUntil: 'networkidle' });
  await page.getByText('See an example').click();
  await page.waitForURL(/\/advice\//);
  const name = page.getByRole('banner').getByText('(invented example)');
  await expect(name).toBeVisible();
  const cut = await name.evaluate((it) => [
    it.scrollWidth - it.clientWidth,
    it.scrollHeight - it.clientHeight,
  ]);
  expect(Math.max(...cut)).toBeLessThanOrEqual(1);
});
