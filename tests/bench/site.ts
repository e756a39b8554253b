import { existsSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const build = fileURLToPath(new URL('../../build', import.meta.url));
export const isBuilt = () => existsSync(`${build}/index.html`);

/** The JavaScript that a page names in its head: all it cannot do without. */
export function scriptsOf(path: string) {
  const html = readFileSync(`${build}/${path}/index.html`, 'utf8');
  const names = new Set([...html.matchAll(/_app\/immutable\/[\w./-]+\.js/g)].map(([name]) => name));
  const bytes = [...names].reduce(
    (sum, name) => sum + gzipSync(readFileSync(`${build}/${name}`), { level: 9 }).length,
    0,
  );
  return { files: names.size, bytes };
}

/** How many style sheets a page links. */
export const sheetsOf = (path: string): number =>
  readFileSync(`${build}/${path}/index.html`, 'utf8').match(/href="[^"]+\.css"/g)?.length ?? 0;

/** Bytes of the whole site as it is sent in brotli, in one file, and as it lies on the device. */
export function wholeSite() {
  const inOne = `${build}/_app/whole-site.txt`;
  return { sent: statSync(`${inOne}.br`).size, kept: statSync(inOne).size };
}
