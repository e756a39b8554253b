import { readFileSync } from 'node:fs';
import { frameWords } from '$words/ui/frame';
import { pageKinds } from '../browser/page-kinds';
import type { Tab } from './engine';

/** What the site asks of a browser; where one of these is missing the walk says so by its name. */
const wanted: Readonly<Record<string, string>> = {
  'storage in the page (IndexedDB)': `'indexedDB' in globalThis`,
  'word between tabs (BroadcastChannel)': `'BroadcastChannel' in globalThis`,
  'packing (CompressionStream deflate-raw)': `(() => { new CompressionStream('deflate-raw'); return true; })()`,
  'a copy for offline (service worker)': `'serviceWorker' in navigator`,
  'pictures made smaller (createImageBitmap)': `'createImageBitmap' in globalThis`,
  'dialogues (dialog.showModal)': `'showModal' in HTMLDialogElement.prototype`,
  'idle time (requestIdleCallback)': `'requestIdleCallback' in globalThis`,
  'lists in words (Intl.ListFormat)': `'ListFormat' in Intl`,
  'lists left as they were (toSorted)': `'toSorted' in Array.prototype`,
  'sets joined (Set.union)': `'union' in Set.prototype`,
  'room on the device told (storage.estimate)': `'estimate' in (navigator.storage ?? {})`,
  'what holds what (:has)': `CSS.supports('selector(:has(a))')`,
  'colours of day and night (light-dark)': `CSS.supports('color', 'light-dark(red, blue)')`,
  'colours mixed (color-mix)': `CSS.supports('color', 'color-mix(in srgb, red, blue)')`,
  'size by container (@container)': `CSS.supports('container-type', 'inline-size')`,
  'what unfolds, styled (::details-content)': `CSS.supports('selector(::details-content)')`,
  'lines balanced (text-wrap)': `CSS.supports('text-wrap', 'balance')`,
};

const demo = JSON.parse(
  readFileSync(new URL('../../src/lib/keep/demos/larch-row.json', import.meta.url), 'utf8'),
) as { site: { name: string } };

export interface Walked {
  /** What was done, in order. */
  readonly done: string[];
  /** What is wrong with the site there. */
  readonly faults: string[];
  /** What the browser has not, and what could not be driven. */
  readonly missing: string[];
}

/** Asks again until it is so; a minute, since the machine may be at other work. */
async function until(tab: Tab, condition: string, what: string): Promise<void> {
  const end = Date.now() + 60_000;
  for (;;) {
    // While a page is left there is nobody to ask.
    if (await tab.run<boolean>(`return Boolean(${condition});`).catch(() => false)) return;
    if (Date.now() > end) {
      const there = await tab.run<string>(
        `return location.pathname + ' “' + document.querySelector('main')?.innerText.replace(/\\s+/g, ' ').slice(0, 200) + '”';`,
      );
      throw new Error(`waited a minute for ${what}; stands at ${there}`);
    }
    await new Promise((turn) => setTimeout(turn, 100));
  }
}
const noted = (tab: Tab) =>
  tab.run<string[]>(`const all = JSON.parse(sessionStorage.getItem('noted') ?? '[]');
    sessionStorage.removeItem('noted'); return all;`);
const heading = `document.querySelector('h1')?.textContent.trim()`;
/** The word in the head that all is on the device: it comes when the page is live. */
const saved = `document.querySelector('header .kept')`;
const widths = [360, 1280] as const;

/** How far the page goes past its side, and the last thing that does; null where nothing does. */
const outside = `
const { scrollWidth, clientWidth } = document.documentElement;
if (scrollWidth <= clientWidth) return null;
const out = [...document.querySelectorAll('body *')]
  .filter((each) => each.getBoundingClientRect().right > clientWidth + 0.5).at(-1);
return (scrollWidth - clientWidth) + ' px past the side: ' + (out?.outerHTML ?? '').slice(0, 120);`;

/** Looks at the page that stands: whether anything of it sticks out to the side, and what. */
async function sideways(tab: Tab, where: string): Promise<string[]> {
  const found: string[] = [];
  for (const width of widths) {
    const real = await tab.size(width, 780);
    let over = await tab.run<string | null>(outside);
    // A page whose window has just changed may not have been laid out yet.
    for (let look = 0; over && look < 5; look += 1) {
      await new Promise((turn) => setTimeout(turn, 400));
      over = await tab.run<string | null>(outside);
    }
    if (over) found.push(`${where} at ${real} px: ${over}`);
  }
  return found;
}

