import type { Block, TextDocument } from './export-document';

/** Signs that Markdown (CommonMark, and GitHub's tables and formulas) would take for its own. */
const signs = /[\\`*_{}[\]<>#|~!&$]/g;
/** What would begin a list or a heading at the start of a line. */
const beginning = /^(\s*)([-+=]|\d+[.)])/;
/**
 * What viewers make a link of without any sign: addresses of the web and of mail, whole or by
 * their look. An escape does not keep all of them from it; code does.
 */
const address = /\/\/|@|mailto:|\bwww\.|\.\p{L}{2}|\d\.\d+\.\d+\.\d/iu;

const piece = (text: string): string =>
  address.test(text) ? `\`${text}\`` : text.replace(signs, '\\$&');

/** Text that reads as it was typed, on one line; nothing in it becomes a link, an image or HTML. */
export const markdownText = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/[^\s`|]+|[`|]/g, piece)
    .replace(
      beginning,
      (_all, space: string, mark: string) => `${space}${mark.slice(0, -1)}\\${mark.slice(-1)}`,
    );

const row = (cells: readonly string[]): string => `| ${cells.map(markdownText).join(' | ')} |`;

function block(part: Block): string {
  if (part.kind === 'text') return markdownText(part.text);
  if (part.kind === 'list')
    return part.items
      .map((item, index) => `${part.numbered ? `${index + 1}.` : '-'} ${markdownText(item)}`)
      .join('\n');
  return [row(part.head), `|${part.head.map(() => ' --- |').join('')}`, ...part.rows.map(row)].join(
    '\n',
  );
}

/** A document as Markdown, ending in a line end. */
export function markdownOf({ title, sections }: TextDocument): string {
  const parts = sections.flatMap((section) => [
    ...(section.title ? [`## ${markdownText(section.title)}`] : []),
    ...section.blocks.map(block),
  ]);
  return `${[`# ${markdownText(title)}`, ...parts].join('\n\n')}\n`;
}
