import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { parse } from 'yaml';
import { contentFolder } from '../../../language.js';

const folder = resolve(contentFolder, 'explainers');
const glossary = resolve(contentFolder, 'glossary.json');
const name = 'virtual:explainers';
const termsName = 'virtual:terms';
/** @param {string} id */
const isExplainer = (id) => id.startsWith(`${folder}/`) && id.endsWith('.md');

/**
 * `kind:id` to slug, and slug to title, read from the heads of all explainers. Only a page that covers
 * something is ever linked this way; the titles of the others would be weight on every question.
 */
function readLinks() {
  /** @type {Record<string, string>} */
  const titles = {};
  /** @type {Record<string, string>} */
  const covered = {};
  for (const file of readdirSync(folder).filter((entry) => entry.endsWith('.md'))) {
    const head = /^---\n([\s\S]*?)\n---\n/.exec(readFileSync(join(folder, file), 'utf8'));
    const front = parse(head?.[1] ?? '') ?? {};
    const slug = basename(file, '.md');
    if (front.covers?.length) titles[slug] = String(front.title);
    for (const key of front.covers ?? []) covered[key] = slug;
  }
  return { titles, covered };
}

/** The terms an owner's sheet may use, of the glossary; the rest stays out of what browsers load. */
function readOwnerTerms() {
  const all = Object.entries(JSON.parse(readFileSync(glossary, 'utf8')));
  return all
    .filter(([, { owner }]) => owner)
    .map(([id, { term, forms = [], says }]) => ({ id, term, forms, says }));
}

/** Every term with its spellings and what tells its sense, for links to the glossary. */
function readTerms() {
  return Object.entries(JSON.parse(readFileSync(glossary, 'utf8'))).map(
    ([id, { term, forms = [], near, unless }]) => ({
      id,
      spellings: [term, ...forms],
      near,
      unless,
    }),
  );
}

/**
 * Serves `virtual:explainers`, the links of the explainers without their text, `virtual:terms`, the
 * spellings of the glossary's terms, and keeps the text
 * out of what browsers load: explainers are pages without JavaScript.
 * @returns {import('vite').Plugin}
 */
export function explainers() {
  return {
    name: 'explainers',
    enforce: 'pre',
    resolveId(id) {
      return id === name || id === termsName ? `\0${id}` : undefined;
    },
    load(id, options) {
      if (id === `\0${termsName}`) return `export const terms = ${JSON.stringify(readTerms())};`;
      if (id === `\0${name}`) {
        const { titles, covered } = readLinks();
        return `export const titles = ${JSON.stringify(titles)};\nexport const covered = ${JSON.stringify(covered)};\nexport const ownerTerms = ${JSON.stringify(readOwnerTerms())};`;
      }
      return isExplainer(id) && !options?.ssr ? { code: '\n', map: null } : undefined;
    },
  };
}
