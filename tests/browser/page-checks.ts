import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page } from '@playwright/test';
import type { RunOptions } from 'axe-core';
import type { Journey } from './journeys';

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const axeSource = readFileSync(axeFile, 'utf8');

/** Has axe ready on every page that is opened from here on: quicker than handing it over each time. */
export const withAxe = (page: Page) => page.addInitScript({ path: axeFile });

async function noneOf(page: Page, where: string, runOnly?: readonly string[]) {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeSource);
  const faults = await page.evaluate(async (only) => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const options: RunOptions = {
      resultTypes: ['violations'],
      // Style sheets are not fetched again for the rules on orientation and sound: neither is set here.
      preload: false,
      selectors: false,
      ...(only && { runOnly: [...only] }),
    };
    const { violations } = await axe.run(document, options);
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  }, runOnly);
  expect(faults, where).toEqual([]);
}

/** No fault that axe can find, contrast included. */
export const noFaults = (page: Page, where: string) => noneOf(page, where);

/** The same page in other colours: what else axe looks for does not hang on them. */
export const noContrastFaults = (page: Page, where: string) =>
  noneOf(page, where, ['color-contrast']);

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

const margin = { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' };

/** How many sheets the page prints on, in the usual margins or as it asks for itself. */
export async function sheetsOf(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = await page.pdf({ format, margin, preferCSSPageSize: true });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** It prints on one sheet, on paper of either size. */
export async function onOneSheet(page: Page) {
  for (const format of ['A4', 'Letter'] as const)
    expect(`${format}: ${await sheetsOf(page, format)}`).toBe(`${format}: 1`);
}

/**
 * The smallest letters of the page as printed, points, and what is set in them: those of drawings
 * as they come out in their place. A page that is too broad is shrunk by the printer, letters and all.
 * @param width between the margins, mm; of A4 upright where it is not said, which is narrower than Letter
 */
export async function smallestPrinted(
  page: Page,
  width = 186,
): Promise<{ points: number; text: string }> {
  const seen = page.viewportSize();
  await page.setViewportSize({ width: Math.floor((width / 25.4) * 96), height: 1000 });
  await page.emulateMedia({ media: 'print' });
  const smallest = await page.evaluate(() => {
    let least = { points: Infinity, text: '' };
    const shrunk = Math.min(1, innerWidth / document.documentElement.scrollWidth);
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const within = walk.currentNode.parentElement;
      const text = walk.currentNode.textContent?.trim() ?? '';
      if (!within || !text || within.closest('.unseen, #svelte-announcer, script, style')) continue;
      if (!within.getClientRects().length || !within.checkVisibility()) continue;
      const drawn = within instanceof SVGGraphicsElement ? within.getScreenCTM() : null;
      const scale = drawn ? Math.hypot(drawn.a, drawn.b) : 1;
      const points = parseFloat(getComputedStyle(within).fontSize) * scale * shrunk * 0.75;
      if (points < least.points) least = { points, text };
    }
    return least;
  });
  await page.emulateMedia({ media: null });
  if (seen) await page.setViewportSize(seen);
  return smallest;
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
