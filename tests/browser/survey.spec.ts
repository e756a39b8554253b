import { readFileSync } from 'node:fs';
import { expect as plain, test, type Page } from '@playwright/test';
import { press, reach } from './keyboard';
import { noFaultsInBoth, noSideways, sheetsOf } from './page-checks';

// A busy machine may take its time; what is waited for is the same.
const expect = plain.configure({ timeout: 20_000 });
test.setTimeout(240_000);

const board = (page: Page) => page.getByRole('application', { name: 'Drawing of the slab' });
const results = (page: Page) => page.getByRole('region', { name: 'What it comes to' });
const marks = (page: Page) => page.getByRole('region', { name: 'Marks' });

/** A slab of 6 m by 4 m in numbers. */
async function layOut(page: Page): Promise<void> {
  await page.goto('/survey/');
  await page.getByLabel('Length (along)').fill('6000');
  await page.getByLabel('Width (across)').fill('4000');
  await page.keyboard.press('Enter');
  await expect(board(page)).toBeVisible();
}
/** Where a place of that slab lies on the screen: it fills the board across, 14 px off its sides. */
async function onScreen(page: Page, x: number, y: number) {
  const box = await board(page).locator('path.heavy').first().boundingBox();
  if (!box) throw new Error('no outline');
  return { x: box.x + (x / 6000) * box.width, y: box.y + box.height - (y / 4000) * box.height };
}

/** Takes a tool in hand and has the whole board in sight. */
async function choose(page: Page, tool: string): Promise<void> {
  await page.getByText(tool, { exact: true }).tap();
  await expect(page.getByRole('radio', { name: tool, exact: true })).toBeChecked();
  // The fields of the mark before go, and the page with them: measured only then.
  await expect(page.locator('#editor')).toHaveCount(0);
  await board(page).evaluate((each) => each.scrollIntoView({ block: 'center' }));
}

test.describe('on a phone', () => {
  test.use({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });

  test('a slab is drawn by touch, kept, and free of faults', async ({ page }) => {
    await layOut(page);
    await board(page).scrollIntoViewIfNeeded();
    const at = await onScreen(page, 3000, 2000);
    await page.touchscreen.tap(at.x, at.y);
    await expect(marks(page)).toContainText('Spot 1: 300 mm x 300 mm');
    await page.getByLabel('Depth', { exact: true }).fill('40');
    await expect(marks(page)).toContainText('40 mm deep');

    // A finger drawn along the slab: a crack from end to end of the way.
    await choose(page, 'Crack');
    const [from, to] = [await onScreen(page, 1000, 1000), await onScreen(page, 4000, 1000)];
    const touch = await page.context().newCDPSession(page);
    const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number, y?: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: x === undefined || y === undefined ? [] : [{ x, y }],
      });
    await finger('touchStart', from.x, from.y);
    await finger('touchMove', (from.x + to.x) / 2, from.y);
    await finger('touchMove', to.x, to.y);
    await finger('touchEnd');
    await expect(marks(page)).toContainText('Crack 1: 3 m long');

    await choose(page, 'Wall');
    const edge = await onScreen(page, 3000, 4000);
    await page.touchscreen.tap(edge.x, edge.y);
    await expect(marks(page)).toContainText('Wall 1: 6 m long');

    await choose(page, 'Tap');
    await page.getByText('A chain', { exact: true }).tap();
    await page.getByRole('button', { name: 'I dragged the chain over all of it' }).tap();
    await expect(results(page)).toContainText('in lanes of 450 mm');

    await noSideways(page, 'survey at 320 px');
    await noFaultsInBoth(page, 'survey on a phone');
    const small = await page.locator('main :is(button, select, summary, .tools label)').evaluateAll(
      (all) =>
        all
          .filter((each) => each.checkVisibility())
          .map((each) => each.getBoundingClientRect())
          .filter(({ width, height }) => width < 47.5 || height < 47.5).length,
    );
    expect(small, 'targets under 48 px').toBe(0);

    await expect(page.locator('header .kept')).toBeVisible();
    await page.reload();
    await expect(marks(page)).toContainText('Spot 1: 300 mm x 300 mm');
    await expect(marks(page)).toContainText('Wall 1');
    await page.goto('/job/');
    await expect(page.getByRole('img', { name: /The slab seen from above/ })).toBeVisible();
  });

  test('the page to begin on is free of faults', async ({ page }) => {
    await page.goto('/survey/');
    await page.getByText('Corners, by side and turn').tap();
    await expect(page.getByRole('group', { name: 'Side 4' })).toBeVisible();
    await noSideways(page, 'start at 320 px');
    await noFaultsInBoth(page, 'start of the survey');
  });
});

