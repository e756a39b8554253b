import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

/** The licences that go with the built site, against what its files give away of their makers. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const scripts = readdirSync(`${root}/build/_app/immutable`, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.js'))
  .map((path) => readFileSync(`${root}/build/_app/immutable/${path}`, 'utf8'))
  .join('\n');

/** A piece of each library that a smaller form of its code still carries; null: none of it is in the site. */
const traces: Record<string, string | null> = {
  svelte: 'https://svelte.dev/e/',
  xstate: 'xstate.init',
  papaparse: 'BAD_DELIMITERS',
  minisearch: 'MiniSearch',
  idb: 'readwrite',
  valibot: '`valibot`',
  vitest: null,
  ajv: null,
  sirv: null,
};

test('the page of licences names every library in the site, with its text, and no other', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Licences' }).click();
  await page.waitForURL('**/learn/licences/');
  const named = await page.getByRole('heading', { level: 2 }).allInnerTexts();
  expect(named.length).toBeGreaterThan(8);
  for (const [name, trace] of Object.entries(traces)) {
    const there = named.some((line) => line.startsWith(`${name} `));
    expect(there, name).toBe(trace !== null);
    if (trace) expect(scripts.includes(trace), name).toBe(true);
  }
  // Each says under which licence it is had, and carries the note of its makers.
  const text = await page.locator('main').innerText();
  expect(text.match(/Copyright/gi)?.length ?? 0).toBeGreaterThan(named.length);
  for (const line of named) {
    const [, name = '', version = ''] = /^(.+) (\S+)$/.exec(line) ?? [];
    const own = JSON.parse(readFileSync(`${root}/node_modules/${name}/package.json`, 'utf8')) as {
      version: string;
      license: string;
    };
    expect(own.version, name).toBe(version);
    expect(text).toContain(own.license);
  }
});
