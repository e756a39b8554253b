import { expect, test } from '@playwright/test';

test.use({ viewport: { width: 390, height: 844 } });

// WCAG 2.2, 2.4.11: what has the focus is not hidden behind what the page lays over it. Every choice of
// a question on a phone, with the whole of its row, above the bar with Back and Continue.
test('a choice that has the focus and is ticked stands above the bar', async ({ page }) => {
  for (const question of ['warnings', 'contamination']) {
    await page.goto(`/assess/${question}/`);
    const form = page.locator('form[data-question]');
    await expect(form.locator('.go .do')).toBeEnabled();
    const boxes = await form.getByRole('checkbox').all();
    expect(boxes.length).toBeGreaterThan(5);
    await boxes[0]?.focus();
    for (let tabs = 0; tabs < 40; tabs += 1) {
      const seen = await page.evaluate(() => {
        const focused = document.activeElement;
        const bar = document.querySelector('form[data-question] .go');
        if (!focused || !bar || bar.contains(focused)) return null;
        const row = focused.closest('.row') ?? focused;
        const over = row.getBoundingClientRect().bottom - bar.getBoundingClientRect().top;
        return { value: focused.getAttribute('value'), over };
      });
      if (!seen) break;
      expect(seen.over, `${question} ${seen.value}`).toBeLessThanOrEqual(1);
      await page.keyboard.press('Space');
      await page.keyboard.press('Tab');
    }
    await expect(form.locator('.go :focus')).toHaveCount(1);
  }
});
