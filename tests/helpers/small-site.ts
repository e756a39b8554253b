import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';

const rules = readFileSync(
  fileURLToPath(new URL('../../static/_headers', import.meta.url)),
  'utf8',
);

/** The headers that the file for static hosts sets for every page, by their names in small letters. */
export const hostHeaders: ReadonlyMap<string, string> = new Map(
  rules
    .split('\n')
    .filter((line) => line.startsWith('  '))
    .map((line) => line.trim().split(/: (.*)/s) as [string, string])
    .map(([name, value]) => [name.toLowerCase(), value]),
);

const long = 'sound concrete '.repeat(400);
/** What stands in the small site, by path. */
export const smallFiles = {
  'index.html': `start ${long}`,
  'assess/depth/index.html': `depth ${long}`,
  '404.html': `lost ${long}`,
  _headers: rules,
  '.secret': 'no',
  'manifest.webmanifest': '{}',
  'job.schema.json': '{}',
  'service-worker.js': '1',
  '_app/immutable/entry/start.abc.js': `start(${JSON.stringify(long)})`,
} as const;

/** A folder laid out like the built site, with packed copies. Whoever asks for it removes it. */
export function smallSite(): string {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  for (const [name, content] of Object.entries(smallFiles)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
    if (!/\.(html|js)$/.test(name)) continue;
    writeFileSync(`${path}.br`, brotliCompressSync(content));
    writeFileSync(`${path}.gz`, gzipSync(content));
  }
  return folder;
}
