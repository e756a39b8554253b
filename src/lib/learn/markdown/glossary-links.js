import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { contentFolder } from '../../../language.js';
import { termFinder } from './terms.js';

/** @typedef {{ type: string, tagName?: string, value?: string, properties?: Record<string, unknown>, children?: Node[] }} Node */

const unlinked = new Set(['a', 'h1', 'h2', 'h3', 'h4', 'code', 'pre']);

/** The terms with all their spellings, and the page that explains each. */
function readTerms() {
  /** @type {Record<string, {term: string, forms?: string[], near?: string[], unless?: string[], see?: string}>} */
  const glossary = JSON.parse(readFileSync(`${contentFolder}/glossary.json`, 'utf8'));
  return Object.entries(glossary).map(([id, { term, forms = [], near, unless: not, see }]) => ({
    id,
    see,
    spellings: [term, ...forms],
    ...(near && { near }),
    ...(not && { unless: not }),
  }));
}

/**
 * A piece of text as a node of the tree: a link where it is a term.
 * @param {{ readonly text: string, readonly id?: string }} piece
 * @returns {Node}
 */
const nodeOf = ({ text, id }) => {
  const value = { type: 'text', value: text };
  if (!id) return value;
  const properties = { href: `../glossary/#${id}` };
  return { type: 'element', tagName: 'a', properties, children: [value] };
};

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
    const cut = termFinder(terms);
    /** @param {string} id */
    const first = (id) => !done.has(id) && Boolean(done.add(id));
    /** @param {Node} node */
    const walk = (node) => {
      node.children = node.children?.flatMap((child) => {
        if (child.type === 'text') return cut(child.value ?? '', first).map(nodeOf);
        if (!unlinked.has(child.tagName ?? '')) walk(child);
        return [child];
      });
    };
    walk(tree);
  };
}
