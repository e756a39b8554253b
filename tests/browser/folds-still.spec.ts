import { expect, test } from '@playwright/test';
import { openSix } from '../helpers/open-six';
import { nightly } from '../helpers/rounds';

/**
 * Whoever opens a part of a page keeps their place: what stands above it, and the line they tapped,
 * stay where they are. Zero is this project's own; what is called good elsewhere is a shift of 0.1 for
 * what nobody asked for (web.dev, Cumulative Layout Shift), and taps are not counted there at all.
 * By day one fold of three is opened.
 */
test.use({ viewport: { width: 390, height: 844 } });

test('folds open without a jump: advice, plan, the crew’s day @nightly', async ({ page }) => {
  await openSix(page, 'salted scaled driveway', 'work');
  for (const path of ['/advice/', '/job/plan/', '/crew/']) {
    await page.goto(path);
    await expect(page.locator('main summary').first()).toBeVisible();
    await page.waitForLoadState('networkidle');
    const { opened, moved } = await page.evaluate(
      async (step) => {
        const frames = async () => {
          for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
        };
        const seen = (each: Element) => each.getClientRects().length > 0;
        const main = document.querySelector('main') as HTMLElement;
        const told: string[] = [];
        let [met, count] = [0, 0];
        // Outer folds first, then what lies in them; each is shut again before the next is opened.
        let open: HTMLElement[] = [];
        for (let all = [...main.querySelectorAll('summary')], at = 0; at < all.length; at += 1) {
          const summary = all[at] as HTMLElement;
          if (!seen(summary) || (summary.parentElement as HTMLDetailsElement).open) continue;
          met += 1;
          if (met % step) continue;
          for (const fold of open) if (!fold.contains(summary)) fold.removeAttribute('open');
          open = open.filter((fold) => fold.contains(summary));
          await frames();
          summary.scrollIntoView({ block: 'center', behavior: 'instant' });
          const above = [
            ...main.querySelectorAll('h1, h2, h3, p, li, summary, figure, th, td'),
          ].filter(
            (each) =>
              seen(each) &&
              (each === summary ||
                ((each.compareDocumentPosition(summary) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0 &&
                  !each.contains(summary))),
          );
          const places = above.map((each) => each.getBoundingClientRect().top);
          summary.click();
          open.push(summary.parentElement as HTMLElement);
          await frames();
          count += 1;
          above.forEach((each, index) => {
            // What was said while the rest was fetched has gone.
            if (!each.isConnected) return;
            const off = each.getBoundingClientRect().top - (places[index] ?? 0);
            if (Math.abs(off) > 0.5)
              told.push(
                `${summary.innerText.trim()}: ${each.textContent.trim().slice(0, 40)} ${off}`,
              );
          });
          all = [...main.querySelectorAll('summary')];
        }
        return { opened: count, moved: told.slice(0, 5) };
      },
      nightly ? 1 : 3,
    );
    expect(opened, path).toBeGreaterThan(4);
    expect.soft(moved, path).toEqual([]);
  }
});
