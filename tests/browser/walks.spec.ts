import fc from 'fast-check';
import { test, type Page } from '@playwright/test';
import { savedMark } from '../helpers/faults';
import { expect, kept, withJob } from '../helpers/jobs-page';

/**
 * A sample of the walks of `tests/unit/talk-walks.test.ts` on the built site: one tab answers,
 * another changes the same job. A ledger beside them holds what either tab has given to which zone;
 * at every step the device may hold nothing else.
 */
const questions = ['texture', 'looseness', 'cracks'] as const;
const choices = {
  texture: ['smooth', 'sandy', 'pitted'],
  looseness: ['tight', 'powdery', 'flaking'],
  cracks: ['none', 'open', 'crumbling'],
} as const;
const steps = ['answer', 'answer', 'answer', 'delete', 'undo', 'back', 'tick'] as const;

interface Zone {
  readonly id: string;
  readonly [question: string]: unknown;
}
const zones = async (page: Page): Promise<readonly Zone[]> =>
  ((await kept(page)) as unknown as { file: { zones: Zone[] } }[])[0]?.file.zones ?? [];

const goOn = (page: Page) => page.getByRole('button', { name: 'Continue' });

test('another tab’s answer to the same question is told, and the reader says which stands @nightly', async ({
  page,
  context,
}) => {
  await withJob(page);
  const other = await context.newPage();
  const answer = async (choice: string) => {
    await other.goto('/assess/texture/?zone=b');
    await other.locator(`input[value="${choice}"]`).check();
    await goOn(other).click();
    await other.waitForURL((url) => !url.pathname.includes('texture'));
    await expect(savedMark(other)).toBeVisible();
  };
  await page.goto('/assess/texture/?zone=b');
  await page.locator('input[value="pitted"]').check();
  await answer('smooth');
  await expect(page.getByRole('alert').filter({ hasText: 'Another tab' })).toBeVisible();
  await goOn(page).click();
  await expect(page).toHaveURL(/texture/);
  await page.getByRole('button', { name: 'Take the other tab’s' }).click();
  await expect(page.locator('input[value="smooth"]')).toBeChecked();
  await page.locator('input[value="pitted"]').check();
  await answer('sandy');
  await page.getByRole('button', { name: 'Keep what I ticked' }).click();
  await expect(page.locator('input[value="pitted"]')).toBeChecked();
  await expect(page.locator('input[value="pitted"]')).toBeFocused();
  await goOn(page).click();
  await expect
    .poll(() => zones(page))
    .toEqual([
      expect.objectContaining({ id: 'a', texture: 'sandy' }),
      expect.objectContaining({ id: 'b', texture: 'pitted' }),
    ]);
});

test('random steps of two tabs: every answer stands in its own zone @nightly', async ({
  page,
  context,
}) => {
  test.setTimeout(300_000);
  await withJob(page);
  const other = await context.newPage();
  await other.goto('/job/');
  await expect(savedMark(other)).toBeVisible();
  /** What may stand in a zone: what it came with, and what was given to it. */
  const ledger = new Map<string, Set<string>>();
  const note = (zone: string, question: string, answer: unknown) =>
    ledger.set(
      `${zone} ${question}`,
      (ledger.get(`${zone} ${question}`) ?? new Set()).add(JSON.stringify(answer)),
    );
  for (const zone of await zones(page))
    for (const [question, answer] of Object.entries(zone)) note(zone.id, question, answer);

  const plan = fc.sample(
    fc.record({
      step: fc.constantFrom(...steps),
      question: fc.constantFrom(...questions),
      pick: fc.nat(2),
      zone: fc.constantFrom('a', 'b', 'zz'),
    }),
    { numRuns: 40, seed: 4 },
  );
  let [given, refused] = [0, 0];
  for (const { step, question, pick, zone } of plan) {
    const choice = choices[question][pick] ?? '';
    if (step === 'back') await page.goBack().catch(() => undefined);
    else if (step === 'delete' || step === 'undo') {
      const undo = other.getByRole('button', { name: /^Undo: bring/ });
      if (step === 'undo' && (await undo.count())) await undo.click();
      else if (step === 'delete' && (await other.locator('ol.rows > li').count()) > 1) {
        const row = other.locator('ol.rows > li').last();
        await row
          .locator('summary')
          .filter({ hasText: /^Answers/ })
          .click();
        await row.getByRole('button', { name: /^Delete/ }).click();
      }
      await expect(savedMark(other)).toBeVisible();
    } else {
      await page.goto(`/assess/${question}/?zone=${zone}`);
      const input = page.locator(`input[name="${question}"][value="${choice}"]`);
      const gone = page.getByRole('region', { name: 'not in this job' });
      const refusedHere = gone.or(page.getByText('This question is not asked here:'));
      const there = (await zones(page)).some(({ id }) => id === zone);
      if (!there) {
        await expect(refusedHere.first()).toBeVisible();
        refused += 1;
      } else {
        await expect(input).toBeVisible();
        await input.check();
        if (step === 'answer') {
          note(zone, question, choice);
          await page.getByRole('button', { name: 'Continue' }).click();
          await page.waitForURL((url) => !url.pathname.includes(`/${question}/`));
          await expect(savedMark(page)).toBeVisible();
          const now = (await zones(page)).find(({ id }) => id === zone);
          expect(now?.[question]).toBe(choice);
          given += 1;
        }
      }
    }
    for (const each of await zones(page))
      for (const [name, answer] of Object.entries(each))
        expect(
          [...(ledger.get(`${each.id} ${name}`) ?? [])],
          `${name} of zone ${each.id}`,
        ).toContain(JSON.stringify(answer));
  }
  console.log(
    `walk on the built site: ${plan.length} steps, ${given} answers given and found in their zone, ${refused} refused`,
  );
  expect(given).toBeGreaterThan(5);
  expect(refused).toBeGreaterThan(3);
});
