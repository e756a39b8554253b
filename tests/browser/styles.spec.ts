import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';

/**
 * Every page links the style sheets of all it shows: which chunk a sheet goes along with is found by
 * the build (`src/chunks.js`), and a drawing without its own is black.
 */
const build = fileURLToPath(new URL('../../build', import.meta.url));
const read = (path: string) => readFileSync(`${build}/${path}`, 'utf8');
/** The names by which a component's rules find its elements, as `svelte.config.js` makes them. */
const scope = /^s(?=[a-z]*\d)[0-9a-z]{5,8}$/;

test('no page is without the style sheet of something it shows', () => {
  const pages = readdirSync(build, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('index.html'),
  );
  expect(pages.length).toBeGreaterThan(100);
  const sheets = new Map<string, string>();
  const sheet = (path: string) => {
    const known = sheets.get(path) ?? read(path);
    sheets.set(path, known);
    return known;
  };
  let [drawn, scoped] = [0, 0];
  for (const path of pages) {
    const html = read(path);
    const css = [...html.matchAll(/href="([^"]+\.css)"/g)]
      .map(([, href = '']) => sheet(new URL(href, `file:///${path}`).pathname.slice(1)))
      .join('\n');
    const used = new Set(
      [...html.matchAll(/ class="([^"]*)"/g)]
        .flatMap(([, names = '']) => names.split(/\s+/))
        .filter((name) => scope.test(name)),
    );
    scoped += used.size;
    if (path.startsWith('learn/') && /<svg viewBox[^>]*>.*?<(path|g|rect)[^>]* class=/s.test(html))
      drawn += 1;
    expect(
      [...used].filter((name) => !css.includes(`.${name}`)),
      path,
    ).toEqual([]);
  }
  console.log(`${pages.length} pages, ${drawn} of them to learn from with a drawing`);
  expect(drawn).toBeGreaterThan(40);
  expect(scoped).toBeGreaterThan(500);
});
