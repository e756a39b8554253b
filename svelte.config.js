import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { mdsvex } from 'mdsvex';
import { glossaryLinks } from './src/lib/learn/markdown/glossary-links.js';
import { contentFolder, language, wordsFolder } from './src/language.js';
import { withWholeSite } from './src/whole-site.js';
import { explainerSource, moduleScript } from './src/lib/learn/markdown/preprocess.js';

/**
 * Where the site lies on its host, without the last slash: BASE_PATH=/some/path, and nothing at the
 * root. Such a build keeps out of the way of the usual one, in a folder named by BUILD_FOLDER.
 * @type {'' | `/${string}`}
 */
const base = process.env.BASE_PATH ? `/${process.env.BASE_PATH.replace(/^\/|\/$/g, '')}` : '';

const folder = process.env.BUILD_FOLDER ?? 'build';

/** @type {import('@sveltejs/kit').Config} */
export default {
  extensions: ['.svelte', '.md'],
  // Short names: every page carries them, and the whole site lies on the device.
  compilerOptions: { cssHash: ({ hash, css }) => `s${hash(css)}` },
  preprocess: [
    vitePreprocess(),
    explainerSource(),
    mdsvex({ extensions: ['.md'], highlight: false, rehypePlugins: [glossaryLinks] }),
    moduleScript(),
  ],
  kit: {
    outDir: base
      ? '.svelte-kit/below'
      : language === 'en'
        ? '.svelte-kit'
        : `.svelte-kit/${language}`,
    adapter: withWholeSite(
      adapter({ pages: folder, fallback: '404.html', precompress: true }),
      folder,
    ),
    paths: { base },
    // The page does it when it stands (lib/keep/offline-copy.ts).
    serviceWorker: { register: false },
    // A build speaks one language: whatever says something imports it by these two names.
    alias: {
      $words: wordsFolder,
      '$words/*': `${wordsFolder}/*`,
      $shared: 'shared',
      '$shared/*': 'shared/*',
      $content: contentFolder,
      '$content/*': `${contentFolder}/*`,
    },
    // One program checks all that is typed: the facts and the worker beside pages and tests.
    typescript: {
      config: (config) => ({
        ...config,
        include: [...config.include, '../shared/**/*.ts'],
        exclude: config.exclude.filter((path) => !path.includes('service-worker')),
      }),
    },
    prerender: { handleHttpError: 'fail', handleMissingId: 'fail' },
    // Hashes rather than 'unsafe-inline': the site runs no script but its own.
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['none'],
        'script-src': ['self'],
        // The hash is that of the one inline style the router puts on its own announcer.
        'style-src': [
          'self',
          'unsafe-hashes',
          'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo=',
        ],
        // blob: is what this page itself holds: a photo out of the device's storage. It cannot name another host.
        'img-src': ['self', 'data:', 'blob:'],
        'font-src': ['self'],
        'connect-src': ['self'],
        'manifest-src': ['self'],
        'worker-src': ['self'],
        'base-uri': ['self'],
        'form-action': ['self'],
      },
    },
  },
};
