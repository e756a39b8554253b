import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { listen, noFaults, noSideways } from './page-checks';

test.use({ viewport: { width: 360, height: 800 }, colorScheme: 'dark' });

const start = new Date('2026-03-02T09:00:00Z');
const later = (minutes: number) => new Date(start.getTime() + minutes * 60_000);
const heading = (page: Page, name: string) => page.getByRole('heading', { name, exact: true });

test('a set is solved, what was missed comes back, and progress can be taken along', async ({
  page,
  baseURL,
}) => {
  const { elsewhere, errors } = listen(page, baseURL ?? '');
  await page.clock.setFixedTime(start);
  await page.goto('/learn/practice/#set1.cases=rope-walk-hole,larch-row-oil,hall-steps-nosing');

  // Right, with the keyboard alone. At the first level the method is the one question.
  await expect(heading(page, 'The old hole in Rope Walk yard')).toBeFocused();
  await expect(page.locator('input[name="steps"], input[name="hazards"]')).toHaveCount(0);
  await page.locator('input[name="call"]').first().press('Space');
  await page.keyboard.press('Enter');
  await expect(heading(page, 'Right')).toBeFocused();
  await page.getByRole('button', { name: 'Next case' }).click();

  // Wrong: it says why, what was left out, and when it comes back.
  await expect(heading(page, 'Under the car on Larch Row')).toBeFocused();
  await page.getByRole('button', { name: 'Check it' }).click();
  await expect(page.getByText('Pick a method, or that it has to wait.')).toBeVisible();
  await page.getByRole('radio', { name: 'Pressure washing' }).check();
  await page.getByRole('button', { name: 'Check it' }).click();
  await expect(heading(page, 'Too gentle')).toBeFocused();
  await expect(page.getByText('Pressure washing: would spread the oil')).toBeVisible();
  await expect(page.getByText('The rules come to: Grinding')).toBeVisible();
  await expect(page.getByText('Around it: Degrease')).toBeVisible();
  await expect(page.getByText('This case comes back in 1 minute.')).toBeVisible();
  await expect(page.locator('main a[href="/learn/grinding/"]')).toBeVisible();
  await noFaults(page, 'a result');
  await noSideways(page, 'a result');
  await page.getByRole('button', { name: 'Next case' }).click();

  // Higher up, the work around it and the dangers are asked too.
  await expect(heading(page, 'The broken edge of the Tidewell hall steps')).toBeFocused();
  await page.getByRole('radio', { name: 'Breaking out' }).check();
  await page.getByRole('checkbox', { name: 'Saw the edge' }).check();
  await page.getByRole('button', { name: 'Check it' }).click();
  await expect(heading(page, 'Right')).toBeFocused();
  await expect(page.getByText('You had: Saw the edge.')).toBeVisible();
  await expect(page.getByText(/^Left out: /).first()).toBeVisible();
  await noFaults(page, 'a result with steps and dangers');
  await page.getByRole('button', { name: 'Next case' }).click();
  await expect(page.getByText('You had all of it right in 1 of 3.')).toBeVisible();
  await page.getByRole('button', { name: 'Practise without the set' }).last().click();

  await page.clock.setFixedTime(later(2));
  await page.reload();
  await expect(heading(page, 'Under the car on Larch Row')).toBeVisible();
  await expect(page.getByText('You missed something here before.')).toBeVisible();

  await page.getByText('Your progress', { exact: true }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save my progress to a file' }).click();
  const path = await (await download).path();
  const saved = JSON.parse(readFileSync(path, 'utf8'));
  expect(saved.results).toEqual([
    { case: 'rope-walk-hole', at: start.getTime(), rating: 'good' },
    { case: 'larch-row-oil', at: start.getTime(), rating: 'again' },
    { case: 'hall-steps-nosing', at: start.getTime(), rating: 'hard' },
  ]);
  await page.getByRole('button', { name: 'Forget my progress' }).click();
  await expect(page.getByText('You have tried no case yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('You have tried 3 cases.')).toBeVisible();
  await page.getByLabel('Add progress from a file').setInputFiles(path);
  await expect(page.getByText('All of it was here already.')).toBeVisible();
  await page
    .getByLabel('Add progress from a file')
    .setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('[1') });
  await expect(page.getByText('your progress is as it was')).toBeVisible();
  expect([elsewhere, errors]).toEqual([[], []]);
});

test('a crew lead makes a link to a set, and a broken one says what is wrong @nightly', async ({
  page,
}) => {
  await page.goto('/learn/practice/');
  await page.getByText('Make a set', { exact: true }).click();
  await page.getByRole('checkbox', { name: 'A balcony at Gannet Court' }).check();
  await page.getByLabel('New cases to draw, up to 50').fill('51');
  await expect(page.getByText('A whole number from 0 to 50.')).toBeVisible();
  await page.getByLabel('New cases to draw, up to 50').fill('1');
  const link = await page.getByLabel('Link to a set of 2 cases').inputValue();
  await page.goto(link.replace('gannet', 'ganet'));
  await expect(page.getByRole('alert').first()).toContainText('cases[0]: expected the id');
  await page.goto(link);
  await expect(heading(page, 'A balcony at Gannet Court')).toBeFocused();
  await page.getByRole('radio', { name: 'Breaking out' }).check();
  await page.getByRole('button', { name: 'Check it' }).click();
  await expect(heading(page, 'Not safe to start')).toBeFocused();
});

test('without JavaScript it says what needs it', async ({ request }) => {
  const noScript = /<noscript>[^]*Practising needs JavaScript/;
  expect(await (await request.get('/learn/practice/')).text()).toMatch(noScript);
  expect(await (await request.get('/learn/')).text()).toContain('href="practice/"');
});