/** From the first question to the advice with nothing known. */
async function interview(tab: Tab, address: string, walked: Walked): Promise<void> {
  await tab.goto(`${address}/assess/element/`);
  let asked = 0;
  for (let path = '/assess/element/'; path.startsWith('/assess/'); asked += 1) {
    if (asked > 40) throw new Error('the questions do not end');
    await until(
      tab,
      `document.querySelector('main button.do:not(:disabled)')`,
      `Continue at ${path}`,
    );
    walked.faults.push(...(await sideways(tab, path)));
    await tab.size(widths[0], 780);
    const took = await tab.run<boolean>(`
      const choice = ['unsure', 'no-sheet', 'none']
        .map((value) => document.querySelector('main input[value="' + value + '"]')).find(Boolean);
      choice?.click();
      return Boolean(choice?.checked);`);
    if (!took) throw new Error(`${path} has no way to be left open`);
    await tab.press('main button.do');
    await until(tab, `location.pathname !== '${path}'`, `the way on from ${path}`);
    path = await tab.run<string>('return location.pathname;');
  }
  await until(tab, `${heading} === 'Find out first'`, 'the advice');
  await tab.reload();
  await until(tab, `${heading} === 'Find out first'`, 'the advice after a reload');
  walked.done.push(
    `${asked} questions by “not sure” to “Find out first”, and again after a reload`,
  );
}

/** The example on the job page, then every kind of page with it. */
async function example(tab: Tab, address: string, walked: Walked): Promise<void> {
  await tab.size(widths[0], 780);
  await tab.goto(`${address}/job/`);
  const { name } = demo.site;
  const button = `[...document.querySelectorAll('main button')].find((each) => each.textContent.includes(${JSON.stringify(name)}))`;
  // The word in the head says that the page is live and its store open.
  await until(tab, `${saved} && ${button}`, 'the examples on the job page');
  // With a job in hand the examples are folded; a reader takes a moment to find them.
  await until(tab, `${button}.closest('details')?.open === false`, 'the job in hand');
  await tab.run(`(${button}).closest('details').open = true;`);
  await until(tab, `${button}.getClientRects().length`, 'the examples to unfold');
  await tab.run(`(${button}).click();`);
  // There is a job in hand, so it asks first.
  await until(tab, `document.querySelector('dialog[open]')`, 'the question before an example');
  await tab.press('dialog[open] button.do');
  const field = `[...document.querySelectorAll('main label')].some((each) => each.textContent.includes('Name of the job') && (each.control ?? each.querySelector('input'))?.value === ${JSON.stringify(name)})`;
  await until(tab, `${field} && ${saved}`, 'the example to be saved');
  await tab.reload();
  await until(tab, field, 'the example after a reload');
  for (const path of pageKinds) {
    await tab.goto(address + path);
    await until(tab, `${heading} && document.readyState === 'complete'`, path);
    // What is worked out after the first paint comes, and nothing more arrives.
    await until(
      tab,
      `!document.querySelector('[role=progressbar], progress')`,
      `${path} to settle`,
    );
    walked.faults.push(...(await sideways(tab, path)));
    walked.faults.push(...(await noted(tab)));
  }
  walked.done.push(`an example, saved and reloaded, through ${pageKinds.length} kinds of page`);
}

/** With the host gone, from the copy on the device. */
async function offline(
  tab: Tab,
  site: { address: string; off: () => Promise<void>; on: () => Promise<void> },
  walked: Walked,
): Promise<void> {
  await tab.goto(`${site.address}/`);
  const copied = `(await navigator.serviceWorker?.getRegistration())?.active?.state === 'activated' &&
    document.querySelector('footer')?.textContent.includes(${JSON.stringify(frameWords.offline.whole)})`;
  try {
    await until(tab, copied, 'the whole copy');
  } catch (problem) {
    walked.missing.push(`offline could not be driven: ${(problem as Error).message}`);
    return;
  }
  await noted(tab);
  await site.off();
  try {
    for (const path of pageKinds) {
      await tab.goto(site.address + path);
      await until(tab, heading, `${path} without a network`);
    }
    walked.faults.push(...(await noted(tab)).map((each) => `without a network: ${each}`));
    walked.done.push(`${pageKinds.length} kinds of page with the host gone`);
  } finally {
    await site.on();
  }
}

/** Walks the site in one tab; whatever stops it is a fault too. */
export async function walk(
  tab: Tab,
  site: { address: string; off: () => Promise<void>; on: () => Promise<void> },
): Promise<Walked> {
  const walked: Walked = { done: [], faults: [], missing: [] };
  try {
    await tab.goto(`${site.address}/`);
    for (const [what, has] of Object.entries(wanted))
      if (!(await tab.run<boolean>(`try { return ${has}; } catch { return false; }`)))
        walked.missing.push(what);
    const narrow = await tab.size(widths[0], 780);
    if (narrow !== widths[0]) walked.missing.push(`no page narrower than ${narrow} px`);
    await interview(tab, site.address, walked);
    walked.faults.push(...(await noted(tab)));
    await example(tab, site.address, walked);
    await offline(tab, site, walked);
  } catch (problem) {
    walked.faults.push(`stopped: ${(problem as Error).message}`);
    walked.faults.push(...(await noted(tab).catch(() => [])));
  }
  return walked;
}
