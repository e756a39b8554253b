import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, join, relative, sep } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { contentType } from 'mime-types';

/** @type {{ file: string, notKept: string[] }} */
const { file: wholeSite, notKept } = JSON.parse(
  readFileSync(new URL('lib/keep/whole-site.json', import.meta.url), 'utf8'),
);

/** What stands in the folder for the host, is fetched by the browser itself, or is all of this. */
const apart = [...notKept, 'service-worker.js', 'version.json', basename(wholeSite)];

/**
 * All that a device keeps of a built site, one file after another under a line of JSON that says
 * what they are. Like beside like, so that what they share is packed once.
 * @param {string} folder
 */
function inOne(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.(br|gz)$/.test(entry.name))
    .filter(({ name }) => !apart.includes(name))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({
      path: relative(folder, file).replaceAll(sep, '/'),
      content: readFileSync(file),
      type: contentType(basename(file)) || '',
    }))
    .sort((a, b) => `${a.type} ${a.path}`.localeCompare(`${b.type} ${b.path}`, 'en'));
  const { version } = JSON.parse(readFileSync(join(folder, '_app/version.json'), 'utf8'));
  const head = {
    version,
    files: files.map(({ path, content, type }) => [
      path.replace(/(^|\/)index\.html$/, '$1'),
      content.length,
      type,
    ]),
  };
  return Buffer.concat([
    Buffer.from(`${JSON.stringify(head)}\n`),
    ...files.map(({ content }) => content),
  ]);
}

/**
 * Puts the whole site as one file beside the others, with packed copies: a device that takes all of
 * it makes one request for half the bytes.
 * @param {import('@sveltejs/kit').Adapter} adapter what writes the built site
 * @param {string} folder where it writes it
 * @returns {import('@sveltejs/kit').Adapter}
 */
export const withWholeSite = (adapter, folder) => ({
  ...adapter,
  async adapt(builder) {
    await adapter.adapt(builder);
    const all = inOne(folder);
    const to = join(folder, wholeSite);
    writeFileSync(to, all);
    writeFileSync(`${to}.gz`, gzipSync(all, { level: 9 }));
    // A window of 16 MB sees from one page to all others; browsers take no larger one.
    const params = {
      [constants.BROTLI_PARAM_LGWIN]: 24,
      [constants.BROTLI_PARAM_SIZE_HINT]: all.length,
    };
    writeFileSync(`${to}.br`, brotliCompressSync(all, { params }));
  },
});
