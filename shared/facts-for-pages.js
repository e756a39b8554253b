import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const prefix = '\0facts:';
/** The figures that come with the pages that name them. */
const later = 'virtual:figures-later';
/**
 * What the question page cannot do without. The figures named here are there from the start; whatever
 * else names a figure, or imports them, brings the others along.
 */
const atFirst =
  /\/src\/lib\/(answers\/|drawing\/(lines|coin|choice\/)|words\/(format\.ts|\w+\/(questions|drawing\/choice)))/;
/** What is shown beside a figure and never reckoned with. */
const shownOnly = new Set(['note', 'source', 'seen', 'partBasis']);
/** Who asks a figure on what basis it stands while reckoning; every other page asks `figure-notes.ts`. */
const askBasis = ['ladders.json', 'settings.json', '../src/lib/readiness/checks.ts'];
/** What the plan takes for granted on a basis that it tells. */
const alsoAsked = ['crew.usable'];
const basisAsked = () =>
  [
    ...askBasis.map((file) => readFileSync(new URL(file, import.meta.url), 'utf8')),
    ...alsoAsked,
  ].join('\n');
/** Whether this is the build for browsers. @param {{ name: string, mode: string }} environment */
const forPages = ({ name, mode }) => name === 'client' && mode === 'build';
/** What may name a figure. */
const ours = /\/(src|shared)\/[^\0]*\.(ts|js|svelte|json)$/;
/** Files of figures that one page fetches for itself (`photo-figures.ts`). */
const apart = /photo\.json$/;

/** The files that the site runs in a browser, and the facts that name figures. */
const files = () =>
  ['src', 'shared']
    .map((folder) => fileURLToPath(new URL(`../${folder}`, import.meta.url)))
    .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter(
      (entry) =>
        entry.isFile() &&
        /\.(ts|js|svelte|json)$/.test(entry.name) &&
        !entry.parentPath.endsWith('figures'),
    )
    .map(({ parentPath, name }) => join(parentPath, name));
/** @param {(path: string) => boolean} which */
const textOf = (which) =>
  files()
    .filter(which)
    .map((path) => readFileSync(path, 'utf8'))
    .join('\n');

/**
 * Whether a figure is named there, whole or by a template that begins as its id does. The rest are
 * named by explainers alone, which are pages without a program.
 * @param {string} text
 */
const namedIn = (text) => {
  // Every dotted name once, with the marks of a template round it: hundreds of ids are sought in it.
  const names = text.match(/`?[\w-]*\.[\w.-]*(?:\$\{)?/g) ?? [];
  const short = [...new Set(names)].join('\n');
  return /** @param {string} id */ (id) => {
    const parts = id.split('.');
    return (
      short.includes(id) ||
      parts.some(
        (_, count) => count > 0 && short.includes(`\`${parts.slice(0, count).join('.')}.\${`),
      )
    );
  };
};

/** @param {string} file whole of it, as it stands in `shared/figures` */
const read = (file) => JSON.parse(readFileSync(file, 'utf8'));

/**
 * Spares browsers the notes and sources of the figures until a page shows them, the figures that
 * only explainers name, and those that the first question does not need until a page comes that
 * names them. Outside the build for the browser the files are read whole.
 * @returns {import('vite').Plugin}
 */
export function factsForPages() {
  /** @type {((id: string) => boolean) | undefined} */
  let named;
  /** @type {((id: string) => boolean) | undefined} */
  let first;
  /** @type {string | undefined} */
  let asked;
  /** Files of figures as they were met, by which the others are found. */
  const met = fileURLToPath(new URL('figures', import.meta.url));
  const isNamed = (/** @type {string} */ id) =>
    (named ??= namedIn(textOf(() => true)))(id) && !isFirst(id);
  const isFirst = (/** @type {string} */ id) =>
    (first ??= namedIn(textOf((path) => atFirst.test(path))))(id);
  /** Without what is only shown. @param {[string, object][]} figures */
  const numbers = (figures) =>
    JSON.stringify(
      Object.fromEntries(
        figures.map(([id, figure]) => [
          id,
          (asked ??= basisAsked()).includes(id) ? figure : { ...figure, basis: undefined },
        ]),
      ),
      (key, value) => (shownOnly.has(key) ? undefined : value),
    );
  /** @type {[string, object][] | undefined} */
  let others;
  const laterFigures = () =>
    (others ??= readdirSync(met)
      .filter((name) => !apart.test(name))
      .flatMap((name) => Object.entries(read(join(met, name))))
      .filter(([id]) => isNamed(id)));

  return {
    name: 'facts-for-pages',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (source === later) return `\0${later}`;
      if (!source.endsWith('.json') || !importer?.endsWith('/shared/figures.ts')) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && `${prefix}${found.id}`;
    },
    load(id) {
      if (id === `\0${later}`)
        return {
          code: `import { figures } from '$shared/figures';\nObject.assign(figures, ${numbers(laterFigures())});`,
          moduleType: 'js',
          moduleSideEffects: true,
        };
      if (!id.startsWith(prefix)) return null;
      const file = id.slice(prefix.length);
      this.addWatchFile(file);
      if (!forPages(this.environment))
        return {
          code: `export default ${JSON.stringify(read(file), (key, value) => (shownOnly.has(key) ? undefined : value))};`,
          moduleType: 'js',
        };
      const kept = apart.test(file) ? [] : Object.entries(read(file)).filter(([id]) => isFirst(id));
      return { code: `export default ${numbers(kept)};`, moduleType: 'js' };
    },
    transform: {
      // When it is JavaScript, whatever it was written in.
      order: 'post',
      handler(code, id) {
        const [path = ''] = id.split('?');
        if (!forPages(this.environment) || !ours.test(path) || id.startsWith('\0')) return null;
        if (path.endsWith('/shared/figures.ts') || path.endsWith('.css')) return null;
        if (atFirst.test(path)) return null;
        const asks = /\bfrom\s*["'](\$shared|.*\/shared|\.)\/figures(\.ts)?["']/.test(code);
        const ids = laterFigures().map(([each]) => each);
        if (!asks && !ids.some(namedIn(code))) return null;
        return { code: `import '${later}';\n${code}`, map: null };
      },
    },
  };
}