test('with keys alone: a slab, joints, a spot in eight presses, and undo', async ({ page }) => {
  await page.goto('/survey/');
  await reach(page, page.getByLabel('Length (along)'));
  await page.keyboard.type('6000');
  await page.keyboard.press('Tab');
  await page.keyboard.type('4000');
  await page.keyboard.press('Enter');
  await reach(page, board(page));
  const presses = [
    'Enter',
    'ArrowRight',
    'ArrowRight',
    'ArrowRight',
    'ArrowUp',
    'ArrowUp',
    'Enter',
  ];
  expect(presses.length).toBeLessThanOrEqual(8);
  for (const key of presses) await page.keyboard.press(key);
  await expect(marks(page)).toContainText('Spot 1: 300 mm x 200 mm, from 3 m along, 2 m across');
  await press(page, page.getByRole('button', { name: 'Take out Spot 1' }).last());
  await expect(marks(page)).toContainText('Nothing is marked yet');
  await page.keyboard.press('Control+z');
  await expect(marks(page)).toContainText('Spot 1');
  await reach(page, page.locator('input[name=tool]:checked'));
  for (let turn = 0; turn < 6; turn += 1) await page.keyboard.press('ArrowRight');
  await reach(page, page.getByLabel('Spacing along'));
  await page.keyboard.type('3000');
  await page.keyboard.press('Tab');
  await page.keyboard.type('4000');
  await page.keyboard.press('Enter');
  await expect(marks(page)).toContainText('Joint 1: 4 m long');
});

test('with keys alone: a chain noted, taps, a crack, a depth, a joint in other numbers', async ({
  page,
}) => {
  await layOut(page);
  const tool = async (name: string) => {
    await reach(page, page.locator('input[name=tool]:checked'));
    for (let turn = 0; turn < 8; turn += 1) {
      if (await page.getByRole('radio', { name, exact: true }).isChecked()) return;
      await page.keyboard.press('ArrowRight');
    }
    throw new Error(`no tool ${name}`);
  };
  const keys = async (...all: readonly string[]) => {
    await reach(page, board(page));
    for (const key of all) await page.keyboard.press(key);
  };
  await tool('Tap');
  await keys('ArrowRight', 'Enter', 'ArrowRight', 'Enter');
  await expect(marks(page)).toContainText('Tap 2: dull');
  await reach(page, page.locator('input[name=sound-by]:checked'));
  await page.keyboard.press('ArrowDown');
  await press(page, page.getByRole('button', { name: 'I dragged the chain over all of it' }));
  await expect(results(page)).toContainText('in lanes of 450 mm');
  await tool('Crack');
  await keys('Enter', 'ArrowRight', 'ArrowRight', 'Enter', 'ArrowUp', 'Enter', 'Enter');
  await expect(marks(page)).toContainText(/Crack 1: \d+ mm long/);
  await tool('Spot');
  await keys('Enter', 'ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowDown', 'Enter');
  await reach(page, page.getByLabel('Depth', { exact: true }));
  await page.keyboard.type('45');
  await page.keyboard.press('Tab');
  await expect(marks(page)).toContainText('45 mm deep');
  await tool('Joint');
  await reach(page, page.getByLabel('Spacing along'));
  await page.keyboard.type('3000');
  await page.keyboard.press('Tab');
  await page.keyboard.type('4000');
  await page.keyboard.press('Enter');
  await press(page, page.getByRole('button', { name: 'Change Joint 1' }));
  const editor = page.getByRole('region', { name: 'Joint 1' });
  for (const point of [1, 2]) {
    await reach(
      page,
      editor.getByRole('group', { name: `Point ${point}` }).getByLabel('x (along)'),
    );
    await page.keyboard.press('Control+a');
    await page.keyboard.type('2500');
  }
  await page.keyboard.press('Enter');
  await expect(marks(page)).toContainText('Joint 1: 4 m long, from 2.5 m along');
});

test('a screen reader finds the drawing, what it comes to and every mark', async ({ page }) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: '9 Larch Row' }).click();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.goto('/survey/');
  const main = page.getByRole('main');
  await expect(main).toMatchAriaSnapshot(`
    - main:
      - heading "The slab, drawn" [level=1]
      - application "Drawing of the slab"
      - button "Undo" [disabled]
      - button "Redo" [disabled]
      - button "Zoom out"
      - button "Zoom in"
      - combobox "Cross moves by"
      - group "What to mark":
        - radio "Spot" [checked]
        - radio "Crack"
        - radio "Bar"
        - radio "Tap"
        - radio "Wall"
        - radio "Zone"
        - radio "Joint"
        - radio "Move"
      - list "How to read it"
      - region "What it comes to":
        - heading "What it comes to" [level=2]
        - term: Slab
        - definition: 30 m²
      - region "Marks":
        - heading "Marks" [level=2]
      - region "Sheet to chalk by":
        - group "Sheet to chalk by":
          - table
      - button "Print the sheet to chalk by"
  `);
  await expect(board(page)).toHaveAccessibleDescription(/Arrow keys move the cross, Enter places/);
  // What is done is told without looking.
  await board(page).focus();
  await page.keyboard.press('ArrowRight');
  await expect(main.getByRole('status').first()).toHaveText(/along, .* across/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect(main.getByRole('status').first()).toHaveText('Spot 6 placed.');
  for (const name of ['Change Spot 6', 'Take out Spot 6', 'Change Joint 2', 'Take out Joint 2'])
    await expect(marks(page).getByRole('button', { name })).toHaveCount(1);
  // In the rows of the table every number has its heading.
  const row = page.getByRole('row', { name: /^1 / });
  await expect(row.getByRole('rowheader')).toHaveText('1');
});

