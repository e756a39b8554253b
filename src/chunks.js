import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const from = (/** @type {string} */ path) => fileURLToPath(new URL(path, import.meta.url));
const page = (/** @type {string} */ path) => from(`routes/${path}+page.svelte`);
const layout = from('routes/+layout.svelte');
const question = page('assess/[question=question]/');

/** The pages that reckon with a job: whoever opens one of them opens others. */
const working = [
  'advice/',
  'job/',
  'job/plan/',
  'crew/',
  'owner/',
  'ready/',
  'trial/',
  'photos/',
  'survey/',
  'learn/practice/',
].map(page);
/** Pages that stand with little; what they need is left as small as they need it. */
const light = ['privacy/', 'learn/search/'].map(page);
const home = page('');
/** Pages that need some of it. */
const lighter = ['jobs/', 'weather/'].map(page);
/** Pages without JavaScript: they link the style sheets of what they share with others, and no more. */
const reading = [
  'learn/',
  'learn/[slug]/',
  'learn/chart/',
  'learn/glossary/',
  'learn/interview-map/',
  'learn/licences/',
  'learn/sources/',
].map(page);
/** Pages to learn from, whose style sheets are found by the file that asks for them. */
const learn = /\/(src\/routes\/learn|src\/lib\/learn|content)\//;
/** What has no style sheet. */
const plain = /\.(ts|json)$|figures-later/;
/** The worker's thoughts, which a page fetches only where it has no worker. */
const apart = /\/ui\/thoughts\/thoughts\.ts$/;

/**
 * @typedef {{ importedIds: readonly string[], dynamicallyImportedIds: readonly string[] } | null} Info
 * @typedef {(id: string) => Info} Look
 */

/**
 * All that comes with a file. @param {readonly string[]} ids @param {Look} look
 * @param {boolean} [also] what is fetched apart as well
 */
function reach(ids, look, also = false) {
  const seen = new Set(ids);
  for (const id of seen) {
    const info = look(id);
    const next = [
      ...(info?.importedIds ?? []),
      ...(also ? (info?.dynamicallyImportedIds ?? []) : []),
    ];
    for (const each of next) if (!apart.test(each)) seen.add(each);
  }
  return seen;
}

/**
 * Which files go into one chunk, by the pages that need them: small chunks pack worse than one, and
 * each is a request for which the page waits. A file goes along only where the pages that fetch the
 * chunk need it, or nearly all of them.
 */
export function chunkOf() {
  /** @type {((id: string) => string | null) | undefined} */
  let known;
  /** @param {Look} look */
  const sort = (look) => {
    const everywhere = reach([layout], look);
    const asked = reach([question], look);
    const beside = reach([question, layout], look, true);
    const none = reach(light, look);
    const begin = reach([home], look);
    const some = reach(lighter, look);
    const each = working.map((path) => reach([path], look));
    const [advice = new Set()] = each;
    const read = reach(reading, look);
    /** @param {string} id */
    const group = (id) => {
      if (everywhere.has(id) || asked.has(id) || none.has(id) || learn.test(id)) return null;
      const needing = each.flatMap((reached, at) => (reached.has(id) ? [at] : []));
      if (needing.length < 2) return null;
      if (begin.has(id)) return plain.test(id) ? 'asking' : null;
      if (some.has(id)) return 'common';
      if (beside.has(id)) return advice.has(id) ? 'beside' : null;
      return advice.has(id) ? 'advised' : `with-${needing.join('-')}`;
    };
    return (/** @type {string} */ id) => {
      const name = group(id);
      if (!name || !read.has(id)) return name;
      return plain.test(id) ? `${name}-read` : null;
    };
  };
  return (/** @type {string} */ id, /** @type {{ getModuleInfo: Look }} */ context) =>
    (known ??= sort((each) => context.getModuleInfo(each)))(id);
}

/** @typedef {{ css?: string[], imports?: string[], isEntry?: boolean, isDynamicEntry?: boolean }} Chunk */

/**
 * All style sheets that come with a chunk. @param {Record<string, Chunk>} manifest
 * @param {string} name @param {Set<string>} [seen]
 * @returns {string[]}
 */
function sheetsOf(manifest, name, seen = new Set()) {
  if (seen.has(name)) return [];
  seen.add(name);
  const { css = [], imports = [] } = manifest[name] ?? {};
  return [...imports.flatMap((each) => sheetsOf(manifest, each, seen)), ...css];
}

/**
 * What the framework does not reckon with where files are put together. An entry may export more
 * than its own names, so that a file can stand in a chunk without all it imports. And in the list by
 * which pages find their style sheets, each entry names all it comes with: a sheet that another
 * entry brings as well is otherwise given to whichever is met first, and a drawing stays black.
 * @returns {import('vite').Plugin}
 */
export function forChunks() {
  return {
    name: 'for-chunks',
    enforce: 'post',
    config: {
      order: 'post',
      handler: () => ({
        build: { rollupOptions: { preserveEntrySignatures: 'allow-extension' } },
      }),
    },
    writeBundle: {
      order: 'post',
      handler({ dir = '' }) {
        const file = join(dir, '.vite/manifest.json');
        if (!existsSync(file)) return;
        /** @type {Record<string, Chunk>} */
        const manifest = JSON.parse(readFileSync(file, 'utf8'));
        for (const [name, chunk] of Object.entries(manifest))
          if (chunk.isEntry || chunk.isDynamicEntry) {
            const sheets = [...new Set(sheetsOf(manifest, name))];
            if (sheets.length) chunk.css = sheets;
          }
        writeFileSync(file, JSON.stringify(manifest));
      },
    },
  };
}
