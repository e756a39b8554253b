import { readFileSync } from 'node:fs';
import { parse, type AST } from 'svelte/compiler';
import { describe, expect, it } from 'vitest';
import { filesIn } from '../helpers/texts';

/** Attributes that are read or spoken. */
const spoken = /^(?:aria-label|aria-description|title|alt|placeholder|label|caption|text)$/;
/** What is the same in every language: units, codes, names of formats. */
const same = /\b(?:CSP|HEPA|psi|MPa|mm|kN|MB|MIT|CSV|QR|s)\b/g;
const hasWords = (text: string) => /\p{L}{2}/u.test(text.replace(same, ''));

type Node = { type: string } & Record<string, unknown>;
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value;

/** Texts of the markup that stand there as they are: between tags, or in what is read of a tag. */
function fixedTexts(file: string): string[] {
  const { fragment } = parse(readFileSync(file, 'utf8'), { modern: true, filename: file });
  const found: string[] = [];
  const visit = (node: Node, read: boolean) => {
    if (node.type === 'Text') {
      const { data } = node as unknown as AST.Text;
      if (read && hasWords(data)) found.push(data.trim());
      return;
    }
    // A choice between two fixed texts is no better than one.
    if (node.type === 'Literal' && read && typeof node.value === 'string') {
      if (/\p{L}{2}.* /u.test(node.value)) found.push(node.value);
      return;
    }
    const inside =
      node.type === 'Attribute' ? spoken.test(String(node.name)) : read || node.type === 'Fragment';
    for (const value of Object.values(node))
      for (const each of Array.isArray(value) ? (value as unknown[]) : [value])
        if (isNode(each)) visit(each, inside);
  };
  visit(fragment as unknown as Node, true);
  return found;
}

describe('what is said stands in words', () => {
  it.each(filesIn('src', '.svelte'))('%s', (file) => {
    expect(fixedTexts(file)).toEqual([]);
  });

  it('finds a text between tags, and one that is spoken', () => {
    expect(hasWords('Stop here')).toBe(true);
    expect(hasWords('CSP 5 · 3 mm')).toBe(false);
  });
});
