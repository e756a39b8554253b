import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const src = new URL('../../src/', import.meta.url);
const screens = ['lib/ui', 'routes'].flatMap((folder) =>
  readdirSync(new URL(folder, src), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(svelte|ts)$/.test(file))
    .map((file) => `${folder}/${file}`),
);
const textOf = (file: string) => readFileSync(new URL(file, src), 'utf8');

/** Reads a number out of text by itself. Rounding a number that is one already does not. */
export const parsing = (text: string): string[] => [
  ...(text.match(
    /\b(?:parseFloat|parseInt|valueAsNumber)\b|(?<!\w)Number\((?!.*?\.to(?:Precision|Fixed)\()[^)]*\)/g,
  ) ?? []),
  ...(text.match(/type=["'{]+number|\.replace(?:All)?\(\s*(?:','|\/,\/g?),\s*'\.'/g) ?? []),
  ...(text.match(/[=(,?:]\s*\+(?:text|typed|value|currentTarget|event)\b/g) ?? []),
];

/** A number that comes from a list of the page's own, never from a keyboard. */
const notTyped: Readonly<Record<string, readonly string[]>> = {
  'lib/ui/crew/CrewPage.svelte': ['Number(day)', 'Number(day)'],
};
/** Fields that show a keyboard for numbers: they hand what is typed to the reader. */
const numberFields = ['lib/ui/Field.svelte', 'lib/ui/question/NumberField.svelte'];

describe('one reader of numbers', () => {
  it('no screen reads a number by itself', () => {
    const found = screens.flatMap((file) => {
      const own = parsing(textOf(file));
      return own.length && own.join() !== notTyped[file]?.join() ? [`${file}: ${own.join()}`] : [];
    });
    expect(screens.length).toBeGreaterThan(200);
    expect(found).toEqual([]);
  });

  it('every field for numbers is one of the two that ask what is meant', () => {
    const found = screens.filter((file) => /<input[^>]*?inputmode/s.test(textOf(file)));
    expect(found.sort()).toEqual(numberFields);
    for (const file of numberFields) expect(textOf(file)).toContain('<Ways ');
  });

  it.each([
    'const days = Number(text);',
    'parseFloat(typed)',
    '<input type="number" />',
    "text.replace(',', '.')",
    'onpick(+currentTarget.value)',
  ])('would find %s', (line) => expect(parsing(line)).not.toEqual([]));

  it.each(['Number(size.toPrecision(4))', 'takeNumber(text, field)', 'readNumber(text)'])(
    'leaves %s alone',
    (line) => expect(parsing(line)).toEqual([]),
  );
});
