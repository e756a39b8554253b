import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesIn } from '../helpers/texts';

/** Where a language may be named: its own folder, and the one file that says where the folders lie. */
const may = /^src\/(?:lib\/words\/[a-z]{2}\/|language\.js)/;
/** A folder of a language, or a locale. */
const named = /(?<!\$)\b(?:words|content)\/(?!ui\b)[a-z]{2}\/|['"`][a-z]{2}-[A-Z]{2}['"`]/g;

const files = ['.ts', '.js', '.svelte', '.html'].flatMap((ending) =>
  ['src', 'shared'].flatMap((folder) => filesIn(folder, ending)),
);

describe('a build speaks one language', () => {
  it('no file outside the words names one', () => {
    const found = [...files, 'vite.config.ts', 'svelte.config.js']
      .filter((file) => !may.test(file))
      .flatMap((file) =>
        [...readFileSync(file, 'utf8').matchAll(named)].map(([text]) => `${file}: ${text}`),
      );
    expect(found).toEqual([]);
  });

  it('finds a folder and a locale', () => {
    expect("import '$lib/words/en/plan'".match(named)).toHaveLength(1);
    expect("format('en-GB')".match(named)).toHaveLength(1);
  });
});
