/**
 * Runs a command as one file: `node src/cli/bundled.js advise FILE`. Reading a hundred modules takes
 * seconds, one file a moment. It is put together at first use and again whenever anything it was
 * made of has changed: every run compares the contents, so that no old code is ever run.
 */
import { contentFolder, wordsFolder } from '../language.js';
import { createHash } from 'node:crypto';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [command = '', ...args] = process.argv.slice(2);

/**
 * A name for the contents of files, and for what lies beside them: a new file can take the place
 * of another. Libraries count by the list of what is installed.
 * @param {readonly string[]} own paths of our own files, from the root
 */
function keyOf(own) {
  const hash = createHash('sha256');
  const listed = ['node_modules/.package-lock.json', 'tsconfig.json', 'src/cli/bundled.js', ...own];
  for (const path of listed) hash.update(`\n${path}\n`).update(readFileSync(join(root, path)));
  for (const folder of [...new Set(own.map((path) => dirname(path)))].sort())
    hash.update(readdirSync(join(root, folder)).sort().join());
  return hash.digest('hex').slice(0, 32);
}

/** @param {string} folder */
function ready(folder) {
  try {
    const { own, key } = JSON.parse(readFileSync(join(folder, `${command}.json`), 'utf8'));
    return keyOf(own) === key ? join(folder, `${command}-${key}.mjs`) : undefined;
  } catch {
    return undefined;
  }
}

/** @param {string} folder */
async function make(folder) {
  const { build } = await import('esbuild');
  const { metafile, outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [`src/cli/${command}.ts`],
    bundle: true,
    minify: true,
    keepNames: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    alias: {
      $lib: './src/lib',
      $words: `./${wordsFolder}`,
      $shared: './shared',
      $content: `./${contentFolder}`,
    },
    // For libraries written for require.
    banner: {
      js: "import{createRequire as __require}from'node:module';const require=__require(import.meta.url);",
    },
    metafile: true,
    write: false,
    logLevel: 'error',
  });
  const own = Object.keys(metafile.inputs).filter((path) => !path.includes('node_modules'));
  const key = keyOf(own);
  /** @param {string} name @param {string} text */
  const put = (name, text) => {
    // Under its name only when it is whole: another run may be reading.
    const part = join(folder, `${name}.${process.pid}`);
    writeFileSync(part, text);
    renameSync(part, join(folder, name));
  };
  mkdirSync(folder, { recursive: true });
  put(`${command}-${key}.mjs`, outputFiles[0]?.text ?? '');
  put(`${command}.json`, JSON.stringify({ own, key }));
  return join(folder, `${command}-${key}.mjs`);
}

const usual = join(root, 'node_modules/.cache/down-to-sound');
const file =
  ready(usual) ??
  // Where nothing may be written beside the libraries, each run makes its own.
  (await make(usual).catch((problem) => {
    if (!['EACCES', 'EROFS', 'EPERM'].includes(problem.code)) throw problem;
    return make(mkdtempSync(join(tmpdir(), 'down-to-sound-')));
  }));
process.argv = [process.argv[0] ?? 'node', file, ...args];
await import(pathToFileURL(file).href);
