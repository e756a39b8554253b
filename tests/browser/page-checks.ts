import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import type { Journey } from './journeys';

/** Legacy mode: no page here has frames, and it opens no page of its own. */
const axe = (page: Page) => new AxeBuilder({ page }).setLegacyMode();

async function noneOf(builder: AxeBuilder, where: string) {
  const { violations } = await builder.analyze();
  const faults = violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  expect(faults, where).toEqual([]);
}

/** No fault that axe can find, contrast included. */
export const noFaults = (page: Page, where: string) => noneOf(axe(page), where);

/** The same page in other colours: what else axe looks for does not hang on them. */
export const noContrastFaults = (page: Page, where: string) =>
  noneOf(axe(page).withRules('color-contrast'), where);

/** No fault in light, and none of contrast in dark. */
export async function noFaultsInBoth(page: Page, where: string) {
  await page.emulateMedia({ colorScheme: 'light' });
  await noFaults(page, where);
  await page.emulateMedia({ colorScheme: 'dark' });
  await noContrastFaults(page, `${where}, dark`);
}

/** Nothing sticks out to the side. */
export async function noSideways(page: Page, where: string) {
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over, `${where}: sideways scrolling`).toBeLessThanOrEqual(0);
}

/** Whatever leaves the site, and whatever goes wrong in the page; both lists should stay empty. */
export function listen(page: Page, origin: string) {
  const elsewhere: string[] = [];
  const errors: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(origin) && !request.url().startsWith('data:'))
      elsewhere.push(request.url());
  });
  page.on('pageerror', ({ message }) => errors.push(message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  return { elsewhere, errors };
}

/** Answers the questions with the mouse, from the first page of the interview to the advice. */
export async function answerAll(
  page: Page,
  answers: Journey,
  at: (question: string) => Promise<void> = async () => undefined,
) {
  for (const [question, answer] of Object.entries(answers)) {
    await page.waitForURL(new RegExp(`/assess/${question}/`));
    if (answer.startsWith('#')) await page.fill(`#${question}-number`, answer.slice(1));
    else await page.locator(`input[name="${question}"][value="${answer}"]`).check();
    await at(question);
    await page.getByRole('button', { name: 'Continue' }).click();
  }
  await page.waitForURL(/\/advice\//);
}
