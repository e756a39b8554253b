import { test } from '@playwright/test';
import { press, reach } from './keyboard';
import { board, expect, layOut, marks, results } from './survey-steps';

test.setTimeout(240_000);

test('with keys alone: a slab, joints, a spot in eight presses, and undo @nightly', async ({
  page,
}) => {
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

test('with keys alone: a chain noted, taps, a crack, a depth, a joint in other numbers @nightly', async ({
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
  await expect(marks(page)).toContainText(/Crack 1: \d+\smm long/);
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

test('a screen reader finds the drawing, what it comes to and every mark @nightly', async ({
  page,
}) => {
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

test('10,000 marks are told and nothing is lost; a full drawing stays quick @nightly', async ({
  page,
}) => {
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