test('10,000 marks are told and nothing is lost; a full drawing stays quick', async ({ page }) => {
  const file = (count: number) => {
    const marks = Array.from({ length: count }, (_, at) => ({
      kind: 'tap',
      at: [60 + (at % 100) * 120, 60 + Math.floor(at / 100) * 120],
      rings: at % 50 !== 0,
    }));
    return {
      name: `${count}.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(
        JSON.stringify({
          format: 'down-to-sound.job',
          version: 1,
          site: { name: `Yard of ${count} (invented)`, thickness: 150 },
          zones: [{ id: 'a', name: 'Yard' }],
          survey: { slab: { length: 12_000, width: 13_000 }, spacing: 300, marks },
        }),
      ),
    };
  };
  await page.goto('/jobs/');
  const input = page.locator('input[type=file]');
  await input.setInputFiles(file(4999));
  await expect(page.getByText('Yard of 4999 (invented)').first()).toBeVisible();
  await input.setInputFiles(file(10_000));
  await expect(page.getByText(/at most 5,000/).first()).toBeVisible();
  await expect(page.getByText('Yard of 4999 (invented)').first()).toBeVisible();

  await page.goto('/survey/');
  await board(page).focus();
  await page.evaluate(() => {
    const seen = { longest: 0 };
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
    }).observe({ type: 'longtask' });
    Object.assign(window, { seen });
  });
  const spot = async () => {
    for (const key of ['Enter', 'ArrowRight', 'ArrowUp', 'Enter']) await page.keyboard.press(key);
  };
  await spot();
  await expect(marks(page)).toContainText('Spot 1: 100 mm x 100 mm');
  await spot();
  await expect(page.getByRole('alert').first()).toContainText('has room for 5,000 marks');
  await expect(page.locator('header .kept')).toBeVisible();
  const longest = await page.evaluate(
    () => (window as unknown as { seen: { longest: number } }).seen.longest,
  );
  console.log(`longest task with 5,000 marks: ${longest.toFixed(0)} ms`);
  expect(longest).toBeLessThan(2000);
  await page.reload();
  await expect(marks(page)).toContainText('Spot 1: 100 mm x 100 mm');
});

test('the example: two sheets on paper with the sheet to chalk by, and pictures to keep', async ({
  page,
}) => {
  await page.goto('/job/');
  await page.getByRole('button', { name: '9 Larch Row' }).click();
  await expect(page.locator('header .kept')).toBeVisible();
  await page.goto('/survey/');
  await expect(page.getByRole('region', { name: 'What it comes to' })).toContainText('30 m²');
  await noFaultsInBoth(page, 'survey of the example');
  const [svg] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /\.svg/ }).click(),
  ]);
  const text = readFileSync(await svg.path(), 'utf8');
  expect(text).toMatch(/^<svg[^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  expect(text).not.toContain('var(');
  const [png] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /\.png/ }).click(),
  ]);
  expect(
    readFileSync(await png.path())
      .subarray(1, 4)
      .toString(),
  ).toBe('PNG');
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('region', { name: 'Sheet to chalk by' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden();
  expect(await page.getByRole('row').count()).toBe(6);
  for (const format of ['A4', 'Letter'] as const)
    expect(await sheetsOf(page, format), format).toBeLessThanOrEqual(2);
});

test('the page weighs at most 60 kB more than the job page', async ({ page }) => {
  const weight = async (path: string) => {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    return page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .filter(({ name }) => /\.(js|css)$/.test(name) && !name.endsWith('service-worker.js'))
        .reduce((sum, each) => sum + (each as PerformanceResourceTiming).encodedBodySize, 0),
    );
  };
  const [job, survey] = [await weight('/job/'), await weight('/survey/')];
  console.log(
    `packed: job page ${(job / 1000).toFixed(1)} kB, survey page ${(survey / 1000).toFixed(1)} kB`,
  );
  expect(survey).toBeGreaterThan(10_000);
  expect(survey - job).toBeLessThanOrEqual(60_000);
});
