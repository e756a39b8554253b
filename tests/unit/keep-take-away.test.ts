import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { byteOrderMark, cellText, csvOf, plainCell } from '$lib/keep/export-csv';
import { markdownOf, markdownText } from '$lib/keep/export-markdown';
import { jobFileName } from '$lib/keep/file-name';

describe('a cell of a table', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['+44 1632', "'+44 1632"],
    ['-5', "'-5"],
    ['@SUM(1)', "'@SUM(1)"],
    // The full-width form of the sign.
    ['\uff1d1', "'\uff1d1"],
    ['  =1', "  '=1"],
    ['"=1"', '"\'=1"'],
    // Other spreadsheets end a cell at a semicolon or a bar.
    ['a;=1', "a;'=1"],
    ['a|=1', "a|'=1"],
    ['a\n=1', "a\n'=1"],
    ['\nRamp', "'\nRamp"],
  ])('%j runs nothing, and comes back as it was typed', (typed, cell) => {
    expect(plainCell(typed)).toBe(cell);
    expect(cellText(cell)).toBe(typed);
  });

  it.each([
    'Ramp',
    'a=b',
    '3-to-6',
    '\u2a74 1',
    "it's",
    'bay 3; kerb',
    '5 - 6',
    '',
    'a\nb',
    "O'Hara - 5",
  ])('%j is left as it is, both ways', (typed) => {
    expect(plainCell(typed)).toBe(typed);
    expect(cellText(typed)).toBe(typed);
  });

  it('has its tabs as blanks and its line ends as one character', () => {
    expect(plainCell('a\tb\t\tc')).toBe('a b  c');
    expect(plainCell('a\r\nb\rc\n')).toBe('a\nb\nc\n');
  });

  it('that another program wrote without our mark stays whole', () => {
    expect(cellText(' =1+1')).toBe(' =1+1');
    expect(cellText("'Ramp")).toBe("'Ramp");
    expect(cellText("a'\nb")).toBe("a'\nb");
  });
});

describe('a table', () => {
  it('is as RFC 4180 has it, and says that it is UTF-8', () => {
    expect(
      csvOf(
        ['Zone', '=a'],
        [
          ['Ramp, "left"', 5],
          ['-x', null],
        ],
      ),
    ).toBe(`${byteOrderMark}Zone,'=a\r\n"Ramp, ""left""",5\r\n'-x,\r\n`);
    expect(byteOrderMark).toBe('\ufeff');
  });
});

describe('a document as Markdown', () => {
  it('has its title, headings, lists and tables, a blank line between', () => {
    expect(
      markdownOf({
        title: 'Plan',
        sections: [
          { blocks: [{ kind: 'text', text: 'As it stands.' }] },
          {
            title: 'Order',
            blocks: [
              { kind: 'list', items: ['Grind', 'Wash'], numbered: true },
              { kind: 'list', items: ['Water', 'Power'] },
              {
                kind: 'table',
                head: ['Zone', 'm²'],
                rows: [
                  ['Ramp', '4'],
                  ['Kerb | left', '5'],
                ],
              },
            ],
          },
        ],
      }),
    ).toBe(
      [
        '# Plan',
        'As it stands.',
        '## Order',
        '1. Grind\n2. Wash',
        '- Water\n- Power',
        '| Zone | m² |\n| --- | --- |\n| Ramp | 4 |\n| Kerb \\| left | 5 |',
      ].join('\n\n') + '\n',
    );
  });

  it.each([
    // CommonMark: what begins a list, a heading below a line, or an emphasis.
    ['- one', '\\- one'],
    ['+ one', '\\+ one'],
    ['= one', '\\= one'],
    ['12. one', '12\\. one'],
    ['123) one', '123\\) one'],
    [' - one', ' \\- one'],
    ['# one', '\\# one'],
    ['*a* _b_ ~c~', '\\*a\\* \\_b\\_ \\~c\\~'],
    ['![a] $x$ a\\b', '\\!\\[a\\] \\$x\\$ a\\\\b'],
    ['a - 5', 'a - 5'],
    ['in 12. days', 'in 12. days'],
    ['one\n\n two\tthree', 'one two three'],
    ['a`b', 'a\\`b'],
  ])('%j reads as it was typed', (typed, text) => {
    expect(markdownText(typed)).toBe(text);
  });

  it.each([
    'https://host.example/a_b',
    '//host.example',
    'mira@host.example',
    'mailto:mira',
    'www.5',
    'WWW.5',
    'host.example',
    'host.xn--p1ai',
    '10.200.30.1',
  ])('%s becomes no link: it stands as code', (address) => {
    expect(markdownText(`see ${address} there`)).toBe(`see \`${address}\` there`);
  });

  it.each(['a 3.5 m', 'v1.2.3', 'a/b', 'end.', 'a:b', 'awww.'])('%s holds no address', (text) => {
    expect(markdownText(text)).toBe(text);
  });
});

describe('the name of a job’s file', () => {
  const named = (name: string) => jobFileName({ name, site: {}, zones: [] } satisfies Job);
  it.each([
    ['Tidewell community hall (invented)', 'tidewell-community-hall-invented'],
    ['  Café – Ångström 2 ', 'cafe-angstrom-2'],
    ['--Ramp--', 'ramp'],
    ['', 'job'],
    ['漢字', 'job'],
    [`${'x'.repeat(70)}`, 'x'.repeat(60)],
  ])('%j is in letters every system takes', (name, file) => {
    expect(named(name)).toBe(`${file}.down-to-sound.json`);
  });
});
