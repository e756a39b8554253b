import { readFileSync } from 'node:fs';
import { basename } from 'node:path';

/** @typedef {{ type: string, tagName?: string, value?: string, properties?: Record<string, unknown>, children?: Node[] }} Node */
/** @typedef {{ id: string, pattern: RegExp, see?: string }} Entry */

const apart = new Set(['a', 'h1', 'h2', 'h3', 'h4', 'code', 'pre']);

/** @param {string} text */
const escape = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The terms with the pattern that finds each, longest spelling first so that it wins. */
function readTerms() {
  /** @type {Record<string, {term: string, forms?: string[], see?: string}>} */
  const glossary = JSON.parse(readFileSync('content/glossary.json', 'utf8'));
  return Object.entries(glossary)
    .flatMap(([id, { term, forms = [], see }]) =>
      [term, ...forms].map((spelling) => ({ id, spelling, see })),
    )
    .sort((a, b) => b.spelling.length - a.spelling.length)
    .map(({ id, spelling, see }) => ({
      id,
      see,
      pattern: new RegExp(
        `(?<![\\w-])${escape(spelling)}(?![\\w-])`,
        spelling === spelling.toUpperCase() ? '' : 'i',
      ),
    }));
}

/**
 * Cuts a text into pieces at the first term that has not been linked on this page.
 * @param {string} text
 * @param {Entry[]} terms
 * @param {Set<string>} done
 * @returns {Node[]}
 */
function linkTerms(text, terms, done) {
  /** @type {{ index: number, found: string, id: string } | null} */
  let first = null;
  for (const { id, pattern } of terms) {
    if (done.has(id)) continue;
    const match = pattern.exec(text);
    if (match && (!first || match.index < first.index))
      first = { index: match.index, found: match[0], id };
  }
  if (!first) return [{ type: 'text', value: text }];
  done.add(first.id);
  const end = first.index + first.found.length;
  return [
    { type: 'text', value: text.slice(0, first.index) },
    {
      type: 'element',
      tagName: 'a',
      properties: { href: `../glossary/#${first.id}`, className: ['term'] },
      children: [{ type: 'text', value: first.found }],
    },
    ...linkTerms(text.slice(end), terms, done),
  ];
}

/**
 * Links the first use of each glossary term on a page; a page does not link the terms it explains itself.
 * A step of the Markdown pipeline, on the tree of HTML.
 */
export function glossaryLinks() {
  /**
   * @param {Node} tree
   * @param {{ filename?: string }} file
   */
  return (tree, file) => {
    const slug = basename(file.filename ?? '', '.md');
    const terms = readTerms();
    const done = new Set(terms.filter(({ see }) => see === slug).map(({ id }) => id));
    /** @param {Node} node */
    const walk = (node) => {
      node.children = node.children?.flatMap((child) => {
        if (child.type === 'text') return linkTerms(child.value ?? '', terms, done);
        if (!apart.has(child.tagName ?? '')) walk(child);
        return [child];
      });
    };
    walk(tree);
  };
}
