import { existsSync } from 'node:fs';
import puppeteer from 'puppeteer-core';
import type { Engine, Tab } from './engine';

/** Firefox as it is on the system, driven by WebDriver BiDi. */
const usual = ['/usr/bin/firefox-esr', '/usr/bin/firefox'];
const path = () => process.env.FIREFOX_PATH ?? usual.find((each) => existsSync(each));

async function open(): Promise<Tab> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    ...(path() && { executablePath: path() as string }),
    headless: true,
    protocolTimeout: 120_000,
    timeout: 120_000,
  });
  const page = await browser.newPage();
  page.setDefaultTimeout(120_000);
  const run = <T>(body: string) => page.evaluate(`(async () => { ${body} })()`) as Promise<T>;
  return {
    version: await browser.version(),
    run,
    goto: async (address) => void (await page.goto(address)),
    reload: async () => void (await page.reload()),
    press: (selector) => page.click(selector),
    async size(width, height) {
      await page.setViewport({ width, height });
      return run<number>('return innerWidth;');
    },
    close: () => browser.close(),
  };
}

export const firefox: Engine = {
  name: 'Firefox',
  get: 'apt-get install firefox-esr (or name one in FIREFOX_PATH)',
  found: () => path() !== undefined,
  open,
};
