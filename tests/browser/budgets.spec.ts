import { expect, test } from '@playwright/test';
import { openSix, readers, standingOpen, type Reader } from '../helpers/open-six';
import { sixNames, type SixName } from '../helpers/six-jobs';
import { nightUnless } from '../helpers/rounds';

/**
 * What stands open on a phone: the first screen answers, the second shows how, the rest opens on a tap.
 * Budgets of this project, from what somebody in gloves reads on a slab; no source.
 */
interface Budget {
  readonly words: number;
  /** Screens of 390 x 844 px */
  readonly screens: number;
}
interface Told {
  readonly path: string;
  readonly budget: Budget;
  readonly readers?: readonly Reader[];
  readonly jobs?: readonly SixName[];
  /** Three answers left open. */
  readonly open?: boolean;
  /** What the first screen has to hold, each where there is one. */
  readonly first?: readonly string[];
}
const told: Readonly<Record<string, Told>> = {
  advice: { path: '/advice/', budget: { words: 350, screens: 4 } },
  'advice with open answers': { path: '/advice/', budget: { words: 350, screens: 4 }, open: true },
  // A zone with what was answered and what it comes to.
  job: {
    path: '/job/',
    budget: { words: 300, screens: 2 },
    readers: ['work'],
    first: ['#zone-a .text', '#zone-a .go'],
  },
  // Days, people and amounts.
  plan: {
    path: '/job/plan/',
    budget: { words: 500, screens: 5 },
    readers: ['work'],
    first: ['.sheet.plan > dl'],
  },
  // Somebody's whole card.
  'crew’s day': {
    path: '/crew/',
    budget: { words: 400, screens: 4 },
    readers: ['work'],
    first: ['article'],
  },
  'crew’s day with open answers': {
    path: '/crew/',
    budget: { words: 400, screens: 4 },
    readers: ['work'],
    jobs: ['salted scaled driveway'],
    open: true,
  },
  'square metre': { path: '/trial/', budget: { words: 350, screens: 4 }, readers: ['work'] },
  'owner’s sheet': {
    path: '/owner/',
    budget: { words: 350, screens: 3 },
    readers: ['own', 'explain'],
    // The reading and the three figures that carry it.
    first: ['main .head', '.owner > ul'],
  },
};

test.use({ viewport: { width: 390, height: 844 } });

for (const [name, { path, budget, open = false, first = [], ...only }] of Object.entries(told))
  for (const reader of only.readers ?? readers)
    for (const job of only.jobs ?? sixNames) {
      const daily =
        job === 'salted scaled driveway' && reader === (only.readers ?? readers)[0] && !open;
      test(`${name}, ${job}, to ${reader}${nightUnless(daily)}`, async ({ page }) => {
        await openSix(page, job, reader, open);
        await page.goto(path);
        await expect(page.locator('main h1').first()).toBeVisible();
        await page.waitForLoadState('networkidle');
        // Until the job has been read, little stands there to count. The balcony has no plan.
        if (job !== 'hollow balcony')
          for (const part of first) await expect(page.locator(part).first()).toBeVisible();
        const { words, screens } = await standingOpen(page);
        console.log(
          `${name}; ${job}; ${reader}: ${String(words)} words, ${String(screens)} screens`,
        );
        expect.soft(words, 'words standing open').toBeLessThanOrEqual(budget.words);
        expect.soft(screens, 'screens high').toBeLessThanOrEqual(budget.screens);
        for (const part of first) {
          const foot = await page.locator(part).evaluateAll(([each]) => {
            const place = each?.getBoundingClientRect();
            return place ? place.bottom + scrollY : null;
          });
          if (foot !== null)
            expect.soft(foot, `${part} on the first screen`).toBeLessThanOrEqual(844);
        }
      });
    }

/** The pages that need no job. */
const doors: Readonly<Record<string, { readonly path: string } & Budget>> = {
  home: { path: '/', words: 90, screens: 2 },
  learn: { path: '/learn/', words: 110, screens: 3 },
  search: { path: '/learn/search/', words: 90, screens: 2 },
  chart: { path: '/learn/chart/', words: 130, screens: 1 },
  'results of learners': { path: '/learn/practice/results/', words: 90, screens: 2 },
  // One of the longest cases of the first level, in a set, whose box has 21 words and a seventh of a screen.
  'practice, level 1': {
    path: '/learn/practice/#set1.cases=bakery-dust',
    words: 120 + 21,
    screens: 2.1,
  },
};
for (const [name, { path, words, screens }] of Object.entries(doors))
  test(`${name} says it in ${words} words and ${screens} screens${nightUnless(path === '/')}`, async ({
    page,
  }) => {
    await page.goto(path);
    await expect(page.locator('main h1')).toBeVisible();
    await page.waitForLoadState('networkidle');
    const open = await standingOpen(page);
    console.log(`${name}: ${open.words} words, ${open.screens} screens`);
    expect.soft(open.words, 'words standing open').toBeLessThanOrEqual(words);
    expect.soft(open.screens, 'screens high').toBeLessThanOrEqual(screens);
  });

/**
 * A question: the question, why in a line, every choice with its picture, and one line of what it
 * has come to. Two stand higher: depth has a field beside its seven choices, and each of the seven
 * warnings has a “maybe” that wants room for a thumb.
 */
const questionBudget = { words: 90, screens: 2 };
const asked: Readonly<Record<string, Budget>> = {
  setting: questionBudget,
  salts: questionBudget,
  freezeThaw: questionBudget,
  thickness: questionBudget,
  area: questionBudget,
  looseness: questionBudget,
  texture: questionBudget,
  cracks: questionBudget,
  steel: questionBudget,
  element: questionBudget,
  finish: questionBudget,
  depth: { words: 90, screens: 2.2 },
  // Six choices in two rows each: the “maybe” needs room for a thumb.
  contamination: { words: 90, screens: 2.2 },
  makerProfile: { words: 90, screens: 2.3 },
  warnings: { words: 90, screens: 2.5 },
};
test('every question says it in its words @nightly', async ({ page }) => {
  await openSix(page, 'salted scaled driveway', 'work');
  for (const [question, budget] of Object.entries(asked)) {
    await page.goto(`/assess/${question}/`);
    await expect(page.getByText(/methods? may be gentlest/)).toBeVisible();
    await expect(page.getByText(/Answers so far/)).toBeVisible();
    const { words, screens } = await standingOpen(page);
    console.log(`${question}: ${String(words)} words, ${String(screens)} screens`);
    expect.soft(words, `${question}: words standing open`).toBeLessThanOrEqual(budget.words);
    expect.soft(screens, `${question}: screens high`).toBeLessThanOrEqual(budget.screens);
  }
});
