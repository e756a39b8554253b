import { readdirSync, readFileSync } from 'node:fs';
import type { CDPSession, Page } from '@playwright/test';
import { expect } from './jobs-page';

/**
 * What a page has said of a field that is typed into without a pause. A value counts as
 * acknowledged once the page shows "Saved" with that value in the field: from then on it must
 * never be lost, whatever happens to the tab.
 */
export interface Said {
  typed: number;
  saved: number;
  /** Ends when the first value has been called saved. */
  readonly begun: Promise<void>;
}

/** What the page tells from now on. */
async function heard(page: Page, from: number): Promise<Said> {
  let begin = () => {};
  const begun = new Promise<void>((done) => (begin = done));
  const said = { typed: from, saved: from, begun };
  await page.exposeFunction('tell', (what: 'typed' | 'saved', value: number) => {
    said[what] = Math.max(said[what], value);
    if (what === 'saved') begin();
  });
  return said;
}

/** The word in the head of every page that says that everything is on the device. */
export const savedMark = (page: Page) => page.locator('header .kept');

/** Opens the page of the job, with its store open. */
export async function openJob(page: Page): Promise<void> {
  await page.goto('/job/');
  await expect(savedMark(page)).toBeVisible();
}

/** The field for the job's name, which is saved at every key. */
export const nameField = (page: Page) => page.getByLabel('Name of the job');
export const nameNumber = async (page: Page): Promise<number> =>
  Number((await nameField(page).inputValue()).replace(/\D/g, ''));

/** Types numbered names one after another: the next as soon as the page says "Saved". */
export async function typeOn(page: Page, from: number): Promise<Said> {
  const said = await heard(page, from);
  await nameField(page).evaluate((element, first) => {
    const field = element as HTMLInputElement;
    const { tell } = globalThis as unknown as { tell: (what: string, value: number) => void };
    let now = first;
    const next = () => {
      now += 1;
      tell('typed', now);
      field.value = `Ramp ${now} (invented)`;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    };
    new MutationObserver(() => {
      if (!document.querySelector('header .kept')) return;
      tell('saved', now);
      next();
    }).observe(document.querySelector('header') as Element, { childList: true, subtree: true });
    next();
  }, from);
  return said;
}

interface LeanSession {
  readonly job: { readonly name: string };
  readonly kept: boolean;
  open(): Promise<void>;
  settled(): Promise<void>;
  update(change: (job: object) => object): void;
}

/** The file of the build that the session is in: the part that saves, without a page round it. */
export function sessionFile(build: string): string {
  const folder = `${build}/_app/immutable`;
  const holder = readdirSync(folder, { recursive: true, encoding: 'utf8' }).find(
    (path) =>
      path.endsWith('.js') &&
      readFileSync(`${folder}/${path}`, 'utf8').includes('async keepAsCopy('),
  );
  if (!holder) throw new Error('the build has no session');
  return `/_app/immutable/${holder}`;
}

/**
 * The same without a page round it, so that it is quick: the session of the build alone, in an
 * empty page of the site. Acknowledged is `kept`, which the page shows as "Saved".
 * Says what was found in the store, and from then on what is typed and what is saved.
 */
export async function saveOn(page: Page, module: string): Promise<Said & { found: number }> {
  const said = await heard(page, 0);
  const found = await page.evaluate(async (path) => {
    const { tell } = globalThis as unknown as {
      tell: (what: string, value: number) => Promise<void>;
    };
    const all = Object.values((await import(path)) as object) as LeanSession[];
    const session = all.find((each) => each && typeof each === 'object' && 'settled' in each);
    if (!session) throw new Error('no session in it');
    await session.open();
    const first = Number(session.job.name.replace(/\D/g, ''));
    const on = async () => {
      for (let now = first + 1; ; now += 1) {
        // Not waited for: between two writes there is no pause, and what is told late counts late.
        void tell('typed', now);
        session.update((job) => ({ ...job, name: `Ramp ${now} (invented)` }));
        await session.settled();
        if (!session.kept) return;
        void tell('saved', now);
      }
    };
    void on();
    return first;
  }, module);
  return Object.assign(said, { found });
}

/**
 * The way to kill the process of a tab, as a crash does: by the system, since a page that writes
 * without a pause reads no message for seconds. It ends when the tab is gone. No other tab of the
 * browser may be open: the processes of all are killed.
 */
export async function killer(page: Page): Promise<() => Promise<void>> {
  const control = await page.context().browser()?.newBrowserCDPSession();
  if (!control) throw new Error('the tab has no browser of its own');
  const { processInfo } = await control.send('SystemInfo.getProcessInfo');
  await control.detach();
  const renderers = processInfo.filter(({ type }) => type === 'renderer');
  return async () => {
    const gone = page.waitForEvent('crash');
    for (const { id } of renderers) process.kill(id, 'SIGKILL');
    await gone;
  };
}

/** The size of storage the browser leaves to the site, in bytes; without one, its own. */
export async function leaveRoom(control: CDPSession, origin: string, quotaSize?: number) {
  await control.send('Storage.overrideQuotaForOrigin', {
    origin,
    ...(quotaSize !== undefined && { quotaSize }),
  });
}
