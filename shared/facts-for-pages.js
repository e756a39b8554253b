import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const prefix = '\0facts:';
/** What is shown beside a figure and never reckoned with. */
const shownOnly = new Set(['note', 'source', 'seen', 'partBasis']);
/** Who asks a figure on what basis it stands while reckoning; every other page asks `figure-notes.ts`. */
const askBasis = ['ladders.json', 'settings.json', '../src/lib/readiness/checks.ts'];
const basisAsked = () =>
  askBasis.map((file) => readFileSync(new URL(file, import.meta.url), 'utf8')).join('\n');
/** Files of figures that one page fetches for itself (`photo-figures.ts`). */
const apart = /photo\.json$/;

/** All that the site runs in a browser, and the facts that name figures, as one text. */
const program = () =>
  ['src', 'shared']
    .map((folder) => fileURLToPath(new URL(`../${folder}`, import.meta.url)))
    .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter(
      (entry) =>
        entry.isFile() &&
        /\.(ts|js|svelte|json)$/.test(entry.name) &&
        !entry.parentPath.endsWith('figures'),
    )
    .map(({ parentPath, name }) => readFileSync(join(parentPath, name), 'utf8'))
    .join('\n');

/**
 * Whether a figure is named there, whole or by a template that begins as its id does. The rest are
 * named by explainers alone, which are pages without a program.
 * @param {string} text
 */
const namedIn = (text) => /** @param {string} id */ (id) => {
  const parts = id.split('.');
  return (
    text.includes(id) ||
    parts.some((_, count) => count > 0 && text.includes(`\`${parts.slice(0, count).join('.')}.\${`))
  );
};

/**
 * Spares browsers the notes and sources of the figures until a page shows them, and the figures that
 * only explainers name: what `figures.ts` imports loses them on the way into the browser's build. Outside the build the files are read whole.
 * @returns {import('vite').Plugin}
 */
export function factsForPages() {
  /** @type {((id: string) => boolean) | undefined} */
  let named;
  /** @type {string | undefined} */
  let asked;
  return {
    name: 'facts-for-pages',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!source.endsWith('.json') || !importer?.endsWith('/shared/figures.ts')) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && `${prefix}${found.id}`;
    },
    load(id) {
      if (!id.startsWith(prefix)) return null;
      const file = id.slice(prefix.length);
      this.addWatchFile(file);
      const whole = JSON.parse(readFileSync(file, 'utf8'));
      const browser = this.environment.name === 'client' && this.environment.mode === 'build';
      const kept = browser
        ? Object.entries(apart.test(file) ? {} : whole).filter(([id]) =>
            (named ??= namedIn(program()))(id),
          )
        : Object.entries(whole);
      const spared = (/** @type {string} */ id) =>
        browser && !(asked ??= basisAsked()).includes(id);
      const numbers = JSON.stringify(
        Object.fromEntries(
          kept.map(([id, figure]) => [id, spared(id) ? { ...figure, basis: undefined } : figure]),
        ),
        (key, value) => (shownOnly.has(key) ? undefined : value),
      );
      return { code: `export default ${numbers};`, moduleType: 'js' };
    },
  };
}
