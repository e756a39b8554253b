import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

/** What `sub-path.spec.ts` tries whole at night, read off the files. */
const build = fileURLToPath(new URL('../../build', import.meta.url));

test('every page names what it needs from where it lies, so that the site can lie below a path', () => {
  const pages = readdirSync(build, { recursive: true, encoding: 'utf8' }).filter(
    // The page for what is not there is handed out at any depth.
    (path) => path.endsWith('.html') && path !== '404.html',
  );
  expect(pages.length).toBeGreaterThan(50);
  const fromTheRoot = pages.flatMap((path) =>
    [
      ...readFileSync(`${build}/${path}`, 'utf8').matchAll(/\b(?:href|src|action)="(\/[^"]*)"/g),
    ].map(([, address]) => `${path}: ${address}`),
  );
  expect(fromTheRoot).toEqual([]);
});
