import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvOf } from '$lib/keep/export-csv';
import { markdownOf } from '$lib/keep/export-markdown';
import { onTrial, rounds } from '../helpers/rounds';

/**
 * Read by programs of their own: markdown-it with HTML taken and everything linked that looks like
 * an address, even without a scheme (the strictest case); papaparse for tables. What a spreadsheet
 * runs as a formula: OWASP, "CSV Injection": = + - @, tab, carriage return, line feed, and the
 * full-width forms of the signs, at the start of a cell; separators and quotes can begin a cell.
 */
const viewer = MarkdownIt({ html: true, linkify: true });
viewer.linkify.set({ fuzzyLink: true, fuzzyEmail: true, fuzzyIP: true });

const scraps = [
  'https://evil.example/x',
  'http://1.2.3.4',
  'www.evil.example',
  'evil.com',
  'evil.com/a_b_c',
  'a@b.example',
  '//evil.com',
  'mailto:a@b.example',
  'javascript:alert(1)',
  'data:text/html,x',
  'ftp://x.example',
  '[a](b)',
  '![a](b)',
  '[a]: b',
  '[a]',
  '[^1]',
  '<b>',
  '<!--',
  '-->',
  '<https://x.example>',
  '<img src=x onerror=alert(1)>',
  '&lt;',
  '&#60;',
  '&amp;',
  '`',
  '``',
  '```',
  '~~~',
  '|',
  '||',
  '\\',
  '\\\\',
  '*',
  '**',
  '_',
  '__',
  '~',
  '#',
  '# ',
  '> ',
  '- ',
  '+ ',
  '1. ',
  '1) ',
  '---',
  '===',
  '***',
  ' ',
  '  ',
  '\t',
  '\n',
  '\r\n',
  '\n\n',
  '    x',
  '(',
  ')',
  '"',
  "'",
  '!',
  ':',
  ';',
  ',',
  '.',
  '/',
  '$',
  '{',
  '}',
  '=',
  '+',
  '-',
  '@',
  '\uff1d',
  '\uff0b',
  '\uff0d',
  '\uff20',
  '\ufe66',
  '\u2a75',
  ';;',
  '=1+1',
  '=HYPERLINK("http://x")',
  '@SUM(1)',
  '+1',
  '-1',
  '\u200b',
  '\ufeff',
  '\u00a0',
  'Ramp',
  'bay 3',
  '\u00e9',
  '\u{1f9f1}',
  '\u2028',
  '\u0085',
  '\u0000',
];
const text = fc.oneof(
  fc.array(fc.constantFrom(...scraps), { maxLength: 12 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
);
const document = fc.record({
  title: text,
  sections: fc.array(
    fc.record({
      title: text,
      blocks: fc.array(
        fc.oneof(
          fc.record({ kind: fc.constant('text' as const), text }),
          fc.record({
            kind: fc.constant('list' as const),
            items: fc.array(text, { minLength: 1, maxLength: 3 }),
            numbered: fc.boolean(),
          }),
          fc.record({
            kind: fc.constant('table' as const),
            head: fc.tuple(text, text),
            rows: fc.array(fc.tuple(text, text), { maxLength: 2 }),
          }),
        ),
        { maxLength: 3 },
      ),
    }),
    { maxLength: 2 },
  ),
});

/** What our own documents are made of; nothing else may come out of a reader's text. */
const own =
  /^(paragraph|heading|bullet_list|ordered_list|list_item|table|thead|tbody|tr|th|td)_(open|close)$|^inline$/;

/** Everything in a text as a viewer shows it: its letters, with blanks as one space. */
const shown = (tokens: ReturnType<typeof viewer.parse>): string =>
  tokens
    .flatMap(({ children }) => children ?? [])
    .map(({ content }) => content)
    .join('')
    .replace(/\s+/g, '');

describe('a Markdown file', () => {
  it('shows whatever was typed as it was typed: no link, no image, no HTML, no list of its own', () => {
    let tried = 0;
    fc.assert(
      fc.property(document, (made) => {
        const tokens = viewer.parse(markdownOf(made), {});
        expect(tokens.map(({ type }) => type).filter((type) => !own.test(type))).toEqual([]);
        const inline = tokens.flatMap(({ children }) => children ?? []).map(({ type }) => type);
        expect(
          inline.filter((type) => !['text', 'text_special', 'code_inline'].includes(type)),
        ).toEqual([]);
        const all = made.sections.flatMap(({ title, blocks }) => [
          title,
          ...blocks.flatMap((block) =>
            block.kind === 'text'
              ? [block.text]
              : block.kind === 'list'
                ? block.items
                : [...block.head, ...block.rows.flat()],
          ),
        ]);
        // A viewer shows U+FFFD for NUL, as CommonMark asks.
        const typed = [made.title, ...all].join('').replace(/\s+/g, '').replaceAll('\0', '\ufffd');
        expect(shown(tokens)).toBe(typed);
        tried += 1;
      }),
      { numRuns: onTrial(rounds(1000, 4000), 20) },
    );
    console.log(`Markdown: ${tried} documents`);
  });
});

/** Whether a spreadsheet would look for a formula in a cell, or for one behind blanks or quotes that it takes away. */
const runs = (cell: string, delimiter: string): boolean =>
  /^[=+\-@]/.test(cell.normalize('NFKC').replace(/^[\s\p{Cc}\p{Cf}"]+/u, '')) ||
  (delimiter === ',' && /^[\t\r\n]/.test(cell));

describe('a CSV file', () => {
  it('has no cell that a spreadsheet would run, whatever separator it takes', () => {
    let tried = 0;
    fc.assert(
      fc.property(
        fc.array(fc.tuple(text, text, fc.nat()), { minLength: 1, maxLength: 4 }),
        (rows) => {
          const made = csvOf(['one', 'two', 'three'], rows);
          for (const delimiter of [',', ';', '\t', '|']) {
            const { data } = Papa.parse<string[]>(made.slice(1), { delimiter });
            for (const cell of data.flat())
              expect([delimiter, cell, runs(cell, delimiter)]).toEqual([delimiter, cell, false]);
          }
          // Without the marks put before signs, the cells are what was typed.
          const { data } = Papa.parse<string[]>(made, { delimiter: ',', skipEmptyLines: true });
          const plain = (cell: string) =>
            cell.replaceAll("'", '').replaceAll('\t', ' ').replace(/\r\n?/g, '\n');
          expect(data.slice(1).map((row) => row.map(plain))).toEqual(
            rows.map((row) => row.map((cell) => plain(String(cell)))),
          );
          tried += rows.length * 2;
        },
      ),
      { numRuns: onTrial(rounds(1000, 4000), 20) },
    );
    console.log(`CSV: ${tried} cells`);
  });

  it('leaves numbers numbers, also below zero', () => {
    expect(csvOf(['a', 'b'], [[-5.5, null]])).toContain('\r\n-5.5,\r\n');
  });
});
