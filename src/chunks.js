import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const from = (/** @type {string} */ path) => fileURLToPath(new URL(path, import.meta.url));
const page = (/** @type {string} */ path) => from(`routes/${path}+page.svelte`);
const layout = from('routes/+layout.svelte');
const question = ['svelte', 'ts'].map((ending) =>
  from(`routes/assess/[question=question]/+page.${ending}`),
);

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
/** Those about the plan, by their place in that list: the job, the plan, the crew's day, the owner's sheet. */
const [firstOfPlan, lastOfPlan] = [1, 4];
const ofPlanAlone = (/** @type {readonly number[]} */ needing) =>
  needing.length > 2 && needing.every((each) => each >= firstOfPlan && each <= lastOfPlan);
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
/** What fetches the words, the drawings and the field of the one question that is asked. */
const parts = /\/(ui\/question|words\/\w+\/questions|drawing\/choice)\/load\.ts$/;
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
    const loads = [...reach(question, look)].filter((id) => parts.test(id));
    const asked = new Set([...reach(question, look), ...reach(loads, look, true)]);
    const beside = reach([...question, layout], look, true);
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
      if (advice.has(id)) return 'advised';
      // Odds and ends that nearly all pages of the plan need: one request rather than three.
      if (ofPlanAlone(needing)) return 'with-plan';
      return `with-${needing.join('-')}`;
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

/** @typedef {{ css?: string[], imports?: string[], dynamicImports?: string[], isEntry?: boolean, isDynamicEntry?: boolean }} Chunk */

/**
 * A chunk and all that comes with it. @param {Record<string, Chunk>} manifest
 * @param {string} name @param {Set<string>} [seen]
 */
function withAll(manifest, name, seen = new Set()) {
  if (seen.has(name)) return seen;
  seen.add(name);
  for (const each of manifest[name]?.imports ?? []) withAll(manifest, each, seen);
  return seen;
}

/**
 * What the framework does not reckon with where files are put together. An entry may export more
 * than its own names, so that a file can stand in a chunk without all it imports. And in the list by
 * which pages find what to fetch at once, each entry names all it comes with: what another entry
 * brings as well is otherwise given to whichever is met first; a drawing stays black, or a script
 * is fetched a round later.
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
        const told = structuredClone(manifest);
        for (const [name, chunk] of Object.entries(manifest)) {
          delete chunk.imports;
          delete chunk.dynamicImports;
          if (!chunk.isEntry && !chunk.isDynamicEntry) continue;
          const all = [...withAll(told, name)];
          const each = (/** @type {'css' | 'dynamicImports'} */ what) => [
            ...new Set([...all].reverse().flatMap((one) => told[one]?.[what] ?? [])),
          ];
          const [css, later] = [each('css'), each('dynamicImports')];
          if (css.length) chunk.css = css;
          if (all.length > 1) chunk.imports = all.slice(1);
          if (later.length) chunk.dynamicImports = later;
        }
        writeFileSync(file, JSON.stringify(manifest));
      },
    },
  };
}
