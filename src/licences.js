import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Where the build leaves the list for the page that shows it. */
export const licencesFile = '.svelte-kit/licences.json';

/**
 * The library a module belongs to: its folder, up to the name behind the last `node_modules`.
 * @param {string} id
 */
const folderOf = (id) => /^\0?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];

/**
 * @param {string} folder
 * @returns {import('./licences.js').Licence}
 */
function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)/i.test(each));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '';
  return { name, version, licence: String(license), text };
}

/** Folders of libraries found so far; workers are put together apart, before the pages.
 * @type {Set<string | undefined>}
 */
const folders = new Set();

/**
 * A step of the build: lists the licences of the libraries of which something really went into
 * what browsers get. A library without one stops the build.
 * @returns {import('vite').Plugin}
 */
export const licences = () => ({
  name: 'licences',
  apply: 'build',
  applyToEnvironment: ({ name }) => name === 'client',
  generateBundle(_options, bundle) {
    for (const chunk of Object.values(bundle))
      if (chunk.type === 'chunk')
        for (const [id, { renderedLength }] of Object.entries(chunk.modules))
          if (renderedLength > 0) folders.add(folderOf(id));
    const list = [...folders]
      .filter((each) => each !== undefined)
      .map(licenceOf)
      .sort((a, b) => (a.name < b.name ? -1 : 1));
    const without = list.find(({ licence }) => licence === 'undefined');
    if (without) throw new Error(`${without.name}: no licence is named in its package.json`);
    mkdirSync(dirname(licencesFile), { recursive: true });
    writeFileSync(licencesFile, JSON.stringify(list));
  },
});
