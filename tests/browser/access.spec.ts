import { expect, test } from '@playwright/test';
import { questionIds } from '../../src/lib/answers/questions';
import { journeys } from './journeys';
import { answerAll, noFaults, noSideways } from './page-checks';

const looks = [
  { width: 320, colorScheme: 'light' },
  { width: 1280, colorScheme: 'dark' },
] as const;

/** The questions a journey is the first to meet: each is looked at once in each look. */
const firstMet = (name: string): Set<string> => {
  const all = Object.entries(journeys);
  const before = all.slice(
    0,
    all.findIndex(([other]) => other === name),
  );
  const met = new Set(before.flatMap(([, { answers }]) => Object.keys(answers)));
  return new Set(Object.keys(journeys[name]?.answers ?? {}).filter((id) => !met.has(id)));
};

test('between them the journeys meet every question', () => {
  const met = Object.keys(journeys).flatMap((name) => [...firstMet(name)]);
  expect(met.toSorted()).toEqual(questionIds.toSorted());
});

for (const { width, colorScheme } of looks)
  for (const [name, { answers, verdict }] of Object.entries(journeys))
    test(`${name}: axe finds no fault at ${width} px, ${colorScheme}`, async ({ page }) => {
      test.setTimeout(300_000);
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 800 });
      await page.goto('/assess/element/');
      const news = firstMet(name);
      await answerAll(page, answers, async (question) => {
        await noSideways(page, question);
        if (news.has(question)) await noFaults(page, question);
      });
      await expect(page.locator('h1')).toHaveText(verdict);
      await noFaults(page, 'advice');
      await noSideways(page, 'advice');
    });

test('a stop is told in words and shape, and has no fault', async ({ page }) => {
  await page.goto('/assess/element/');
  await answerAll(page, {
    element: 'slab',
    setting: 'open',
    salts: 'none',
    freezeThaw: 'some',
    thickness: 'unsure',
    warnings: 'fire-or-chemical',
    area: 'unsure',
  });
  await expect(page.locator('h1')).toHaveText('Stop');
  await expect(page.locator('main')).toContainText('a licensed structural engineer');
  await expect(page.getByText('An engineer comes first.').first()).toBeAttached();
  await noFaults(page, 'advice that stops');
});
