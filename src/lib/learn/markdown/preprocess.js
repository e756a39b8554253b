import { existsSync } from 'node:fs';
import { basename } from 'node:path';

/** Where the components an explainer may use are looked for, in this order. */
const shelves = ['src/lib/learn', 'src/lib/drawing/explain', 'src/lib/drawing'];

/**
 * @param {string} tag name of a component
 * @param {string} file the explainer, for the message
 */
function importOf(tag, file) {
  const shelf = shelves.find((path) => existsSync(`${path}/${tag}.svelte`));
  if (!shelf) throw new Error(`${basename(file)}: no component is called <${tag}>`);
  return `import ${tag} from '${shelf.replace('src/lib', '$lib')}/${tag}.svelte';`;
}

/**
 * Makes an explainer ready for Markdown: numbers its figures in order of first use,
 * and imports the components it uses.
 * @param {string} content
 * @param {string} file
 */
function prepareExplainer(content, file) {
  /** @type {string[]} */
  const seen = [];
  const numbered = content.replace(/<Fig\s+id="([^"]+)"\s*\/>/g, (_, id) => {
    if (!seen.includes(id)) seen.push(id);
    return `<Fig id="${id}" note={${seen.indexOf(id) + 1}} />`;
  });
  const tags = new Set([...numbered.matchAll(/<([A-Z][A-Za-z]*)/g)].map((match) => match[1] ?? ''));
  if (!tags.size) return numbered;
  const script = `<script>\n${[...tags].map((tag) => importOf(tag, file)).join('\n')}\n</script>\n`;
  return numbered.replace(/^(---\n[\s\S]*?\n---\n)/, (head) => `${head}\n${script}\n`);
}

/**
 * Runs before the Markdown step.
 * @returns {import('svelte/compiler').PreprocessorGroup}
 */
export function explainerSource() {
  return {
    name: 'explainer-source',
    markup: ({ content, filename = '' }) =>
      filename.endsWith('.md') ? { code: prepareExplainer(content, filename) } : undefined,
  };
}

/**
 * Runs after the Markdown step, which still writes the older form of the module script.
 * @returns {import('svelte/compiler').PreprocessorGroup}
 */
export function moduleScript() {
  return {
    name: 'module-script',
    markup: ({ content, filename = '' }) =>
      filename.endsWith('.md')
        ? { code: content.replace('<script context="module">', '<script module>') }
        : undefined,
  };
}
